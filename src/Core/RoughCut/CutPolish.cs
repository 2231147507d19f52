using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Turns each cut that is not flush about the piece in a few rounds of ever smaller steps, kept where more comes off.</summary>
public static class CutPolish
{
    private const int Rounds = 3;
    private const double ReachDegrees = 4;

    /// <summary>The polished cuts; what they take off is never less.</summary>
    /// <param name="hull">The grown hull.</param>
    /// <param name="blank">The blank, convex.</param>
    /// <param name="gone">Parts of it that other cuts take off anyway.</param>
    /// <param name="cuts">The cuts.</param>
    /// <param name="mostOffSquareDegrees">Greatest angle off a square cut that the saw holds.</param>
    public static ImmutableArray<SupportCut> Of(GrownHull hull, ImmutableArray<Point> blank, ImmutableArray<ImmutableArray<Point>> gone, ImmutableArray<SupportCut> cuts, double mostOffSquareDegrees = 90)
    {
        var now = cuts.ToArray();
        var left = Left(blank, gone, now);
        for (var round = 0; round < Rounds; round++)
        {
            var before = left;
            for (var i = 0; i < now.Length; i++)
            {
                if (now[i].IsFlush) continue;
                var middle = now[i];
                var (low, high) = (middle.AngleRadians - (ReachDegrees * Math.PI / 180), middle.AngleRadians + (ReachDegrees * Math.PI / 180));

                // golden section on what is left
                var g = 0.5 * (Math.Sqrt(5) - 1);
                var (a, b) = (high - (g * (high - low)), low + (g * (high - low)));
                var (fa, fb) = (At(i, a), At(i, b));
                while (high - low > 2e-4)
                {
                    if (fa <= fb)
                    {
                        (high, b, fb) = (b, a, fa);
                        a = high - (g * (high - low));
                        fa = At(i, a);
                    }
                    else
                    {
                        (low, a, fa) = (a, b, fb);
                        b = low + (g * (high - low));
                        fb = At(i, b);
                    }
                }

                var turned = hull.Cut(Whole(0.5 * (low + high)));
                if (turned.OffSquareDegrees > mostOffSquareDegrees + 1e-9 || !(At(i, turned.AngleRadians) < left - 1e-6)) now[i] = middle;
                else (now[i], left) = (turned, At(i, turned.AngleRadians));
            }

            if (before - left < 0.01) break;
        }

        return [.. now.OrderBy(c => c.AngleRadians)];

        double At(int i, double angle)
        {
            var was = now[i];
            now[i] = hull.Cut(angle);
            var area = Left(blank, gone, now);
            now[i] = was;
            return area;
        }
    }

    /// <summary>Makes cuts that are nearly square or level exactly so, where that leaves hardly more to grind: such a line is laid off with a square.</summary>
    public static ImmutableArray<SupportCut> Squared(GrownHull hull, ImmutableArray<Point> blank, ImmutableArray<ImmutableArray<Point>> gone, ImmutableArray<SupportCut> cuts)
    {
        var now = cuts.ToArray();
        var left = Left(blank, gone, now);
        for (var i = 0; i < now.Length; i++)
        {
            var was = now[i];
            var quarter = Math.Round(was.AngleRadians / (0.5 * Math.PI));
            if (was.IsFlush || Math.Abs(was.AngleRadians - (quarter * 0.5 * Math.PI)) > SquareDegrees * Math.PI / 180) continue;
            now[i] = hull.Cut(quarter % 4 * 0.5 * Math.PI);
            var then = Left(blank, gone, now);
            if (then <= left + SquareLossMm2) left = then;
            else now[i] = was;
        }

        return [.. now.OrderBy(c => c.AngleRadians)];
    }

    private const double SquareDegrees = 1.5;
    private const double SquareLossMm2 = 8;

    /// <summary>Area of the blank that the cuts leave, mm², what is gone anyway taken off.</summary>
    public static double Left(ImmutableArray<Point> blank, ImmutableArray<ImmutableArray<Point>> gone, ReadOnlySpan<SupportCut> cuts)
    {
        var left = One(blank, cuts);
        foreach (var g in gone) left -= One(g, cuts);
        return left;
    }

    private static double One(ImmutableArray<Point> part, ReadOnlySpan<SupportCut> cuts)
    {
        Span<Point> a = stackalloc Point[part.Length + cuts.Length + 2];
        Span<Point> b = stackalloc Point[part.Length + cuts.Length + 2];
        part.CopyTo(a);
        var n = part.Length;
        foreach (var c in cuts)
        {
            n = ConvexClip.Beyond(a[..n], -c.Normal, -c.OffsetMm, b);
            var spare = a;
            a = b;
            b = spare;
            if (n < 3) return 0;
        }

        return ConvexClip.AreaMm2(a[..n]);
    }

    private static double Whole(double angle) => angle < 0 ? angle + (2 * Math.PI) : angle >= 2 * Math.PI ? angle - (2 * Math.PI) : angle;
}
