using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The strip of words every template sheet carries: what, which revision, date, which sheet, and the order to measure the bars.</summary>
internal static class TemplateStrip
{
    private const double Inset = 2;

    /// <summary>One line of the strip.</summary>
    internal sealed record Row(string Text, double HeightMm, bool Bold);

    /// <summary>Where a sheet lies among those of a tiled drawing; empty for a single one.</summary>
    public static string Place(TilePlan plan, Tile tile)
        => plan.Tiles.Length == 1 ? "" : plan.Rows == 1 ? $" (from the left: {tile.Column + 1})" : $" (row {tile.Row + 1}, column {tile.Column + 1})";

    /// <summary>The rows, broken to a width; small: lettered for paper with little room.</summary>
    /// <param name="request">What for.</param>
    /// <param name="options">Paper, correction, mirror.</param>
    /// <param name="sheet">What it is and which sheet of how many.</param>
    /// <param name="packetNumber">Its number in the packet, in words; may be empty.</param>
    /// <param name="half">Whether the bars are the half ones.</param>
    /// <param name="small">Smaller lettering.</param>
    /// <param name="widthMm">Width to break to, mm.</param>
    public static ImmutableArray<Row> Rows(SheetRequest request, TemplateOptions options, string sheet, string packetNumber, bool half, bool small, double widthMm)
    {
        var piece = request.Results.Plan;
        var rows = new List<Row>
        {
            new(Cut(piece.Name, 60), small ? 3.5 : 5, true),
            new($"Rev {Cut(piece.Revision, 16)} · {request.Date:yyyy-MM-dd} · {sheet}", small ? 2.5 : 3.5, true),
        };
        if (packetNumber.Length > 0) rows.Add(new(packetNumber, 2.5, false));
        if (options.Mirror)
        {
            rows.Add(new("MIRRORED – for the back face", small ? 3.5 : 5, true));
            rows.Add(new("Turn the steel over about its long axis; its ends stay where they are.", 2.5, false));
        }

        rows.Add(new($"True scale 1:1 on {PaperWords(options.Paper)}. Lines are 0.2 mm wide: work to their middle.", 2.5, false));
        rows.AddRange(CheckBars.Words(half).Select(w => new Row(w, 2.5, false)));
        if (options.Scale != PrintScale.True)
            rows.Add(new($"Corrected for this printer: across × {Shown.Number(options.Scale.Across, 4)}, along × {Shown.Number(options.Scale.Along, 4)}.", 2.5, false));
        return [.. rows.SelectMany(r => Lettering.Wrap(r.Text, widthMm - (2 * Inset) - 0.5, r.HeightMm, r.Bold).Select(line => r with { Text = line }))];
    }

    /// <summary>Size of the strip, mm.</summary>
    public static (double Width, double Height) Size(ImmutableArray<Row> rows)
        => (rows.Max(r => Lettering.Width(r.Text, r.HeightMm, r.Bold)) + (2 * Inset), rows.Sum(r => r.HeightMm * Lettering.LinePitch) + Inset);

    /// <summary>Draws it in a box of that size.</summary>
    public static IEnumerable<Mark> Draw(Box box, ImmutableArray<Row> rows)
    {
        yield return new StrokeMark(Path.Polygon(new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY)), Pen.Narrow);
        var y = box.MaxY - (Inset / 2);
        foreach (var row in rows)
        {
            y -= row.HeightMm * Lettering.LinePitch;
            yield return new TextMark(row.Text, new Point(box.MinX + Inset, y + (row.HeightMm * 0.4)), row.HeightMm, row.Bold);
        }
    }

    /// <summary>A name no longer than so many characters.</summary>
    public static string Cut(string name, int most) => name.Length <= most ? name : name[..(most - 1)] + "…";

    private static string PaperWords(PaperSize paper) => paper.Key == "roll" ? $"a {Shown.Trimmed(paper.WidthMm, 1)} mm roll" : paper.Name;
}
