using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Push on a drill by the handbook formula; mm, mm a turn, N.</summary>
[Formula("push on a drill, N: 0.05 Kd Ff FT B W + 0.007 Kd D^2 J W", "machinerys-handbook-31", "high-speed steel drills of 1 to 50 mm; agrees with the second model within some 15 %")]
public static class DrillThrust
{
    /// <summary>Wear in normal work; 1.5 is dull. From memory of the handbook.</summary>
    public const double NormalWearFactor = 1.3;

    /// <summary>The push.</summary>
    /// <param name="workFactor">Kd.</param>
    /// <param name="feedMmPerTurn">Feed, mm a turn.</param>
    /// <param name="drill">Diameter.</param>
    /// <param name="chiselShare">Chisel edge as a share of the diameter.</param>
    /// <param name="wearFactor">W, 1 for sharp.</param>
    public static Force Of(double workFactor, double feedMmPerTurn, Length drill, double chiselShare, double wearFactor)
    {
        var c = ChiselFactors.Of(chiselShare);
        return Force.OfNewtons(workFactor * wearFactor * ((0.05 * Math.Pow(feedMmPerTurn, 0.8) * Math.Pow(drill.Mm, 0.8) * c.BFactor) + (0.007 * drill.Mm * drill.Mm * c.JFactor)));
    }
}
