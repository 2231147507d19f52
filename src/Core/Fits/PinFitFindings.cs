using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Rods the plan names that may not go into their holes.</summary>
public static class PinFitFindings
{
    /// <summary>One finding for each hole; those already measured are judged as measured.</summary>
    public static IEnumerable<Finding> Of(Results r)
        => from p in PinFits.Of(r)
           where p is { RodIsSaid: true, Hole.AsBuilt: null } && p.Fit is { Kind: not FitKind.Slides }
           select Tight(r, p, p.Fit!);

    private static Finding Tight(Results r, PinFit p, FitResult fit)
    {
        var wider = Wider(r.Shop, p);
        return new Finding(
            FindingCodes.RodTight,
            Severity.Warning,
            $"hole {p.Hole.Name}",
            p.Hole.At,
            $"The rod of hole {p.Hole.Name} {(fit.Kind == FitKind.Presses ? "does not go in" : "may not go in")} by hand.",
            $"rod of {Shown.Both(p.Rod!.Value)}, hole {FitText.Band(p.Made!.Value.Least, p.Made.Value.Most)} ({p.MadeBy})",
            $"{Shown.Both(GlueRoom.InSteel.Least)} to {Shown.Both(GlueRoom.InSteel.Most)} wider than the rod when glued",
            SourceTag.CommonPractice,
            wider is null ? "make the hole wider, or take a thinner rod" : $"make the hole {wider.Name}, or take a thinner rod")
        {
            Ways = wider is null ? [] : HoleWays.Resized(r.Plan, (p.Hole, wider)),
        };
    }

    /// <summary>The smallest size of the shop that leaves room for glue whatever it comes out at; a metric one when the shop is assumed or has none near.</summary>
    private static DrillSize? Wider(Shop shop, PinFit p)
    {
        var wanted = p.Rod!.Value + GlueRoom.InSteel.Least + (p.Hole.Diameter - p.Made!.Value.Least);
        var owned = shop.IsAssumed ? [] : p.Hole.Make == HoleMake.Ream ? shop.Reamers : shop.Drills;
        return DrillSeries.LargerOrEqual(owned.Where(d => d.Diameter - wanted <= GlueRoom.InSteel.Most - GlueRoom.InSteel.Least), wanted) ?? DrillSeries.LargerOrEqual(DrillSeries.Metric, wanted);
    }
}
