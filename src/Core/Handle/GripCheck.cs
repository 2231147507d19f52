using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A handle against the hand that will hold it; guidance, not law.</summary>
/// <param name="SmallHand">Length of the smallest hand it is looked at for.</param>
/// <param name="LargeHand">Length of the largest.</param>
/// <param name="SmallBreadth">Breadth of the smallest.</param>
/// <param name="LargeBreadth">Breadth of the largest.</param>
/// <param name="IsSurvey">Whether the hands are those of the survey, not the plan's own.</param>
/// <param name="IsGloved">Whether a glove is worn.</param>
/// <param name="Room">Length of the handle there is for four fingers.</param>
/// <param name="LargestThatFits">Breadth of the largest hand whose four fingers have room.</param>
/// <param name="Least">Least girth and where.</param>
/// <param name="Most">Greatest girth and where.</param>
/// <param name="Swell">How much wider it is in its middle than at the narrower of its ends.</param>
/// <param name="EdgeAway">From the front of the grip to the nearest place of the sharpened part; null without an edge.</param>
/// <param name="KnuckleRoom">From the underside of the handle down to the level of the edge, where the edge runs along the handle; null when it does not.</param>
/// <param name="EdgeRound">Round or chamfer of the long edges the hand lies on; null when not said.</param>
/// <param name="IsBare">Whether the hand holds bare steel.</param>
public sealed record GripCheck(
    Length SmallHand,
    Length LargeHand,
    Length SmallBreadth,
    Length LargeBreadth,
    bool IsSurvey,
    bool IsGloved,
    Length Room,
    Length LargestThatFits,
    HandleCut Least,
    HandleCut Most,
    Length Swell,
    Length? EdgeAway,
    Length? KnuckleRoom,
    Length? EdgeRound,
    bool IsBare)
{
    /// <summary>More than the breadth of the hand that four fingers want: room between them and at the ends; common practice.</summary>
    public const double OverBreadthMm = 10;

    /// <summary>What a glove adds to the breadth; common practice.</summary>
    public const double GloveMm = 15;

    /// <summary>Least distance from the first finger to the edge; common practice.</summary>
    public const double LeastFromEdgeMm = 10;

    /// <summary>Room for the knuckles over the board; common practice, a finger being 18 to 22 mm thick.</summary>
    public const double KnucklesMm = 20;

    /// <summary>Least round under the hand: scales 2 mm, bare steel 0.3 mm; common practice.</summary>
    public double LeastRoundMm => IsBare ? 0.3 : 2;

    /// <summary>Best round for the smallest and the largest hand.</summary>
    public (Length Small, Length Large) BestRound => (BestGrip.Diameter(SmallHand), BestGrip.Diameter(LargeHand));

    /// <summary>Whether four fingers of the largest hand have room.</summary>
    public bool HasRoom => LargestThatFits >= LargeBreadth;

    /// <summary>The check of a plan; null when it is not known where the hand holds.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="shape">Its scale; null without.</param>
    /// <param name="cord">Its cord; null without.</param>
    /// <param name="cuts">Cuts across the handle.</param>
    public static GripCheck? Of(Results r, ScaleShape? shape, CordWrap? cord, ImmutableArray<HandleCut> cuts)
    {
        if (cuts.Length < 3 || HandleCuts.Axis(r, shape) is not var (from, along, length)) return null;
        var hand = r.Plan.Hand;
        var (small, large) = hand?.Length is { } own ? (own, own) : (Length.OfMm(HandSurvey.Length.SmallMm), Length.OfMm(HandSurvey.Length.LargeMm));
        var (narrow, broad) = hand?.Breadth is { } wide ? (wide, wide) : (Length.OfMm(HandSurvey.Breadth.SmallMm), Length.OfMm(HandSurvey.Breadth.LargeMm));
        var gloved = hand?.IsGloved ?? false;
        var middle = cuts[1..^1].Max(c => c.Width.Mm);
        return new GripCheck(
            small,
            large,
            narrow,
            broad,
            hand?.Length is null && hand?.Breadth is null,
            gloved,
            Length.OfMm(length),
            Length.OfMm(Math.Max(0, length - OverBreadthMm - (gloved ? GloveMm : 0))),
            cuts.MinBy(c => c.Girth.Mm)!,
            cuts.MaxBy(c => c.Girth.Mm)!,
            Length.OfMm(middle - Math.Min(cuts[0].Width.Mm, cuts[^1].Width.Mm)),
            ToEdge(r, shape, from, along),
            Knuckles(r, from, along, length),
            shape is not null ? Round(shape) : cord is not null ? cord.Diameter * 0.5 : r.Plan.BrokenEdges?.Outline,
            shape is null && cord is null);
    }

    private static Length? Round(ScaleShape shape) => shape.Plan.Section == HandleSection.Slab ? Length.OfMm(shape.LegMm) : null;

    // from the nearest of both ends and the middle of the very front
    private static Length? ToEdge(Results r, ScaleShape? shape, Point from, Point along)
    {
        if (EdgeSpan.Of(r.Plan, r.Piece) is not { } edge) return null;
        Point[] front = shape is { Outline.Front: var f } ? [f.Start, f.At(0.5), f.End] : HandleCuts.Across(r.Piece.Outer, from, along) is var (low, high) ? [from + (along.Left * low), from, from + (along.Left * high)] : [from];
        return Length.OfMm(front.Min(p => Nearest.Distance(edge.Path, p)));
    }

    // where the edge runs the way of the handle: how far the handle's underside lies above the line of the edge's heel
    private static Length? Knuckles(Results r, Point from, Point along, double length)
    {
        if (EdgeSpan.Of(r.Plan, r.Piece) is not { } edge) return null;
        var chord = edge.Path.End - edge.Path.Start;
        if (chord.Length < 1 || Math.Abs(chord.Unit.Dot(along)) < 0.8) return null;
        var across = along.Left;
        var heel = edge.Path.Start.To(from) < edge.Path.End.To(from) ? edge.Path.Start : edge.Path.End;
        var side = Math.Sign((heel - from).Dot(across));
        if (side == 0) return null;
        var rays = new RayHits(r.Piece.Outer.Segments);
        var hits = new RayHit[rays.MostHits];
        var lowest = 0.0;
        for (var i = 0; i <= 20; i++)
        {
            var at = from + (along * (length * i / 20));
            var n = rays.Along(at, across * side, 0, r.Piece.Outer.Bounds.Height + 1, hits);
            if (n > 0) lowest = Math.Max(lowest, hits[0].Distance);
        }

        var level = Math.Max((edge.Path.Start - from).Dot(across) * side, (edge.Path.End - from).Dot(across) * side);
        foreach (var s in edge.Path.Segments) level = Math.Max(level, Math.Max((s.Start - from).Dot(across) * side, (s.At(0.5) - from).Dot(across) * side));
        return Length.OfMm(level - lowest);
    }
}
