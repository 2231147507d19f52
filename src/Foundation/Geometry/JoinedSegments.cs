namespace Tangwright.Foundation;

/// <summary>Two segments that follow one another made into one.</summary>
public static class JoinedSegments
{
    /// <summary>One segment from the start of the first to the end of the second: two arcs of one circle become one arc; with a Bézier among them a Bézier that keeps the directions at both ends; otherwise a line.</summary>
    public static Segment Of(Segment first, Segment second)
    {
        if (first is Arc { IsCircle: true } a && second is Arc { IsCircle: true } b && a.Centre.To(b.Centre) < 1e-4 && Math.Abs(a.Radius - b.Radius) < 1e-4 && a.IsCounterClockwise == b.IsCounterClockwise && Math.Abs(a.Sweep) + Math.Abs(b.Sweep) < 1.95 * Math.PI)
        {
            return Arc.Through(a.Start, b.End, a.Radius, Math.Abs(a.Sweep) + Math.Abs(b.Sweep) > Math.PI, a.IsCounterClockwise);
        }

        if (first is not Bezier && second is not Bezier) return new Line(first.Start, second.End);

        // a Bézier's end speed is three times the way to its control point; the joined one runs over both lengths
        var whole = first.Length + second.Length;
        return new Bezier(
            first.Start,
            first.Start + (first.Derivative(0) * (whole / first.Length / 3)),
            second.End - (second.Derivative(1) * (whole / second.Length / 3)),
            second.End);
    }
}
