using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>A corner rounded: what is left of the segment before it, a true arc touching both, what is left of the segment after it.</summary>
/// <param name="Before">Rest of the segment before.</param>
/// <param name="Arc">The arc, tangent to both.</param>
/// <param name="After">Rest of the segment after.</param>
public sealed record RoundedCorner(Segment Before, Arc Arc, Segment After)
{
    private const int Looks = 96;

    /// <summary>Turn of direction below which two segments run on smoothly, radians.</summary>
    private const double LeastTurn = 1e-3;

    /// <summary>Whether the two segments meet in a corner.</summary>
    public static bool IsCorner(Segment before, Segment after) => Math.Abs(Turn(before, after)) > LeastTurn;

    /// <summary>The corner rounded with a radius, mm; null when the radius does not fit or there is no corner. The centre lies a radius off both segments on the inner side of the turn: found along the segment before by bracketing, nearest points exact.</summary>
    public static RoundedCorner? Of(Segment before, Segment after, double radius)
    {
        if (!IsCorner(before, after) || !(radius > 0)) return null;
        var side = Math.Sign(Turn(before, after));
        Point CentreAt(double t) => before.At(t) + (before.Derivative(t).Unit.Left * (side * radius));
        double Gap(double t) => Nearest.Distance(after, CentreAt(t)) - radius;
        for (var i = Looks - 1; i >= 0; i--)
        {
            var (low, high) = ((double)i / Looks, (i + 1.0) / Looks);
            if (Gap(low) < 0) continue;
            var t = Bracket.Root(Gap, low, high, 1e-14);
            return Touching(before, after, CentreAt(t), t, radius, side);
        }

        return null;
    }

    /// <summary>The greatest radius that fits a corner, mm, to 0.01 mm downward; 0 when none does.</summary>
    public static double GreatestRadius(Segment before, Segment after)
    {
        var (fits, tooLarge) = (0.0, before.Length + after.Length);
        while (tooLarge - fits > 0.005)
        {
            var r = 0.5 * (fits + tooLarge);
            if (Of(before, after, r) is null) tooLarge = r;
            else fits = r;
        }

        return Math.Floor(fits * 100) / 100;
    }

    private static double Turn(Segment before, Segment after)
    {
        var (a, b) = (Leaving(before.Reversed()) * -1, Leaving(after));
        return Math.Atan2(a.Cross(b), a.Dot(b));
    }

    /// <summary>Direction in which a segment starts, also where its first control point lies on its start.</summary>
    private static Point Leaving(Segment s) => s.Derivative(0) is var d && d.Length > 1e-9 ? d.Unit : (s.At(1e-4) - s.Start).Unit;

    private static RoundedCorner? Touching(Segment before, Segment after, Point centre, double t, double radius, int side)
    {
        var (u, _, distance) = Nearest.On(after, centre);
        if (t <= 1e-9 || t >= 1 || u is <= 0 or >= 1 - 1e-9 || Math.Abs(distance - radius) > 1e-7) return null;

        // a segment curved tighter than the radius on the inner side cannot touch it at one place only
        if (Nearest.Distance(before, centre) < radius - 1e-7) return null;
        var (a, b) = (before.Part(0, t), after.Part(u, 1));
        var (from, to) = (a.End - centre, b.Start - centre);
        var sweep = Math.Atan2(from.Cross(to), from.Dot(to));
        if (Math.Sign(sweep) != side) return null;
        return new RoundedCorner(a, Arc.Between(a.End, b.Start, centre, new Point(radius, 0), new Point(0, radius), Math.Atan2(from.Y, from.X), sweep), b);
    }
}
