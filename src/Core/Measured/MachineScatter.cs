using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

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
