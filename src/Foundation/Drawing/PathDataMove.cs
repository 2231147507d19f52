using System.Text;

namespace Tangwright.Foundation;

/// <summary>Writes a moved point back into path data, changing only the numbers that must change.</summary>
public static class PathDataMove
{
    /// <summary>The text with the end of one step moved. Every other end and control point stays where it was: where the next step counts from the moved point its numbers are changed too, and H or V becomes a line when it no longer fits. The curve of S or T follows, because it mirrors its neighbour. Where the subpath's last step ends on its first point both move. Null when the text has a fault or the step is a Z.</summary>
    /// <param name="text">The path data.</param>
    /// <param name="unitMm">Length of one unit of the text, mm.</param>
    /// <param name="step">Index among <see cref="PathDataResult.Steps"/>.</param>
    /// <param name="to">New place, mm.</param>
    public static string? Of(string text, double unitMm, int step, Point to)
    {
        var read = PathData.Read(text, unitMm);
        if (read.Fault is not null || step < 0 || step >= read.Steps.Length || read.Steps[step].Kind == 'Z') return null;
        var ends = new Point[read.Steps.Length];
        for (var i = 0; i < ends.Length; i++) ends[i] = read.Steps[i].End;
        var moved = to - ends[step];
        if (moved == default) return text;
        ends[step] = to;
        if (Twin(read, step) is { } twin) ends[twin] = to;
        for (var i = 0; i < ends.Length; i++)
        {
            if (read.Steps[i].Kind == 'Z') ends[i] = ends[MoveOf(read, i)];
        }

        var s = new StringBuilder(text);
        for (var i = ends.Length - 1; i >= 0; i--) Rewrite(s, read, i, ends, unitMm);
        return s.ToString();
    }

    private static int MoveOf(PathDataResult read, int step)
    {
        while (read.Steps[step].Kind != 'M') step--;
        return step;
    }

    /// <summary>The other of first and last step of a subpath, when both end in the same place.</summary>
    private static int? Twin(PathDataResult read, int step)
    {
        var first = MoveOf(read, step);
        var last = first;
        while (last + 1 < read.Steps.Length && read.Steps[last + 1].Kind is not ('M' or 'Z')) last++;
        if (last == first || read.Steps[first].End.To(read.Steps[last].End) > 1e-6) return null;
        return step == first ? last : step == last ? first : null;
    }

    private static void Rewrite(StringBuilder s, PathDataResult read, int index, Point[] ends, double unitMm)
    {
        var step = read.Steps[index];
        if (step.NumberCount == 0) return;
        Point Was(int i) => i < 0 ? default : read.Steps[i].End;
        Point Is(int i) => i < 0 ? default : ends[i];
        var startMoved = Is(step.StartStep) - Was(step.StartStep);
        var endMoved = ends[index] - step.End;
        var origin = step.IsRelative ? startMoved : default;
        if (step.Kind is 'H' or 'V')
        {
            // the coordinate it does not name is taken from its start
            var across = step.Kind == 'H' ? endMoved.Y - startMoved.Y : endMoved.X - startMoved.X;
            if (across != 0)
            {
                var from = step.IsRelative ? Is(step.StartStep) : default;
                var p = ends[index] - from;
                Replace(s, read, index, $"{(step.IsRelative ? 'l' : 'L')} {PathData.Number(p.X, unitMm)} {PathData.Number(p.Y, unitMm)}");
                return;
            }

            Shift(s, read.Numbers[step.FirstNumber], step.Kind == 'H' ? endMoved.X - origin.X : endMoved.Y - origin.Y, unitMm);
            return;
        }

        var last = step.FirstNumber + step.NumberCount - 1;
        Shift(s, read.Numbers[last], endMoved.Y - origin.Y, unitMm);
        Shift(s, read.Numbers[last - 1], endMoved.X - origin.X, unitMm);
        if (step.Kind == 'A') return;
        for (var i = last - 2; i > step.FirstNumber; i -= 2)
        {
            Shift(s, read.Numbers[i], -origin.Y, unitMm);
            Shift(s, read.Numbers[i - 1], -origin.X, unitMm);
        }
    }

    /// <summary>Puts a line in the place of H or V; steps after it that leaned on its letter get their own.</summary>
    private static void Replace(StringBuilder s, PathDataResult read, int index, string line)
    {
        var step = read.Steps[index];
        var number = read.Numbers[step.FirstNumber];
        if (index + 1 < read.Steps.Length && read.Steps[index + 1] is { CommandOffset: < 0, Kind: 'H' or 'V' } next && !NamesItself(s, read.Numbers[next.FirstNumber].Offset, number))
        {
            s.Insert(number.Offset + number.Length, $" {next.Command}");
        }

        var from = step.CommandOffset >= 0 ? step.CommandOffset : number.Offset;
        s.Remove(from, number.Offset + number.Length - from);
        s.Insert(from, step.CommandOffset >= 0 || char.IsWhiteSpace(s[from - 1]) ? line : " " + line);
    }

    private static bool NamesItself(StringBuilder s, int offset, PathNumber before)
    {
        for (var i = before.Offset + before.Length; i < Math.Min(offset + 2, s.Length); i++)
        {
            if (s[i] is 'L' or 'l' or 'H' or 'h' or 'V' or 'v') return true;
        }

        return false;
    }

    private static void Shift(StringBuilder s, PathNumber number, double byMm, double unitMm)
    {
        if (byMm == 0) return;
        var text = PathData.Number((number.Value * unitMm) + byMm, unitMm);
        s.Remove(number.Offset, number.Length);
        s.Insert(number.Offset, text);

        // compact numbers lean on a sign or a point: keep them apart
        var after = number.Offset + text.Length;
        if (after < s.Length && (char.IsAsciiDigit(s[after]) || (s[after] == '.' && !text.Contains('.')))) s.Insert(after, ' ');
        if (number.Offset > 0 && text[0] != '-' && (char.IsAsciiDigit(s[number.Offset - 1]) || s[number.Offset - 1] == '.')) s.Insert(number.Offset, ' ');
    }
}
