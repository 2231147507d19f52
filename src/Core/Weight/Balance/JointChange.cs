using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Several levers moved together, as little as brings balance and weight where they are wanted.</summary>
/// <remarks>
/// Least sum of the squares of the moves, each as a share of its lever's range, that meets what is wanted: with the slopes J in those shares each step takes x = x0 + Jᵀ (J Jᵀ)⁻¹ (r + J (x − x0)), r what is still missing on the true solid;
/// a lever that would pass its limit is held there and the others solved again; slopes are mended after each step (Gauss-Newton and Broyden's formula: Nocedal and Wright, Numerical Optimization, 2nd ed., §10.3 and §11.1; places from memory).
/// </remarks>
/// <param name="Moves">Each lever and its new value.</param>
/// <param name="Then">Weight and balance with all of them.</param>
/// <param name="Reaches">Whether both are met, to 0.02 mm and 0.02 g.</param>
[Formula("Least change of several levers that meets balance and weight", "nocedal-wright", "Within the levers' limits; to 0.02 mm and 0.02 g on the true solid")]
public sealed record JointChange(ImmutableArray<(BalanceLever Lever, double Value)> Moves, Weighed Then, bool Reaches)
{
    /// <summary>How near counts as met, mm and g.</summary>
    public const double GoodMm = 0.02;

    private const int MostSteps = 12;

    /// <summary>Works it out.</summary>
    internal static JointChange Of(Plan plan, PieceWeigher weigher, Weighed now, ImmutableArray<LeverAnswer> levers, double? toMm, double? grams)
    {
        var n = levers.Length;

        // rows: balance, weight; what is not wanted has no row. x: share of the range moved
        var rows = new List<(Func<Weighed, double> Of, double Wanted, double[] Slopes)>();
        if (toMm is { } mm) rows.Add((w => w.FromDatumMm, mm, [.. levers.Select(l => l.MmPerUnit * l.Lever.Range)]));
        if (grams is { } g) rows.Add((w => w.Grams, g, [.. levers.Select(l => l.GramsPerUnit * l.Lever.Range)]));
        var touches = levers.Aggregate(LeverTouches.Nothing, (sum, l) => sum | l.Lever.Touches);
        var low = levers.Select(l => (l.Lever.Low - l.Lever.Now) / l.Lever.Range).ToArray();
        var high = levers.Select(l => (l.Lever.High - l.Lever.Now) / l.Lever.Range).ToArray();
        var (x, at) = (new double[n], now);
        var (best, bestAt, bestMiss) = (x, at, Miss(at));
        for (var k = 0; k < MostSteps && bestMiss > 0.1 * GoodMm; k++)
        {
            var next = Step(rows, x, at, low, high);
            var moved = rows.Count == 0 ? at : weigher.Of(Set(plan, levers, next), touches);
            Mend(rows, x, next, at, moved);
            (x, at) = (next, moved);
            if (Miss(at) < bestMiss) (best, bestAt, bestMiss) = (x, at, Miss(at));
        }

        return new JointChange([.. levers.Select((l, i) => (l.Lever, ValueOf(l.Lever, best[i])))], bestAt, bestMiss <= GoodMm);

        double Miss(Weighed w) => rows.Max(row => Math.Abs(row.Of(w) - row.Wanted));
    }

    private static double ValueOf(BalanceLever lever, double share) => Math.Clamp(lever.Now + (share * lever.Range), lever.Low, lever.High);

    private static Plan Set(Plan plan, ImmutableArray<LeverAnswer> levers, double[] x)
    {
        for (var i = 0; i < x.Length; i++)
        {
            // a lever left alone leaves the plan as it is
            if (x[i] != 0) plan = levers[i].Lever.Set(plan, ValueOf(levers[i].Lever, x[i]));
        }

        return plan;
    }

    private static double[] Step(List<(Func<Weighed, double> Of, double Wanted, double[] Slopes)> rows, double[] x, Weighed at, double[] low, double[] high)
    {
        var n = x.Length;
        var (next, held) = (new double[n], new bool[n]);
        for (var round = 0; round <= n; round++)
        {
            // what the free levers must bring, counted from where they are now
            var need = rows.Select(row => row.Wanted - row.Of(at) + Enumerable.Range(0, n).Sum(i => row.Slopes[i] * (x[i] - (held[i] ? next[i] : 0)))).ToArray();
            var share = Shares(rows, held, need);
            var passed = false;
            for (var i = 0; i < n; i++)
            {
                if (held[i]) continue;
                next[i] = rows.Select((row, j) => row.Slopes[i] * share[j]).Sum();
                if (next[i] >= low[i] && next[i] <= high[i]) continue;
                (next[i], held[i], passed) = (Math.Clamp(next[i], low[i], high[i]), true, true);
            }

            if (!passed) break;
        }

        return next;
    }

    // (J Jᵀ)⁻¹ need, of one or two rows; a hair is added so that rows that say the same can be solved
    private static double[] Shares(List<(Func<Weighed, double> Of, double Wanted, double[] Slopes)> rows, bool[] held, double[] need)
    {
        double Dot(int a, int b) => Enumerable.Range(0, held.Length).Sum(i => held[i] ? 0 : rows[a].Slopes[i] * rows[b].Slopes[i]);
        var a = Dot(0, 0);
        if (rows.Count == 1) return [a > 0 ? need[0] / a : 0];
        var (b, d) = (Dot(0, 1), Dot(1, 1));
        (a, d) = (a * (1 + 1e-9), d * (1 + 1e-9));
        var det = (a * d) - (b * b);
        return det > 0 ? [((d * need[0]) - (b * need[1])) / det, ((a * need[1]) - (b * need[0])) / det] : [0, 0];
    }

    private static void Mend(List<(Func<Weighed, double> Of, double Wanted, double[] Slopes)> rows, double[] x, double[] next, Weighed at, Weighed moved)
    {
        var step = next.Select((v, i) => v - x[i]).ToArray();
        var size = step.Sum(s => s * s);
        if (size < 1e-16) return;
        foreach (var (of, _, slopes) in rows)
        {
            var off = (of(moved) - of(at) - slopes.Select((s, i) => s * step[i]).Sum()) / size;
            for (var i = 0; i < slopes.Length; i++) slopes[i] += off * step[i];
        }
    }
}
