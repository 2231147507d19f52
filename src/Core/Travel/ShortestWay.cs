using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The shortest way from a start over every place once, ending wherever it ends: exact up to 12 places, above that improved until no small change helps.</summary>
public static class ShortestWay
{
    /// <summary>Up to so many places the way is exact.</summary>
    public const int MostExact = 12;

    /// <summary>The places in the order they are visited, as indices.</summary>
    /// <param name="start">Where it begins, mm.</param>
    /// <param name="places">The places, mm.</param>
    public static ImmutableArray<int> Over(Point start, ImmutableArray<Point> places)
        => places.Length switch
        {
            0 => [],
            1 => [0],
            <= MostExact => ExactWay.Over(start, places),
            _ => ImprovedWay.Over(start, places),
        };

    /// <summary>Length of a way, mm.</summary>
    /// <param name="start">Where it begins, mm.</param>
    /// <param name="places">The places, mm.</param>
    /// <param name="order">The order they are visited in.</param>
    public static double LengthMm(Point start, ImmutableArray<Point> places, ImmutableArray<int> order)
    {
        var (at, sum) = (start, 0.0);
        foreach (var i in order)
        {
            sum += at.To(places[i]);
            at = places[i];
        }

        return sum;
    }
}
