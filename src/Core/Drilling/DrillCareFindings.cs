using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What to watch when drilling, wherever it is done: thin stock, long drills, holes after hardening, no drill before the reamer.</summary>
public static class DrillCareFindings
{
    /// <summary>Stock thinner than the point is long: the lips are never guided, the drill grabs as it breaks through.</summary>
    public static IEnumerable<Finding> ThinStock(Results r)
    {
        var (t, point) = (r.Plan.Stock.Thickness, r.Shop.DrillGrind.Point);
        var grabs = r.Drilling.Holes.Where(h => h.Operations.Any(o => o.Step == HoleStep.Drill && PointLength.Of(o.Diameter, point) > t)).Select(h => h.Hole).ToArray();
        if (grabs.Length == 0) yield break;
        var largest = grabs.MaxBy(h => h.Diameter.Mm)!;
        yield return ShopFinding.Of(r.Shop, new Finding(
            FindingCodes.ThinStock,
            Severity.Warning,
            RefusedFindings.Named(grabs),
            largest.At,
            "The stock is thinner than the drill's point is long: the lips are never guided, the hole comes out three-cornered, and the drill grabs as it breaks through.",
            $"{Shown.Both(t)} thick; point of {Shown.Both(largest.Diameter)} {Shown.Both(PointLength.Of(largest.Diameter, point))} long",
            "stock no thinner than the point is long",
            SourceTag.CommonPractice,
            "clamp it between a backing board and a strip on top, never hold it by hand, ease off as it breaks through; or use a step drill, or drill several pieces in a stack"));
    }

    /// <summary>Long drills where the usual ones reach: they whip and wander.</summary>
    public static IEnumerable<Finding> TooLong(Results r)
    {
        if (r.Shop.DrillGrind.Reach != DrillReach.Long) yield break;
        var holes = r.Drilling.Holes.Where(h => h.Operations.Any(o => o.Step is HoleStep.Pilot or HoleStep.Drill)).ToArray();
        if (holes.Length == 0) yield break;
        var thinnest = holes.SelectMany(h => h.Operations).Where(o => o.Step is HoleStep.Pilot or HoleStep.Drill).MinBy(o => o.Diameter.Mm)!;
        yield return ShopFinding.Of(r.Shop, new Finding(
            FindingCodes.DrillTooLong,
            Severity.Note,
            RefusedFindings.Named(holes.Select(h => h.Hole)),
            holes[0].Hole.At,
            "The drills are longer than these holes need: a long drill whips, wanders off its mark and breaks.",
            $"long drills; the {thinnest.Tool} goes {Shown.Both(Length.OfMm(thinnest.DepthMm))} deep",
            "a stub or jobber drill reaches three and more diameters",
            SourceTag.CommonPractice,
            "use stub or jobber drills here, or put the long drill deep into the chuck; write drill_reach as it is"));
    }

    /// <summary>Holes planned after hardening.</summary>
    public static IEnumerable<Finding> Hard(Results r)
    {
        var hard = r.Drilling.Holes.Where(h => h.Machine is not null && h.Hole.IsDrilledHard).Select(h => h.Hole).ToArray();
        if (hard.Length == 0) yield break;
        yield return new Finding(
            FindingCodes.DrilledHard,
            Severity.Warning,
            RefusedFindings.Named(hard),
            hard[0].At,
            "Planned after hardening: only carbide cuts it, slowly, and a drill that snaps there stays there.",
            "drilled after hardening",
            "drilled before hardening",
            SourceTag.CommonPractice,
            "drill before hardening, or soften the spot first");
    }

    /// <summary>Reamed holes for which no drill is owned that leaves what the reamer needs.</summary>
    public static IEnumerable<Finding> NoDrillBeforeReaming(Results r)
    {
        foreach (var size in r.Holes.Where(h => h.Make == HoleMake.Ream).GroupBy(h => h.Diameter.Mm))
        {
            var (drill, owned) = HoleTools.BeforeReaming(r.Shop, size.First().Diameter);
            if (owned) continue;
            var (least, most) = ReamingStock.For(size.First().Diameter);
            yield return ShopFinding.Of(r.Shop, new Finding(
                FindingCodes.NoDrillBeforeReaming,
                Severity.Warning,
                RefusedFindings.Named(size),
                size.First().At,
                $"No drill of the shop leaves what a {Shown.Trimmed(size.Key, 2)} mm reamer needs.",
                $"no drill of {Shown.Both(Length.OfMm(size.Key) - most)} to {Shown.Both(Length.OfMm(size.Key) - least)}",
                $"{Shown.Both(least)} to {Shown.Both(most)} left on the diameter",
                SourceTag.CommonPractice,
                $"buy a {drill.Name} drill"));
        }
    }
}
