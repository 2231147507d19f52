using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>What is wrong or risky, gravest first, with its place on a small drawing; or what was checked when nothing was found.</summary>
internal static class FindingsSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "findings";

    private const string Title = "Findings";

    /// <summary>Draws its sheets.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var findings = request.Results.Findings;
        if (findings.IsDefaultOrEmpty) return [NothingFound(request)];
        var first = SheetTop.New(request, Key, Title, Title, "Gravest first. The number is its place on the drawing. Limits are starting points; a limit without a published source says so.");
        var room = DrawPlaces(first.Canvas, request, first.Room);
        var width = room.Width;
        return Flow.Over(
            first with { Room = room },
            () => SheetTop.New(request, Key, Title, Title, "Continued."),
            head: null,
            findings.Select((f, i) => Row(f, i + 1, width)),
            after: Notes.Draw);
    }

    private static Sheet NothingFound(SheetRequest request)
    {
        var (canvas, room) = SheetTop.New(request, Key, Title, Title, "Nothing was found.");
        var y = canvas.Wrapped("Checked: outline closed and not crossing itself; piece within the bar; holes inside the outline and apart from each other; steel between holes and to the outline; drills owned; inside radii against the wheels; edge against the plunge line.", new Point(room.MinX, room.MaxY), room.Width);
        y = canvas.Wrapped("A pass is not proof: it says only that these checks found nothing. It says nothing of strength in use. Look at the drawing, measure the bar, and make one piece first.", new Point(room.MinX, y - 3), room.Width, Canvas.TextMm, bold: true);
        Notes.Draw(canvas, room with { MaxY = y - 12 });
        return canvas.Done();
    }

    /// <summary>The drawing with numbered places; gives the room below.</summary>
    private static Box DrawPlaces(Canvas canvas, SheetRequest request, Box room)
    {
        var places = request.Results.Findings.Select((f, i) => (f.Place, Number: (i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture))).Where(p => p.Place is not null).Take(200).ToList();
        if (places.Count == 0) return room;
        const double RailMm = 11;
        var place = new Box(room.MinX + 5, room.MaxY - 66 + RailMm, room.MaxX - 5, room.MaxY - RailMm);
        var bounds = request.Results.Plan.Outline.Bounds;
        var view = PieceView.Fit(request.Results, bounds, place);
        var spare = (place.Height - (bounds.Height * view.Factor)) / 2;
        view = PieceView.Fit(request.Results, bounds, place with { MinY = place.MinY + (2 * spare) });
        canvas.Scale = view.ScaleName;
        view.DrawPiece(canvas, new Pen(0.35));
        var on = view.On(bounds);
        var pointers = places
            .GroupBy(p => p.Place!.Value)
            .Select(g => new Pointer(string.Join(" ", g.Select(p => p.Number)), view.On(g.Key)))
            .ToList();
        var (low, high) = (room.MinX, room.MaxX);
        LabelRail.Draw(canvas, pointers.Where(p => p.Tip.Y >= on.Centre.Y), on.MaxY + 6, low, high, Canvas.TextMm, bold: true, dot: true);
        LabelRail.Draw(canvas, pointers.Where(p => p.Tip.Y < on.Centre.Y), on.MinY - 6 - Canvas.TextMm, low, high, Canvas.TextMm, bold: true, dot: true);
        return room with { MaxY = on.MinY - RailMm - 3 };
    }

    private static FlowRow Row(Finding finding, int number, double width)
    {
        const double Left = 36;
        var textWidth = width - Left;
        var head = finding.Where.Length > 0 ? $"{finding.Where}: {finding.Message}" : finding.Message;
        var lines = new List<string>();
        if (finding.Found.Length > 0) lines.Add("Found " + finding.Found + (finding.Limit.Length > 0 ? ", limit " + finding.Limit : ""));
        else if (finding.Limit.Length > 0) lines.Add("Limit " + finding.Limit);
        if (finding.Source.Length > 0) lines.Add("Source: " + finding.Source + (finding.AssumedShop ? " (assumed shop)" : ""));
        else if (finding.AssumedShop) lines.Add("Rests on the assumed shop");
        if (finding.Remedy.Length > 0) lines.Add("What to do: " + finding.Remedy);
        var height = TextSpace.WrappedMm(head, textWidth, Canvas.TextMm, bold: true) + lines.Sum(l => TextSpace.WrappedMm(l, textWidth, 3)) + 5;
        return new FlowRow(Math.Max(height, 15), (canvas, box) =>
        {
            canvas.Line(new Point(box.MinX, box.MaxY), new Point(box.MaxX, box.MaxY), new Pen(0.18));
            var top = box.MaxY - 2;
            canvas.Fitted(number.ToString(System.Globalization.CultureInfo.InvariantCulture), new Point(box.MinX + 6, top - 4.5), 8, Canvas.TextMm, bold: true, anchor: TextAnchor.Middle);
            DrawSeverity(canvas, finding.Severity, new Box(box.MinX + 10.5, top - 6.5, box.MinX + 33, top));
            var y = canvas.Wrapped(head, new Point(box.MinX + Left, top), textWidth, Canvas.TextMm, bold: true);
            foreach (var line in lines) y = canvas.Wrapped(line, new Point(box.MinX + Left, y), textWidth, 3);
        });
    }

    /// <summary>Mark and word, told apart without colour: white on black, heavy frame, plain.</summary>
    private static void DrawSeverity(Canvas canvas, Severity severity, Box box)
    {
        if (severity == Severity.Error) canvas.Shade(box, Ink.Black);
        else if (severity == Severity.Warning) canvas.Frame4(box, new Pen(0.7));
        canvas.Text(FigureText.Of(severity), new Point(box.Centre.X, box.Centre.Y - 1.6), 3, severity != Severity.Note, TextAnchor.Middle, ink: severity == Severity.Error ? Ink.White : Ink.Black);
    }
}
