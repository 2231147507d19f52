using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Is every hole in the steel, and clear of the others?</summary>
public static class HolePlaceFindings
{
    /// <summary>Centres and diameters closer than this are the same hole, mm.</summary>
    private const double SameMm = 0.01;

    /// <summary>Holes outside or across the outline.</summary>
    public static IEnumerable<Finding> Outside(Results r, ImmutableArray<HoleClearance> clearances)
    {
        var remedy = new WebRemedy(r);
        var web = WebLimits.WarnMm(r.Plan.Stock.Thickness);
        foreach (var c in clearances)
        {
            if (c.WebMm >= 0) continue;
            var name = c.Hole.Name;
            var clear = Length.OfMm(c.Inside ? -c.WebMm : c.CentreMm + (0.5 * c.Hole.Diameter.Mm));
            yield return new Finding(
                FindingCodes.HoleOutside,
                Severity.Error,
                $"hole {name}",
                c.Hole.At,
                c.Inside ? $"Hole {name} breaks through the outline." : $"Hole {name} lies outside the outline.",
                c.Inside ? $"{Shown.Both(Length.OfMm(c.CentreMm))} from centre to outline" : $"centre {Shown.Both(Length.OfMm(c.CentreMm))} outside",
                $"{Shown.Both(c.Hole.Diameter / 2)}, its radius",
                "geometry",
                $"move {name} {Shown.Both(clear)} into the piece to lie just inside, and further for a web, or leave it out")
            {
                Ways =
                [
                    .. HoleWays.Moved(c.Inside ? remedy.Moved(c.Hole, c.Foot, web - c.WebMm) : remedy.Along(c.Hole, (c.Foot - c.Hole.At).Unit, clear.Mm + web)),
                    .. HoleWays.LeftOut(c.Hole),
                ],
            };
        }
    }

    /// <summary>Holes that run into one another, and holes written twice.</summary>
    public static IEnumerable<Finding> Overlaps(Results r)
    {
        var remedy = new WebRemedy(r);
        foreach (var (a, b, web) in HolePairs.CloserThan(r.Holes, 0))
        {
            var twice = a.At.To(b.At) < SameMm && Math.Abs((a.Diameter - b.Diameter).Mm) < SameMm;
            yield return new Finding(
                twice ? FindingCodes.HoleTwice : FindingCodes.HoleOverlap,
                Severity.Error,
                $"holes {a.Name} and {b.Name}",
                a.At.Toward(b.At, 0.5),
                twice ? $"Holes {a.Name} and {b.Name} are the same hole twice." : $"Holes {a.Name} and {b.Name} run into one another.",
                $"centres {Shown.Both(Length.OfMm(a.At.To(b.At)))} apart",
                $"more than {Shown.Both((a.Diameter + b.Diameter) / 2)}, both radii",
                "geometry",
                twice ? $"leave out {b.Name}" : $"move them {Shown.Both(Length.OfMm(-web))} further apart, and {Shown.Both(Length.OfMm(WebLimits.WarnMm(r.Plan.Stock.Thickness)))} more for a web, or leave one out")
            {
                Ways = twice ? LeftOut(b, a) : [.. HoleWays.Moved(Apart(r, remedy, a, b, web)), .. LeftOut(b, a)],
            };
        }
    }

    /// <summary>The smaller hole moved away from the larger one, or else the larger from the smaller.</summary>
    private static WebChange? Apart(Results r, WebRemedy remedy, PlacedHole a, PlacedHole b, double webMm)
    {
        var missing = WebLimits.WarnMm(r.Plan.Stock.Thickness) - webMm;
        var (large, small) = a.Diameter >= b.Diameter ? (a, b) : (b, a);
        return small.Row is null && remedy.Moved(small, large.At, missing) is { } moved ? moved : remedy.Moved(large, small.At, missing);
    }

    private static ImmutableArray<RemedyWay> LeftOut(PlacedHole one, PlacedHole other)
        => HoleWays.LeftOut(one) is { IsEmpty: false } way ? way : HoleWays.LeftOut(other);
}
