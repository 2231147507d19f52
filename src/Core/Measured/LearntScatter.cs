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
