using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A piece in one of the ways it may lie, its box begun at the origin. mm.</summary>
internal sealed class TurnedPiece
{
    private TurnedPiece(int piece, PieceTurn turn, Point[] corners, InnerDisc[] discs, double hull, double across, int index)
    {
        (Piece, Turn, Index) = (piece, turn, index);
        Quarters = turn.Degrees is 0 or 90 or 180 or 270 ? (int)(turn.Degrees / 90) : null;
        (Xs, Ys) = ([.. corners.Select(c => c.X)], [.. corners.Select(c => c.Y)]);
        (Width, Height) = (Xs.Max(), Ys.Max());
        (DiscXs, DiscYs, DiscRs) = ([.. discs.Select(d => (float)d.X)], [.. discs.Select(d => (float)d.Y)], [.. discs.Select(d => (float)d.R)]);
        (RootHull, Across) = (Math.Sqrt(Math.Sqrt(hull)), across);
        Inner = new Point(discs[0].X, discs[0].Y);
    }

    /// <summary>Which kind of piece.</summary>
    public int Piece { get; }

    /// <summary>How it lies.</summary>
    public PieceTurn Turn { get; }

    /// <summary>Quarter turns, when it is turned by whole ones.</summary>
    public int? Quarters { get; }

    /// <summary>Its number among all pieces in all their ways.</summary>
    public int Index { get; }

    public double[] Xs { get; }

    public double[] Ys { get; }

    public double Width { get; }

    public double Height { get; }

    public float[] DiscXs { get; }

    public float[] DiscYs { get; }

    public float[] DiscRs { get; }

    /// <summary>Fourth root of the area of the hull.</summary>
    public double RootHull { get; }

    /// <summary>Greatest distance between two corners.</summary>
    public double Across { get; }

    /// <summary>A place well inside.</summary>
    public Point Inner { get; }

    /// <summary>Every way of every piece; same ways that come to the same place are kept once.</summary>
    public static ImmutableArray<ImmutableArray<TurnedPiece>> All(ImmutableArray<SheetPiece> pieces)
    {
        var index = 0;
        return
        [
            .. pieces.Select((p, i) =>
            {
                var corners = Clean(p.Corners);
                var (area, hull) = (PlanarKernels.Area(corners), ConvexHull.Of(corners));
                var discs = InnerDisc.Of(corners, area);
                var across = hull.SelectMany(a => hull.Select(b => a.To(b))).Max();
                return p.Turns.Distinct().Select(t => Turned(i, t, corners, discs, PlanarKernels.Area(hull.AsSpan()), across, index++)).ToImmutableArray();
            }),
        ];
    }

    /// <summary>Counter-clockwise, without corners that stand on one another or on a straight stretch.</summary>
    public static Point[] Clean(ImmutableArray<Point> corners)
    {
        var kept = corners.ToList();
        if (PlanarKernels.Area(corners.AsSpan()) < 0) kept.Reverse();
        var reach = Box.Around([.. kept]);
        var hair = 1e-9 * Math.Max(reach.Width, reach.Height);
        for (var i = 0; i < kept.Count && kept.Count > 3;)
        {
            var (a, b, c) = (kept[(i + kept.Count - 1) % kept.Count], kept[i], kept[(i + 1) % kept.Count]);
            var straight = a.To(b) <= hair || (PlanarKernels.PointToSegmentSquared(b.X, b.Y, a.X, a.Y, c.X, c.Y) <= hair * hair && (b - a).Dot(c - b) > 0);
            if (straight) kept.RemoveAt(i);
            else i++;
        }

        return [.. kept];
    }

    private static TurnedPiece Turned(int piece, PieceTurn turn, Point[] corners, InnerDisc[] discs, double hull, double across, int index)
    {
        var t = turn.Transform;
        var turned = corners.Select(t.Map).ToArray();
        if (turn.IsOver) Array.Reverse(turned);
        var box = Box.Around(turned);
        var shift = new Point(-box.MinX, -box.MinY);
        return new(piece, turn, [.. turned.Select(c => c + shift)], [.. discs.Select(d => t.Map(new Point(d.X, d.Y)) + shift).Zip(discs, (c, d) => new InnerDisc(c.X, c.Y, d.R))], hull, across, index);
    }
}
