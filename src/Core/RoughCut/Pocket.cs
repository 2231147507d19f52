using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A hollow side of the piece: what no through cut reaches.</summary>
/// <param name="LidFrom">Where its lid begins, on the outline, the piece to the left of the lid.</param>
/// <param name="LidTo">Where its lid ends.</param>
/// <param name="Chain">The outline between, lid's ends included, as chords.</param>
/// <param name="AreaMm2">Area between lid and outline, mm².</param>
/// <param name="DepthMm">Greatest depth below the lid, mm.</param>
public sealed record Pocket(Point LidFrom, Point LidTo, ImmutableArray<Point> Chain, double AreaMm2, double DepthMm)
{
    /// <summary>Smaller pockets are not worth a line.</summary>
    private const double LeastAreaMm2 = 30;

    /// <summary>The pockets of an outline, largest first.</summary>
    /// <param name="outline">Closed.</param>
    /// <param name="hull">Its hull.</param>
    public static ImmutableArray<Pocket> Of(Path outline, GrownHull hull)
    {
        var ring = Chords.Of(Moments.Of(outline).AreaMm2 < 0 ? outline.Reversed() : outline, GrownHull.ChordMm);
        var corners = new HashSet<Point>(hull.Corners);
        var start = Enumerable.Range(0, ring.Length).FirstOrDefault(i => corners.Contains(ring[i]), -1);
        if (start < 0) return [];
        var pockets = new List<Pocket>();
        var chain = new List<Point> { ring[start] };
        for (var i = 1; i <= ring.Length; i++)
        {
            var p = ring[(start + i) % ring.Length];
            chain.Add(p);
            if (!corners.Contains(p)) continue;
            if (chain.Count > 2 && Made(chain) is { AreaMm2: >= LeastAreaMm2 } pocket) pockets.Add(pocket);
            chain = [p];
        }

        return [.. pockets.OrderByDescending(p => p.AreaMm2)];
    }

    private static Pocket Made(List<Point> chain)
    {
        var (a, b) = (chain[0], chain[^1]);
        var inward = (b - a).Unit.Left;
        return new Pocket(a, b, [.. chain], ConvexClip.AreaMm2([.. chain]), chain.Max(p => inward.Dot(p - a)));
    }
}
