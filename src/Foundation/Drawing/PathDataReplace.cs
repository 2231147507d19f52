using System.Text;

namespace Tangwright.Foundation;

/// <summary>Puts other segments in the place of some of a path's, rewriting only the commands that made them.</summary>
public static class PathDataReplace
{
    /// <summary>The text with segments <paramref name="first"/> to <paramref name="first"/> + <paramref name="count"/> − 1 replaced. The new ones start and end where the old ones did. A curve of S or T that follows is written out, because it leaned on its neighbour. Null when the text has a fault or more than one path.</summary>
    /// <param name="text">The path data.</param>
    /// <param name="unitMm">Length of one unit of the text, mm.</param>
    /// <param name="first">First segment replaced, from 0.</param>
    /// <param name="count">How many, at least 1, not over the end of the path.</param>
    /// <param name="by">What takes their place.</param>
    public static string? Of(string text, double unitMm, int first, int count, IReadOnlyList<Segment> by)
    {
        var read = PathData.Read(text, unitMm);
        if (read.Fault is not null || read.Paths.Length != 1 || first < 0 || count < 1 || first + count > read.Makers.Length) return null;
        var (written, last) = WithLeaning(read, first + count - 1, by);
        return Apply(text, [Change(text, read, read.Makers[first], read.Makers[last], written, unitMm)]);
    }

    /// <summary>The text with the last and the first segment of a closed path replaced, and its start moved to where the first of the new ones there starts. Null when the text has a fault, more than one path or fewer than three segments.</summary>
    /// <param name="text">The path data.</param>
    /// <param name="unitMm">Length of one unit of the text, mm.</param>
    /// <param name="last">What takes the place of the last segment; it starts where that one did and ends at the new start.</param>
    /// <param name="first">What takes the place of the first segment, which it may leave out; it starts at the new start and ends where the first one did.</param>
    public static string? OverStart(string text, double unitMm, IReadOnlyList<Segment> last, IReadOnlyList<Segment> first)
    {
        var read = PathData.Read(text, unitMm);
        if (read.Fault is not null || read.Paths is not [{ Closed: true, Segments.Length: >= 3 }] || read.Steps[0].Kind != 'M') return null;
        var n = read.Makers.Length;
        var (written, until) = WithLeaning(read, 0, first);
        if (until >= n - 1) return null;

        // steps without a length beside the start would get one when it moves: they go too
        var end = read.Makers[n - 1];
        while (end + 1 < read.Steps.Length && read.Steps[end + 1].Kind is not ('M' or 'Z')) end++;
        if (end + 1 < read.Steps.Length && read.Steps[end + 1].Kind == 'M') return null;
        var (x, y) = (read.Numbers[0], read.Numbers[1]);
        var start = last[^1].End;
        var between = text[(x.Offset + x.Length)..y.Offset];
        return Apply(
            text,
            [
                (x.Offset, y.Offset + y.Length, $"{PathData.Number(start.X, unitMm)}{(between.Length > 0 ? between : " ")}{PathData.Number(start.Y, unitMm)}"),
                Change(text, read, 1, read.Makers[until], written, unitMm),
                Change(text, read, read.Makers[n - 1], end, last, unitMm),
            ]);
    }

    /// <summary>What is written and the last segment it stands for, curves that mirror their neighbour's control point included.</summary>
    private static (List<Segment> Written, int Last) WithLeaning(PathDataResult read, int last, IReadOnlyList<Segment> by)
    {
        var written = new List<Segment>(by);
        var segments = read.Paths[0].Segments;
        while (last + 1 < segments.Length && read.Steps[read.Makers[last + 1]].Kind is 'S' or 'T') written.Add(segments[++last]);
        return (written, last);
    }

    private static (int From, int To, string By) Change(string text, PathDataResult read, int from, int to, IReadOnlyList<Segment> written, double unitMm)
    {
        var steps = read.Steps;
        var closing = steps[to].Kind == 'Z';
        var (start, end) = (Start(read, from), closing ? steps[to].CommandOffset : End(read, to));
        var s = new StringBuilder();
        for (var i = 0; i < written.Count - (closing && written[^1] is Line ? 1 : 0); i++) PathData.PutStep(s, written[i], unitMm);
        if (start > 0 && char.IsWhiteSpace(text[start - 1]) && s.Length > 0) s.Remove(0, 1);
        if (closing)
        {
            if (s.Length > 0) s.Append(' ');
        }
        else if (to + 1 < steps.Length && steps[to + 1].CommandOffset < 0)
        {
            // the step after it leaned on the letter before: it gets its own
            s.Append(' ').Append(steps[to + 1].Command).Append(' ');
            while (end < text.Length && text[end] is ' ' or ',' or '\t') end++;
        }

        // nothing in its place: one space is enough
        if (s.Length == 0 && start > 0 && char.IsWhiteSpace(text[start - 1]) && end < text.Length && text[end] == ' ') end++;
        return (start, end, s.ToString());
    }

    private static string Apply(string text, ReadOnlySpan<(int From, int To, string By)> changes)
    {
        for (var i = changes.Length - 1; i >= 0; i--) text = string.Concat(text.AsSpan(0, changes[i].From), changes[i].By, text.AsSpan(changes[i].To));
        return text;
    }

    private static int Start(PathDataResult read, int step) => read.Steps[step].CommandOffset is var at && at >= 0 ? at : read.Numbers[read.Steps[step].FirstNumber].Offset;

    private static int End(PathDataResult read, int step)
    {
        var number = read.Numbers[read.Steps[step].FirstNumber + read.Steps[step].NumberCount - 1];
        return number.Offset + number.Length;
    }
}
