using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>What a segment of the outline is.</summary>
public enum SegmentKind
{
    /// <summary>Straight.</summary>
    Straight,

    /// <summary>An arc of a circle.</summary>
    Arc,

    /// <summary>A cubic Bézier.</summary>
    Curve,
}

/// <summary>Changes the shape of the outline in the plan's text: only the commands that made the touched segments are written anew.</summary>
public static class OutlineEdit
{
    /// <summary>A straight segment made an arc gets a bow of this part of its length, to the outside.</summary>
    public const double GentleBow = 0.05;

    /// <summary>A new point closer than this to one that is there is refused, mm.</summary>
    private const double SamePlaceMm = 0.01;

    /// <summary>Moves a control point of a Bézier.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="segment">Number of the segment, from 0.</param>
    /// <param name="first">The one next to its start.</param>
    /// <param name="to">Where to.</param>
    public static Checked<PlanFile> MoveControl(PlanFile file, int segment, bool first, Point to)
        => Segment(file, segment) is not Bezier c ? No(file, "that segment is no curve", "make it a curve first")
            : Replace(file, segment, 1, first ? new Bezier(c.Start, to, c.Control2, c.End) : new Bezier(c.Start, c.Control1, to, c.End));

    /// <summary>Bends a circular arc so that its middle lies as far from its chord as a place does; its ends stay.</summary>
    public static Checked<PlanFile> SetBow(PlanFile file, int segment, Point through)
    {
        if (Segment(file, segment) is not Arc { IsCircle: true } a) return No(file, "that segment is no arc of a circle", "make it an arc first");
        return Bow.Over(a.Start, a.End, Bow.At(a.Start, a.End, through)) is { } arc ? Replace(file, segment, 1, arc) : No(file, "it is nearly straight there", "make it straight instead, or leave it a bow");
    }

    /// <summary>Gives a circular arc a radius; its ends, its side and whether it is the longer way round stay.</summary>
    public static Checked<PlanFile> SetRadius(PlanFile file, int segment, Length radius)
    {
        if (Segment(file, segment) is not Arc { IsCircle: true } a) return No(file, "that segment is no arc of a circle", "make it an arc first");
        var least = a.Start.To(a.End) / 2;
        return radius.Mm >= least - 1e-9
            ? Replace(file, segment, 1, Arc.Through(a.Start, a.End, radius.Mm, Math.Abs(a.Sweep) > Math.PI, a.IsCounterClockwise))
            : No(file, $"a radius of {Shown.Both(radius)} does not reach from end to end", $"{Shown.Both(Length.OfMm(least))} is the smallest that does");
    }

    /// <summary>Adds a point at the nearest place of the outline; the shape stays.</summary>
    public static Checked<PlanFile> AddPoint(PlanFile file, Point near)
    {
        var (spot, at, _) = Nearest.On(file.Plan.Outline, near);
        var s = file.Plan.Outline.Segments[spot.Segment];
        if (Math.Min(at.To(s.Start), at.To(s.End)) < SamePlaceMm) return No(file, "a point of the outline is there already", "choose a place between two points");
        return Replace(file, spot.Segment, 1, s.Part(0, spot.T), s.Part(spot.T, 1));
    }

    /// <summary>Takes a point away: the segments before and after it become one.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="segment">Number of the segment that starts at the point.</param>
    public static Checked<PlanFile> RemovePoint(PlanFile file, int segment)
    {
        var all = file.Plan.Outline.Segments;
        if (Segment(file, segment) is not { } after) return NoPoint(file);
        var before = all[(segment + all.Length - 1) % all.Length];
        var joined = JoinedSegments.Of(before, after);
        if (all.Length < 3 || (all.Length == 3 && all.All(s => s is Line))) return No(file, "an outline needs what is left of its points", "move the point instead");
        return Replace(file, (segment + all.Length - 1) % all.Length, 2, joined);
    }

    /// <summary>Makes a segment straight, an arc or a curve.</summary>
    public static Checked<PlanFile> SetKind(PlanFile file, int segment, SegmentKind kind)
    {
        if (Segment(file, segment) is not { } s) return NoPoint(file);
        if (Kind(s) == kind) return Checked<PlanFile>.Good(file);
        var chord = s.Start.To(s.End);
        switch (kind)
        {
            case SegmentKind.Straight:
                return Replace(file, segment, 1, new Line(s.Start, s.End));
            case SegmentKind.Curve:
                return s is Arc arc ? OutlineText.Replace(file, segment, 1, CurveOfArc.Of(arc)) : Replace(file, segment, 1, new Bezier(s.Start, s.At(1.0 / 3), s.At(2.0 / 3), s.End));
            default:
                var bow = Bow.At(s.Start, s.End, s.At(0.5));
                var outside = Moments.Of(file.Plan.Outline).AreaMm2 > 0 ? -1 : 1;
                return Bow.Over(s.Start, s.End, bow) is { } as1 && s is not Line ? Replace(file, segment, 1, as1)
                    : Bow.Over(s.Start, s.End, outside * GentleBow * chord) is { } gentle ? Replace(file, segment, 1, gentle)
                    : NoPoint(file);
        }
    }

    /// <summary>Rounds the corner at a point with a true arc touching both neighbours.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="segment">Number of the segment that starts at the point.</param>
    /// <param name="radius">Radius.</param>
    public static Checked<PlanFile> RoundCorner(PlanFile file, int segment, Length radius)
    {
        var all = file.Plan.Outline.Segments;
        if (Segment(file, segment) is not { } after) return NoPoint(file);
        var previous = (segment + all.Length - 1) % all.Length;
        if (!RoundedCorner.IsCorner(all[previous], after)) return No(file, "the outline has no corner there", "choose a point where it turns");
        if (RoundedCorner.Of(all[previous], after, radius.Mm) is { } round)
        {
            // a sharpened part that ended at the corner ends where the arc takes over
            var part = file.Plan.Edge;
            return OutlineText.Replace(file, previous, 2, [round.Before, round.Arc, round.After], part is null ? null : new SharpenedPart(
                part.From.To(after.Start) < SamePlaceMm ? round.After.Start : part.From,
                part.To.To(after.Start) < SamePlaceMm ? round.Before.End : part.To));
        }

        var most = RoundedCorner.GreatestRadius(all[previous], after);
        return No(file, $"a radius of {Shown.Both(radius)} does not fit this corner", most > 0 ? $"{Shown.Both(Length.OfMm(most))} is the largest that does" : "take a point beside it away first");
    }

    /// <summary>What a segment is; null for an arc of an ellipse.</summary>
    public static SegmentKind? Kind(Segment segment) => segment switch
    {
        Line => SegmentKind.Straight,
        Bezier => SegmentKind.Curve,
        Arc { IsCircle: true } => SegmentKind.Arc,
        _ => null,
    };

    private static Segment? Segment(PlanFile file, int segment)
        => segment >= 0 && segment < file.Plan.Outline.Segments.Length ? file.Plan.Outline.Segments[segment] : null;

    private static Checked<PlanFile> Replace(PlanFile file, int first, int count, params ImmutableArray<Segment> by) => OutlineText.Replace(file, first, count, by);

    private static Checked<PlanFile> NoPoint(PlanFile file) => No(file, "the outline has no such point any more", "choose another");

    private static Checked<PlanFile> No(PlanFile file, string message, string remedy) => PlanEdit.Refused(file, message, remedy);
}
