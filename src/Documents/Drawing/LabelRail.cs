using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A label and the spot it points at.</summary>
/// <param name="Text">The label.</param>
/// <param name="Tip">The spot on the sheet.</param>
internal readonly record struct Pointer(string Text, Point Tip);

/// <summary>Labels in one row above or below a drawing, each with a line to its spot; they never overlap.</summary>
internal static class LabelRail
{
    private const double GapMm = 2;

    /// <summary>Draws the row; when there are too many, every second, third, ... is named.</summary>
    /// <param name="canvas">Where.</param>
    /// <param name="pointers">Labels.</param>
    /// <param name="baseY">Base line of the row.</param>
    /// <param name="low">Left end of the row.</param>
    /// <param name="high">Right end of the row.</param>
    /// <param name="heightMm">Height of the lettering.</param>
    /// <param name="bold">Bold face.</param>
    /// <param name="dot">Ends the lines in a dot, for spots inside the outline, instead of nothing.</param>
    public static void Draw(Canvas canvas, IEnumerable<Pointer> pointers, double baseY, double low, double high, double heightMm, bool bold = false, bool dot = false)
    {
        var all = pointers.OrderBy(p => p.Tip.X).Select(p => p with { Text = TextSpace.Fit(p.Text, 45, heightMm, bold).Text }).ToImmutableArray();
        for (var step = 1; step <= all.Length; step *= 2)
        {
            var some = all.Where((_, i) => i % step == 0).ToImmutableArray();
            var sizes = some.Select(p => Lettering.Width(p.Text, heightMm, bold)).ToImmutableArray();
            if (Spread.Of([.. some.Select(p => p.Tip.X)], sizes, GapMm, low, high) is not { } places) continue;
            for (var i = 0; i < some.Length; i++) One(canvas, some[i], places[i], baseY, heightMm, bold, dot);
            return;
        }
    }

    private static void One(Canvas canvas, Pointer pointer, double x, double baseY, double heightMm, bool bold, bool dot)
    {
        canvas.Text(pointer.Text, new Point(x, baseY), heightMm, bold, TextAnchor.Middle);
        var below = pointer.Tip.Y < baseY;
        var from = new Point(x, below ? baseY - (heightMm * 0.45) : baseY + (heightMm * 1.25));

        // an upright stretch at the label, then straight to the spot
        var knee = new Point(x, below ? from.Y - 1.5 : from.Y + 1.5);
        canvas.Polyline([from, knee, pointer.Tip], new Pen(0.18));
        if (dot) canvas.Fill(Path.Circle(pointer.Tip, 0.5));
    }
}
