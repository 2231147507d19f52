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
    private const double RowMm = 13.5;

    /// <summary>Draws its sheets, one set-up a program; none without a mill under computer control.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
        => [.. request.Programs.Value.SelectMany(p => p.Program is { } program ? Made(request, p, program) : None(request, p))];

    private static ImmutableArray<Sheet> Made(SheetRequest request, ProgramReport report, MachineProgram program)
    {
        var heading = $"Set-up for the {report.Machine.Name}";
        var first = SheetTop.New(request, Key, Title, heading, $"{report.FileName}: {ProgramText.Made(program)}; {ProgramText.Time(report)}. All {report.Moves} moves were read back and swept through stock and clamps.");
        var width = first.Room.Width;
        first = first with { Room = SetUpDrawing.Draw(first.Canvas, request, program, Cautioned(first.Canvas, first.Room)) };
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

    private static Box Cautioned(Canvas canvas, Box room)
    {
        const int MostLines = 7;
        var height = TextSpace.Lines(ProgramText.Caution, room.Width - 4, 3, bold: false, MostLines).Length * TextSpace.LineMm(3);
        canvas.Frame4(new Box(room.MinX, room.MaxY - height - 3, room.MaxX, room.MaxY), new Pen(0.7));
        canvas.Wrapped(ProgramText.Caution, new Point(room.MinX + 2, room.MaxY - 1.5), room.Width - 4, 3, mostLines: MostLines);
        return room with { MaxY = room.MaxY - height - 5 };
    }

    private static IEnumerable<FlowRow> Places(SheetRequest request, ProgramSetUp s)
    {
        yield return Row(request, "Stock", "", ("along", s.Stock.Width, null), ("across", s.Stock.Height, null), ("thick", s.ThicknessMm, null));
        foreach (var c in s.Clamps) yield return Row(request, c.Name, "", ("x", c.Box.MinX, c.Box.MaxX), ("y", c.Box.MinY, c.Box.MaxY), ("highest", c.TopZMm, null));
        foreach (var p in s.Pins) yield return Row(request, $"Pin in {p.Name}", s.Clamps.Any(c => c.Box.Holds(p.At)) ? "threaded, washer and nut" : "below the face", ("x", p.At.X, null), ("y", p.At.Y, null), ("⌀", p.DiameterMm, null));
    }

    /// <summary>A name and three sizes, large in the first unit.</summary>
    private static FlowRow Row(SheetRequest request, string name, string small, params (string What, double FromMm, double? ToMm)[] sizes) => new(RowMm, (canvas, box) =>
    {
        var names = 0.3 * (box.Width - Left);
        var column = (box.Width - Left - names) / 3;
        canvas.TickBox(box.MinX, box.MaxY - 6);
        canvas.Fitted(name, new Point(box.MinX + Left, box.MaxY - 7), names - 2, Canvas.LargeMm, bold: true);
        if (small.Length > 0) canvas.Fitted(small, new Point(box.MinX + Left, box.MinY + 1.2), names - 2, Canvas.SmallMm);
        var inch = SizeBlock.InchFirst(request);
        for (var i = 0; i < sizes.Length; i++)
        {
            var x = box.MinX + Left + names + (i * column);
            var (what, from, to) = sizes[i];
            string One(double mm, bool inches) => inches ? Shown.Trimmed(mm / Length.MmPerInch, 3) : Shown.Trimmed(mm, 2);
            string In(bool inches) => One(from, inches) + (to is { } end ? " to " + One(end, inches) : "");
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
        canvas.Fitted("rpm", new Point(x, under), column, 3);
        x += 1.1 * column;
        var inch = SizeBlock.InchFirst(request);
        string Unit(bool inches) => inches ? "in/min" : "mm/min";
        canvas.Fitted(ProgramText.Feed(t, inch), new Point(x, y), box.MaxX - x, Canvas.LargeMm, bold: true);
        canvas.Fitted(Unit(inch) + (request.Units == UnitsShown.Both ? $" ({ProgramText.Feed(t, !inch)} {Unit(!inch)})" : ""), new Point(x, under), box.MaxX - x, 3);
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
