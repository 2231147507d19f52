using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The S-shaped run of a change: S(X) = ∫ dx / (x^0.4(1−x) (1−x)^0.4x) from 0 to X, tabled once and read both ways. Because the rate splits into temperature and share, times add up: Σ dt / F(T) = S(X).</summary>
[Formula("S(X) of a change of austenite, and the share X of a sum", "li-1998", "Shares 0 to 1; table of 2000 steps, 1e-5")]
public static class TransformationShare
{
    private const int Steps = 2000;
    private static readonly double[] Table = Make();

    /// <summary>S of a share.</summary>
    /// <param name="share">Share turned, 0 to 1.</param>
    public static double Sum(double share)
    {
        // steps are finer near both ends: x = (1 - cos πu) / 2
        var u = Math.Acos(1 - (2 * Math.Clamp(share, 0, 1))) / Math.PI * Steps;
        var i = Math.Min((int)u, Steps - 1);
        return Table[i] + ((u - i) * (Table[i + 1] - Table[i]));
    }

    /// <summary>Share of a sum, 0 to 1.</summary>
    /// <param name="sum">Σ dt / F(T).</param>
    public static double Share(double sum)
    {
        if (sum <= 0) return 0;
        if (sum >= Table[Steps]) return 1;
        var i = Array.BinarySearch(Table, sum);
        if (i < 0) i = ~i - 1;
        var u = i + ((sum - Table[i]) / (Table[i + 1] - Table[i]));
        return 0.5 * (1 - Math.Cos(Math.PI * u / Steps));
    }

    private static double[] Make()
    {
        var table = new double[Steps + 1];
        for (var i = 0; i < Steps; i++)
        {
            // Gauss of three points in u takes the weak singularity of the ends away
            var sum = 0.0;
            foreach (var (g, weight) in ((double, double)[])[(-0.7745966692414834, 5.0 / 18), (0, 8.0 / 18), (0.7745966692414834, 5.0 / 18)])
            {
                var angle = Math.PI * (i + 0.5 + (0.5 * g)) / Steps;
                var x = 0.5 * (1 - Math.Cos(angle));
                sum += weight * 0.5 * Math.PI / Steps * Math.Sin(angle) / (Math.Pow(x, 0.4 * (1 - x)) * Math.Pow(1 - x, 0.4 * x));
            }

            table[i + 1] = table[i] + sum;
        }

        return table;
    }
}
