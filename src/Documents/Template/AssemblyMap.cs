using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A small picture of how the sheets go together, this one heavy.</summary>
internal static class AssemblyMap
{
    /// <summary>Size of the picture for a template, mm.</summary>
    public static (double Width, double Height) Size(TilePlan plan)
    {
        var f = Scale(plan);
        return (All(plan).Width * f, (All(plan).Height * f) + 5);
    }

    /// <summary>Draws it in a box of that size.</summary>
    public static IEnumerable<Mark> Draw(Box box, TilePlan plan, Tile tile, Path outline)
    {
        var map = Transform.Scale(Scale(plan), Scale(plan)).Then(Transform.Shift(new Point(box.MinX, box.MinY)));
        Path Frame(Tile t)
        {
            var b = plan.OnAssembled(t);
            return Path.Polygon(new(b.MinX, b.MinY), new(b.MaxX, b.MinY), new(b.MaxX, b.MaxY), new(b.MinX, b.MaxY)).Transformed(map);
        }

        yield return new FillMark([Frame(tile)], Ink.Pale);
        yield return new StrokeMark(outline.Transformed(plan.PlanToAssembled).Transformed(map), new Pen(0.18));
        foreach (var t in plan.Tiles)
        {
            yield return new StrokeMark(Frame(t), new Pen(t == tile ? 0.5 : 0.18));
            var b = plan.OnAssembled(t);
            yield return new TextMark(t.Number.ToString(), map.Map(new Point(b.Centre.X, b.MinY)) + new Point(0, 1.2), 2.5, Bold: t == tile, Anchor: TextAnchor.Middle);
        }

        yield return new TextMark("how the sheets go together", new Point(box.MinX, box.MaxY - 3.2), 2.5);
    }

    private static Box All(TilePlan plan) => plan.Tiles.Aggregate(Box.Nothing, (b, t) => b.With(plan.OnAssembled(t)));

    private static double Scale(TilePlan plan) => Math.Min(0.12, Math.Min(62 / All(plan).Width, 50 / All(plan).Height));
}
