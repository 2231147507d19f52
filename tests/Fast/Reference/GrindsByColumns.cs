using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

// Volume, balance and second moments of whole blades of every grind, tapers among them, against a sum over fine columns. The law of thickness is written here once more, in the closed forms of a bench book
// (centre of the wheel from the edge: y = −R sin(a − δ), z = te/2 + R cos(a − δ), a the slope of the chord, sin δ = c/2R; the bulge from the other side), the nearest point of the edge is sought by brute force.
public class GrindsByColumns
{
    private const double Stock = 4, Te = 0.5;

    public enum Shape
    {
        Belly,
        Recurved,
        Teeth,
        Pierced,
    }

    private static (Path Outline, Point From, Point To, Path[] Holes) Of(Shape shape) => shape switch
    {
        Shape.Belly => (OddBlades.Belly, new(0, 20), new(200, 0), []),
        Shape.Recurved => (OddBlades.Recurved, new(0, 10), new(180, 0), []),
        Shape.Teeth => (OddBlades.SawToothed, new(0, 0), new(120, 0), []),
        _ => (OddBlades.Belly, new(0, 20), new(200, 0), [Path.Circle(new(120, 10), 4), Path.Circle(new(60, 18), 5), Path.Circle(new(180, 17), 3)]),
    };

    // one blade a row: shape, grind, height or 0 for a constant angle, radius of wheel or bulge or 0, angle, one side ground, sharpened, thickness at the tip, at the butt
    [Theory]
    [InlineData(Shape.Belly, Grind.Flat, 18, 0, 0, false, 0, 0, 0)]
    [InlineData(Shape.Belly, Grind.Flat, 18, 0, 0, true, 15, 0, 0)]
    [InlineData(Shape.Belly, Grind.Flat, 18, 0, 0, false, 15, 1.5, 2)]
    [InlineData(Shape.Belly, Grind.Flat, 60, 0, 0, false, 15, 1.5, 0)]
    [InlineData(Shape.Belly, Grind.Hollow, 18, 125, 0, false, 0, 0, 0)]
    [InlineData(Shape.Belly, Grind.Hollow, 18, 125, 0, false, 12, 2, 2.5)]
    [InlineData(Shape.Belly, Grind.Hollow, 24, 60, 0, false, 0, 0, 0)] // thinner than nothing behind the edge
    [InlineData(Shape.Belly, Grind.Hollow, 18, 100, 0, true, 20, 0, 2)]
    [InlineData(Shape.Belly, Grind.Convex, 18, 0, 0, false, 20, 0, 0)]
    [InlineData(Shape.Belly, Grind.Convex, 18, 150, 0, false, 0, 2, 1.5)]
    [InlineData(Shape.Belly, Grind.Convex, 18, 40, 0, false, 0, 0, 0)] // reaches the flat before its height
    [InlineData(Shape.Belly, Grind.Convex, 18, 0, 0, true, 0, 1.2, 0)]
    [InlineData(Shape.Belly, Grind.Flat, 0, 0, 2.2, false, 0, 0, 0)]
    [InlineData(Shape.Belly, Grind.Flat, 0, 0, 2.2, false, 15, 1.2, 0)] // runs into the spine and ends lower toward the tip
    [InlineData(Shape.Belly, Grind.Flat, 0, 0, 5, true, 25, 1.2, 2)]
    [InlineData(Shape.Pierced, Grind.Hollow, 18, 125, 0, false, 12, 1.5, 2)]
    [InlineData(Shape.Pierced, Grind.Flat, 0, 0, 4, false, 0, 1.5, 2)]
    [InlineData(Shape.Recurved, Grind.Flat, 30, 0, 0, false, 12, 2, 0)]
    [InlineData(Shape.Recurved, Grind.Hollow, 22, 125, 0, false, 0, 0, 0)]
    [InlineData(Shape.Recurved, Grind.Flat, 0, 0, 5, false, 15, 1.5, 0)]
    [InlineData(Shape.Teeth, Grind.Hollow, 15, 100, 0, false, 15, 2.5, 0)]
    [InlineData(Shape.Teeth, Grind.Convex, 15, 0, 0, false, 0, 0, 0)]
    [InlineData(Shape.Teeth, Grind.Flat, 0, 0, 7, false, 15, 1.5, 0)]
    public void Agrees(Shape shape, Grind grind, double height, double radius, double angle, bool oneSided, double sharpen, double atTip, double atButt)
    {
        var (outline, from, to, holes) = Of(shape);
        var piece = new Region(outline, [.. holes]);
        var box = outline.Bounds;
        var (tipFrom, tipTo, buttFrom, buttTo) = (box.MinX + (0.5 * box.Width), box.MinX + 6, box.MinX + (0.62 * box.Width), box.MaxX - 9);
        var plan = OddBlades.Blade(outline, from, to, height).Plan;
        plan = plan with
        {
            Stock = plan.Stock with { Thickness = Length.OfMm(Stock) },
            Bevel = plan.Bevel! with { Grind = grind, OneSided = oneSided, EdgeFinished = Length.OfMm(Te), SharpenPerSide = sharpen > 0 ? Angle.OfDegrees(sharpen) : null, Height = height > 0 ? Length.OfMm(height) : null, AnglePerSide = angle > 0 ? Angle.OfDegrees(angle) : null, Wheel = radius > 0 ? Length.OfMm(2 * radius) : null, Radius = radius > 0 ? Length.OfMm(radius) : null },
            DistalTaper = atTip > 0 ? new Taper(Length.OfMm(tipFrom), Length.OfMm(tipTo), Length.OfMm(atTip)) : null,
            TangTaper = atButt > 0 ? new Taper(Length.OfMm(buttFrom), Length.OfMm(buttTo), Length.OfMm(atButt)) : null,
        };
        var edge = EdgeSpan.Of(piece.Outer, from, to);
        var found = TaperedPlate.Of(piece, FaceThickness.Of(plan)) - BevelSolid.Removed(piece, edge, null, [GrindProfile.Finished(plan)], out var rays)[0];

        double Faces(double x)
        {
            var t = Stock;
            if (atTip > 0) t = Math.Min(t, atTip + ((Stock - atTip) * Math.Clamp((x - tipTo) / (tipFrom - tipTo), 0, 1)));
            if (atButt > 0) t = Math.Min(t, Stock + ((atButt - Stock) * Math.Clamp((x - buttFrom) / (buttTo - buttFrom), 0, 1)));
            return t;
        }

        var chopped = edge.Path.Segments.Select(s => (Segment: s, Points: Enumerable.Range(0, 201).Select(k => s.At(k / 200.0)).ToArray())).ToArray();

        Point Foot(Point q)
        {
            var (best, segment, near) = (double.PositiveInfinity, chopped[0].Segment, 0);
            foreach (var (s, points) in chopped)
            {
                for (var k = 0; k < points.Length; k++)
                {
                    var (dx, dy) = (points[k].X - q.X, points[k].Y - q.Y);
                    if ((dx * dx) + (dy * dy) < best) (best, segment, near) = ((dx * dx) + (dy * dy), s, k);
                }
            }

            var (lo, hi) = (Math.Max(0, (near - 1) / 200.0), Math.Min(1, (near + 1) / 200.0));
            for (var i = 0; i < 60; i++)
            {
                var (a, b) = (lo + ((hi - lo) / 3), hi - ((hi - lo) / 3));
                if (segment.At(a).To(q) < segment.At(b).To(q)) hi = b;
                else lo = a;
            }

            return segment.At(0.5 * (lo + hi));
        }

        double Thickness(Point q)
        {
            var foot = Foot(q);
            var d = foot.To(q);
            var (t, sides) = (Faces(q.X), oneSided ? 1 : 2);
            if (sharpen > 0) t = Math.Min(t, sides * d * Math.Tan(sharpen * Math.PI / 180));
            if (angle > 0) return Math.Min(t, Te + (sides * d * Math.Tan(angle * Math.PI / 180)));
            if (d >= height || d < 1e-12) return t;
            var rise = (Faces(foot.X + ((q.X - foot.X) * height / d)) - Te) / sides;
            var (chord, slope) = (Math.Sqrt((height * height) + (rise * rise)), Math.Atan2(rise, height));
            var r = radius > 0 ? radius : chord * chord / (2 * rise);
            var half = Math.Asin(chord / (2 * r));
            var face = grind switch
            {
                Grind.Hollow => (r * Math.Cos(slope - half)) - Math.Sqrt((r * r) - Math.Pow(d + (r * Math.Sin(slope - half)), 2)),
                Grind.Convex => Math.Sqrt((r * r) - Math.Pow(d - (r * Math.Sin(slope + half)), 2)) - (r * Math.Cos(slope + half)),
                _ => rise * d / height,
            };
            return Math.Max(0, Math.Min(t, Te + (sides * face)));
        }

        Moments Columns(double step) => FineColumns.Sum(piece, Thickness, null, above: true, step, tipFrom, tipTo, buttFrom, buttTo);
        var (coarse, best) = (Columns(1), Columns(0.6));
        var off = (found.AreaMm2 / best.AreaMm2) - 1;
        var (balance, size) = (found.Centroid.To(best.Centroid), new Point(box.Width, box.Height).Length);
        double Second(double a, double b) => Math.Abs(a - b) / (Math.Abs(best.XxMm4) + Math.Abs(best.YyMm4));
        var second = Math.Max(Second(found.XxMm4, best.XxMm4), Math.Max(Second(found.XyMm4, best.XyMm4), Second(found.YyMm4, best.YyMm4)));
        var says = $"volume {off:E1}, balance {balance / size:E1} of the length, second moments {second:E1}; columns among themselves {(coarse.AreaMm2 / best.AreaMm2) - 1:E1}; {rays} rays";
        TestContext.Current.TestOutputHelper?.WriteLine(says);
        Assert.True(Math.Abs(off) < 1e-6 && balance < 1e-6 * size && second < 2e-6, says);
    }
}
