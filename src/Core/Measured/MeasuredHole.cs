using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A hole of one piece as it was measured.</summary>
/// <param name="Piece">Which piece: "guide", "7".</param>
/// <param name="Name">Name of the hole in the plan.</param>
/// <param name="At">Distances from the two edges, mm.</param>
/// <param name="Diameter">Diameter; null when only the centre was measured.</param>
/// <param name="Edges">The edges it was measured from; null: those the bench sheets measure from.</param>
/// <param name="Date">Day; null when not said.</param>
public sealed record MeasuredHole(string Piece, string Name, Point At, Length? Diameter, MeasuredEdges? Edges, DateOnly? Date)
{
    /// <summary>Centre in the plan's axes, mm.</summary>
    /// <param name="bench">The edges of the bench sheets.</param>
    public Point InPlan(BenchDatum bench)
    {
        var edges = Edges ?? new MeasuredEdges(bench.Corner, bench.AlongSign < 0, bench.AcrossSign < 0);
        return edges.InPlan(At);
    }
}

/// <summary>Two edges square to one another that holes were measured from.</summary>
/// <param name="Corner">Where they meet, plan's axes, mm.</param>
/// <param name="IsRight">Measured from the right end to the left.</param>
/// <param name="IsUpper">Measured from the upper edge down.</param>
public sealed record MeasuredEdges(Point Corner, bool IsRight, bool IsUpper)
{
    /// <summary>The axes of the plan themselves.</summary>
    public static MeasuredEdges OfPlan { get; } = new(default, false, false);

    /// <summary>The outermost places of the profiled piece, on the sides that the bench sheets measure from.</summary>
    public static MeasuredEdges OfProfile(Path outline, BenchDatum bench)
    {
        var box = outline.Bounds;
        var (right, upper) = (bench.AlongSign < 0, bench.AcrossSign < 0);
        return new(new Point(right ? box.MaxX : box.MinX, upper ? box.MaxY : box.MinY), right, upper);
    }

    /// <summary>A place in the plan's axes from its distances to the edges, mm.</summary>
    public Point InPlan(Point at) => new(Corner.X + (IsRight ? -at.X : at.X), Corner.Y + (IsUpper ? -at.Y : at.Y));

    /// <summary>Distances to the edges of a place in the plan's axes, mm.</summary>
    public Point FromEdges(Point plan) => new((plan.X - Corner.X) * (IsRight ? -1 : 1), (plan.Y - Corner.Y) * (IsUpper ? -1 : 1));
}
