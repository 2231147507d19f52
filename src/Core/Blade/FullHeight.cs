using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Height of a bevel that runs to the spine, along a ray from the sharpened part: to the first exit through the outline, half of it when that is again through the sharpened part. mm.</summary>
internal sealed class FullHeight(Region piece, EdgeSpan edge, RayHits boundary)
{
    private readonly RayHit[] _hits = new RayHit[boundary.MostHits];
    private readonly int _outerCount = piece.Outer.Segments.Length;
    private readonly double _far = new Point(piece.Outer.Bounds.Width, piece.Outer.Bounds.Height).Length * 1.001;

    /// <summary>The height; 0 when the ray does not start in steel.</summary>
    /// <param name="p">Base point on the sharpened part.</param>
    /// <param name="u">Direction, length 1.</param>
    /// <param name="halved">Whether two bevels meet half way.</param>
    public double Along(Point p, Point u, out bool halved)
    {
        halved = false;
        var n = boundary.Along(p, u, 1e-7, _far, _hits);
        for (var i = 0; i < n; i++)
        {
            var hit = _hits[i];
            if (hit.Segment >= _outerCount || hit.Side == 0) continue;
            if (hit.Side > 0) return 0;
            halved = edge.Holds(hit.Segment, hit.T);
            return halved ? 0.5 * hit.Distance : hit.Distance;
        }

        return 0;
    }
}
