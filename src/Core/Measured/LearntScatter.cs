using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much a machine scatters, learnt from measured holes.</summary>
/// <param name="Sigma">Scatter along one axis, the best single answer.</param>
/// <param name="Bound">The scatter that it is under with 95 in 100: what plans should rest on.</param>
/// <param name="Pieces">Pieces it was learnt from.</param>
/// <param name="Holes">Holes it was learnt from.</param>
/// <param name="Freedom">Degrees of freedom: two for each hole less three for each piece, whose turn and shift are fitted away.</param>
public sealed record LearntScatter(Length Sigma, Length Bound, int Pieces, int Holes, int Freedom)
{
    /// <summary>Circle that 99 of 100 centres fall in, by the bound.</summary>
    public Length Zone => Length.OfMm(2 * Math.Sqrt(-2 * Math.Log(0.01)) * Bound.Mm);
}

/// <summary>The scatter of a way of placing holes from what is left over when each measured piece is laid on its plan as well as it goes.</summary>
/// <remarks>With errors alike along x and y the sum of squares over sigma squared follows the chi-squared distribution; its lower 5 in 100 gives the bound, wide for few holes and close for many.</remarks>
[Formula("Scatter along one axis from measured holes, and its bound with 95 in 100, mm", "chi-squared-variance", "Errors alike along both axes and normally spread; at least two holes in a piece")]
public static class MachineScatter
{
    private const double Doubt = 0.05;

    /// <summary>The scatter; null when there are too few holes to say anything.</summary>
    /// <param name="pieces">For each piece what its fit of least squares left over.</param>
    public static LearntScatter? Of(ImmutableArray<FittedMove> pieces)
    {
        var used = pieces.Where(p => p.Rest.Length > 1).ToArray();
        var freedom = used.Sum(p => (2 * p.Rest.Length) - 3);
        if (freedom < 1) return null;
        var sum = used.Sum(p => p.Rest.Sum(r => r.Dot(r)));
        return new LearntScatter(
            Length.OfMm(Math.Sqrt(sum / freedom)),
            Length.OfMm(Math.Sqrt(sum / ChiSquared.Value(Doubt, freedom))),
            used.Length,
            used.Sum(p => p.Rest.Length),
            freedom);
    }
}
