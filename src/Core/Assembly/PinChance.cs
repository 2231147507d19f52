using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How often pins go through, by so many seeded trials.</summary>
/// <param name="Through">Trials in which a laying was found.</param>
/// <param name="Undecided">Trials proven neither way; counted as not through, and as through at the upper end of the interval.</param>
/// <param name="Trials">All trials.</param>
[Formula("Chance that straight rods go through holes that scatter, parts shifted and turned as they like", "pins-model", "Centres scattered normally and apart from one another, alike along both axes; rods straight and square to the faces, faces flat. Proven trial by trial, to 1e-4 of a clearance; interval of 95 in 100 given")]
public sealed record PinChance(int Through, int Undecided, int Trials)
{
    /// <summary>Trials that are enough for a table at the bench.</summary>
    public const int UsualTrials = 20_000;

    /// <summary>The chance.</summary>
    public double Share => (double)Through / Trials;

    /// <summary>Where it lies with 95 in 100, the undecided trials taken both ways.</summary>
    public WilsonInterval Interval => new(WilsonInterval.Of(Through, Trials).LowShare, WilsonInterval.Of(Through + Undecided, Trials).HighShare);

    /// <summary>Runs the trials.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="seed">Seed of all trials.</param>
    /// <param name="trials">How many, above 0.</param>
    public static PinChance Of(PinnedParts parts, ulong seed, int trials)
    {
        var trial = new PinTrial(parts);
        var (through, undecided) = (0, 0);
        for (var i = 0; i < trials; i++)
        {
            var chance = SeededChance.OfTrial(seed, i);
            var goes = trial.Run(ref chance);
            through += goes == PinsGo.Through ? 1 : 0;
            undecided += goes == PinsGo.Undecided ? 1 : 0;
        }

        return new(through, undecided, trials);
    }
}
