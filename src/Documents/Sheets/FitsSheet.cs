using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Pins and fits: every pinned or reamed hole with what it comes out at, the rod, the room about it, drill and reamer, and room for what was measured.</summary>
internal static class FitsSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "fits";

    private const string Title = "Pins and fits";
    private const string Caution = "Reaming and pressing: clamp the work, eyes covered, ears too when pins are driven. Never turn a reamer backward, never touch one that turns; chips off with a brush, never with fingers or breath. Local rules and the machine's manual come first.";
    private const double TickColumn = 9;
    private const double NameColumn = 24;
    private const double FiguresMm = 20.5;
    private const double SmallMm = 3;

    /// <summary>Draws its sheets; none without pinned or reamed holes.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var pins = PinFits.Of(request.Results);
        if (pins.IsEmpty) return [];
        var first = SheetTop.New(request, Key, Title, Title, $"{Words(request)} {Caution}");
        var width = first.Room.Width;
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title + ", continued", Caution), Head(request), pins.Select(p => Row(request, p, width)), after: Notes.Draw);
    }

    private static string Words(SheetRequest request)
    {
        string Band((Length Least, Length Most) room) => $"{FigureText.Size(room.Least, request.Units)} to {FigureText.Size(room.Most, request.Units)}";
        return $"Try the rod in a hole of an offcut before the piece. Wider than a glued rod by common practice: {Band(GlueRoom.InSteel)} in the steel, {Band(GlueRoom.InScales)} in the scales.";
    }

    /// <summary>Left ends of the columns of figures: planned, least and most made, rod, room, as built.</summary>
    private static double[] Columns(Box box)
    {
        var from = box.MinX + TickColumn + NameColumn;
        return [.. Enumerable.Range(0, 6).Select(i => from + (i * (box.MaxX - from) / 5))];
    }

    private static FlowRow Head(SheetRequest request) => new(10, (canvas, box) =>
    {
        var x = Columns(box);
        void Two(double left, double right, string one, string two)
        {
            canvas.Fitted(one, new Point(left, box.MinY + 5.6), right - left - 1, SmallMm, bold: true);
            canvas.Fitted(two, new Point(left, box.MinY + 1.6), right - left - 1, Canvas.SmallMm);
        }

        Two(box.MinX + TickColumn, x[0], "Hole", "use; tick");
        Two(x[0], x[1], "⌀ planned", Unit(SizeBlock.InchFirst(request)));
        Two(x[1], x[2], "⌀ comes out", "least, most");
        Two(x[2], x[3], "rod", "measure it");
        Two(x[3], x[4], "room about rod", "least, most; − is overlap");
        Two(x[4], x[5], "⌀ as built", "measure and write");
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), Pen.Wide);
    });

    private static FlowRow Row(SheetRequest request, PinFit pin, double width)
    {
        var words = Words(pin);
        return new FlowRow(FiguresMm + TextSpace.WrappedMm(words, width - TickColumn, Canvas.TextMm) + 2, (canvas, box) =>
        {
            var x = Columns(box);
            canvas.TickBox(box.MinX, box.MaxY - 2 - (Canvas.TickMm / 2));
            canvas.Fitted(pin.Hole.Name, new Point(box.MinX + TickColumn, box.MaxY - 6.8), NameColumn - 1, Canvas.LargeMm, bold: true);
            canvas.Fitted(DrillText.Purpose(pin.Hole), new Point(box.MinX + TickColumn, box.MaxY - 12), NameColumn - 1, SmallMm);
            Box Cell(int i) => box with { MinX = x[i], MaxX = x[i + 1] };
            Figures(canvas, request, Cell(0), pin.Hole.Diameter);
            if (pin.Made is { } made) Figures(canvas, request, Cell(1), made.Least, made.Most);
            if (pin.Rod is { } rod) Figures(canvas, request, Cell(2), rod);
            if (pin.Fit is { } fit) Figures(canvas, request, Cell(3), fit.LeastClearance, fit.MostClearance);
            if (pin.Hole.AsBuilt?.Diameter is { } built) Figures(canvas, request, Cell(4), built);
            else canvas.Frame4(new Box(x[4], box.MaxY - 13, x[5], box.MaxY - 1.5), new Pen(0.25));
            canvas.Wrapped(words, new Point(box.MinX + TickColumn, box.MaxY - FiguresMm), width - TickColumn, Canvas.TextMm);
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.25));
        });
    }

    private static string Words(PinFit pin)
    {
        var rod = pin.Rod is null ? "No rod." : pin.RodIsSaid ? "" : $"The plan does not say the rod: taken as {PinFitText.Rod(pin)}.";
        var room = PinFitText.Room(pin);
        return string.Join(" ", new[] { $"{PinFitText.Tools(pin)}: {pin.MadeBy}.", rod, room.Length > 0 ? $"The rod {room}.".Replace("The rod outside", "Outside", StringComparison.Ordinal) : "" }.Where(w => w.Length > 0));
    }

    /// <summary>One figure, or two when they differ, large in the leading unit, the other unit small beneath.</summary>
    private static void Figures(Canvas canvas, SheetRequest request, Box box, Length least, Length? most = null)
    {
        var inch = SizeBlock.InchFirst(request);
        Length[] both = most is { } m && m != least ? [least, m] : [least];
        for (var i = 0; i < both.Length; i++) canvas.Fitted(Figure(both[i], inch), new Point(box.MinX, box.MaxY - 6.8 - (6.6 * i)), box.Width - 2, Canvas.LargeMm, bold: true);
        if (request.Units == UnitsShown.Both) canvas.Fitted($"{string.Join(", ", both.Select(b => Figure(b, !inch)))} {Unit(!inch)}", new Point(box.MinX, box.MaxY - (both.Length == 2 ? 17.8 : 12)), box.Width - 1, SmallMm);
    }

    private static string Figure(Length length, bool inch) => (inch ? Shown.Number(length.Inches, 4) : Shown.Number(length.Mm, 3)).Replace('-', '−');

    private static string Unit(bool inch) => inch ? "in" : "mm";
}
