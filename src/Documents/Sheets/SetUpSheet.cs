using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Set-up for the mill: how stock, clamps and zero lie under the spindle, the tools in order, and what to do step by step with ticks; or why there is no program.</summary>
internal static class SetUpSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "setup";

    private const string Title = "Set-up for the mill";
    private const double Left = 10;
    private const double RowMm = 12.5;

    /// <summary>Draws its sheets, one set-up a program; none without a mill under computer control.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
        => [.. request.Programs.Value.SelectMany(p => p.Program is { } program ? Made(request, p, program) : None(request, p))];

    private static ImmutableArray<Sheet> Made(SheetRequest request, ProgramReport report, MachineProgram program)
    {
        var heading = $"Set-up for the {report.Machine.Name}";
        var first = SheetTop.New(request, Key, Title, heading, $"{report.FileName}: {ProgramText.Made(program)}; {ProgramText.Time(report)}. All {report.Moves} moves were read back and swept through stock and clamps. {ProgramText.Caution}");
        var width = first.Room.Width;
        first = first with { Room = SetUpDrawing.Draw(first.Canvas, request, program, first.Room) };
        FlowRow[] rows =
        [
            .. Places(request, program.SetUp),
            .. report.Tools.Select(t => Tool(request, t)),
            .. program.LeftOut.Select(l => Line("NOT DONE HERE: " + l, width, bold: true)),
            .. ProgramText.Steps(report).Select(s => Line(s, width, bold: false)),
        ];
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, heading + ", continued", ""), head: null, rows, after: Notes.Draw);
    }

    private static ImmutableArray<Sheet> None(SheetRequest request, ProgramReport report)
    {
        var heading = $"No program for the {report.Machine.Name}";
        var first = SheetTop.New(request, Key, Title, heading, $"{report.FileName} was not written. Nothing is to be run on this mill before what stands here is settled.");
        var width = first.Room.Width;
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, heading, "Continued."), head: null, report.Refusals.Select(f => Line($"{f.Message}. What to do: {f.Remedy}.", width, bold: false)), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Places(SheetRequest request, ProgramSetUp s)
    {
        yield return Row(request, "Stock", "", ("along", s.Stock.Width, null), ("across", s.Stock.Height, null), ("thick", s.ThicknessMm, null));
        foreach (var c in s.Clamps) yield return Row(request, c.Name, "", ("x", c.Box.MinX, c.Box.MaxX), ("y", c.Box.MinY, c.Box.MaxY), ("no higher than", c.TopZMm, null));
        foreach (var p in s.Pins) yield return Row(request, $"Pin in {p.Name}", s.Clamps.Any(c => c.Box.Holds(p.At)) ? "threaded, washer and nut" : "below the face", ("x", p.At.X, null), ("y", p.At.Y, null), ("⌀", p.DiameterMm, null));
    }

    /// <summary>A name and three sizes, large in the first unit.</summary>
    private static FlowRow Row(SheetRequest request, string name, string small, params (string What, double FromMm, double? ToMm)[] sizes) => new(RowMm, (canvas, box) =>
    {
        var column = (box.Width - Left) / 3.9;
        canvas.TickBox(box.MinX, box.MaxY - 6);
        canvas.Fitted(name, new Point(box.MinX + Left, box.MaxY - 7), (0.9 * column) - 1, Canvas.LargeMm, bold: true);
        if (small.Length > 0) canvas.Fitted(small, new Point(box.MinX + Left, box.MinY + 1.2), (0.9 * column) - 1, Canvas.SmallMm);
        var inch = SizeBlock.InchFirst(request);
        for (var i = 0; i < sizes.Length; i++)
        {
            var x = box.MinX + Left + ((0.9 + i) * column);
            var (what, from, to) = sizes[i];
            string In(bool inches) => FigureText.Figure(Length.OfMm(from), inches) + (to is { } end ? " to " + FigureText.Figure(Length.OfMm(end), inches) : "");
            canvas.Fitted(In(inch), new Point(x, box.MaxY - 7), column - 2, Canvas.LargeMm, bold: true);
            canvas.Fitted($"{what}, {(inch ? "in" : "mm")}{(request.Units == UnitsShown.Both ? $" ({In(!inch)} {(inch ? "mm" : "in")})" : "")}", new Point(x, box.MinY + 1.2), column - 2, 3);
        }

        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });

    private static FlowRow Tool(SheetRequest request, ToolTime t) => new(RowMm, (canvas, box) =>
    {
        var column = (box.Width - Left) / 4;
        var (x, y, under) = (box.MinX + Left, box.MaxY - 7, box.MinY + 1.2);
        canvas.TickBox(box.MinX, box.MaxY - 6);
        canvas.Fitted($"T{t.Tool.Number}  {t.Tool.Name}", new Point(x, y), (1.6 * column) - 2, Canvas.LargeMm, bold: true);
        canvas.Fitted(ProgramText.Time(t), new Point(x, under), column, 3);
        x += 1.6 * column;
        canvas.Fitted(ProgramText.Speed(t), new Point(x, y), (1.1 * column) - 2, Canvas.LargeMm, bold: true);
        x += 1.1 * column;
        var inch = SizeBlock.InchFirst(request);
        canvas.Fitted(ProgramText.Feed(t, inch ? UnitsShown.Inch : UnitsShown.Mm), new Point(x, y), box.MaxX - x, Canvas.LargeMm, bold: true);
        if (request.Units == UnitsShown.Both) canvas.Fitted(ProgramText.Feed(t, inch ? UnitsShown.Mm : UnitsShown.Inch), new Point(x, under), box.MaxX - x, 3);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });

    private static FlowRow Line(string text, double width, bool bold)
    {
        var height = Math.Max(9, TextSpace.WrappedMm(text, width - Left, Canvas.TextMm, bold) + 1.6);
        return new FlowRow(height, (canvas, box) =>
        {
            var wrapped = TextSpace.WrappedMm(text, width - Left, Canvas.TextMm, bold);
            var middle = (box.MinY + box.MaxY) / 2;
            canvas.TickBox(box.MinX, middle);
            canvas.Wrapped(text, new Point(box.MinX + Left, middle + (wrapped / 2)), width - Left, Canvas.TextMm, bold);
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
        });
    }
}
