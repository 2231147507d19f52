using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A sheet turned a quarter turn counter-clockwise, for a roll whose width is the page's width.</summary>
internal static class TurnedSheet
{
    /// <summary>The turned sheet: what was its right side is now its upper side.</summary>
    public static Sheet Of(Sheet sheet)
    {
        var turn = new Transform(0, -1, 1, 0, sheet.HeightMm, 0);
        return sheet with { WidthMm = sheet.HeightMm, HeightMm = sheet.WidthMm, Marks = [.. sheet.Marks.Select(m => Turned(m, turn))] };
    }

    private static Mark Turned(Mark mark, Transform turn) => mark switch
    {
        StrokeMark s => s with { Path = s.Path.Transformed(turn) },
        FillMark f => f with { Loops = [.. f.Loops.Select(l => l.Transformed(turn))] },
        TextMark t => Upright(t with { At = turn.Map(t.At), AngleDegrees = t.AngleDegrees + 90 }),
        ClippedMarks c => new ClippedMarks(
            Box.Around(turn.Map(new Point(c.Window.MinX, c.Window.MinY)), turn.Map(new Point(c.Window.MaxX, c.Window.MaxY))),
            [.. c.Marks.Select(m => Turned(m, turn))]),
        _ => throw new InvalidOperationException("unknown mark"),
    };

    /// <summary>Words that would stand on their head, turned about in their own place; arrows in them keep pointing where they did.</summary>
    private static TextMark Upright(TextMark t)
    {
        if (t.AngleDegrees != 180) return t;
        var text = string.Concat(t.Text.Select(c => c switch { '↑' => '↓', '↓' => '↑', _ => c }));
        var anchor = t.Anchor switch { TextAnchor.Left => TextAnchor.Right, TextAnchor.Right => TextAnchor.Left, _ => TextAnchor.Middle };
        return t with { Text = text, At = t.At - new Point(0, t.HeightMm), Anchor = anchor, AngleDegrees = 0 };
    }
}
