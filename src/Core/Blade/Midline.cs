using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The medial curve of the grip: the points as far from one long side as from the other, to about 1e-9 mm. mm.</summary>
/// <remarks>
/// The outline is parted into two sides where the line through the grip's ends leaves the steel at the front and at the rear. A station is a place along that line; the midline there lies on the
/// cross line square to it, where the distances to the two sides are equal. On a straight taper it is the bisector, on a bow the arc of mean radius.
/// </remarks>
[Formula("Midline of the grip: points as far from one side as from the other, mm", "medial-axis-blum", "Grips whose ends lie in the steel; to about 1e-9 mm")]
public sealed class Midline
{
    private readonly Path _left, _right;
    private readonly RayHits _outline;
    private readonly RayHit[] _hits;
    private readonly Point _from, _along;
    private readonly double _far;

    private Midline(Path outline, Path left, Path right, Point from, Point along, double length)
    {
        (_left, _right, _from, _along, Length) = (left, right, from, along, length);
        _outline = new RayHits(outline.Segments);
        _hits = new RayHit[_outline.MostHits];
        _far = outline.Bounds.Width + outline.Bounds.Height;
    }

    /// <summary>Distance between the grip's two ends: the last station, mm.</summary>
    public double Length { get; }

    /// <summary>The midline of a grip in an outline that has its steel to the left; null when the ends of the grip are not in the steel or are the same.</summary>
    public static Midline? Of(Path outline, Grip grip)
    {
        var length = grip.From.To(grip.To);
        if (length < 1e-6 || !Inside.Of(outline, grip.From) || !Inside.Of(outline, grip.To)) return null;
        var along = (grip.To - grip.From).Unit;
        var rays = new RayHits(outline.Segments);
        var hits = new RayHit[rays.MostHits];
        var far = outline.Bounds.Width + outline.Bounds.Height;
        if (rays.Along(grip.From, -along, 1e-9, far, hits) == 0) return null;
        var front = new PathSpot(hits[0].Segment, hits[0].T);
        if (rays.Along(grip.To, along, 1e-9, far, hits) == 0) return null;
        var rear = new PathSpot(hits[0].Segment, hits[0].T);

        // counter-clockwise from the front the outline runs along the right of the way to the rear
        return new Midline(outline, outline.Between(rear, front), outline.Between(front, rear), grip.From, along, length);
    }

    /// <summary>The point of the midline at a station, mm along the line through the grip's ends.</summary>
    public Point At(double station)
    {
        var p = _from + (_along * station);
        var across = _along.Left;
        var n = _outline.Along(p, across, -_far, _far, _hits);

        // the stretch of steel nearest to the line through the grip's ends
        var (lo, hi, best) = (0.0, 0.0, double.PositiveInfinity);
        for (var i = 0; i + 1 < n; i++)
        {
            var (a, b) = (_hits[i], _hits[i + 1]);
            if (a.Side < 0 || b.Side > 0) continue;
            var off = Math.Max(0, Math.Max(a.Distance, -b.Distance));
            if (off >= best) continue;
            (lo, hi, best) = (a.Distance, b.Distance, off);
        }

        // on a straight grip the lead grows by two for each mm across: a few secant steps do, else the bracket is closed the sure way
        var (v0, f0) = (0.5 * (lo + hi), Lead(p + (across * (0.5 * (lo + hi)))));
        var v1 = v0 - (0.5 * f0);
        for (var k = 0; k < 8 && v1 > lo && v1 < hi; k++)
        {
            var f1 = Lead(p + (across * v1));
            if (Math.Abs(f1) < 1e-10 || f1 == f0) return p + (across * v1);
            (v0, f0, v1) = (v1, f1, v1 - (f1 * (v1 - v0) / (f1 - f0)));
        }

        return p + (across * Bracket.Root(v => Lead(p + (across * v)), lo, hi, 1e-10));
    }

    /// <summary>The station at which the midline is nearest to a point, within the grip.</summary>
    public double StationNear(Point p)
    {
        const int looks = 32;
        var best = Enumerable.Range(0, looks + 1).MinBy(i => At(Length * i / looks).To(p));
        var (lo, hi) = (Length * Math.Max(0, best - 1) / looks, Length * Math.Min(looks, best + 1) / looks);

        // where the step to the point is square to the midline
        double Behind(double s)
        {
            const double d = 1e-4;
            return (p - At(s)).Dot(At(s + d) - At(s - d));
        }

        return Behind(lo) <= 0 ? lo : Behind(hi) >= 0 ? hi : Bracket.Root(Behind, lo, hi, 1e-9);
    }

    /// <summary>Distances from a point to the left and to the right side, mm.</summary>
    public (double Left, double Right) ToSides(Point p) => (Nearest.Distance(_left, p), Nearest.Distance(_right, p));

    private double Lead(Point p)
    {
        var (left, right) = ToSides(p);
        return right - left;
    }
}
