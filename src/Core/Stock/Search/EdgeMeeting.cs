namespace Tangwright.Core;

/// <summary>The shifts at which two edges cross: a parallelogram, kept as two bands.</summary>
internal readonly struct EdgeMeeting
{
    private readonly double _nx1;
    private readonly double _ny1;
    private readonly double _c1;
    private readonly double _w1;
    private readonly double _nx2;
    private readonly double _ny2;
    private readonly double _c2;
    private readonly double _w2;

    /// <summary>Of an edge of the first piece and an edge of the second, not parallel.</summary>
    public EdgeMeeting(double ax, double ay, double ex, double ey, double bx, double by, double fx, double fy, double hair)
    {
        var (le, lf) = (Math.Sqrt((ex * ex) + (ey * ey)), Math.Sqrt((fx * fx) + (fy * fy)));
        var (ox, oy) = (ax - bx + (0.5 * (ex - fx)), ay - by + (0.5 * (ey - fy)));
        (_nx1, _ny1) = (-ey / le, ex / le);
        (_c1, _w1) = ((_nx1 * ox) + (_ny1 * oy), (0.5 * Math.Abs((_nx1 * fx) + (_ny1 * fy))) + hair);
        (_nx2, _ny2) = (-fy / lf, fx / lf);
        (_c2, _w2) = ((_nx2 * ox) + (_ny2 * oy), (0.5 * Math.Abs((_nx2 * ex) + (_ny2 * ey))) + hair);
    }

    /// <summary>Whether they cross at a shift.</summary>
    public bool Holds(double dx, double dy) => Math.Abs((_nx1 * dx) + (_ny1 * dy) - _c1) <= _w1 && Math.Abs((_nx2 * dx) + (_ny2 * dy) - _c2) <= _w2;
}
