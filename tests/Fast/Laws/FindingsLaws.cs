using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

public class FindingsLaws
{
    private static readonly Gen<Hole[]> AnyHoles = Gen.Int[300, 2700].Select(Gen.Int[40, 300], Gen.Int[30, 180], (x, y, d) => (X: x / 10.0, Y: y / 10.0, D: d / 10.0)).Array[1, 8]
        .Select(a => a.Select((h, i) => TestShop.Hole($"H{i}", h.X + (0.00618 * (i + 1)), h.Y + (0.00414 * (i + 1)), h.D)).ToArray()); // off the grid: of two exactly equal, either may be named

    private static Plan Moved(Plan plan, Transform map) => plan with
    {
        Outline = plan.Outline.Transformed(map),
        Holes = [.. plan.Holes.OfType<Hole>().Select(h => h with { At = map.Map(h.At) })],
        Edge = plan.Edge is { } e ? new SharpenedPart(map.Map(e.From), map.Map(e.To)) : null,
        Grip = plan.Grip is { } g ? new Grip(map.Map(g.From), map.Map(g.To)) : null,
    };

    /// <summary>The same findings with the same numbers, to the last digit shown.</summary>
    private static bool Same(Results a, Results b, Func<Finding, bool> which)
    {
        static (string Key, double[] Numbers)[] Told(Results r, Func<Finding, bool> which) =>
        [
            .. r.Findings.Where(which)
                .Select(f => (Key: $"{f.Severity} {f.Code} {f.Where}", Numbers: Regex.Matches($"{f.Found} {f.Limit}", @"\d+(\.\d+)?").Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture)).ToArray()))
                .OrderBy(f => f.Key, StringComparer.Ordinal),
        ];
        var (x, y) = (Told(a, which), Told(b, which));
        return x.Length == y.Length && x.Zip(y).All(p => p.First.Key == p.Second.Key && p.First.Numbers.Length == p.Second.Numbers.Length && p.First.Numbers.Zip(p.Second.Numbers).All(n => Math.Abs(n.First - n.Second) < 0.0101));
    }

    private static bool OfHoles(Finding f) => f.Code.StartsWith("hole.", StringComparison.Ordinal);

    [Fact]
    public void Shifting_the_plan_changes_no_number()
        => Gen.Select(AnyHoles, Gen.Int[-500, 500], Gen.Int[-500, 500]).Sample(
            (holes, x, y) =>
            {
                var plan = TestShop.Hatchet with { Holes = [.. holes] };
                return Same(TestShop.WorkedUp(plan), TestShop.WorkedUp(Moved(plan, Transform.Shift(new Point(x, y)))), _ => true);
            },
            iter: 100);

    [Fact]
    public void Turning_and_mirroring_the_plan_change_no_number_of_a_hole()
        => Gen.Select(AnyHoles, Gen.Double[0, 6.28]).Sample(
            (holes, angle) =>
            {
                var plan = TestShop.Hatchet with { Holes = [.. holes] };
                var map = Transform.Scale(1, -1).Then(Transform.Turn(angle));
                return Same(TestShop.WorkedUp(plan), TestShop.WorkedUp(Moved(plan, map)), OfHoles);
            },
            iter: 100);

    /// <summary>Found by the law above: 5.5² + 13.2² = 14.3², so these two rims touch, and rounding must not make them overlap.</summary>
    [Fact]
    public void Holes_that_just_touch_are_judged_alike_however_the_plan_lies()
    {
        var plan = TestShop.Hatchet with { Holes = [TestShop.Hole("H0", 108.2, 12, 16.6), TestShop.Hole("H1", 113.7, 25.2, 12)] };
        for (var i = 0; i < 100; i++)
        {
            var turned = TestShop.WorkedUp(Moved(plan, Transform.Turn(i * 0.0628))).Findings;
            Assert.Contains(turned, f => f.Code == FindingCodes.WebToHole && f.Severity == Severity.Error);
            Assert.DoesNotContain(turned, f => f.Code == FindingCodes.HoleOverlap);
        }
    }

    /// <summary>Found by the first law: the handle is as high at H1 as at H0, so both have the greatest share, and the first must be named wherever the plan lies.</summary>
    [Fact]
    public void Of_two_holes_with_the_same_share_of_the_height_the_first_is_named_wherever_the_plan_lies()
    {
        var plan = TestShop.Hatchet with { Holes = [TestShop.Hole("H0", 195.21854, 16.91242, 15.9), TestShop.Hole("H1", 182.43708, 18.92484, 15.9)] };
        for (var i = 0; i < 100; i++)
        {
            var shifted = TestShop.WorkedUp(Moved(plan, Transform.Shift(new Point(-398 + (7.3 * i), -137 + (3.1 * i))))).Findings;
            Assert.Contains("at H0", shifted.Single(f => f.Code == FindingCodes.ShareOfHeight).Found, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void More_drills_and_smaller_wheels_never_add_a_finding()
        => Gen.Select(AnyHoles, Gen.Int[10, 200].Array[0, 6]).Sample(
            (holes, more) =>
            {
                var plan = TestShop.Hatchet with { Holes = [.. holes] };
                var richer = TestShop.Own with
                {
                    Drills = [.. TestShop.Own.Drills.Concat(more.Select(d => TestShop.Size(d / 10.0))).OrderBy(d => d.Diameter)],
                    Wheels = TestShop.Own.Wheels.Insert(0, new Wheel("6 mm wheel", TestShop.Mm(6))),
                };
                return TestShop.WorkedUp(plan, richer).Findings.Length <= TestShop.WorkedUp(plan).Findings.Length;
            },
            iter: 100);

    [Fact]
    public void A_remedy_offered_for_a_web_to_the_outline_passes_when_applied()
        => AnyHoles.Sample(
            holes =>
            {
                var r = TestShop.WorkedUp(TestShop.Hatchet with { Holes = [.. holes] });
                var t = r.Plan.Stock.Thickness;
                var remedy = new WebRemedy(r);
                foreach (var c in HoleClearance.Of(r.Piece.Outer, r.Holes))
                {
                    if (c.WebMm < 0 || WebLimits.Judge(c.WebMm, t) is null) continue;
                    var missing = t.Mm - c.WebMm;
                    foreach (var change in new[] { WebRemedy.Smaller(c.Hole, missing), remedy.Moved(c.Hole, c.Foot, missing) })
                    {
                        if (change is null) continue;
                        var applied = change.Applied;
                        var mended = HoleClearance.Of(r.Piece.Outer, [applied])[0];
                        if (WebLimits.Judge(mended.WebMm, t) is not null) return false;

                        // and no other web is pushed under the limit
                        foreach (var other in r.Holes)
                        {
                            if (ReferenceEquals(other, c.Hole)) continue;
                            var after = applied.At.To(other.At) - ((applied.Diameter + other.Diameter).Mm / 2);
                            var before = c.Hole.At.To(other.At) - ((c.Hole.Diameter + other.Diameter).Mm / 2);
                            if (WebLimits.Judge(after, t) is not null && after < before - 1e-9) return false;
                        }
                    }
                }

                return true;
            },
            iter: 200);

    [Fact]
    public void A_remedy_offered_for_a_web_between_holes_passes_when_applied()
        => AnyHoles.Sample(
            holes =>
            {
                var r = TestShop.WorkedUp(TestShop.Hatchet with { Holes = [.. holes] });
                var t = r.Plan.Stock.Thickness;
                var remedy = new WebRemedy(r);
                foreach (var (a, b, web) in HolePairs.CloserThan(r.Holes, t.Mm))
                {
                    if (web < 0) continue;
                    foreach (var change in new[] { WebRemedy.Smaller(a, t.Mm - web), remedy.Moved(a, b.At, t.Mm - web) })
                    {
                        if (change is null) continue;
                        var after = change.Applied.At.To(b.At) - ((change.Applied.Diameter + b.Diameter).Mm / 2);
                        if (WebLimits.Judge(after, t) is not null) return false;
                    }
                }

                return true;
            },
            iter: 200);

    [Fact]
    public void The_structural_rules_are_told_exactly_when_a_ratio_is_below_them()
        => AnyHoles.Sample(
            holes =>
            {
                var r = TestShop.WorkedUp(TestShop.Hatchet with { Holes = [.. holes] });
                var ratios = from a in r.Holes
                             from b in r.Holes
                             let d = Math.Max(a.Diameter.Mm, b.Diameter.Mm)
                             where !ReferenceEquals(a, b) && a.At.To(b.At) >= (a.Diameter + b.Diameter).Mm / 2
                             select a.At.To(b.At) / d;
                var near = ratios.Any(q => q < HoleRuleFindings.PitchDiameters - 1e-6);
                return r.Findings.Any(f => f.Code == FindingCodes.PitchRule) == near;
            },
            iter: 100);

    [Fact]
    public void Bar_tolerance_grows_with_width_and_the_worst_is_the_larger()
        => Gen.Double[10, 199].Select(Gen.Double[0, 40], (w, more) => (w, w + more)).Sample(
            p =>
            {
                var (narrow, wide) = (BarTolerance.WidthWorst(TestShop.Mm(p.w)), BarTolerance.WidthWorst(TestShop.Mm(p.Item2)));
                if (BarTolerance.En10058Width(TestShop.Mm(p.w)) is { } en && narrow!.Value.Under < en) return false;
                if (BarTolerance.AstmA29WidthUnder(TestShop.Mm(p.w)) is { } astm && narrow!.Value.Under < astm) return false;
                return p.Item2 > 150 || narrow!.Value.Under <= wide!.Value.Under;
            });

    [Fact]
    public void Webs_agree_with_a_naive_twin_on_sampled_points()
        => AnyHoles.Sample(
            holes =>
            {
                var r = TestShop.WorkedUp(TestShop.Hatchet with { Holes = [.. holes] });
                var points = r.Piece.Outer.Segments.SelectMany(s => Enumerable.Range(0, 400).Select(k => s.At(k / 400.0))).ToArray();
                // a sample lies at most half a step from the true nearest point
                var half = r.Piece.Outer.Segments.Max(s => s.Length) / 800;
                return HoleClearance.Of(r.Piece.Outer, r.Holes).All(c => points.Min(p => p.To(c.Hole.At)) - c.CentreMm is var over && over > -1e-9 && over <= half + 1e-9);
            },
            iter: 50);
}
