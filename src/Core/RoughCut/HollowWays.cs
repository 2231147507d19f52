using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What can be done about a hollow that no two cuts take out: a chain of holes, relief cuts, or the grinder.</summary>
internal static class HollowWays
{
    private const double ReliefPitchMm = 10;
    private const double ChainDrillMm = 6;
    private const double LeastCutMm = 3;

    /// <summary>The ways for one pocket.</summary>
    public static HollowLeft Of(Pocket pocket, double growMm, Shop shop, Saw saw, Length thickness, BeltRate belt, Steel? steel)
    {
        var grind = GrindingWork.Of(pocket.AreaMm2, thickness, steel, belt);
        var drill = shop.Drills.Where(d => d.Diameter.Mm >= 3).MinBy(d => Math.Abs(d.Diameter.Mm - ChainDrillMm));
        var (cuts, sawn) = Relief(pocket, growMm);
        var rate = SawPractice.RateCm2PerMin(saw).Rate;
        var can = SawPractice.CanStopInside(saw.Kind);
        return new HollowLeft(
            pocket,
            pocket.LidFrom.Toward(pocket.LidTo, 0.5),
            Area.OfMm2(pocket.AreaMm2),
            grind.Minutes,
            drill is not null && DrilledPath(pocket, growMm + drill.Diameter.Mm) is > 0 and var path ? ChainDrilling.Of(drill, Length.OfMm(path)) : null,
            can ? cuts : 0,
            can ? cuts * SawTime.Minutes(cuts > 0 ? sawn / cuts : 0, thickness.Mm, rate, 0.5 * SawPractice.SetUpMinutes(saw)) : 0);
    }

    /// <summary>Length of the outline that lies deep enough below the lid for a hole.</summary>
    private static double DrilledPath(Pocket pocket, double deeperMm)
    {
        var (inward, length) = ((pocket.LidTo - pocket.LidFrom).Unit.Left, 0.0);
        for (var i = 1; i < pocket.Chain.Length; i++)
        {
            var (a, b) = (pocket.Chain[i - 1], pocket.Chain[i]);
            var (da, db) = (inward.Dot(a - pocket.LidFrom) - deeperMm, inward.Dot(b - pocket.LidFrom) - deeperMm);
            if (da <= 0 && db <= 0) continue;
            length += a.To(b) * (da > 0 && db > 0 ? 1 : Math.Max(da, db) / Math.Abs(da - db));
        }

        return length;
    }

    /// <summary>Cuts square to the lid, side by side, down to the allowance.</summary>
    private static (int Cuts, double SawnMm) Relief(Pocket pocket, double growMm)
    {
        var (way, lid) = ((pocket.LidTo - pocket.LidFrom).Unit, pocket.LidFrom.To(pocket.LidTo));
        var (cuts, sawn) = (0, 0.0);
        for (var s = ReliefPitchMm; s < lid; s += ReliefPitchMm)
        {
            var deep = double.PositiveInfinity;
            for (var i = 1; i < pocket.Chain.Length; i++)
            {
                var (a, b) = (pocket.Chain[i - 1] - pocket.LidFrom, pocket.Chain[i] - pocket.LidFrom);
                var (sa, sb) = (way.Dot(a), way.Dot(b));
                if (Math.Min(sa, sb) > s || Math.Max(sa, sb) < s || sa == sb) continue;
                deep = Math.Min(deep, way.Left.Dot(a.Toward(b, (s - sa) / (sb - sa))));
            }

            if (!double.IsFinite(deep) || deep - growMm < LeastCutMm) continue;
            (cuts, sawn) = (cuts + 1, sawn + deep - growMm);
        }

        return (cuts, sawn);
    }
}
