using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The order of work on this shop's machines: each step with a box to tick and the sheet that goes with it; a gate must be ticked before going on.</summary>
public static class OrderSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "order";

    private const string Title = "Order of work";

    /// <summary>Draws its sheets.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var steps = request.Results.Order;
        if (steps.IsDefaultOrEmpty) return [];
        var shop = request.Results.Shop.IsAssumed ? "On the ASSUMED SHOP: check every machine against your own." : $"On the machines of {request.Results.Shop.Name}.";
        OpenSheet Next(string line) => SheetTop.New(request, Key, Title, Title, line);
        var first = Next($"{shop} Tick as you go; a GATE in a heavy frame is ticked before anything after it starts.");
        var width = first.Room.Width;
        return Flow.Over(first, () => Next("Continued."), head: null, steps.Select(s => Row(request, s, width)), after: Notes.Draw);
    }

    private static FlowRow Row(SheetRequest request, WorkStep step, double width)
    {
        var textWidth = width - 23 - 24;
        var what = TextSpace.WrappedMm(step.What, textWidth, Canvas.TextMm, bold: true);
        var detail = Detail(step);
        var more = detail.Length == 0 ? 0 : TextSpace.WrappedMm(detail, textWidth, 3);
        var gate = step.Gate.Length == 0 ? 0 : Math.Max(10, TextSpace.WrappedMm(step.Gate, textWidth - 16, Canvas.TextMm, bold: true) + 3);
        var body = Math.Max(9, what + more + 2);
        return new FlowRow(body + (gate > 0 ? gate + 2 : 0), (canvas, box) =>
        {
            var middle = box.MaxY - (body / 2);
            canvas.TickBox(box.MinX, middle);
            canvas.Fitted(step.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), new Point(box.MinX + 20, middle - 2.3), 11, Canvas.LargeMm, bold: true, anchor: TextAnchor.Right);
            var x = box.MinX + 23;
            var y = canvas.Wrapped(step.What, new Point(x, box.MaxY - ((body - what - more) / 2) + 0.5), textWidth, Canvas.TextMm, bold: true);
            if (detail.Length > 0) canvas.Wrapped(detail, new Point(x, y), textWidth, 3);
            if (request.SheetNumbers.TryGetValue(step.SheetKind, out var sheet)) canvas.Fitted($"sheet {sheet}", new Point(box.MaxX, middle - 1.7), 23, Canvas.TextMm, anchor: TextAnchor.Right);
            if (gate > 0) DrawGate(canvas, step.Gate, new Box(x, box.MinY + 2, box.MaxX, box.MinY + 2 + gate));
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
        });
    }

    private static void DrawGate(Canvas canvas, string gate, Box box)
    {
        canvas.Frame4(box, new Pen(0.7));
        var middle = (box.MinY + box.MaxY) / 2;
        canvas.TickBox(box.MinX + 1.5, middle);
        canvas.Text("GATE", new Point(box.MinX + 11, middle - 1.7), Canvas.TextMm, bold: true);
        var width = box.Width - 26;
        var height = TextSpace.WrappedMm(gate, width, Canvas.TextMm);
        canvas.Wrapped(gate, new Point(box.MinX + 25, middle + (height / 2) + 0.5), width, Canvas.TextMm);
    }

    private static string Detail(WorkStep step)
        => step.On.Length > 0 && step.Why.Length > 0 ? $"{step.On}. Why here: {step.Why}" : step.On.Length > 0 ? step.On : step.Why.Length > 0 ? $"Why here: {step.Why}" : "";
}
