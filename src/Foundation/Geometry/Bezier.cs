namespace Tangwright.Foundation;

/// <summary>A cubic Bézier.</summary>
public sealed class Bezier : Segment
{
    /// <summary>From its four control points.</summary>
    public Bezier(Point start, Point control1, Point control2, Point end)
        : base(start, end)
    {
        Control1 = control1;
        Control2 = control2;
        Bounds = FindBounds();
    }

    /// <summary>Second control point.</summary>
    public Point Control1 { get; }

    /// <summary>Third control point.</summary>
    public Point Control2 { get; }

    /// <inheritdoc/>
    public override Box Bounds { get; }

    /// <inheritdoc/>
    public override double Length
    {
        get
        {
            double Speed(double t) => Derivative(t).Length;
            return Adaptive(0, 1, Gauss.Over(0, 1, Speed), 0);

            double Adaptive(double a, double b, double whole, int depth)
            {
                var m = 0.5 * (a + b);
                var left = Gauss.Over(a, m, Speed);
                var right = Gauss.Over(m, b, Speed);
                if (depth > 12 || Math.Abs(left + right - whole) <= 1e-12 * (left + right)) return left + right;
                return Adaptive(a, m, left, depth + 1) + Adaptive(m, b, right, depth + 1);
            }
        }
    }

    /// <summary>A quadratic Bézier raised to a cubic, exactly.</summary>
    public static Bezier OfQuadratic(Point start, Point control, Point end)
        => new(start, start.Toward(control, 2.0 / 3), end.Toward(control, 2.0 / 3), end);

    /// <inheritdoc/>
    public override Point At(double t)
    {
        if (t <= 0) return Start;
        if (t >= 1) return End;
        var u = 1 - t;
        var (a, b, c, d) = (u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t);
        return new Point(
            (a * Start.X) + (b * Control1.X) + (c * Control2.X) + (d * End.X),
            (a * Start.Y) + (b * Control1.Y) + (c * Control2.Y) + (d * End.Y));
    }

    /// <inheritdoc/>
    public override Point Derivative(double t)
    {
        var u = 1 - t;
        var (a, b, c) = (3 * u * u, 6 * u * t, 3 * t * t);
        return new Point(
            (a * (Control1.X - Start.X)) + (b * (Control2.X - Control1.X)) + (c * (End.X - Control2.X)),
            (a * (Control1.Y - Start.Y)) + (b * (Control2.Y - Control1.Y)) + (c * (End.Y - Control2.Y)));
    }

    /// <inheritdoc/>
    public override Point SecondDerivative(double t)
    {
        var (a, b) = (6 * (1 - t), 6 * t);
        return new Point(
            (a * (Control2.X - (2 * Control1.X) + Start.X)) + (b * (End.X - (2 * Control2.X) + Control1.X)),
            (a * (Control2.Y - (2 * Control1.Y) + Start.Y)) + (b * (End.Y - (2 * Control2.Y) + Control1.Y)));
    }

    /// <inheritdoc/>
    public override Segment Reversed() => new Bezier(End, Control2, Control1, Start);

    /// <inheritdoc/>
    public override Segment Part(double t0, double t1)
    {
        var (p, q) = (At(t0), At(t1));
        var third = (t1 - t0) / 3;
        return new Bezier(p, p + (Derivative(t0) * third), q - (Derivative(t1) * third), q);
    }

    /// <inheritdoc/>
    public override Segment Transformed(Transform map)
        => new Bezier(map.Map(Start), map.Map(Control1), map.Map(Control2), map.Map(End));

    private Box FindBounds()
    {
        var b = Box.Around(Start, End);
        if (b.Holds(Control1) && b.Holds(Control2)) return b;
        Span<double> roots = stackalloc double[4];
        var n = Turning(Start.X, Control1.X, Control2.X, End.X, roots);
        n += Turning(Start.Y, Control1.Y, Control2.Y, End.Y, roots[n..]);
        for (var i = 0; i < n; i++) b = b.With(At(roots[i]));
        return b;
    }

    private static int Turning(double p0, double p1, double p2, double p3, Span<double> t)
    {
        // derivative / 3 = a t² + 2 b t + c
        var a = p3 - (3 * p2) + (3 * p1) - p0;
        var b = p2 - (2 * p1) + p0;
        var c = p1 - p0;
        var n = 0;
        var disc = (b * b) - (a * c);
        if (disc < 0) return 0;
        var q = -(b + Math.CopySign(Math.Sqrt(disc), b));
        if (a != 0 && q / a is > 0 and < 1) t[n++] = q / a;
        if (q != 0 && c / q is > 0 and < 1) t[n++] = c / q;
        return n;
    }
}
