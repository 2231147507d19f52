using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A short open way over many places: nearest next, then stretches turned round and moved, then small seeded kicks, each kept only when the way is no longer for it.</summary>
internal static class ImprovedWay
{
    private const int Kicks = 5000;
    private const int Stretch = 30;

    /// <summary>The order; always the same for the same places.</summary>
    public static ImmutableArray<int> Over(Point start, ImmutableArray<Point> places)
    {
        // a round: place 0 is the start, the last is no place but the open end, next to the start for nothing and far from all others alike
        var n = places.Length + 2;
        var far = Far(start, places);
        var steps = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var k = 0; k < n; k++) steps[i, k] = Step(i, k);
        }

        var round = new RoundOfPlaces(steps, NearestNext(steps, n));
        round.Improve();
        round.Kick(Kicks, Stretch);
        return Opened(round.Order, n);

        double Step(int i, int k)
        {
            if (i == k) return 0;
            var open = i == n - 1 ? k : k == n - 1 ? i : -1;
            return open >= 0 ? (open == 0 ? 0 : far) : At(i).To(At(k));
        }

        Point At(int i) => i == 0 ? start : places[i - 1];
    }

    private static double Far(Point start, ImmutableArray<Point> places)
        => 1 + (3 * (places.Max(p => p.X) - places.Min(p => p.X) + places.Max(p => p.Y) - places.Min(p => p.Y) + places.Max(start.To)));

    private static int[] NearestNext(double[,] steps, int n)
    {
        var order = new int[n];
        var seen = new bool[n];
        order[n - 1] = n - 1;
        seen[0] = seen[n - 1] = true;
        for (var k = 1; k < n - 1; k++)
        {
            var best = -1;
            for (var i = 1; i < n - 1; i++)
            {
                if (!seen[i] && (best < 0 || steps[order[k - 1], i] < steps[order[k - 1], best])) best = i;
            }

            order[k] = best;
            seen[best] = true;
        }

        return order;
    }

    private static ImmutableArray<int> Opened(ReadOnlySpan<int> order, int n)
    {
        var start = order.IndexOf(0);
        var forward = order[(start + 1) % n] != n - 1;
        var opened = new int[n - 2];
        for (var k = 0; k < n - 2; k++) opened[k] = order[(start + (forward ? k + 1 : n - k - 1)) % n] - 1;
        return [.. opened];
    }
}
