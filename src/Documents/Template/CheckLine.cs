using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A slanting line over all sheets, of a stated round length between two ringed ends: a kink shows a bad join, a wrong length a wrong scale or a slipped sheet.</summary>
/// <param name="From">Lower left end, assembled template, true mm.</param>
/// <param name="To">Upper right end.</param>
internal sealed record CheckLine(Point From, Point To)
{
    /// <summary>Its length, mm.</summary>
    public double LengthMm => From.To(To);

    /// <summary>"check line 410 mm (16.142 in) from ring to ring".</summary>
    public string Words => $"check line {Shown.Number(LengthMm, 0)} mm ({Shown.Inch(Length.OfMm(LengthMm))}) ring to ring";

    /// <summary>The line for a template; in the free band beside the piece when there is one, else from corner to corner.</summary>
    /// <param name="plan">More than one sheet.</param>
    /// <param name="piece">Box of the piece on the assembled template.</param>
    public static CheckLine Of(TilePlan plan, Box piece)
    {
        const double end = 16;
        var (w, h) = (plan.UsableWidthMm + ((plan.Columns - 1) * plan.StepXMm), plan.UsableHeightMm + ((plan.Rows - 1) * plan.StepYMm));
        var (low, high) = (end, h - end);
        if (plan.Rows == 1 && h - piece.MaxY > 30) (low, high) = (piece.MaxY + 6, Math.Min(h - 6, piece.MaxY + 30));
        else if (plan.Rows == 1 && piece.MinY > 30) (low, high) = (Math.Max(6, piece.MinY - 30), piece.MinY - 6);
        var (from, to) = (new Point(end, low), new Point(w - end, high));
        var whole = Math.Floor(from.To(to) / 10) * 10;
        return new CheckLine(from, from + ((to - from).Unit * whole));
    }

    /// <summary>The line on one sheet.</summary>
    public IEnumerable<Mark> Draw(Transform assembledToSheet)
    {
        var pen = new Pen(0.13);
        yield return new StrokeMark(new Path([new Line(From, To)], closed: false).Transformed(assembledToSheet), pen);
        foreach (var end in new[] { From, To })
        {
            yield return new StrokeMark(Path.Circle(end, 2).Transformed(assembledToSheet), pen);
            var square = (To - From).Unit.Left * 2.5;
            yield return new StrokeMark(new Path([new Line(end - square, end + square)], closed: false).Transformed(assembledToSheet), pen);
        }
    }
}
