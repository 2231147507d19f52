using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Pairs of holes that lie close together, or far apart.</summary>
public static class HolePairs
{
    /// <summary>The two whose centres, as made, are farthest apart; of equals the first in the plan's order.</summary>
    /// <param name="holes">Two holes at least.</param>
    public static (PlacedHole A, PlacedHole B) FarthestApart(ImmutableArray<PlacedHole> holes)
        => holes.SelectMany((a, i) => holes.Skip(i + 1).Select(b => (A: a, B: b))).MaxBy(p => p.A.MadeAt.To(p.B.MadeAt));

    /// <summary>All pairs with less steel between their rims than so much, in the plan's order; the web is negative when they run into one another.</summary>
    /// <param name="holes">The holes.</param>
    /// <param name="mm">The limit, mm.</param>
    public static IEnumerable<(PlacedHole A, PlacedHole B, double WebMm)> CloserThan(ImmutableArray<PlacedHole> holes, double mm)
    {
        var order = Enumerable.Range(0, holes.Length).OrderBy(i => Left(holes[i])).ToArray();
        var found = new List<(int I, int J, double WebMm)>();
        for (var k = 0; k < order.Length; k++)
        {
            var a = holes[order[k]];
            var reach = a.At.X + (0.5 * a.Diameter.Mm) + mm;
            for (var l = k + 1; l < order.Length && Left(holes[order[l]]) < reach; l++)
            {
                var b = holes[order[l]];
                var web = WebLimits.Settled(a.At.To(b.At) - (0.5 * (a.Diameter.Mm + b.Diameter.Mm)));
                if (web < mm) found.Add((Math.Min(order[k], order[l]), Math.Max(order[k], order[l]), web));
            }
        }

        return found.OrderBy(p => p.I).ThenBy(p => p.J).Select(p => (holes[p.I], holes[p.J], p.WebMm));
    }

    private static double Left(PlacedHole h) => h.At.X - (0.5 * h.Diameter.Mm);
}
