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
        var (steps, segments) = (read.Steps, read.Paths[0].Segments);
        var written = new List<Segment>(by);
        var last = first + count - 1;
        while (last + 1 < segments.Length && steps[read.Makers[last + 1]].Kind is 'S' or 'T') written.Add(segments[++last]);

        var (from, to) = (read.Makers[first], read.Makers[last]);
        var closing = steps[to].Kind == 'Z';
        var start = Start(read, from);
        var end = closing ? steps[to].CommandOffset : End(read, to);
        if (closing && written[^1] is Line) written.RemoveAt(written.Count - 1);

        var s = new StringBuilder();
        foreach (var segment in written) PathData.PutStep(s, segment, unitMm);
        if (start > 0 && char.IsWhiteSpace(text[start - 1]) && s.Length > 0) s.Remove(0, 1);
        var tail = text.AsSpan(end);
        if (closing)
        {
            if (s.Length > 0) s.Append(' ');
        }
        else if (to + 1 < steps.Length && steps[to + 1].CommandOffset < 0)
        {
            // the step after it leaned on the letter before: it gets its own
            s.Append(' ').Append(steps[to + 1].Command).Append(' ');
            tail = tail.TrimStart(" ,\t");
        }

        return string.Concat(text.AsSpan(0, start), s.ToString(), tail);
    }

    private static int Start(PathDataResult read, int step) => read.Steps[step].CommandOffset is var at && at >= 0 ? at : read.Numbers[read.Steps[step].FirstNumber].Offset;

    private static int End(PathDataResult read, int step)
    {
        var number = read.Numbers[read.Steps[step].FirstNumber + read.Steps[step].NumberCount - 1];
        return number.Offset + number.Length;
    }
}
