using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Widths of the profiled piece at even stations with go and no-go, room for what was measured, and what it must weigh.</summary>
public static class WidthsSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "widths";

    private const string Title = "Widths and weight";
    private const double RowMm = 8.6;

    // where the columns begin, as shares of the width
    private static readonly ImmutableArray<(string Head, double At)> Columns =
    [
        ("from the end", 0.045), ("lower edge", 0.225), ("upper edge", 0.36), ("width", 0.495), ("no-go under", 0.65), ("go under", 0.77), ("measured", 0.885),
    ];

    /// <summary>Draws its sheets; none for a piece too short for a station.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var table = WidthStations.Of(request.Results);
        if (table.Stations.IsEmpty) return [];
        var first = SheetTop.New(
            request,
            Key,
            Title,
            Title,
            $"The piece ground to its line, before bevels. Stations from the {table.EndWords}, heights from the {table.EdgeWords}. Calipers across the piece, square to its length; a width within {FigureText.Size(table.Tolerance, request.Units, brief: true)} either way is good. Belt stopped while measuring; the rim is hot and sharp.");
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), Head(request), [.. table.Stations.Select(s => Station(request, s)), Weight(request, table, first.Room.Width)], after: Notes.Draw);
    }

    private static FlowRow Head(SheetRequest request) => new(10, (canvas, box) =>
    {
        for (var i = 0; i < Columns.Length; i++)
        {
            var (head, at) = Columns[i];
            canvas.Fitted(head, new Point(box.MinX + (at * box.Width), box.MinY + 5.4), ((i + 1 < Columns.Length ? Columns[i + 1].At : 1) - at) * box.Width - 1.5, 3, bold: true);
        }

        canvas.Fitted(request.Units switch { UnitsShown.Mm => "all in mm", UnitsShown.Inch => "all in inches", _ => "mm large, inches small" }, new Point(box.MinX + (Columns[0].At * box.Width), box.MinY + 1.4), 0.3 * box.Width, Canvas.SmallMm);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), Pen.Wide);
    });

    private static FlowRow Station(SheetRequest request, WidthStation s) => new(RowMm, (canvas, box) =>
    {
        canvas.TickBox(box.MinX, box.Centre.Y);
        Length[] figures = [s.FromEnd, s.Low, s.High, s.Width, s.Least, s.Most];
        for (var i = 0; i < figures.Length; i++)
        {
            var (x, next) = (box.MinX + (Columns[i].At * box.Width), box.MinX + (Columns[i + 1].At * box.Width));
            var inch = request.Units == UnitsShown.Inch;
            var big = canvas.Text(Figure(figures[i], inch), new Point(x, box.MinY + 2.6), i is 0 or 3 ? Canvas.LargeMm : Canvas.TextMm, bold: i is 0 or 3);
            if (request.Units == UnitsShown.Both) canvas.Fitted(Figure(figures[i], inch: true), new Point(big.MaxX + 0.8, box.MinY + 2.6), Math.Max(3, next - big.MaxX - 1), Canvas.SmallMm);
        }

        if (s.IsSteep && !s.IsHollow) canvas.Text("steep: by the line", new Point(box.MinX + (Columns[6].At * box.Width), box.MinY + 2.6), Canvas.SmallMm);
        if (s.IsHollow) canvas.Text("over a hollow", new Point(box.MinX + (Columns[6].At * box.Width), box.MinY + 2.6), Canvas.SmallMm);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });

    private static string Figure(Length l, bool inch) => inch ? Shown.Number(l.Inches, 3) : Shown.Number(l.Mm, 1);

    private static FlowRow Weight(SheetRequest request, WidthTable t, double width)
    {
        var says = t.Mass is not { } mass
            ? "The steel's density is not known, so its weight is left out."
            : $"Profiled, no holes: {FigureText.Weight(mass, request.Units)}{(t.MassBand is { } b ? $" ± {FigureText.Weight(b, request.Units)} when every width is off by its tolerance" : "")}.{(t.DrilledMass is { } d ? $" With its holes: {FigureText.Weight(d, request.Units)}." : "")}{(t.MassPerTenth is { } m ? $" Each 0.1 mm (0.004 in) of thickness more or less changes it by {FigureText.Weight(m, request.Units)}: measure the bar first." : "")}";
        var lines = TextSpace.WrappedMm(says, width - 10, Canvas.TextMm);
        return new FlowRow(lines + 14, (canvas, box) =>
        {
            canvas.Text("Weight", new Point(box.MinX, box.MaxY - 8), Canvas.LargeMm, bold: true);
            canvas.TickBox(box.MinX, box.MaxY - 10.5 - (0.5 * lines) - 1);
            canvas.Wrapped(says, new Point(box.MinX + 10, box.MaxY - 10.5), width - 10);
        });
    }
}
