using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A bar with its pieces, to scale: outlines, numbers, the drop.</summary>
internal static class BarView
{
    private static readonly double[] Scales = [1, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100, 150];

    /// <summary>The scale at which a bar fits a width: so many mm for one on paper.</summary>
    public static double ScaleFor(double barMm, double widthMm) => Scales.FirstOrDefault(s => barMm / s <= widthMm, barMm / widthMm);

    /// <summary>Draws it with its lower left corner given.</summary>
    public static void Draw(Canvas canvas, StockPlan s, BarCut cut, Point corner, double scale)
    {
        var f = 1 / scale;
        var bar = new Box(corner.X, corner.Y, corner.X + (cut.Length.Mm * f), corner.Y + (cut.Width.Mm * f));
        var row = corner.X + ((cut.Row.Mm + 0) * f);
        if (cut.Drop.Mm > 0)
        {
            canvas.Shade(new Box(bar.MaxX - (cut.Drop.Mm * f), bar.MinY, bar.MaxX, bar.MaxY));
            if (cut.Drop.Mm * f > 24) canvas.Fitted("drop", new Point(bar.MaxX - (0.5 * cut.Drop.Mm * f), bar.Centre.Y - 1.7), (cut.Drop.Mm * f) - 2, Canvas.TextMm, anchor: TextAnchor.Middle);
            canvas.Line(new Point(row, bar.MinY), new Point(row, bar.MaxY), new Pen(0.25, LineKind.Dashed));
        }

        var isCrowded = !s.IsOnSheets && cut.Places.Length > 1 && (cut.Places[^1].AlongMm - cut.Places[0].AlongMm) * f / (cut.Places.Length - 1) <= 7;
        var numbers = new List<Box>();
        for (var i = 0; i < cut.Places.Length; i++)
        {
            var p = cut.Places[i];
            var r = s.Patterns[p.Pattern].Results;
            var turn = Lies.Turn(p.Lie, r.Plan.Outline.Bounds).Then(Transform.Shift(new Point(p.AlongMm, p.UpMm))).Then(Transform.Scale(f, f)).Then(Transform.Shift(corner));
            canvas.Stroke(r.Plan.Outline.Transformed(turn), new Pen(0.25));
            var number = new TextMark($"{i + 1}", turn.Map(r.Outline.Centroid) - new Point(0, 1.7), Canvas.TextMm, true, TextAnchor.Middle, 0, Ink.Black);
            if (isCrowded || TextSpace.Of(number) is var room && numbers.Any(n => n.Grown(0.3).Touches(room))) continue;
            numbers.Add(TextSpace.Of(number));
            canvas.Add(number);
        }

        // straight cuts, where the pieces are laid for them
        foreach (var l in cut.SawLines.Where(l => l.RoomMm >= s.Room.Kerf.Mm - 1e-6)) canvas.Line(new Point(corner.X + (l.LowMm * f), bar.MinY), new Point(corner.X + (l.HighMm * f), bar.MaxY), new Pen(0.25, LineKind.Dashed));
        canvas.Frame4(bar, Pen.Wide);
    }
}
