namespace Tangwright.Foundation;

/// <summary>A point or a step in the plane, mm, x along the piece, y up.</summary>
/// <param name="X">mm.</param>
/// <param name="Y">mm.</param>
public readonly record struct Point(double X, double Y)
{
    /// <summary>Length of the step, mm.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The step turned a quarter turn counter-clockwise: the left of a direction.</summary>
    public Point Left => new(-Y, X);

    /// <summary>The step scaled to length 1; a zero step stays zero.</summary>
    public Point Unit
    {
        get
        {
            var l = Length;
            return l > 0 ? new Point(X / l, Y / l) : default;
        }
    }

    /// <summary>A step of length 1 at an angle from x towards y, radians.</summary>
    public static Point Direction(double angle) => new(Math.Cos(angle), Math.Sin(angle));

    /// <summary>Scalar product.</summary>
    public double Dot(Point other) => (X * other.X) + (Y * other.Y);

    /// <summary>Cross product, positive when <paramref name="other"/> lies to the left.</summary>
    public double Cross(Point other) => (X * other.Y) - (Y * other.X);

    /// <summary>Distance to another point, mm.</summary>
    public double To(Point other) => (this - other).Length;

    /// <summary>The point a share of the way to another.</summary>
    public Point Toward(Point other, double share) => new(X + ((other.X - X) * share), Y + ((other.Y - Y) * share));

    /// <summary>Sum.</summary>
    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference.</summary>
    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Turned about.</summary>
    public static Point operator -(Point a) => new(-a.X, -a.Y);

    /// <summary>Scaled.</summary>
    public static Point operator *(Point a, double f) => new(a.X * f, a.Y * f);

    /// <summary>Scaled.</summary>
    public static Point operator *(double f, Point a) => new(a.X * f, a.Y * f);

    /// <inheritdoc/>
    public override string ToString() => $"({X}, {Y})";
}

/// <summary>An upright box, mm.</summary>
/// <param name="MinX">Left side.</param>
/// <param name="MinY">Lower side.</param>
/// <param name="MaxX">Right side.</param>
/// <param name="MaxY">Upper side.</param>
public readonly record struct Box(double MinX, double MinY, double MaxX, double MaxY)
{
    /// <summary>A box that holds nothing; joining it to another gives the other.</summary>
    public static Box Nothing => new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    /// <summary>Size along x, mm.</summary>
    public double Width => MaxX - MinX;

    /// <summary>Size along y, mm.</summary>
    public double Height => MaxY - MinY;

    /// <summary>The middle.</summary>
    public Point Centre => new(0.5 * (MinX + MaxX), 0.5 * (MinY + MaxY));

    /// <summary>The box around some points.</summary>
    public static Box Around(params ReadOnlySpan<Point> points)
    {
        var b = Nothing;
        foreach (var p in points) b = b.With(p);
        return b;
    }

    /// <summary>The box grown to hold a point.</summary>
    public Box With(Point p) => new(Math.Min(MinX, p.X), Math.Min(MinY, p.Y), Math.Max(MaxX, p.X), Math.Max(MaxY, p.Y));

    /// <summary>The box around both.</summary>
    public Box With(Box b) => new(Math.Min(MinX, b.MinX), Math.Min(MinY, b.MinY), Math.Max(MaxX, b.MaxX), Math.Max(MaxY, b.MaxY));

    /// <summary>The box grown by a margin on all sides, mm.</summary>
    public Box Grown(double margin) => new(MinX - margin, MinY - margin, MaxX + margin, MaxY + margin);

    /// <summary>Whether two boxes share a point.</summary>
    public bool Touches(Box b) => MinX <= b.MaxX && b.MinX <= MaxX && MinY <= b.MaxY && b.MinY <= MaxY;

    /// <summary>Whether a point lies in the box.</summary>
    public bool Holds(Point p) => p.X >= MinX && p.X <= MaxX && p.Y >= MinY && p.Y <= MaxY;

    /// <summary>Least distance from a point to the box, mm; 0 inside.</summary>
    public double DistanceTo(Point p)
    {
        var dx = Math.Max(0, Math.Max(MinX - p.X, p.X - MaxX));
        var dy = Math.Max(0, Math.Max(MinY - p.Y, p.Y - MaxY));
        return Math.Sqrt((dx * dx) + (dy * dy));
    }
}

/// <summary>An affine map of the plane: x' = A x + B y + Dx, y' = C x + D y + Dy.</summary>
public readonly record struct Transform(double A, double B, double C, double D, double Dx, double Dy)
{
    /// <summary>Leaves everything where it is.</summary>
    public static Transform None => new(1, 0, 0, 1, 0, 0);

    /// <summary>Area ratio, negative when the map mirrors.</summary>
    public double Determinant => (A * D) - (B * C);

    /// <summary>Whether lengths change alike in all directions (turn, shift, mirror, even scale), so that a circle stays one.</summary>
    public bool KeepsCircles
    {
        get
        {
            var size = (A * A) + (B * B) + (C * C) + (D * D);
            return Math.Abs((A * A) + (C * C) - ((B * B) + (D * D))) <= 1e-12 * size && Math.Abs((A * B) + (C * D)) <= 1e-12 * size;
        }
    }

    /// <summary>Shifts by a step.</summary>
    public static Transform Shift(Point by) => new(1, 0, 0, 1, by.X, by.Y);

    /// <summary>Turns about the origin, radians from x towards y.</summary>
    public static Transform Turn(double angle)
    {
        var (s, c) = Math.SinCos(angle);
        return new(c, -s, s, c, 0, 0);
    }

    /// <summary>Turns a quarter counter-clockwise about the origin, exactly.</summary>
    public static Transform QuarterTurn => new(0, -1, 1, 0, 0, 0);

    /// <summary>Scales about the origin.</summary>
    public static Transform Scale(double x, double y) => new(x, 0, 0, y, 0, 0);

    /// <summary>Where a point goes.</summary>
    public Point Map(Point p) => new((A * p.X) + (B * p.Y) + Dx, (C * p.X) + (D * p.Y) + Dy);

    /// <summary>Where a step goes (no shift).</summary>
    public Point MapStep(Point p) => new((A * p.X) + (B * p.Y), (C * p.X) + (D * p.Y));

    /// <summary>This map first, then <paramref name="next"/>.</summary>
    public Transform Then(Transform next) => new(
        (next.A * A) + (next.B * C),
        (next.A * B) + (next.B * D),
        (next.C * A) + (next.D * C),
        (next.C * B) + (next.D * D),
        (next.A * Dx) + (next.B * Dy) + next.Dx,
        (next.C * Dx) + (next.D * Dy) + next.Dy);
}
