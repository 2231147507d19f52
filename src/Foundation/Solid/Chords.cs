using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>A closed path as a polygon whose corners lie on it. mm.</summary>
public static class Chords
{
    /// <summary>Corners such that no chord is further from its curve than asked, the start of the first segment first.</summary>
    /// <param name="loop">The path.</param>
    /// <param name="offMm">Largest distance of a chord from its curve, mm.</param>
    public static ImmutableArray<Point> Of(Path loop, double offMm)
    {
        var corners = ImmutableArray.CreateBuilder<Point>();
        foreach (var s in loop.Segments)
        {
            corners.Add(s.Start);
            if (s is Line) continue;
            var pieces = s is Arc a ? Math.Max(2, (int)Math.Ceiling(Math.Abs(a.Sweep) / (Math.PI / 4))) : 4;
            var from = s.Start;
            for (var i = 1; i <= pieces; i++)
            {
                var (t0, t1) = ((i - 1.0) / pieces, (double)i / pieces);
                var to = i == pieces ? s.End : s.At(t1);
                Halve(s, t0, from, t1, to, offMm, 0, corners);
                if (i < pieces) corners.Add(to);
                from = to;
            }
        }

        return corners.ToImmutable();
    }

    private static void Halve(Segment s, double t0, Point a, double t1, Point b, double off, int depth, ImmutableArray<Point>.Builder corners)
    {
        var along = (b - a).Unit;
        var worst = 0.0;
        for (var k = 1; k <= 3; k++) worst = Math.Max(worst, Math.Abs(along.Cross(s.At(t0 + ((t1 - t0) * k / 4)) - a)));
        if (worst <= off || depth > 12) return;
        var t = 0.5 * (t0 + t1);
        var m = s.At(t);
        Halve(s, t0, a, t, m, off, depth + 1, corners);
        corners.Add(m);
        Halve(s, t, m, t1, b, off, depth + 1, corners);
    }
}
