using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a pilot takes off push and torque of the drill that follows, as the share that stays.</summary>
[Formula("share of push and torque that stays after a pilot", SourceTag.CommonPractice, "pilot from the chisel edge to the whole drill; from the handbook's own lips-only term, lips shortened by the pilot")]
public static class PilotRelief
{
    /// <summary>Share of the push: the lips alone, as far as the pilot leaves them. The whole of it when the pilot is narrower than the chisel edge.</summary>
    /// <param name="workless">Push of the drill without a pilot over Kd and wear: its feed term and its indenting term.</param>
    /// <param name="pilotShare">Pilot as a share of the drill.</param>
    /// <param name="chiselShare">Chisel edge as a share of the drill.</param>
    public static double ThrustShare((double FeedFactor, double IndentFactor) workless, double pilotShare, double chiselShare)
    {
        if (pilotShare < chiselShare) return 1;
        var c = ChiselFactors.Of(chiselShare);
        var lips = workless.FeedFactor * ChiselFactors.LipsOnlyFactor(chiselShare) / c.BFactor;
        return lips * (1 - pilotShare) / (workless.FeedFactor + workless.IndentFactor);
    }

    /// <summary>Share of the torque.</summary>
    public static double TorqueShare(double pilotShare) => 1 - (pilotShare * pilotShare);
}
