using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The shift that leaves the worst of some errors the least, each as a share of what it is allowed: the centre of the smallest circle round them when all are allowed alike.</summary>
/// <remarks>
/// Two or three errors decide. Beginning with one, the worst of all others is taken in and the best two or three of these at most four are kept, which raises the least worst every time, until none is worse.
/// For two it lies between them by the ratio of what they are allowed; for three where their shares are equal, a quadratic in the share squared.
/// </remarks>
internal static class LeastWorstShift
{
    private const int MostRounds = 200;
    private const double Same = 1e-12;

    /// <summary>The shift and the worst share it leaves.</summary>
    /// <param name="errors">The errors, mm.</param>
    /// <param name="allowed">What each may be, mm, above 0.</param>
    public static (Point Shift, double WorstShare) Of(ReadOnlySpan<Point> errors, ReadOnlySpan<double> allowed)
    {
        Span<int> kept = [0, -1, -1];
        var (shift, share) = (errors[0], 0.0);
        for (var round = 0; round < MostRounds; round++)
        {
            var (worst, worstShare) = (-1, share * (1 + Same) + 1e-300);
            for (var i = 0; i < errors.Length; i++)
            {
                if (errors[i].To(shift) / allowed[i] is var s && s > worstShare) (worst, worstShare) = (i, s);
            }

            if (worst < 0 || !TakeIn(errors, allowed, kept, worst, ref shift, ref share)) break;
        }

        return (shift, share);
    }

    // the least circle round the kept ones and the new one, and which of them it rests on
    private static bool TakeIn(ReadOnlySpan<Point> errors, ReadOnlySpan<double> allowed, Span<int> kept, int worst, ref Point shift, ref double share)
    {
        Span<int> four = [worst, kept[0], kept[1], kept[2]];
        Span<int> best = [-1, -1, -1];
        var (bestShift, least) = (shift, double.PositiveInfinity);
        for (var a = 1; a < 4; a++)
        {
            if (four[a] < 0) continue;
            Try(errors, allowed, four, OfTwo(errors, allowed, worst, four[a]), [worst, four[a], -1], best, ref bestShift, ref least);
            for (var b = a + 1; b < 4; b++)
            {
                if (four[b] < 0) continue;
                foreach (var at in OfThree(errors, allowed, worst, four[a], four[b])) Try(errors, allowed, four, at, [worst, four[a], four[b]], best, ref bestShift, ref least);
            }
        }

        if (!(least > share)) return false;
        best.CopyTo(kept);
        (shift, share) = (bestShift, least);
        return true;
    }

    private static void Try(ReadOnlySpan<Point> errors, ReadOnlySpan<double> allowed, ReadOnlySpan<int> four, Point at, ReadOnlySpan<int> by, Span<int> best, ref Point bestShift, ref double least)
    {
        var most = 0.0;
        foreach (var i in four) most = i < 0 ? most : Math.Max(most, errors[i].To(at) / allowed[i]);
        if (!(most < least * (1 - Same))) return;
        by.CopyTo(best);
        (bestShift, least) = (at, most);
    }

    private static Point OfTwo(ReadOnlySpan<Point> errors, ReadOnlySpan<double> allowed, int i, int j)
        => errors[i].Toward(errors[j], allowed[i] / (allowed[i] + allowed[j]));

    // with p and q the others less the first, t from the first: 2 t.p = p.p + (wi^2 - wj^2) s, 2 t.q alike, t.t = wi^2 s
    private static Point[] OfThree(ReadOnlySpan<Point> errors, ReadOnlySpan<double> allowed, int i, int j, int k)
    {
        var (p, q) = (errors[j] - errors[i], errors[k] - errors[i]);
        var cross = 2 * p.Cross(q);
        if (cross == 0) return [];
        var (wi, wj, wk) = (allowed[i] * allowed[i], allowed[j] * allowed[j], allowed[k] * allowed[k]);
        var still = Solve(p.Dot(p), q.Dot(q));
        var grows = Solve(wi - wj, wi - wk);
        var (a, b, c) = (grows.Dot(grows), (2 * still.Dot(grows)) - wi, still.Dot(still));
        Span<double> squares = stackalloc double[2];
        var found = Roots.Between([c, b, a], 0, double.MaxValue, squares);
        var at = new Point[found];
        for (var r = 0; r < found; r++) at[r] = errors[i] + still + (squares[r] * grows);
        return at;

        Point Solve(double alongP, double alongQ) => new(((alongP * q.Y) - (alongQ * p.Y)) / cross, ((alongQ * p.X) - (alongP * q.X)) / cross);
    }
}
