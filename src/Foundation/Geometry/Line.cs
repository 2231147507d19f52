namespace Tangwright.Foundation;

/// <summary>A straight segment.</summary>
public sealed class Line(Point start, Point end) : Segment(start, end)
{
    /// <inheritdoc/>
    public override Box Bounds => Box.Around(Start, End);

    /// <inheritdoc/>
    public override double Length => Start.To(End);

    /// <inheritdoc/>
    public override Point At(double t) => t <= 0 ? Start : t >= 1 ? End : Start.Toward(End, t);

    /// <inheritdoc/>
    public override Point Derivative(double t) => End - Start;

    /// <inheritdoc/>
    public override Point SecondDerivative(double t) => default;

    /// <inheritdoc/>
    public override Segment Reversed() => new Line(End, Start);

    /// <inheritdoc/>
    public override Segment Part(double t0, double t1) => new Line(At(t0), At(t1));

    /// <inheritdoc/>
    public override Segment Transformed(Transform map) => new Line(map.Map(Start), map.Map(End));
}
