using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A line or a centre to lay out.</summary>
/// <param name="Name">The hole, or which end of the piece.</param>
/// <param name="X">Distance from the first edge, mm.</param>
/// <param name="Y">Distance from the second edge, mm.</param>
/// <param name="IsPunched">Whether a centre is punched there.</param>
internal readonly record struct LayoutStation(string Name, double X, double Y, bool IsPunched)
{
    /// <summary>All of them along the work: the near ends of the piece, the holes as built where measured, the far ends.</summary>
    public static ImmutableArray<LayoutStation> Of(Results results)
    {
        var (b, bench) = (results.Plan.Outline.Bounds, results.Bench);
        var (p, q) = (bench.ToBench(new Point(b.MinX, b.MinY)), bench.ToBench(new Point(b.MaxX, b.MaxY)));
        return
        [
            new("piece, near", Math.Min(p.X, q.X), Math.Min(p.Y, q.Y), false),
            .. results.Holes.Select(h => (h.Name, At: bench.ToBench(h.MadeAt))).OrderBy(h => h.At.X).Select(h => new LayoutStation(h.Name, h.At.X, h.At.Y, true)),
            new("piece, far", Math.Max(p.X, q.X), Math.Max(p.Y, q.Y), false),
        ];
    }
}
