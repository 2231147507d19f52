using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Volume and moments of the piece between its flat faces, before any bevel: ∬ T(x) xⁱ yʲ dA over the piece, about the origin, mm³..mm⁵.</summary>
/// <remarks>
/// Green's theorem with T a function of x alone: ∬ T xⁱ yʲ dA = −∮ T xⁱ y^(j+1) / (j+1) dx, all loops. The loops are cut where they pass a kink of T, so that along each part of a line or Bézier the integrand is a polynomial
/// (degree 14 at most, exact by 16 Gauss points), along an arc of a quarter turn or less a trigonometric one (rounding only).
/// A whole circle under faces of even slope m, T in its middle: volume A T, ∫ T x = m A r² / 4 about the middle, the second moments those of the disc times T.
/// </remarks>
[Formula("Volume and moments of a plate of thickness T(x), mm³..mm⁵", "green-theorem", "T straight between kinks; lines, arcs, cubic Béziers; rounding only, about 1e-12")]
public static class TaperedPlate
{
    /// <summary>Volume and moments.</summary>
    /// <param name="piece">The flat piece.</param>
    /// <param name="faces">Thickness of its faces.</param>
    public static Moments Of(Region piece, FaceThickness faces)
    {
        if (faces.IsEven) return Moments.Of(piece) * faces.StockMm;
        var o = piece.Outer.Bounds.Centre;
        var sum = default(Moments);
        Span<double> cuts = stackalloc double[32];
        var hits = new RayHit[3];
        foreach (var loop in piece.Loops)
        {
            if (Disc(loop, faces) is { } disc)
            {
                sum += disc.Shifted(-o);
                continue;
            }

            foreach (var s in loop.Segments)
            {
                var n = Cuts(s, faces, hits, cuts);
                var from = 0.0;
                for (var i = 0; i <= n; i++)
                {
                    var to = i < n ? cuts[i] : 1;
                    if (to > from) sum += Part(s, from, to, faces, o);
                    from = to;
                }
            }
        }

        return sum.Shifted(o);
    }

    // a drilled hole with no kink of the faces over it
    private static Moments? Disc(Path loop, FaceThickness faces)
    {
        if (Moments.WholeCircle(loop) is not var (c, area)) return null;
        var r = Math.Sqrt(Math.Abs(area) / Math.PI);
        foreach (var x in faces.KinksMm) if (Math.Abs(x - c.X) < r) return null;
        var (t, slope, own) = (faces.At(c.X), (faces.At(c.X + (0.5 * r)) - faces.At(c.X - (0.5 * r))) / r, area * r * r / 4);
        return new Moments(area * t, slope * own, 0, own * t, 0, own * t).Shifted(c);
    }

    // parameters at which a segment passes a kink of the thickness, ascending
    private static int Cuts(Segment s, FaceThickness faces, RayHit[] hits, Span<double> cuts)
    {
        var n = 0;
        var box = s.Bounds;
        foreach (var x in faces.KinksMm)
        {
            if (!(x > box.MinX && x < box.MaxX)) continue;
            if (s is Line l)
            {
                Put((x - l.Start.X) / (l.End.X - l.Start.X), cuts, ref n);
                continue;
            }

            var count = new RayHits([s]).Along(new Point(x, box.MinY), new Point(0, 1), -1e-9, box.Height + 1e-9, hits);
            for (var i = 0; i < count; i++) Put(hits[i].T, cuts, ref n);
        }

        return n;
    }

    private static void Put(double t, Span<double> cuts, ref int n)
    {
        if (n == cuts.Length) return;
        var i = n++;
        for (; i > 0 && cuts[i - 1] > t; i--) cuts[i] = cuts[i - 1];
        cuts[i] = t;
    }

    private static Moments Part(Segment s, double from, double to, FaceThickness faces, Point origin)
    {
        var panels = s is Arc arc ? Math.Max(1, (int)Math.Ceiling(Math.Abs(arc.Sweep) * (to - from) / (Math.PI / 2))) : 1;
        var nodes = s is Line ? Gauss.Nodes3 : Gauss.Nodes16;
        var weights = s is Line ? Gauss.Weights3 : Gauss.Weights16;
        double a = 0, sx = 0, sy = 0, xx = 0, xy = 0, yy = 0;
        for (var i = 0; i < panels; i++)
        {
            var (mid, half) = (from + ((to - from) * (i + 0.5) / panels), 0.5 * (to - from) / panels);
            for (var k = 0; k < nodes.Length; k++)
            {
                var t = mid + (half * nodes[k]);
                var p = s.At(t);
                var w = -half * weights[k] * faces.At(p.X) * s.Derivative(t).X;
                var (x, y) = (p.X - origin.X, p.Y - origin.Y);
                a += w * y;
                sx += w * x * y;
                sy += w * y * y / 2;
                xx += w * x * x * y;
                xy += w * x * y * y / 2;
                yy += w * y * y * y / 3;
            }
        }

        return new Moments(a, sx, sy, xx, xy, yy);
    }
}
