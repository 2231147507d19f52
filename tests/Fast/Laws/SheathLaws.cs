using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests.Laws;

/// <summary>Sheaths of blades of every shape: the cut keeps its distance, the halves are alike, holes are even, and the blade comes out.</summary>
public class SheathLaws
{
    private static readonly Gen<Results> Blades = Gen.Select(Gen.Double[4, 40], Gen.Double[-15, 15], Gen.Double[-20, 25], Gen.Double[-8, 8], Gen.Double[1, 8], Gen.Int[0, 3], Gen.Int[0, 2]).Select((height, belly, tip, heel, thick, way, kind) => Blade(height, belly, tip, heel, thick, way, (SheathKind)kind));

    [Fact]
    public void Fold_allowance_grows_with_both_and_not_by_which() => Gen.Select(Gen.Double[0.5, 12], Gen.Double[0.5, 6]).Sample((t, s) =>
    {
        var w = FoldAllowance.Of(Length.OfMm(t), Length.OfMm(s)).Mm;
        Assert.Equal(w, FoldAllowance.Of(Length.OfMm(s), Length.OfMm(t)).Mm, 9);
        Assert.InRange(w, Math.PI / 2 * t, Math.PI / 2 * (t + 6.001));
        Assert.Equal(2 * w, FoldAllowance.Of(Length.OfMm(2 * t), Length.OfMm(2 * s)).Mm, 9);
    });

    [Fact]
    public void The_cut_stays_the_seam_away_and_the_stitches_keep_between() => Blades.Sample(
        r =>
        {
            if (SheathPattern.Of(r.Plan, r.Piece, out _) is not { } p) return;
            var blade = Inside(p);
            var seam = SheathRules.Seam(p.Asked).Mm;
            foreach (var s in p.Cut.Segments.SelectMany(s => Enumerable.Range(0, 9).Select(i => s.At(i / 8.0))).Where(s => (!p.IsFolded || s.Y < -p.FaceFrom.Mm - 1e-6) && s.X > 1e-6)) Assert.True(Away(blade, s) >= seam - 0.003, $"{Away(blade, s)} of {seam}");
            var line = (SheathRules.Finished(p.Asked) - SheathRules.FromEdge(p.Asked)).Mm;
            Assert.All(p.Stitches.Holes, h => Assert.True(Away(blade, h) >= line - 0.003));
            Assert.All(p.Stitches.Holes, h => Assert.True(Nearest.On(p.Trim ?? p.Cut, h).Distance >= SheathRules.FromEdge(p.Asked).Mm - 0.003));
        },
        iter: 60);

    [Fact]
    public void Halves_are_mirror_images_and_holes_even() => Blades.Sample(
        r =>
        {
            if (SheathPattern.Of(r.Plan, r.Piece, out _) is not { IsFolded: true } p) return;
            foreach (var s in p.Cut.Segments) Assert.True(Nearest.On(p.Cut, s.At(0.5) with { Y = -s.At(0.5).Y }).Distance < 1e-6);
            var m = Moments.Of(p.Cut);
            Assert.Equal(0, m.Centroid.Y, 6);

            // along a line whose bends are gentle a hole's neighbours are a pitch away, straight across a little less
            for (var i = 1; i < p.Stitches.Holes.Length; i++) Assert.InRange(p.Stitches.Holes[i].To(p.Stitches.Holes[i - 1]), p.Stitches.Pitch.Mm * 0.6, p.Stitches.Pitch.Mm + 1e-9);
            if (p.Stitches.Holes.Length > 1) Assert.Equal(p.Stitches.Length.Mm, p.Stitches.Pitch.Mm * (p.Stitches.Holes.Length - 1), 6);
            if (p.Stitches.Holes.Length > 20) Assert.InRange(p.Stitches.Pitch.Mm, SheathRules.Pitch(p.Asked).Mm * 0.97, SheathRules.Pitch(p.Asked).Mm * 1.03);
        },
        iter: 60);

    /// <summary>The outline itself moved out step by step: no corner of it ever goes through the welt.</summary>
    [Fact]
    public void The_blade_comes_out() => Blades.Sample(
        r =>
        {
            if (SheathPocket.Of(r.Plan, r.Piece, out _) is not { } pocket) return;
            Point[] room = [new(0, 0), .. pocket.Side];
            var edge = Enumerable.Range(1, room.Length - 1).Select(i => (A: room[i - 1], B: room[i])).ToArray();
            for (var out_ = 0.0; out_ <= pocket.Depth.Mm; out_ += 3)
            {
                foreach (var p in pocket.Outline.Where(p => p.X >= 0).Select(p => p - new Point(out_, 0)).Where(p => p.X > 1e-6))
                {
                    Assert.All(edge, e => Assert.True((e.B - e.A).Unit.Cross(p - e.A) >= -0.003));
                    Assert.True(p.Y <= 1e-9);
                }
            }

            // and where the blade is caught by a mouth cut to its own section, some corner is lower than the mouth
            Assert.Equal(pocket.Caught.Mm > 1e-9, pocket.Outline.Any(p => p.X >= 0 && -p.Y > pocket.AtMouth.Mm + 1e-9));
        },
        iter: 60);

    /// <summary>Sides of the blade as far as they lie in the sheath, cut at the mouth.</summary>
    private static (Point A, Point B)[] Inside(SheathPattern p)
    {
        var outline = p.Blade;
        return [.. Enumerable.Range(0, outline.Length).Select(i => (A: outline[i], B: outline[(i + 1) % outline.Length])).Where(s => s.A.X > 0 || s.B.X > 0).Select(s => (Cut(s.A, s.B), Cut(s.B, s.A)))];

        static Point Cut(Point p, Point other) => p.X >= 0 ? p : p.Toward(other, p.X / (p.X - other.X));
    }

    private static double Away((Point A, Point B)[] blade, Point p) => blade.Min(s => s.A.Toward(s.B, Math.Clamp((p - s.A).Dot(s.B - s.A) / Math.Max(1e-12, (s.B - s.A).Dot(s.B - s.A)), 0, 1)).To(p));

    private static Results Blade(double height, double belly, double tip, double heel, double thick, int way, SheathKind kind)
    {
        // edge below from the tip at the left to the heel at 90, a step of the heel, a handle; then turned about
        var edge = new Bezier(new(0, Math.Max(0.5, height * 0.5)), new(20, -belly), new(60, -Math.Abs(belly)), new(90, 0));
        var spine = new Bezier(new(90, height), new(60, height + (tip * 0.2)), new(20, height), new(0, Math.Max(0.5, height * 0.5)));
        var low = Math.Min(heel, height - 2);
        var path = new Path([edge, new Line(edge.End, new(92, low)), new Line(new(92, low), new(180, low)), new Line(new(180, low), new(180, height)), new Line(new(180, height), spine.Start), spine], closed: true);
        var map = Transform.Scale(way % 2 == 0 ? 1 : -1, way < 2 ? 1 : -1);
        var plan = new Plan("Blade", "-", LengthUnit.Mm, Target.None, new Stock("none", Length.OfMm(thick), null, null, ""), path.Transformed(map), Datum.LowerLeft, new SharpenedPart(map.Map(edge.Start), map.Map(edge.End)), null, new Grip(map.Map(new(100, 5)), map.Map(new(170, 5))), null, new Layout(DrilledIn.Profile, null, null), [])
        {
            Sheath = new SheathPlan(kind),
        };
        return WorkUp.Of(plan, TestShop.Own, null);
    }
}
