using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Tells whether a closed loop is a circle, however it was drawn: arcs, polyline bulges, the four Béziers other programs write.</summary>
internal static class RoundLoop
{
    /// <summary>A loop this near a circle is one, mm.</summary>
    public const double WithinMm = 0.01;

    /// <summary>Four Béziers come no nearer to a circle than 2.7 parts in 10 000 of its radius (M. Goldapp, Approximation of circular arcs by cubic polynomials, 1991).</summary>
    private const double WithinShare = 3e-4;

    private const int LeastSidesOfPolygon = 24;

    /// <summary>Centre and radius, mm, or null.</summary>
    public static (Point Centre, double Radius)? Of(Path loop)
    {
        var box = loop.Bounds;
        if (Math.Abs(box.Width - box.Height) > 4 * (WithinMm + (WithinShare * box.Width))) return null;
        if (loop.Segments[0] is Arc { IsCircle: true } first && loop.Segments.All(s => s is Arc { IsCircle: true } a && a.Centre.To(first.Centre) <= 1e-4 && Math.Abs(a.Radius - first.Radius) <= 1e-4))
            return Math.Abs(loop.Segments.Sum(s => ((Arc)s).Sweep)) > 6.28 ? (first.Centre, first.Radius) : null;
        if (loop.Segments.Length < LeastSidesOfPolygon && loop.Segments.Any(s => s is Line l && l.Length > WithinMm)) return null;
        var m = Moments.Of(loop);
        if (m.AreaMm2 == 0) return null;
        var c = m.Centroid;
        var r = loop.Segments.Average(s => s.Start.To(c));
        var within = Math.Max(WithinMm, WithinShare * r);
        foreach (var s in loop.Segments)
        {
            for (var i = 0; i < 8; i++)
            {
                if (Math.Abs(s.At(i / 8.0).To(c) - r) > within) return null;
            }
        }

        // a loop run twice has twice the area
        return Math.Abs(Math.Abs(m.AreaMm2) - (Math.PI * r * r)) < 8 * within * r ? (c, r) : null;
    }
}
