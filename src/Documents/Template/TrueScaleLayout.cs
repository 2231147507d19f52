using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Lays shapes on few sheets: the largest first, in rows, each sheet filled as far as bars and strip still stand free; what is larger than a sheet is spread over several by itself.</summary>
internal sealed class TrueScaleLayout(TemplateOptions options, Func<bool, bool, double, ImmutableArray<TemplateStrip.Row>> strip)
{
    /// <summary>Smallest gap between shapes, mm.</summary>
    public const double GapMm = 6;

    /// <summary>Room kept on a roll for bars and strip, mm of its length.</summary>
    private const double RollRoomMm = 130;

    /// <summary>The sheets.</summary>
    /// <param name="shapes">What is to be laid.</param>
    /// <param name="tooLarge">Name of the shape that takes too many sheets; null when all could be laid.</param>
    public ImmutableArray<TrueScaleGroup> Of(ImmutableArray<TrueScaleShape> shapes, out string? tooLarge)
    {
        tooLarge = null;
        var groups = ImmutableArray.CreateBuilder<TrueScaleGroup>();
        var left = shapes.Select(s => s with { }).OrderByDescending(s => s.Bounds.Width * s.Bounds.Height).ToList();
        var number = 0;
        while (left.Count > 0)
        {
            var sheet = OneSheet(left);
            var taken = sheet?.Taken ?? left[..1];
            if ((sheet?.Group ?? Alone(left[0])) is not { } group)
            {
                tooLarge = left[0].Name;
                return [];
            }

            // numbered through, so that words at the joins name the right sheets
            groups.Add(group with { Plan = group.Plan with { Tiles = [.. group.Plan.Tiles.Select(t => t with { Number = t.Number + number })] } });
            number += group.Plan.Tiles.Length;
            left.RemoveAll(s => taken.Exists(t => ReferenceEquals(s, t)));
        }

        return groups.ToImmutable();
    }

    /// <summary>Draws one sheet of a group as far as it goes before its number is known.</summary>
    public static TrueScalePage Page(TemplateOptions options, TrueScaleGroup group, Tile tile, (CheckLine Line, ImmutableArray<JoinMark> Marks)? joins)
    {
        var page = new TrueScalePage(options, group.Plan, tile);
        foreach (var stroke in group.Shapes.SelectMany(s => s.Strokes)) page.Draw(stroke);
        foreach (var hole in TrueScaleGroup.Holes(group.Shapes)) page.KeepClear(hole.Centre, Math.Max(hole.Width, hole.Height) / 2);
        if (joins is var (line, marks)) page.DrawJoins(line, marks);
        foreach (var shape in group.Shapes)
        {
            if (shape.NameAt is { } at) page.Place(new PlanLabel(shape.Name, at, 0, 3.5));
            else if (shape.Name.Length > 0) page.PlaceInside(shape.Name, shape.Bounds);
            foreach (var label in shape.Labels) page.Place(label);
        }

        page.WordsAtJoins();
        return page;
    }

    /// <summary>As much as one sheet takes, the sheet lying or upright, the shapes lying or upright; null when the largest does not go on one sheet.</summary>
    private (TrueScaleGroup Group, List<TrueScaleShape> Taken)? OneSheet(List<TrueScaleShape> shapes)
    {
        (bool FeedIsLevel, bool Lying)[] ways = [(true, true), (true, false), (false, true), (false, false)];
        if (Best(ways.Select(w => OnOne(shapes, w.FeedIsLevel, w.Lying))) is { } all) return (all, shapes);
        (TrueScaleGroup Group, List<TrueScaleShape> Taken)? best = null;
        var bestArea = 0.0;
        foreach (var (feedIsLevel, lying) in ways)
        {
            TrueScaleGroup? group = null;
            var taken = new List<TrueScaleShape>();
            foreach (var shape in shapes)
            {
                if (OnOne([.. taken, shape], feedIsLevel, lying) is not { } larger) continue;
                group = larger;
                taken.Add(shape);
            }

            if (group is null || taken[0] != shapes[0]) continue;
            var area = taken.Sum(s => s.Bounds.Width * s.Bounds.Height);
            if (area > bestArea * (1 + 1e-9)) (best, bestArea) = ((group, taken), area);
        }

        return best;
    }

    /// <summary>The first, or of a roll the one that takes least of it.</summary>
    private TrueScaleGroup? Best(IEnumerable<TrueScaleGroup?> groups)
        => options.Paper.Key == "roll" ? groups.OfType<TrueScaleGroup>().MinBy(g => g.Plan.WidthMm * g.Plan.HeightMm) : groups.FirstOrDefault(g => g is not null);

    /// <summary>The shapes on one sheet; null when they take more or leave bars and strip no room.</summary>
    private TrueScaleGroup? OnOne(List<TrueScaleShape> shapes, bool feedIsLevel, bool lying)
        => Rows([.. shapes], feedIsLevel, lying) is { } placed ? Single(placed, feedIsLevel) : null;

    /// <summary>The shapes on one sheet; null when they take more or leave bars and strip no room.</summary>
    private TrueScaleGroup? Single(ImmutableArray<TrueScaleShape> placed, bool feedIsLevel)
    {
        var plan = TilePlan.Of(TrueScaleGroup.Around(placed), [], true, true, options, feedIsLevel);
        if (plan is not { Tiles.Length: 1 }) return null;
        var group = new TrueScaleGroup(placed, plan);
        var page = Page(options, group, plan.Tiles[0], null);
        page.PlaceBarsAndStrip(group.Bounds.Centre, strip, []);
        return page.Covered == 0 ? group : null;
    }

    private TrueScaleGroup? Alone(TrueScaleShape shape)
        => TilePlan.Of(shape.Bounds, [.. TrueScaleGroup.Holes([shape]).Select(b => b.Grown(2))], true, true, options) is { } plan ? new TrueScaleGroup([shape], plan) : null;

    /// <summary>The shapes in rows, the tallest row lowest; null when they do not fit.</summary>
    private ImmutableArray<TrueScaleShape>? Rows(ImmutableArray<TrueScaleShape> shapes, bool feedIsLevel, bool lying)
    {
        var (width, height) = Usable(feedIsLevel);
        ImmutableArray<TrueScaleShape> turned = [.. shapes.Select(s => Turned(s, lying, width, height)).OrderByDescending(s => s.Bounds.Height)];

        // along a roll no longer than its longest shape, when the rest goes above that
        var longest = turned.Max(s => s.Bounds.Width);
        return (options.Paper.Key == "roll" && feedIsLevel && longest <= width ? Rows(turned, longest, height) : null) ?? Rows(turned, width, height);
    }

    private static ImmutableArray<TrueScaleShape>? Rows(ImmutableArray<TrueScaleShape> shapes, double width, double height)
    {
        var placed = ImmutableArray.CreateBuilder<TrueScaleShape>();
        var (x, y, row) = (0.0, 0.0, 0.0);
        foreach (var shape in shapes)
        {
            var b = shape.Bounds;
            if (x > 0 && x + b.Width > width) (x, y, row) = (0, y + row + GapMm, 0);
            if (x + b.Width > width || y + b.Height > height) return null;
            placed.Add(shape.Placed(Transform.Shift(new Point(x - b.MinX, y - b.MinY))));
            (x, row) = (x + b.Width + GapMm, Math.Max(row, b.Height));
        }

        return placed.ToImmutable();
    }

    private static TrueScaleShape Turned(TrueScaleShape shape, bool lying, double width, double height)
    {
        var b = shape.Bounds;
        if (!shape.MayTurn || b.Width > b.Height == lying) return shape;
        var fits = b.Height <= width && b.Width <= height;
        return fits ? shape.Placed(Transform.QuarterTurn) : shape;
    }

    /// <summary>What a sheet prints, true mm, a line's width kept from its borders.</summary>
    private (double Width, double Height) Usable(bool feedIsLevel)
    {
        var across = ((options.Paper.WidthMm - (2 * options.MarginMm)) / options.Scale.Across) - 1;
        var along = ((options.Paper.HeightMm - (2 * options.MarginMm)) / options.Scale.Along) - 1;
        if (options.Paper.Key == "roll") along -= RollRoomMm;
        return feedIsLevel ? (along, across) : (across, along);
    }
}
