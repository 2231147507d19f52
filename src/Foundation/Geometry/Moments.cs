namespace Tangwright.Foundation;

/// <summary>Area and moments of a plane figure about the origin, from its boundary alone. mm.</summary>
/// <remarks>
/// For f homogeneous of degree n, ∫f dA = 1/(n+2) ∮ f (x dy − y dx) (Green's theorem). Lines and arcs in closed form;
/// for a cubic Bézier the integrand is a polynomial of degree at most 11, which 6-point Gauss-Legendre integrates exactly.
/// Counter-clockwise loops count positive, clockwise negative. Error: rounding only, about 1e-13 relative.
/// </remarks>
/// <param name="AreaMm2">∫dA, mm².</param>
/// <param name="SxMm3">∫x dA, mm³.</param>
/// <param name="SyMm3">∫y dA, mm³.</param>
/// <param name="XxMm4">∫x² dA, mm⁴.</param>
/// <param name="XyMm4">∫xy dA, mm⁴.</param>
/// <param name="YyMm4">∫y² dA, mm⁴.</param>
[Formula("Area, first and second moments of a plane figure, mm²..mm⁴", "green-theorem", "Lines, arcs of circles and ellipses, cubic Béziers; rounding only, about 1e-13")]
public readonly record struct Moments(double AreaMm2, double SxMm3, double SyMm3, double XxMm4, double XyMm4, double YyMm4)
{
    /// <summary>Centre of the area; meaningless for a figure without area.</summary>
    public Point Centroid => new(SxMm3 / AreaMm2, SyMm3 / AreaMm2);

    /// <summary>Moments of a closed path.</summary>
    public static Moments Of(Path loop)
    {
        if (WholeCircle(loop) is { } disc)
        {
            var own = disc.AreaMm2 * Math.Abs(disc.AreaMm2) / (4 * Math.PI);
            return new Moments(disc.AreaMm2, 0, 0, own, 0, own).Shifted(disc.Centre);
        }

        // integrate about the middle of the box, then shift: keeps the rounding small for pieces far from the origin
        var o = loop.Bounds.Centre;
        var sum = default(Moments);
        foreach (var s in loop.Segments)
        {
            sum += s switch
            {
                Line l => OfLine(l.Start - o, l.End - o),
                Arc a => OfArc(a, o),
                Bezier b => OfBezier(b, o),
                _ => throw new InvalidOperationException("unknown segment"),
            };
        }

        return sum.Shifted(o);
    }

    /// <summary>Centre and area of a loop that is two arcs of one circle, once round, as a drilled hole is; null when it is not. Clockwise counts negative.</summary>
    /// <param name="loop">The loop.</param>
    public static (Point Centre, double AreaMm2)? WholeCircle(Path loop)
    {
        if (loop.Segments is not [Arc { IsCircle: true } a, Arc { IsCircle: true } b] || a.Centre != b.Centre || !a.Radius.Equals(b.Radius)) return null;
        var turn = (a.IsCounterClockwise ? 1 : -1) * Math.Abs(a.Sweep + b.Sweep);
        if (Math.Abs(Math.Abs(turn) - (2 * Math.PI)) > 1e-12 || a.IsCounterClockwise != b.IsCounterClockwise) return null;
        return (a.Centre, turn / 2 * a.Radius * a.Radius);
    }

    /// <summary>Moments of a piece: outer loop less holes.</summary>
    public static Moments Of(Region region)
    {
        var sum = default(Moments);
        foreach (var loop in region.Loops) sum += Of(loop);
        return sum;
    }

    /// <summary>The moments of the same figure moved by a step (parallel-axis theorem).</summary>
    public Moments Shifted(Point by) => new(
        AreaMm2,
        SxMm3 + (by.X * AreaMm2),
        SyMm3 + (by.Y * AreaMm2),
        XxMm4 + (2 * by.X * SxMm3) + (by.X * by.X * AreaMm2),
        XyMm4 + (by.X * SyMm3) + (by.Y * SxMm3) + (by.X * by.Y * AreaMm2),
        YyMm4 + (2 * by.Y * SyMm3) + (by.Y * by.Y * AreaMm2));

    /// <summary>Sum.</summary>
    public static Moments operator +(Moments a, Moments b) => new(
        a.AreaMm2 + b.AreaMm2, a.SxMm3 + b.SxMm3, a.SyMm3 + b.SyMm3, a.XxMm4 + b.XxMm4, a.XyMm4 + b.XyMm4, a.YyMm4 + b.YyMm4);

    /// <summary>Difference.</summary>
    public static Moments operator -(Moments a, Moments b) => a + (b * -1);

    /// <summary>Scaled, as by a thickness.</summary>
    public static Moments operator *(Moments a, double f) => new(
        a.AreaMm2 * f, a.SxMm3 * f, a.SyMm3 * f, a.XxMm4 * f, a.XyMm4 * f, a.YyMm4 * f);

    private static Moments OfLine(Point a, Point b)
    {
        var c = a.Cross(b);
        return new Moments(
            c / 2,
            c * (a.X + b.X) / 6,
            c * (a.Y + b.Y) / 6,
            c * ((a.X * a.X) + (a.X * b.X) + (b.X * b.X)) / 12,
            c * ((2 * a.X * a.Y) + (a.X * b.Y) + (b.X * a.Y) + (2 * b.X * b.Y)) / 24,
            c * ((a.Y * a.Y) + (a.Y * b.Y) + (b.Y * b.Y)) / 12);
    }

    private static Moments OfArc(Arc arc, Point origin)
    {
        // x dy − y dx along the arc is a trigonometric polynomial of first degree in θ, so f times it has degree 3 at most:
        // Gauss with 16 points on panels of a quarter turn or less leaves less than 1e-15 of it.
        var panels = Math.Max(1, (int)Math.Ceiling(Math.Abs(arc.Sweep) / (Math.PI / 2)));
        var sum = default(Moments);
        for (var i = 0; i < panels; i++)
        {
            var (t0, t1) = ((double)i / panels, (double)(i + 1) / panels);
            for (var k = 0; k < Gauss.Nodes16.Length; k++)
            {
                var t = (0.5 * (t0 + t1)) + (0.5 * (t1 - t0) * Gauss.Nodes16[k]);
                sum += Integrand(arc, t, origin) * (0.5 * (t1 - t0) * Gauss.Weights16[k]);
            }
        }

        // the end points given win over the angles: close the sliver between them and the arc's own ends
        var (s, e) = (OnArc(arc, arc.StartAngle) - origin, OnArc(arc, arc.StartAngle + arc.Sweep) - origin);
        return sum + OfLine(arc.Start - origin, s) + OfLine(e, arc.End - origin);
    }

    private static Point OnArc(Arc arc, double angle) => arc.Centre + (arc.AxisU * Math.Cos(angle)) + (arc.AxisV * Math.Sin(angle));

    private static Moments OfBezier(Bezier b, Point origin)
    {
        var sum = default(Moments);
        for (var k = 0; k < Gauss.Nodes6.Length; k++) sum += Integrand(b, 0.5 + (0.5 * Gauss.Nodes6[k]), origin) * (0.5 * Gauss.Weights6[k]);
        return sum;
    }

    private static Moments Integrand(Segment s, double t, Point origin)
    {
        var p = s is Arc arc ? OnArc(arc, arc.AngleAt(t)) - origin : s.At(t) - origin;
        var w = p.Cross(s.Derivative(t));
        return new Moments(w / 2, w * p.X / 3, w * p.Y / 3, w * p.X * p.X / 4, w * p.X * p.Y / 4, w * p.Y * p.Y / 4);
    }
}
