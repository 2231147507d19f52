using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The run card: a part for each load with boxes for what was set and what it was, and what is to be expected out of the quench.</summary>
public static class RunCard
{
    /// <summary>Its key.</summary>
    public const string Key = "run";

    private const string Title = "Run card, hardening";
    private const int FewestRows = 4;

    /// <summary>Draws its sheets; none when nothing is known of the steel's hardening.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (request.Heat is not { } p) return [];
        var first = SheetTop.New(request, Key, Title, Title, HeatWords.Head(p) + ". " + HeatWords.Why(p));
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued. " + HeatWords.Clock), head: null, Rows(p, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Rows(HeatPlan p, double width)
    {
        var soak = p.Oven[^1];
        yield return CardRows.Big("set", $"{Shown.Both(soak.Set)}, soak {HeatWords.Range(p.SoakMinutes)}", HeatWords.HeatUp(p) + " " + HeatWords.Clock, width);
        if (p.Hardens is { } h) yield return CardRows.Big("quench", $"{h.Medium.Name} at {Shown.Both(h.Bath)}", h.Medium.Description, width);
        foreach (var line in HeatWords.Bath(p)) yield return CardRows.Line(line, width);
        if (HeatWords.Cold(p) is { Length: > 0 } cold) yield return CardRows.Line(cold, width, bold: true);
        if (HeatWords.Diameter(p) is { Length: > 0 } diameter) yield return CardRows.Line(diameter, width);
        if (p.Hardens is { } at)
        {
            yield return CardRows.Said("Expected, as quenched");
            foreach (var a in at.At) yield return CardRows.Line(HeatWords.Station(a), width);
        }

        var number = 1;
        foreach (var (count, i) in (p.Loads.Loads.IsEmpty ? [1] : p.Loads.Loads).Select((c, i) => (c, i)))
        {
            yield return Load(i + 1, number, p.Subject.Pieces == 1 ? FewestRows : count, p.Subject.Pieces > 1, p.Hardens?.Medium.Kind, width);
            number += count;
        }

        yield return CardRows.Line("File test: a fresh file at the edge, past the skin. It skates: hard. It bites: grind the skin off once and try again before saying soft.", width);
        yield return CardRows.Boxed(string.Join(" ", HeatWords.Cautions(p)), width);
        yield return CardRows.Line(HeatWords.Start, width);
    }

    private static FlowRow Load(int load, int from, int rows, bool isNumbered, QuenchKind? kind, double width)
    {
        const double RowMm = 8.5, HeadMm = 17;
        var bath = kind switch { QuenchKind.Plates => "plates", QuenchKind.Air => "air", QuenchKind.Water => "bath", _ => "oil" };
        string[] heads = ["piece", "in oven", "at heat", "out", bath + " before", bath + " after", "straight", "file skates"];
        double[] share = [0, 0.09, 0.23, 0.37, 0.5, 0.63, 0.76, 0.88];
        return new FlowRow(HeadMm + (rows * RowMm) + 3, (canvas, box) =>
        {
            canvas.Text($"Load {load}", new Point(box.MinX, box.MaxY - 6), Canvas.TextMm, bold: true);
            canvas.Text("date", new Point(box.MinX + 28, box.MaxY - 6), Canvas.SmallMm);
            canvas.Text("oven set", new Point(box.MinX + 68, box.MaxY - 6), Canvas.SmallMm);
            canvas.Text("oven read, thermocouple at the piece", new Point(box.MinX + 106, box.MaxY - 6), Canvas.SmallMm);
            foreach (var (x, to) in new[] { (35.0, 64.0), (80.0, 102.0), (154.0, width) }) canvas.Line(new Point(box.MinX + x, box.MaxY - 7), new Point(box.MinX + to, box.MaxY - 7), new Pen(0.18));
            for (var i = 0; i < heads.Length; i++) canvas.Text(heads[i], new Point(box.MinX + (share[i] * width) + 1, box.MaxY - 14), Canvas.SmallMm);
            canvas.Line(new Point(box.MinX, box.MaxY - HeadMm + 1.5), new Point(box.MaxX, box.MaxY - HeadMm + 1.5), Pen.Wide);
            for (var k = 0; k < rows; k++)
            {
                var y = box.MaxY - HeadMm + 1.5 - ((k + 1) * RowMm);
                if (isNumbered) canvas.Text($"{from + k}", new Point(box.MinX + 1, y + 2.2), Canvas.TextMm, bold: true);
                canvas.Line(new Point(box.MinX, y), new Point(box.MaxX, y), new Pen(0.18));
                for (var i = 1; i < heads.Length; i++) canvas.Line(new Point(box.MinX + (share[i] * width), y), new Point(box.MinX + (share[i] * width), y + RowMm), new Pen(0.18));
            }
        });
    }
}
