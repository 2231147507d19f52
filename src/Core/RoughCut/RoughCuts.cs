using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The straight saw cuts that pay before the grinder, in an order that can be made.</summary>
public static class RoughCuts
{
    private const double ReliefHoleMm = 6;
    private const int SharesTold = 6;

    /// <summary>The plan, or why there is none.</summary>
    public static Checked<RoughCutPlan> Of(Results r, RoughCutWanted wanted)
    {
        if (Trouble(r, wanted) is { } trouble) return Checked<RoughCutPlan>.Bad(trouble);
        var saws = Saws(r.Shop, wanted.SawName);
        var plans = saws.Select(s => With(s, r, wanted.Cuts)).ToArray();
        var best = plans.MinBy(p => p.Minutes)!;
        var others = plans.Where(p => p != best).Select(p => $"With the {p.Saw.Name}: {p.Cuts.Length} {(p.Cuts.Length == 1 ? "cut" : "cuts")}, {Shown.Number(p.Minutes, 0)} min in all.");
        return Checked<RoughCutPlan>.Good(best with { Notes = [.. best.Notes, .. others] });
    }

    private static Saw[] Saws(Shop shop, string? name)
        => [.. shop.Saws.Where(s => string.IsNullOrWhiteSpace(name) || s.Name.Contains(name.Trim(), StringComparison.OrdinalIgnoreCase))];

    private static Fault? Trouble(Results r, RoughCutWanted wanted)
    {
        Fault Say(string message, string remedy) => Fault.OfFile(r.Plan.Name, message, remedy);
        if (wanted.Cuts is < 0 or > RoughCutWanted.MostCuts) return Say($"{wanted.Cuts} cuts cannot be planned", $"ask for 0 to {RoughCutWanted.MostCuts}");
        if (r.Findings.FirstOrDefault(f => f.Code is FindingCodes.OutlineCrossesItself or FindingCodes.OutlineTooSmall) is { } bad) return Say($"the outline bounds no piece: {bad.Message}", "mend the outline first: tangwright check says where");
        if (r.Shop.Saws.IsDefaultOrEmpty) return Say("the shop has no saw", "write it in the shop file under [[saw]]");
        if (Saws(r.Shop, wanted.SawName).Length == 0) return Say($"the shop has no saw \"{wanted.SawName}\"", $"name one of: {string.Join(", ", r.Shop.Saws.Select(s => s.Name))}");
        var (blank, piece) = (RoughBlank.Of(r).Box.Grown(1e-6), r.Piece.Outer.Bounds);
        if (piece.MinX < blank.MinX || piece.MaxX > blank.MaxX || piece.MinY < blank.MinY || piece.MaxY > blank.MaxY) return Say("the piece is larger than the rectangle it is sawn from", "take a wider or longer bar: tangwright check says how much");
        return null;
    }

    private static RoughCutPlan With(Saw saw, Results r, int? wanted)
    {
        var (blank, t) = (RoughBlank.Of(r), r.Plan.Stock.Thickness);
        var corners = blank.Corners;
        var belt = BeltPractice.Coarsest(r.Shop, r.Steel?.Density?.Value.GramsPerCm3 ?? GrindingWork.NominalDensity);
        var wander = SawPractice.WanderMm(saw);
        var allowance = r.Shop.RoughAllowance.Mm + (0.5 * wander);
        var outline = r.Plan.Outline;
        var hull = GrownHull.Of(outline, allowance);
        var pieceMm2 = Math.Abs(Moments.Of(outline).AreaMm2);
        var blankMm2 = ConvexClip.AreaMm2(corners.AsSpan());
        var drilledFirst = r.Bench.State != DrilledIn.Profile;
        var limits = new SawLimits(saw, drilledFirst ? [.. r.Holes.Where(h => !h.IsDrilledHard).Select(h => (h.MadeAt, 0.5 * h.MadeDiameter.Mm))] : []);
        var minutesPerMm2 = GrindingWork.Of(1000, t, r.Steel, belt).Minutes / 1000;
        var drill = saw.Kind == SawKind.Plasma ? null : ReliefDrill(r.Shop, saw);
        var keep = Keep(saw, drill, t);
        var pockets = Pocket.Of(outline, hull);
        var chosen = new RoughCutSearch(corners, hull, limits, minutesPerMm2, pieceMm2, t.Mm).Of(drill is null && saw.Kind != SawKind.Plasma ? [] : pockets, keep, wanted);
        var (cuts, reliefs, rest, restMm2) = SawCuts.Of(chosen, blank, saw, limits, t, drill);

        // looked at again on the true outline
        var gap = CutCheck.LeastMm(outline, cuts.Select(c => Reach(c, corners)), 4 * (allowance + 1));
        if (gap < allowance - 1e-4) throw new InvalidOperationException($"a cut came {allowance - gap} mm too near the piece");

        var (_, low, high) = SawPractice.RateCm2PerMin(saw);
        var sawMinutes = cuts.Sum(c => c.Minutes) + (reliefs.Count(h => h.Drill is not null) * RoughCutSearch.ReliefMinutes);
        double Slowed(double rate) => sawMinutes + cuts.Sum(c => SawTime.Minutes(c.Chord.Mm, t.Mm, rate, 0) - SawTime.Minutes(c.Chord.Mm, t.Mm, SawPractice.RateCm2PerMin(saw).Rate, 0));
        var hollows = pockets.Where(p => !chosen.Wedges.Any(w => w.Pocket == p)).Select(p => HollowWays.Of(p, hull.GrowMm, r.Shop, saw, t, belt, r.Steel)).ToImmutableArray();
        var plan = new RoughCutPlan(
            saw,
            blank,
            Length.OfMm(allowance),
            $"{Shown.Both(r.Shop.RoughAllowance)} for the grinder and half of the {Shown.Both(Length.OfMm(wander))} the cut of the {saw.Name} may stray",
            cuts,
            reliefs,
            blankMm2,
            pieceMm2,
            restMm2,
            rest,
            Shares(corners, hull, blankMm2 - pieceMm2),
            blankMm2 > pieceMm2 ? (blankMm2 - HullMm2(corners, hull)) / (blankMm2 - pieceMm2) : 0,
            GrindingWork.Of(restMm2 - pieceMm2, t, r.Steel, belt),
            GrindingWork.Of(blankMm2 - pieceMm2, t, r.Steel, belt),
            sawMinutes,
            Slowed(high),
            Slowed(low),
            belt,
            hollows,
            Length.OfMm(gap),
            NearestHole(r, cuts),
            [])
        {
            TeethPerInch = SawPractice.HasTeeth(saw.Kind) ? TeethInWork.Of(saw.TeethPerInch, t) : null,
        };
        return plan with { Notes = RoughCutNotes.Of(r, plan, chosen.Refused, wanted), BladeSays = RoughCutNotes.Blade(plan, t) };
    }

    /// <summary>A through cut as long as it is sawn is checked through the whole blank; a cut into a pocket as long as it is.</summary>
    private static (Point From, Point To) Reach(SawCut c, ImmutableArray<Point> blank)
        => c.Pocket is null && ConvexClip.Chord(blank, c.Normal, c.Normal.Dot(c.From)) is { } chord ? chord : (c.From, c.To);

    private static DrillSize? ReliefDrill(Shop shop, Saw saw)
    {
        var wanted = Math.Max(ReliefHoleMm, saw.Kerf.Mm + 1);
        return shop.Drills.Where(d => d.Diameter.Mm >= wanted - 1e-9).MinBy(d => d.Diameter.Mm) ?? shop.Drills.Where(d => d.Diameter.Mm > saw.Kerf.Mm).MaxBy(d => d.Diameter.Mm);
    }

    /// <summary>How far beyond the allowance the apex of a pocket stays off: the relief hole, and what a disc runs on past it.</summary>
    private static double Keep(Saw saw, DrillSize? drill, Length thickness)
    {
        var radius = 0.5 * (drill?.Diameter.Mm ?? saw.Kerf.Mm);
        if (saw.Kind != SawKind.Disc) return radius;
        var disc = 0.5 * (saw.DiscDiameter?.Mm ?? SawPractice.DiscMm);
        return Math.Max(radius, DiscRunOut.Mm(disc, DiscRunOut.ThroughMm, thickness.Mm) - radius);
    }

    private static double HullMm2(ImmutableArray<Point> blank, GrownHull hull)
        => hull.Candidates(1).Aggregate(blank, (left, c) => ConvexClip.Beyond(left, -c.Normal, -c.OffsetMm)) is var left ? ConvexClip.AreaMm2(left.AsSpan()) : 0;

    private static ImmutableArray<double> Shares(ImmutableArray<Point> blank, GrownHull hull, double wasteMm2)
    {
        var cuts = hull.Candidates();
        var worth = CutWorth.Of(blank, [], cuts);
        var best = BestCuts.Of(cuts, worth.One, worth.Both, SharesTold);
        return [.. Enumerable.Range(1, best.Most).Select(k => wasteMm2 > 0 ? best.Worth(k) / wasteMm2 : 0)];
    }

    private static Length? NearestHole(Results r, ImmutableArray<SawCut> cuts)
    {
        if (r.Holes.IsEmpty || cuts.IsEmpty) return null;
        var lines = cuts.Select(c => new Path([new Line(c.From, c.To)], closed: false)).ToArray();
        return Length.OfMm(r.Holes.Min(h => lines.Min(l => Nearest.Distance(l, h.MadeAt)) - (0.5 * h.MadeDiameter.Mm)));
    }
}
