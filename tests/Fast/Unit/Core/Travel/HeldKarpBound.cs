using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>No open way from a start over all places is shorter than this: the bound by trees of Held and Karp (Operations Research 18, 1970), the weights improved step by step.</summary>
internal static class HeldKarpBound
{
    public static double Of(Point start, IReadOnlyList<Point> places, double knownMm)
    {
        // the open end is a place beside the start for nothing and far from all others, so that a round costs far more than the way by that much
        const double Far = 5000;
        var n = places.Count + 1;
        Point At(int i) => i == 0 ? start : places[i - 1];
        var weights = new double[n];
        var end = 0.0;
        var best = 0.0;
        var share = 2.0;
        var since = 0;
        for (var round = 0; round < 3000 && share > 1e-4; round++)
        {
            var (sum, degree) = Tree(At, weights);

            // the open end joins to its two cheapest: places then carry their weights too
            var joins = Enumerable.Range(0, n).OrderBy(i => (i == 0 ? 0 : Far) + weights[i]).Take(2).ToArray();
            foreach (var i in joins)
            {
                sum += (i == 0 ? 0 : Far) + weights[i] + end;
                degree[i]++;
            }

            var bound = sum - (2 * (weights.Sum() + end)) - Far;
            if (bound > best + 1e-6) (best, since) = (bound, 0);
            else if (++since > 40) (share, since) = (share / 2, 0);
            var slope = degree.Sum(d => (double)((d - 2) * (d - 2)));
            if (slope == 0) break;
            var step = share * Math.Max(1e-6, knownMm - bound) / slope;
            for (var i = 0; i < n; i++) weights[i] += step * (degree[i] - 2);
        }

        return best;
    }

    private static (double Sum, int[] Degree) Tree(Func<int, Point> at, double[] weights)
    {
        var n = weights.Length;
        var degree = new int[n];
        var least = Enumerable.Repeat(double.PositiveInfinity, n).ToArray();
        var from = new int[n];
        var inside = new bool[n];
        var (now, sum) = (0, 0.0);
        for (var k = 1; k < n; k++)
        {
            inside[now] = true;
            var next = -1;
            for (var i = 0; i < n; i++)
            {
                if (inside[i]) continue;
                var step = at(now).To(at(i)) + weights[now] + weights[i];
                if (step < least[i]) (least[i], from[i]) = (step, now);
                if (next < 0 || least[i] < least[next]) next = i;
            }

            sum += least[next];
            degree[next]++;
            degree[from[next]]++;
            now = next;
        }

        return (sum, degree);
    }
}
