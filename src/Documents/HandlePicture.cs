using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The cuts across the handle side by side as a picture by itself.</summary>
public static class HandlePicture
{
    private const double GapMm = 8, WordsMm = 12;

    /// <summary>The cuts, front to rear, steel shaded; null when it is not known where the handle is.</summary>
    public static Sheet? Of(HandlePlan p)
    {
        if (p.Cuts.IsEmpty) return null;
        var each = Math.Max(30, p.Cuts.Max(c => c.Height.Mm)) + GapMm;
        var (width, height) = (p.Cuts.Length * each, p.Cuts.Max(c => c.Width.Mm) + WordsMm + 4);
        var canvas = new Canvas("handle", "Handle", new SheetFrame(width, height, new Box(0, 0, width, height)));
        for (var i = 0; i < p.Cuts.Length; i++) One(canvas, p.Cuts[i], new Point((i + 0.5) * each, WordsMm + ((height - WordsMm) / 2)));
        return canvas.Done();
    }

    private static void One(Canvas canvas, HandleCut cut, Point middle)
    {
        var (a, t) = (0.5 * cut.Height.Mm, 0.5 * cut.Tang.Mm);
        canvas.Shade(new Box(middle.X - a, middle.Y - t, middle.X + a, middle.Y + t), Ink.Pale);
        canvas.Stroke(cut.Outline.Transformed(Transform.Shift(middle)), Pen.Wide);
        foreach (var y in new[] { middle.Y - t, middle.Y + t }) canvas.Line(new Point(middle.X - a, y), new Point(middle.X + a, y), Pen.Narrow);
        canvas.Text($"at {Shown.Number(cut.Station.Mm, 0)} mm ({Shown.Number(cut.Station.Inches, 2)} in)", new Point(middle.X, 7), Canvas.SmallMm, anchor: TextAnchor.Middle);
        canvas.Text($"girth {Shown.Number(cut.Girth.Mm, 0)} mm ({Shown.Number(cut.Girth.Inches, 2)} in)", new Point(middle.X, 2.5), Canvas.SmallMm, anchor: TextAnchor.Middle);
    }
}
