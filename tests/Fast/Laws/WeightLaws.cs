using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using static Tangwright.Tests.Worked;

namespace Tangwright.Tests;

/// <summary>What must hold for the weights of any plan.</summary>
public class WeightLaws
{
    private static readonly Gen<Transform> Move = Gen.Select(Gen.Double[-3, 3], Gen.Double[-200, 200], Gen.Double[-200, 200], Gen.Bool)
        .Select((turn, x, y, mirror) => (mirror ? Transform.Scale(1, -1) : Transform.None).Then(Transform.Turn(turn)).Then(Transform.Shift(new(x, y))));

    [Fact]
    public void Moving_turning_and_mirroring_changes_no_weight_and_carries_the_balance_along()
        => Gen.Select(Gen.OneOf(Gen.Const(Hatchet), Gen.Const(Kitchen)), Move).Sample(
            (plan, move) =>
            {
                var (before, after) = (Stages(plan, 7.8), Stages(Moved(plan, move), 7.8));
                foreach (var (a, b) in before.Zip(after).Skip(1))
                {
                    Near(a.Volume.Mm3, b.Volume.Mm3, 1e-6);
                    var at = move.Map(a.Balance);
                    Assert.True(at.To(b.Balance) < 1e-4, $"{a.Stage}: {at} is not {b.Balance}");
                }

                var (s, t) = (Striking.Of(plan with { Grip = Hatchet.Grip }, before[^1], Steel(7.8))!, Striking.Of(Moved(plan with { Grip = Hatchet.Grip }, move), after[^1], Steel(7.8))!);
                Near(s.InertiaKgM2, t.InertiaKgM2, 1e-5);
                Near(s.PivotToPercussion.Mm, t.PivotToPercussion.Mm, 1e-5);
            },
            iter: 30);

    [Fact]
    public void Thicker_stock_without_a_bevel_weighs_in_proportion()
        => Gen.Double[1, 12].Sample(t =>
        {
            var plate = Hatchet with { Bevel = null, Edge = null, Stock = Hatchet.Stock with { Thickness = Mm(t) } };
            Near(Stages(Hatchet with { Bevel = null, Edge = null }, 7.85)[^1].Mass!.Value.Grams * t / 6.35, Stages(plate, 7.85)[^1].Mass!.Value.Grams, 1e-12);
        });

    [Fact]
    public void No_stage_weighs_more_than_the_one_before()
        => Gen.Select(Gen.Double[1, 40], Gen.Double[0, 2], Gen.Double[0, 1]).Sample(
            (height, edge, broken) =>
            {
                var plan = Hatchet with
                {
                    Bevel = Hatchet.Bevel! with { Height = Mm(height), EdgeBeforeHardening = Mm(edge + 0.2), EdgeFinished = Mm(edge) },
                    BrokenEdges = new BrokenEdges(Mm(broken), Mm(broken / 2), Rounded: false),
                };
                var stages = Stages(plan, 7.85);
                foreach (var (a, b) in stages.Zip(stages.Skip(1))) Assert.True(b.Volume.Mm3 <= a.Volume.Mm3, $"{b.Stage} weighs more than {a.Stage}");
            },
            iter: 40);

    [Fact]
    public void A_law_of_thickness_never_thins_with_distance()
        => Gen.Select(Gen.Double[0.5, 8], Gen.Double[0, 1], Gen.Double[2, 40], Gen.Double[0.05, 0.6]).Sample((stock, share, height, tangent) =>
        {
            var law = new GrindProfile(stock, stock * share, height, tangent);
            var last = -1.0;
            for (var d = 0.0; d <= 2 * height; d += height / 50)
            {
                var t = law.At(d, height);
                Assert.InRange(t, Math.Max(last, 0), stock);
                last = t;
            }

            Assert.Equal(stock, law.At(Math.Max(height, stock / (2 * tangent)) * 1.001, height));
        });

    [Fact]
    public void A_bevel_takes_off_less_when_a_hole_has_taken_its_share()
        => Gen.Select(Gen.Double[10, 60], Gen.Double[40, 62], Gen.Double[1, 5]).Sample(
            (x, y, r) =>
            {
                Moments Off(Plan plan)
                {
                    var holes = HolePlacement.Of(plan);
                    var piece = Piece(plan, holes);
                    return BevelSolid.Removed(piece, EdgeSpan.Of(plan, piece)!, null, GrindProfile.Finished(plan))[0];
                }

                var pierced = Hatchet with { Holes = [Drilled("H", new(x, y), 2 * r)] };
                Assert.True(Off(pierced).AreaMm2 <= Off(Hatchet with { Holes = [] }).AreaMm2 + 1e-3);
            },
            iter: 30);

    [Fact]
    public void Broken_rims_take_more_the_wider_they_are()
        => Gen.Select(Gen.Double[0.1, 1.5], Gen.Double[0.1, 1.5]).Sample((a, b) =>
        {
            Moments Off(double c) => BrokenEdgeSteel.Of(Hatchet with { BrokenEdges = new BrokenEdges(Mm(c), null, false) }, HolePlacement.Of(Hatchet), Piece(Hatchet, HolePlacement.Of(Hatchet)));
            Assert.Equal(a.CompareTo(b), Off(a).AreaMm2.CompareTo(Off(b).AreaMm2));
        });

    private static Plan Moved(Plan plan, Transform move) => plan with
    {
        Outline = plan.Outline.Transformed(move),
        Edge = plan.Edge is { } e ? new SharpenedPart(move.Map(e.From), move.Map(e.To)) : null,
        Bevel = plan.Bevel is { Plunge: { } p } b ? b with { Plunge = new PlungeLine(move.Map(p.A), move.Map(p.B)) } : plan.Bevel,
        Grip = plan.Grip is { } g ? new Grip(move.Map(g.From), move.Map(g.To)) : null,
        Holes = [.. plan.Holes.Cast<Hole>().Select(h => h with { At = move.Map(h.At) })],
    };

    private static void Near(double a, double b, double relative) => Assert.True(Math.Abs(a - b) <= relative * Math.Abs(a), $"{a:R} is not {b:R}");
}
