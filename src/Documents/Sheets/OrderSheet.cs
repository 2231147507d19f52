using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The order of work on this shop's machines: each step with a box to tick and the sheet that goes with it; a gate must be ticked before going on.</summary>
internal static class OrderSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "order";

    private const string Title = "Order of work";
    private const double Left = 23;
    private const double SheetColumn = 26;
    private const double GateLeft = 25;
    private const double OnMm = 3;

    /// <summary>Draws its sheets.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var steps = request.Results.Order;
        if (steps.IsDefaultOrEmpty) return [];
        var shop = request.Results.Shop.IsAssumed ? "On the ASSUMED SHOP: check every machine against your own." : $"On the machines of {request.Results.Shop.Name}.";
        OpenSheet Next(string line) => SheetTop.New(request, Key, Title, Title, line);
        var first = Next($"{shop} Tick as you go; nothing after a framed GATE starts before it is ticked. Order and amounts: common practice.");
        var width = first.Room.Width;
        return Flow.Over(first, () => Next("Continued."), head: null, steps.Select(s => Row(request, s, width)), after: Notes.Draw);
    }

    private static FlowRow Row(SheetRequest request, WorkStep step, double width)
    {
        var textWidth = width - Left - SheetColumn;
        var what = TextSpace.WrappedMm(step.What, textWidth, Canvas.TextMm, bold: true);
        var on = step.On.Length == 0 ? 0 : TextSpace.WrappedMm(step.On, textWidth, OnMm);
        var why = step.Why.Length == 0 ? 0 : TextSpace.WrappedMm("Why here: " + step.Why, textWidth, Canvas.SmallMm);
        var gate = step.Gate.Length == 0 ? 0 : Math.Max(8.6, TextSpace.WrappedMm(step.Gate, width - Left - GateLeft - 1, Canvas.TextMm) + 2.4);
        var body = Math.Max(9, what + on + why + 1.4);
        return new FlowRow(body + (gate > 0 ? gate + 1.2 : 0), (canvas, box) =>
        {
            var middle = box.MaxY - (body / 2);
            canvas.TickBox(box.MinX, middle);
            canvas.Fitted(step.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), new Point(box.MinX + 20, middle - 2.3), 11, Canvas.LargeMm, bold: true, anchor: TextAnchor.Right);
            var x = box.MinX + Left;
            var y = canvas.Wrapped(step.What, new Point(x, box.MaxY - ((body - what - on - why) / 2) - 0.1), textWidth, Canvas.TextMm, bold: true);
            if (on > 0) y = canvas.Wrapped(step.On, new Point(x, y), textWidth, OnMm);
            if (why > 0) canvas.Wrapped("Why here: " + step.Why, new Point(x, y), textWidth, Canvas.SmallMm);
            if (request.SheetNumbers.TryGetValue(step.SheetKind, out var sheet)) canvas.Fitted(sheet.InWords, new Point(box.MaxX, middle - 1.7), SheetColumn - 1, Canvas.TextMm, anchor: TextAnchor.Right);
            if (gate > 0) DrawGate(canvas, step.Gate, new Box(x, box.MinY + 1.2, box.MaxX, box.MinY + 1.2 + gate));
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
        });
    }

    private static void DrawGate(Canvas canvas, string gate, Box box)
    {
        canvas.Frame4(box, new Pen(0.7));
        var middle = (box.MinY + box.MaxY) / 2;
        canvas.TickBox(box.MinX + 1.5, middle);
        canvas.Text("GATE", new Point(box.MinX + 11, middle - 1.7), Canvas.TextMm, bold: true);
        var width = box.Width - GateLeft - 1;
        var height = TextSpace.WrappedMm(gate, width, Canvas.TextMm);
        canvas.Wrapped(gate, new Point(box.MinX + GateLeft, middle + (height / 2) - 0.1), width, Canvas.TextMm);
    }
}
