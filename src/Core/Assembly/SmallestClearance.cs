using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much larger than their rods holes must be for a chance, by halving on the same trials: a trial that passes passes with larger holes too, so each step looks only at trials that are still open.</summary>
public static class SmallestClearance
{
    private const double StepMm = 0.005;
    private const double MostSigmas = 16;

    /// <summary>The clearance, rounded up to 0.01 mm; null when even holes far larger do not give it, because other parts hold the rods.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="part">The part whose holes are opened; null: all parts alike.</param>
    /// <param name="wantedShare">The chance.</param>
    /// <param name="seed">Seed of all trials.</param>
    /// <param name="trials">How many.</param>
    public static Length? Of(PinnedParts parts, int? part, double wantedShare, ulong seed, int trials)
    {
        var (low, high) = (0.0, Math.Max(0.05, MostSigmas * parts.Parts.Max(p => p.SigmasMm.Max())));
        var open = Enumerable.Range(0, trials).ToArray();
        var wanted = wantedShare * trials;
        var (through, sure) = (Through(high), 0);
        if (through.Length < wanted) return null;
        open = through;
        while (high - low > StepMm)
        {
            var middle = 0.5 * (low + high);
            through = Through(middle);
            if (sure + through.Length >= wanted)
            {
                (high, open) = (middle, through);
                continue;
            }

            low = middle;
            sure += through.Length;
            open = [.. open.Except(through)];
        }

        return Length.OfMm(Math.Ceiling((high * 100) - 1e-9) / 100);

        int[] Through(double clearanceMm)
        {
            var trial = new PinTrial(parts.Opened(part, Length.OfMm(clearanceMm)));
            return [.. open.Where(i =>
            {
                var chance = SeededChance.OfTrial(seed, i);
                return trial.Run(ref chance) == PinsGo.Through;
            })];
        }
    }
}
