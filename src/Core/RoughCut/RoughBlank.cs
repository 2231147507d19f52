using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The rectangle the piece is sawn from, and the corner its cuts are marked from.</summary>
/// <param name="Box">The rectangle, plan's axes, mm.</param>
/// <param name="FromRight">Whether lengths along it count from its right end.</param>
/// <param name="FromTop">Whether heights count from its upper edge.</param>
public sealed record RoughBlank(Box Box, bool FromRight, bool FromTop)
{
    /// <summary>The rectangle of a plan: what the bench sheets measure from; for a piece drilled when profiled, what the shop leaves around it.</summary>
    public static RoughBlank Of(Results r)
    {
        var box = r.Bench.StockBox;
        if (r.Bench.State == DrilledIn.Profile)
        {
            var (end, edge) = ((r.Plan.Layout.EndAllowance ?? r.Shop.EndAllowance).Mm, (r.Plan.Layout.EdgeMargin ?? r.Shop.EdgeMargin).Mm);
            var piece = r.Piece.Outer.Bounds;
            box = new Box(piece.MinX - end, piece.MinY - edge, piece.MaxX + end, piece.MaxY + edge);
        }

        return new RoughBlank(box, r.Bench.AlongSign < 0, r.Bench.AcrossSign < 0);
    }

    /// <summary>Its corners, counter-clockwise.</summary>
    public ImmutableArray<Point> Corners => [new(Box.MinX, Box.MinY), new(Box.MaxX, Box.MinY), new(Box.MaxX, Box.MaxY), new(Box.MinX, Box.MaxY)];

    /// <summary>A point of the plan from the corner, mm along and across.</summary>
    public Point From(Point p) => new(FromRight ? Box.MaxX - p.X : p.X - Box.MinX, FromTop ? Box.MaxY - p.Y : p.Y - Box.MinY);

    /// <summary>"left end".</summary>
    public string EndWords => FromRight ? "right end" : "left end";

    /// <summary>"lower edge".</summary>
    public string EdgeWords => FromTop ? "upper edge" : "lower edge";

    /// <summary>A point on its rim as a mark to be laid off with a rule.</summary>
    public RimMark Mark(Point p)
    {
        var (left, right, low, high) = (p.X - Box.MinX, Box.MaxX - p.X, p.Y - Box.MinY, Box.MaxY - p.Y);
        var at = From(p);
        var least = Math.Min(Math.Min(left, right), Math.Min(low, high));
        if (low <= least + 1e-9) return new RimMark("lower edge", EndWords, Length.OfMm(at.X), p);
        if (high <= least + 1e-9) return new RimMark("upper edge", EndWords, Length.OfMm(at.X), p);
        return left <= right ? new RimMark("left end", EdgeWords, Length.OfMm(at.Y), p) : new RimMark("right end", EdgeWords, Length.OfMm(at.Y), p);
    }
}

/// <summary>A mark on the rim of the blank.</summary>
/// <param name="On">Side it lies on: "upper edge", "right end".</param>
/// <param name="Measured">What it is measured from: "left end", "lower edge".</param>
/// <param name="Distance">How far from there.</param>
/// <param name="At">The place, plan's axes, mm.</param>
public sealed record RimMark(string On, string Measured, Length Distance, Point At);
