using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Whether a saw can make a cut in the piece as it then is.</summary>
/// <param name="Saw">The saw.</param>
/// <param name="StayAway">Holes that are there already, with the distance a cut keeps from their rim, mm.</param>
public sealed record SawLimits(Saw Saw, ImmutableArray<(Point At, double RadiusMm)> StayAway)
{
    /// <summary>A cut keeps this far from the rim of a finished hole, mm: twice the stray of the cut and 1 mm.</summary>
    public double StayAwayMm => 1 + (2 * SawPractice.WanderMm(Saw));

    /// <summary>Why it cannot; null when it can.</summary>
    /// <param name="piece">The piece before the cut, convex.</param>
    /// <param name="cut">The cut.</param>
    public string? Refuses(ImmutableArray<Point> piece, SupportCut cut)
    {
        if (ConvexClip.Chord(piece, cut.Normal, cut.OffsetMm) is not { } chord) return null;
        return Refuses(piece, cut.Normal, cut.OffsetMm, chord.From.To(chord.To), cut.OffSquareDegrees, mayTurn: true) ?? NearHole(chord.From, chord.To);
    }

    /// <summary>Whether it takes the cut in from both ends, because its frame ends the cut sooner.</summary>
    public bool FromBothEnds(double cutMm) => Saw.Kind == SawKind.PortableBand && Saw.Throat is { } throat && cutMm > throat.Mm + 1e-9;

    /// <summary>Why it cannot make a cut that stops inside the steel; null when it can.</summary>
    /// <param name="piece">The piece before the cut, convex.</param>
    /// <param name="normal">Square to the cut, length 1.</param>
    /// <param name="from">Where it begins.</param>
    /// <param name="to">Where it stops.</param>
    public string? RefusesInside(ImmutableArray<Point> piece, Point normal, Point from, Point to)
    {
        if (!SawPractice.CanStopInside(Saw.Kind)) return "cuts through the whole width only";
        var off = new SupportCut(Math.Atan2(normal.Y, normal.X) is var a && a < 0 ? a + (2 * Math.PI) : a, 0, false).OffSquareDegrees;
        return Refuses(piece, normal, normal.Dot(from), from.To(to), off, mayTurn: false) ?? NearHole(from, to);
    }

    private string? Refuses(ImmutableArray<Point> piece, Point normal, double offsetMm, double cutMm, double offSquareDegrees, bool mayTurn)
    {
        if (offSquareDegrees > SawPractice.MostOffSquareDegrees(Saw) + 1e-9)
        {
            return SawPractice.MostOffSquareDegrees(Saw) <= 0 ? "cuts square across the bar only" : $"holds {Shown.Number(SawPractice.MostOffSquareDegrees(Saw), 0)}° off square at most; the cut is {Shown.Number(offSquareDegrees, 0)}° off";
        }

        if (Saw.LongestCut is { } longest && cutMm > longest.Mm + 1e-9) return $"cuts {Shown.Both(longest)} at most; the cut is {Shown.Both(Length.OfMm(cutMm))} long";
        if (Saw.Throat is not { } throat) return null;
        switch (Saw.Kind)
        {
            // the frame stands beside the cut: the narrower side of the work goes there
            case SawKind.Band:
                return Beside(piece, normal, offsetMm) > throat.Mm + 1e-9 ? $"has {Shown.Both(throat)} from blade to frame; {Shown.Both(Length.OfMm(Beside(piece, normal, offsetMm)))} must pass" : null;

            // the frame stands in the way of the cut; a through cut comes in from both ends
            case SawKind.PortableBand:
                return cutMm > ((mayTurn ? 2 : 1) * throat.Mm) + 1e-9 ? $"cuts {Shown.Both(throat)} deep{(mayTurn ? " from each end" : "")}; the cut is {Shown.Both(Length.OfMm(cutMm))} long" : null;

            // the back in the way of the cut, or beside it with the blade turned a quarter
            case SawKind.Hacksaw:
                return cutMm > throat.Mm + 1e-9 && Beside(piece, normal, offsetMm) > throat.Mm + 1e-9 ? $"has {Shown.Both(throat)} under its back; the cut is {Shown.Both(Length.OfMm(cutMm))} long and {Shown.Both(Length.OfMm(Beside(piece, normal, offsetMm)))} from the nearer side" : null;
            default:
                return null;
        }
    }

    private static double Beside(ImmutableArray<Point> piece, Point n, double c) => Math.Min(piece.Max(p => n.Dot(p)) - c, c - piece.Min(p => n.Dot(p)));

    private string? NearHole(Point from, Point to)
    {
        var d = to - from;
        var l = d.Dot(d);
        foreach (var (at, radius) in StayAway)
        {
            var t = l > 0 ? Math.Clamp((at - from).Dot(d) / l, 0, 1) : 0;
            var gap = at.To(from + (d * t)) - radius;
            if (gap < StayAwayMm - 1e-9) return $"comes within {Shown.Both(Length.OfMm(Math.Max(0, gap)))} of a finished hole; {Shown.Both(Length.OfMm(StayAwayMm))} is kept";
        }

        return null;
    }
}
