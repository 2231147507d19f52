using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Chance that enough pieces come out good, each by itself with the same yield.</summary>
[Formula("chance of at least so many good of so many started, and starts for a chance", "nist-binomial", "Pieces fail one by one, not together as in a spoilt load; yield 0.05 to 1, up to 10 000 good; to 1e-10")]
public static class GoodPieces
{
    /// <summary>Least yield that is counted with.</summary>
    public const double LeastYieldShare = 0.05;

    /// <summary>Most good pieces asked for at once.</summary>
    public const int MostGood = 10_000;

    /// <summary>Chance of at least so many good, 0 to 1.</summary>
    /// <param name="started">Pieces started.</param>
    /// <param name="good">Good ones wanted.</param>
    /// <param name="yieldShare">Share that comes out good, above 0 to 1.</param>
    public static double ChanceShare(int started, int good, double yieldShare)
    {
        if (good <= 0) return 1;
        if (started < good) return 0;
        var sum = 0.0;
        foreach (var term in LastGoodAt(good, yieldShare).Take(started - good + 1)) sum += term;
        return Math.Min(1, sum);
    }

    /// <summary>Fewest starts that give a chance.</summary>
    /// <param name="good">Good ones wanted.</param>
    /// <param name="yieldShare">Share that comes out good, <see cref="LeastYieldShare"/> to 1.</param>
    /// <param name="wantedShare">Chance asked for, above 0 and under 1.</param>
    public static int StartsFor(int good, double yieldShare, double wantedShare)
    {
        if (good <= 0) return 0;
        var (sum, starts) = (0.0, good - 1);
        foreach (var term in LastGoodAt(good, yieldShare))
        {
            sum += term;
            starts++;
            if (sum >= wantedShare - 1e-12 || (term < 1e-15 && starts > good / yieldShare)) break;
        }

        return starts;
    }

    /// <summary>Chance that the last good one needed is the first start that can be it, the next, and so on: C(n + j − 1, j) pⁿ qʲ.</summary>
    private static IEnumerable<double> LastGoodAt(int good, double yieldShare)
    {
        var (log, spoilt) = (good * Math.Log(yieldShare), Math.Log(1 - yieldShare));
        for (var j = 0; ; j++)
        {
            yield return Math.Exp(log);
            log += spoilt + Math.Log((good + (double)j) / (j + 1));
        }
    }
}
