using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Can the shop's wheels follow the hollows of the outline, and do cracks start there?</summary>
public static class InsideRadiusFindings
{
    /// <summary>Steel a wheel may leave in a hollow before it shows, mm: the usual tolerance of a profile ground to a line; common practice.</summary>
    public const double ShowsMm = 0.3;

    /// <summary>An inside corner turned by more than this is sharp, degrees; flatter kinks blend under the belt; common practice.</summary>
    public const double SharpDegrees = 30;

    /// <summary>Least inside radius before hardening, mm; common practice 1.5 to 3.</summary>
    public const double LeastBeforeHardeningMm = 1.5;

    private const int MostTold = 5;

    /// <summary>Curves tighter than the smallest wheel.</summary>
    public static IEnumerable<Finding> Curves(Results r)
    {
        if (r.Shop.Wheels.IsEmpty) yield break;
        var wheel = r.Shop.Wheels.MinBy(w => w.Diameter.Mm)!;
        var reach = 0.5 * wheel.Diameter.Mm;
        var tight = TightHollow.Curves(r.Piece.Outer, reach).Where(h => h.LeftBy(reach) > ShowsMm && !Drilled(r.Holes, h)).ToArray();
        foreach (var h in tight.Take(MostTold))
        {
            var radius = Length.OfMm(h.RadiusMm);
            var more = tight.Length > MostTold ? $" ({tight.Length} such places in all)" : "";
            yield return ShopFinding.Of(
                r.Shop,
                new Finding(
                    FindingCodes.InsideRadius,
                    Severity.Warning,
                    Where(h.Place),
                    h.Place,
                    $"The inside radius of {Shown.Both(radius)} is tighter than the smallest wheel, {wheel.Name}{more}.",
                    $"radius {Shown.Both(radius)}",
                    $"radius {Shown.Both(Length.OfMm(reach))}",
                    "smallest wheel in the shop file",
                    $"a radius of {Shown.Both(Length.OfMm(reach))}, or drill {DrillFor(r.Shop, 2 * h.RadiusMm)} there before profiling, or file it by hand"));
        }
    }

    /// <summary>Sharp inside corners.</summary>
    public static IEnumerable<Finding> Corners(Results r)
    {
        var wheel = r.Shop.Wheels.MinBy(w => w.Diameter.Mm);
        var sharp = TightHollow.Corners(r.Piece.Outer).Where(h => h.TurnRadians * 180 / Math.PI > SharpDegrees && !Drilled(r.Holes, h)).ToArray();
        foreach (var h in sharp.Take(MostTold))
        {
            var more = sharp.Length > MostTold ? $" ({sharp.Length} such places in all)" : "";
            var byWheel = wheel is null ? "" : $" ({wheel.Name} makes {Shown.Mm(wheel.Diameter / 2)})";
            yield return new Finding(
                FindingCodes.SharpInsideCorner,
                Severity.Warning,
                Where(h.Place),
                h.Place,
                $"Sharp inside corner of {Shown.Number(180 - (h.TurnRadians * 180 / Math.PI), 0)}°: no wheel makes it, and cracks start there in the quench{more}.",
                $"radius 0, turned by {Shown.Number(h.TurnRadians * 180 / Math.PI, 0)}°",
                $"radius {Shown.Both(Length.OfMm(LeastBeforeHardeningMm))} before hardening",
                SourceTag.CommonPractice,
                $"a radius of at least {Shown.Both(Length.OfMm(LeastBeforeHardeningMm))}{byWheel}, or drill {DrillFor(r.Shop, 2 * LeastBeforeHardeningMm)} in the corner before profiling")
            {
                Ways = CornerWays.Of(r, h.Place, wheel),
            };
        }
    }

    private static string Where(Point p) => $"outline at x {Shown.Mm(Length.OfMm(p.X))}, y {Shown.Mm(Length.OfMm(p.Y))}";

    /// <summary>Whether a hole of the plan makes the hollow: its rim passes through the place, or holds it.</summary>
    private static bool Drilled(ImmutableArray<PlacedHole> holes, TightHollow h)
        => holes.Any(hole => hole.At.To(h.Place) <= (0.5 * hole.Diameter.Mm) + 0.2);

    private static string DrillFor(Shop shop, double diameterMm)
    {
        var owned = shop.IsAssumed ? null : shop.Drills.Where(d => d.Diameter.Mm >= diameterMm - 0.006).MinBy(d => d.Diameter.Mm);
        return owned is not null && owned.Diameter.Mm < 1.3 * diameterMm ? owned.Name : Shown.Both(Length.OfMm(diameterMm));
    }
}
