using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>What goes on one sheet, or one shape over several.</summary>
/// <param name="Shapes">The shapes where they lie, one beside the other.</param>
/// <param name="Plan">The sheets.</param>
internal sealed record TrueScaleGroup(ImmutableArray<TrueScaleShape> Shapes, TilePlan Plan)
{
    /// <summary>Closed lines up to this size are holes and the like, which joins and words keep off, mm.</summary>
    private const double SmallMm = 25;

    /// <summary>Box around all shapes.</summary>
    public Box Bounds => Around(Shapes);

    /// <summary>Box around some shapes.</summary>
    public static Box Around(ImmutableArray<TrueScaleShape> shapes) => shapes.Aggregate(Box.Nothing, (b, s) => b.With(s.Bounds));

    /// <summary>Holes and the like.</summary>
    public static IEnumerable<Box> Holes(ImmutableArray<TrueScaleShape> shapes)
        => shapes.SelectMany(s => s.Strokes).Where(s => s.Path.Closed).Select(s => s.Path.Bounds).Where(b => Math.Max(b.Width, b.Height) <= SmallMm);

    /// <summary>The line over all sheets and the marks across their joins; null on a single sheet.</summary>
    /// <param name="marksBefore">Marks of other groups, whose letters are taken.</param>
    public (CheckLine Line, ImmutableArray<JoinMark> Marks)? Joins(int marksBefore)
    {
        if (Plan.Tiles.Length == 1) return null;
        var map = Plan.PlanToAssembled;
        ImmutableArray<Path> lines = [.. Shapes.SelectMany(s => s.Strokes).Select(s => s.Path.Transformed(map))];
        var check = CheckLine.Of(Plan, lines.Aggregate(Box.Nothing, (b, l) => b.With(l.Bounds)));
        return (check, JoinMarks.All(Plan, [.. lines.SelectMany(PathPoints.Spots), .. PathPoints.Spots(new Path([new Line(check.From, check.To)], closed: false))], marksBefore));
    }
}
