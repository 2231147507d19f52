using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Mass and balance by stage.</summary>
public static class StageWeights
{
    /// <summary>Mass and balance by stage.</summary>
    public static ImmutableArray<StageFigures> Of(Plan plan, ImmutableArray<PlacedHole> holes, Region piece, BenchDatum bench, Steel? steel) => throw new NotSupportedException("not built yet");
}
