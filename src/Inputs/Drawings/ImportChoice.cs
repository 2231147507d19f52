using System.Collections.Immutable;
using Tangwright.Core;

namespace Tangwright.Inputs;

/// <summary>What the person said about a drawing to be imported.</summary>
/// <param name="Units">What one unit of the drawing is; null: as the file says. A word from the person wins over the file's.</param>
/// <param name="Layers">Layers to take; empty: all, or OUTLINE and HOLES where the file has an OUTLINE layer.</param>
/// <param name="Loop">Which loop is the outline, from 1, largest first as listed; null: the largest that is no frame.</param>
/// <param name="JoinMm">Loose ends this near are joined, mm.</param>
public sealed record ImportChoice(LengthUnit? Units, ImmutableArray<string> Layers, int? Loop = null, double JoinMm = ImportChoice.UsualJoinMm)
{
    /// <summary>Loose ends this near are joined unless the person says otherwise, mm.</summary>
    public const double UsualJoinMm = 0.05;

    /// <summary>Nothing said.</summary>
    public static ImportChoice None { get; } = new(null, []);
}
