namespace Tangwright.Foundation;

/// <summary>An arc of a circle or of an ellipse: p = Centre + AxisU cos θ + AxisV sin θ, θ from StartAngle through Sweep. A circle when the two axes are square to each other and equally long. The end points given win over the angles: At(0) and At(1) are exact.</summary>
public sealed class Arc : Segment
{
    private Arc(Point start, Point end, Point centre, Point axisU, Point axisV, double startAngle, double sweep)
        : base(start, end)
    {
        Centre = centre;
        AxisU = axisU;
        AxisV = axisV;
        StartAngle = startAngle;
        Sweep = sweep;
        var (ru, rv) = (axisU.Length, axisV.Length);
        IsCircle = Math.Abs(ru - rv) <= 1e-9 * ru && Math.Abs(axisU.Dot(axisV)) <= 1e-9 * ru * ru;
        Bounds = FindBounds();
    }

    /// <summary>Centre.</summary>
    public Point Centre { get; }

    /// <summary>Half axis at θ = 0.</summary>
    public Point AxisU { get; }

    /// <summary>Half axis at θ = 90°.</summary>
    public Point AxisV { get; }

    /// <summary>θ at the start, radians.</summary>
    public double StartAngle { get; }

    /// <summary>Change of θ from start to end, radians; positive from AxisU towards AxisV; at most a full turn.</summary>
    public double Sweep { get; }

    /// <summary>Whether it is part of a circle.</summary>
    public bool IsCircle { get; }

    /// <summary>Radius of the circle, mm; for an ellipse the longer half axis as given.</summary>
    public double Radius => AxisU.Length;

    /// <summary>Whether it runs counter-clockwise in the plane.</summary>
    public bool IsCounterClockwise => AxisU.Cross(AxisV) * Sweep > 0;

    /// <inheritdoc/>
    public override Box Bounds { get; }

    /// <inheritdoc/>
    public override double Length
    {
        get
        {
            if (IsCircle) return AxisU.Length * Math.Abs(Sweep);
            var panels = Math.Max(4, (int)Math.Ceiling(Math.Abs(Sweep) / 0.2));
            var sum = 0.0;
            for (var i = 0; i < panels; i++) sum += Gauss.Over((double)i / panels, (double)(i + 1) / panels, t => Derivative(t).Length);
            return sum;
        }
    }

    /// <summary>A circular arc about a centre, radians; positive sweep is counter-clockwise.</summary>
    public static Arc OfCircle(Point centre, double radius, double startAngle, double sweep)
    {
        var start = centre + (Point.Direction(startAngle) * radius);
        var end = Math.Abs(Math.Abs(sweep) - (2 * Math.PI)) < 1e-12 ? start : centre + (Point.Direction(startAngle + sweep) * radius);
        return new Arc(start, end, centre, new Point(radius, 0), new Point(0, radius), startAngle, sweep);
    }

    /// <summary>An arc of an ellipse with given half axes, radians.</summary>
    public static Arc OfEllipse(Point centre, Point axisU, Point axisV, double startAngle, double sweep)
    {
        Point On(double a) => centre + (axisU * Math.Cos(a)) + (axisV * Math.Sin(a));
        var start = On(startAngle);
        var end = Math.Abs(Math.Abs(sweep) - (2 * Math.PI)) < 1e-12 ? start : On(startAngle + sweep);
        return new Arc(start, end, centre, axisU, axisV, startAngle, sweep);
    }

    /// <summary>An arc whose end points are already known and kept exactly; the angles must fit them.</summary>
    public static Arc Between(Point start, Point end, Point centre, Point axisU, Point axisV, double startAngle, double sweep)
        => new(start, end, centre, axisU, axisV, startAngle, sweep);

    /// <summary>A circular arc from start to end with a radius (taken as half the chord when too small), as in SVG path data read with y up.</summary>
    /// <param name="start">First point.</param>
    /// <param name="end">Last point, not the same.</param>
    /// <param name="radius">Radius, mm.</param>
    /// <param name="large">The longer way round.</param>
    /// <param name="counterClockwise">Sweep direction.</param>
    public static Arc Through(Point start, Point end, double radius, bool large, bool counterClockwise)
        => Through(start, end, new Point(radius, 0), new Point(0, radius), large, counterClockwise);

    /// <summary>An arc of an ellipse from start to end; half axes are scaled up evenly when they cannot reach (SVG 1.1, appendix F.6.5 and F.6.6).</summary>
    public static Arc Through(Point start, Point end, Point axisU, Point axisV, bool large, bool counterClockwise)
    {
        var det = axisU.Cross(axisV);
        if (det < 0)
        {
            axisV = -axisV;
            det = -det;
        }

        // into the frame in which the ellipse is the unit circle
        Point ToUnit(Point p) => new(p.Cross(axisV) / det, axisU.Cross(p) / det);
        var half = ToUnit((end - start) * 0.5);
        var reach = half.Length;
        if (reach > 1)
        {
            axisU *= reach;
            axisV *= reach;
            det *= reach * reach;
            half = half.Unit;
            reach = 1;
        }

        var away = Math.Sqrt(Math.Max(0, 1 - (reach * reach)));
        var side = large == counterClockwise ? -1.0 : 1.0;
        var toCentre = half + (half.Left.Unit * (away * side));
        var centre = start + (axisU * toCentre.X) + (axisV * toCentre.Y);
        var a = -toCentre;
        var b = (half * 2) - toCentre;
        var a0 = Math.Atan2(a.Y, a.X);
        var a1 = Math.Atan2(b.Y, b.X);
        var sweep = a1 - a0;
        if (counterClockwise && sweep <= 0) sweep += 2 * Math.PI;
        if (!counterClockwise && sweep >= 0) sweep -= 2 * Math.PI;
        return new Arc(start, end, centre, axisU, axisV, a0, sweep);
    }

    /// <summary>Angle θ at t, radians.</summary>
    public double AngleAt(double t) => StartAngle + (Sweep * t);

    /// <inheritdoc/>
    public override Point At(double t)
    {
        if (t <= 0) return Start;
        if (t >= 1) return End;
        var (s, c) = Math.SinCos(AngleAt(t));
        return new Point(Centre.X + (AxisU.X * c) + (AxisV.X * s), Centre.Y + (AxisU.Y * c) + (AxisV.Y * s));
    }

    /// <inheritdoc/>
    public override Point Derivative(double t)
    {
        var (s, c) = Math.SinCos(AngleAt(t));
        return new Point(Sweep * ((AxisV.X * c) - (AxisU.X * s)), Sweep * ((AxisV.Y * c) - (AxisU.Y * s)));
    }

    /// <inheritdoc/>
    public override Point SecondDerivative(double t)
    {
        var (s, c) = Math.SinCos(AngleAt(t));
        return ((AxisU * c) + (AxisV * s)) * (-Sweep * Sweep);
    }

    /// <inheritdoc/>
    public override Segment Reversed() => new Arc(End, Start, Centre, AxisU, AxisV, StartAngle + Sweep, -Sweep);

    /// <inheritdoc/>
    public override Segment Part(double t0, double t1)
        => new Arc(At(t0), At(t1), Centre, AxisU, AxisV, AngleAt(t0), Sweep * (t1 - t0));

    /// <inheritdoc/>
    public override Segment Transformed(Transform map)
    {
        if (IsCircle && map.KeepsCircles)
        {
            // keep the axes upright so that angles stay those of the plane
            var mirror = map.Determinant < 0;
            var r = map.MapStep(AxisU).Length;
            var centre = map.Map(Centre);
            var first = map.MapStep((AxisU * Math.Cos(StartAngle)) + (AxisV * Math.Sin(StartAngle)));
            var counterClockwise = IsCounterClockwise != mirror;
            return new Arc(map.Map(Start), map.Map(End), centre, new Point(r, 0), new Point(0, r), Math.Atan2(first.Y, first.X), Math.Abs(Sweep) * (counterClockwise ? 1 : -1));
        }

        return new Arc(map.Map(Start), map.Map(End), map.Map(Centre), map.MapStep(AxisU), map.MapStep(AxisV), StartAngle, Sweep);
    }

    private Box FindBounds()
    {
        var b = Box.Around(Start, End);
        foreach (var a in stackalloc[] { Math.Atan2(AxisV.X, AxisU.X), Math.Atan2(AxisV.Y, AxisU.Y) })
        {
            for (var k = -6; k <= 6; k++)
            {
                var t = (a + (k * Math.PI) - StartAngle) / Sweep;
                if (t is > 0 and < 1) b = b.With(At(t));
            }
        }

        return b;
    }
}
