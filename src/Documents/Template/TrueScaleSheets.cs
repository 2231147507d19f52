using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Shapes of any kind at true scale on as few sheets as reasonable. Each sheet carries check bars and its own strip of words, so its <see cref="SheetKind"/> has its own strip and names numbers.</summary>
public static class TrueScaleSheets
{
    /// <summary>Why the shapes cannot be drawn at true scale, in words; null when they can.</summary>
    public static string? Trouble(SheetRequest request, ImmutableArray<TrueScaleShape> shapes)
    {
        Laid(request, "", shapes, out var trouble);
        return trouble;
    }

    /// <summary>The sheets; none for no shapes; one that says why when <see cref="Trouble"/> has a reason.</summary>
    /// <param name="request">What for.</param>
    /// <param name="kind">Key of the kind of sheet.</param>
    /// <param name="title">What they are, in the maker's words: "Sheath pattern".</param>
    /// <param name="shapes">What is drawn.</param>
    /// <param name="sheetsBefore">Sheets of the same kind that stand before these.</param>
    public static ImmutableArray<Sheet> Draw(SheetRequest request, string kind, string title, ImmutableArray<TrueScaleShape> shapes, int sheetsBefore = 0)
    {
        if (shapes.IsDefaultOrEmpty) return [];
        var groups = Laid(request, title, shapes, out var trouble);
        var span = request.SheetNumbers.TryGetValue(kind, out var s) ? s : default;
        if (trouble is not null)
        {
            var (canvas, room) = SheetTop.New(request, kind, title, "Not drawn", "At true scale it could not be drawn.");
            canvas.Wrapped($"Why: {trouble}. Use larger paper or a roll.", new Point(room.MinX, room.MaxY), room.Width, bold: true);
            return [TitleBlock.AddTo(request, canvas.Done(), span.First + sheetsBefore, request.SheetCount)];
        }

        var options = Options(request);
        var sheets = ImmutableArray.CreateBuilder<Sheet>();
        var (count, marks) = (groups.Sum(g => g.Plan.Tiles.Length), 0);
        foreach (var group in groups)
        {
            var joins = group.Joins(marks);
            marks += joins?.Marks.Length ?? 0;
            foreach (var tile in group.Plan.Tiles)
            {
                var page = TrueScaleLayout.Page(options, group, tile, joins);
                var what = group.Plan.Tiles.Length == 1 ? title : $"{title}, {TemplateStrip.Cut(group.Shapes[0].Name, 40)}";
                var words = $"{what}, sheet {tile.Number} of {count}{TemplateStrip.Place(group.Plan, tile)}";
                var inPacket = span.First > 0 ? $"Packet sheet {span.First + sheetsBefore + sheets.Count} of {request.SheetCount}" : "";
                page.PlaceBarsAndStrip(group.Bounds.Centre, (half, small, width) => TemplateStrip.Rows(request, options, words, inPacket, half, small, width), Outlines(group));
                sheets.Add(page.Done(kind, count == 1 ? title : $"{title} {tile.Number} of {count}"));
            }
        }

        return sheets.ToImmutable();
    }

    /// <summary>The groups of shapes as they lie on the sheets; none when there is trouble.</summary>
    internal static ImmutableArray<TrueScaleGroup> Laid(SheetRequest request, string title, ImmutableArray<TrueScaleShape> shapes, out string? trouble)
    {
        var options = Options(request);
        trouble = TilePlan.Trouble(options);
        if (trouble is not null) return [];

        // the room for words must not hang on the numbers, which are not known yet
        var layout = new TrueScaleLayout(options, (half, small, width) => TemplateStrip.Rows(request, options, title + ", sheet 00 of 00", "Packet sheet 000 of 000", half, small, width));
        var groups = layout.Of(shapes, out var tooLarge);
        if (tooLarge is not null) trouble = $"at true scale {tooLarge} would take more than {TilePlan.MostSheets} sheets of this paper";
        return groups;
    }

    /// <summary>Lines large enough for the small picture of the sheets.</summary>
    private static ImmutableArray<Path> Outlines(TrueScaleGroup group)
        => [.. group.Shapes.SelectMany(s => s.Strokes).Select(s => s.Path).Where(p => Math.Max(p.Bounds.Width, p.Bounds.Height) > 20)];

    /// <summary>Never mirrored: a shape that is wanted mirrored is given so.</summary>
    private static TemplateOptions Options(SheetRequest request) => TemplateOptions.For(request) with { Mirror = false };
}
