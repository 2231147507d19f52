using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>All that is known of one size for a pin and its hole.</summary>
/// <param name="Size">The size.</param>
/// <param name="Hole">Limits of the hole.</param>
/// <param name="Pin">Limits of the pin.</param>
/// <param name="Drills">Drills beside the size, by series.</param>
public sealed record SizeFit(Length Size, FitLimits Hole, FitLimits Pin, ImmutableArray<DrillsOfSeries> Drills)
{
    /// <summary>What the two make together.</summary>
    public FitResult Fit => FitResult.Of(Hole, Pin);

    /// <summary>Steel to leave for the reamer.</summary>
    public (Length Least, Length Most) LeftToReam => ReamingStock.For(Size);

    /// <summary>What a drill of the size makes.</summary>
    public (Length Least, Length Most)? Drilled => DrilledSize.Of(Size);

    /// <summary>Works it up; faults when a class is not known or the size is outside the tables.</summary>
    public static Checked<SizeFit> Of(Length size, string hole, string pin)
    {
        var (h, p) = (ToleranceClass.Hole(hole).Then(c => FitLimits.Of(size, c)), ToleranceClass.Pin(pin).Then(c => FitLimits.Of(size, c)));
        return h.IsGood && p.IsGood
            ? Checked<SizeFit>.Good(new(size, h.Value, p.Value, NearestDrills.Of(size)))
            : Checked<SizeFit>.Bad(h.Faults.Concat(p.Faults).Distinct());
    }

    /// <summary>Whether a shop has a drill or reamer of a size.</summary>
    public static bool IsOwned(ImmutableArray<DrillSize> owned, Length size) => owned.Any(o => Math.Abs((o.Diameter - size).Mm) <= DrillFindings.SameSizeMm);
}
