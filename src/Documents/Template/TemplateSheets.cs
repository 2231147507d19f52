using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The true-scale template: the piece, its hole centres and the two edges it is laid against, on one sheet or tiled. Each sheet carries its own strip of words, so it takes no title block.</summary>
public static class TemplateSheets
{
    /// <summary>Kind of the full template.</summary>
    public const string Kind = "template";

    /// <summary>Kind of the drill-only template.</summary>
    public const string DrillKind = "drill-template";

    /// <summary>Why no template can be drawn, in words; null when one can.</summary>
    public static string? Trouble(SheetRequest request, TemplateOptions options)
        => TilePlan.Trouble(options) ?? (Spread(request.Results, options) is null ? $"at true scale the piece would take more than {TilePlan.MostSheets} sheets of this paper" : null);

    /// <summary>How the piece lies on the sheets; null when <see cref="Trouble"/> says why not.</summary>
    public static TilePlan? Tiles(SheetRequest request, TemplateOptions options)
        => TilePlan.Trouble(options) is null ? Spread(request.Results, options) : null;

    /// <summary>The sheets with the usual overlap and no surround; none when <see cref="Trouble"/> says why not.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request, bool drillOnly) => Draw(request, TemplateOptions.For(request, drillOnly));

    /// <summary>The sheets; none when <see cref="Trouble"/> says why not.</summary>
    /// <param name="request">What for.</param>
    /// <param name="options">Paper, correction, mirror and the rest.</param>
    /// <param name="packetNumber">Words for a sheet by its index among these, such as its number in the packet; null for none.</param>
    public static ImmutableArray<Sheet> Draw(SheetRequest request, TemplateOptions options, Func<int, string>? packetNumber = null)
    {
        if (Tiles(request, options) is not { } plan) return [];
        var piece = new TemplatePiece(request.Results, options, plan, SizeBlock.InchFirst(request));
        return [.. plan.Tiles.Select((t, i) => new TemplateSheet(request, options, plan, t, piece).Draw(packetNumber?.Invoke(i) ?? ""))];
    }

    private static TilePlan? Spread(Results results, TemplateOptions options)
    {
        var bench = results.Bench;
        var discs = results.Holes.Select(h => Box.Around(h.MadeAt).Grown(PieceMarks.Reach(h))).ToImmutableArray();
        var piece = results.Plan.Outline.Bounds;
        if (options.DrillOnly && !discs.IsEmpty) piece = discs.Aggregate((a, b) => a.With(b));

        // the edges measured from come along, unless that alone takes another sheet: then lines parallel to them stand in
        var corner = bench.Corner;
        TilePlan? best = null;
        foreach (var content in new[] { piece.With(corner), piece.With(corner with { Y = piece.MinY }), piece.With(corner with { X = piece.MinX }), piece })
        {
            var plan = TilePlan.Of(content, discs, bench.AlongSign > 0, bench.AcrossSign > 0, options);
            if (plan is not null && (best is null || plan.Tiles.Length < best.Tiles.Length)) best = plan;
        }

        return best;
    }
}

/// <summary>What all sheets of one template share.</summary>
internal sealed class TemplatePiece
{
    /// <summary>Works it out once.</summary>
    public TemplatePiece(Results results, TemplateOptions options, TilePlan plan, bool inInches)
    {
        Strokes = PieceMarks.Strokes(results, options.DrillOnly);
        Labels = PieceMarks.Labels(results, options.DrillOnly, inInches);
        FarSides = options.DrillOnly ? [] : [.. DatumMarks.FarSides(results.Bench)];
        if (plan.Tiles.Length == 1) return;
        var map = plan.PlanToAssembled;
        var onAssembled = results.Plan.Outline.Transformed(map);
        CheckLine = CheckLine.Of(plan, onAssembled.Bounds);
        var busy = PathPoints.Spots(onAssembled).ToList();
        busy.AddRange(PathPoints.Spots(new Path([new Line(CheckLine.From, CheckLine.To)], closed: false)));
        foreach (var hole in results.Holes) busy.Add(map.Map(hole.MadeAt));
        var corner = map.Map(results.Bench.Corner);
        var all = plan.Tiles.Aggregate(Box.Nothing, (b, t) => b.With(plan.OnAssembled(t)));
        for (var x = all.MinX; x < all.MaxX; x += 2) busy.Add(new Point(x, corner.Y));
        for (var y = all.MinY; y < all.MaxY; y += 2) busy.Add(new Point(corner.X, y));
        JoinMarks = Tangwright.Documents.JoinMarks.All(plan, busy);
    }

    /// <summary>Lines of the piece, plan's axes.</summary>
    public ImmutableArray<PlanStroke> Strokes { get; }

    /// <summary>Words of the piece, plan's axes.</summary>
    public ImmutableArray<PlanLabel> Labels { get; }

    /// <summary>Sides of the stock not measured from.</summary>
    public ImmutableArray<PlanStroke> FarSides { get; }

    /// <summary>The line over all sheets; null on a single sheet.</summary>
    public CheckLine? CheckLine { get; }

    /// <summary>Marks across the joins.</summary>
    public ImmutableArray<JoinMark> JoinMarks { get; } = [];
}
