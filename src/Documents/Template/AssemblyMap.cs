using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A small picture of how the sheets go together, this one heavy.</summary>
internal static class AssemblyMap
{
    private const string Words = "how the sheets go together";

    /// <summary>Size of the picture for a template, mm, at a share of its full size.</summary>
    public static (double Width, double Height) Size(TilePlan plan, double share)
    {
        var f = Scale(plan) * share;
        return (Math.Max(All(plan).Width * f, Lettering.Width(Words, 2.5)), (All(plan).Height * f) + 5);
    }

    /// <summary>Draws it in a box of that size.</summary>
    public static IEnumerable<Mark> Draw(Box box, double share, TilePlan plan, Tile tile, ImmutableArray<Path> outlines)
    {
        var map = Transform.Scale(Scale(plan) * share, Scale(plan) * share).Then(Transform.Shift(new Point(box.MinX, box.MinY)));
        Path Frame(Tile t)
        {
            var b = plan.OnAssembled(t);
            return Path.Polygon(new(b.MinX, b.MinY), new(b.MaxX, b.MinY), new(b.MaxX, b.MaxY), new(b.MinX, b.MaxY)).Transformed(map);
        }

        yield return new FillMark([Frame(tile)], Ink.Pale);
        foreach (var outline in outlines) yield return new StrokeMark(outline.Transformed(plan.PlanToAssembled).Transformed(map), new Pen(0.18));
        foreach (var t in plan.Tiles)
        {
            yield return new StrokeMark(Frame(t), new Pen(t == tile ? 0.5 : 0.18));
            var b = plan.OnAssembled(t);
            yield return new TextMark(t.Number.ToString(), map.Map(new Point(b.Centre.X, b.MinY)) + new Point(0, 1.2), 2.5, Bold: t == tile, Anchor: TextAnchor.Middle);
        }

        yield return new TextMark(Words, new Point(box.MinX, box.MaxY - 3.2), 2.5);
    }

    private static Box All(TilePlan plan) => plan.Tiles.Aggregate(Box.Nothing, (b, t) => b.With(plan.OnAssembled(t)));

    private static double Scale(TilePlan plan) => Math.Min(0.12, Math.Min(62 / All(plan).Width, 50 / All(plan).Height));
}
