using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Does the outline bound a piece?</summary>
public static class OutlineShapeFindings
{
    /// <summary>Under this length or height there is no piece, mm; common practice.</summary>
    public const double LeastSizeMm = 5;

    /// <summary>No more crossings than these are told one by one.</summary>
    private const int MostTold = 5;

    /// <summary>Crossings, touchings and doubled stretches.</summary>
    public static IEnumerable<Finding> CrossesItself(Results r)
    {
        var met = Crossings.Of(r.Plan.Outline, atMost: 100);
        foreach (var m in met.Take(MostTold))
        {
            var (i, j) = (m.First.Segment + 1, m.Second.Segment + 1);
            var strands = i == j ? $"stretch {i}" : $"stretches {i} and {j}";
            var loop = Length.OfMm(Math.Min(LoopMm(r.Plan.Outline, m), r.Plan.Outline.Length - LoopMm(r.Plan.Outline, m)));
            var what = m.Kind switch
            {
                MeetingKind.Crossing => "crosses itself",
                MeetingKind.Touch => "touches itself",
                _ => "runs along itself",
            };
            var more = met.Length > MostTold ? $" ({met.Length} such places in all)" : "";
            yield return new Finding(
                FindingCodes.OutlineCrossesItself,
                Severity.Error,
                $"outline, {strands}",
                m.At,
                $"The outline {what} at x {Shown.Mm(Length.OfMm(m.At.X))}, y {Shown.Mm(Length.OfMm(m.At.Y))}: {strands} of its path{more}.",
                $"{what}; the smaller loop is {Shown.Both(loop)} long",
                "an outline that meets itself nowhere",
                "geometry",
                m.Kind == MeetingKind.Overlap ? $"take out one of the doubled {strands}" : $"move a point of {strands} until they are clear of one another, or cut out the loop of {Shown.Both(loop)}");
        }
    }

    /// <summary>An outline too small to be a piece.</summary>
    public static IEnumerable<Finding> TooSmall(Results r)
    {
        var (length, height) = (r.Outline.Length, r.Outline.Height);
        var area = Math.Abs(r.Outline.Area.Mm2);
        if (Length.Min(length, height).Mm >= LeastSizeMm && area >= LeastSizeMm * LeastSizeMm) yield break;
        yield return new Finding(
            FindingCodes.OutlineTooSmall,
            Severity.Error,
            "outline",
            r.Plan.Outline.Start,
            $"The outline is {Shown.Both(length)} long and {Shown.Both(height)} high and holds {Shown.Number(area, 1)} mm²: not a piece.",
            $"{Shown.Both(length)} by {Shown.Both(height)}, {Shown.Number(area, 1)} mm²",
            $"{Shown.Both(Length.OfMm(LeastSizeMm))} each way",
            SourceTag.CommonPractice,
            length.Mm < 20 && height.Mm < 20 ? "look at the plan's units: numbers meant as inches are read as mm" : "draw the outline round the piece");
    }

    private static double LoopMm(Path path, Meeting m)
    {
        if (m.First.Segment == m.Second.Segment) return path.Segments[m.First.Segment].Part(m.First.T, m.Second.T).Length;
        var sum = path.Segments[m.First.Segment].Length * (1 - m.First.T);
        for (var i = m.First.Segment + 1; i < m.Second.Segment; i++) sum += path.Segments[i].Length;
        return sum + (path.Segments[m.Second.Segment].Length * m.Second.T);
    }
}
