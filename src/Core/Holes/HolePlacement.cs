using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>All holes of a plan, rows spread out.</summary>
public static class HolePlacement
{
    /// <summary>All holes of a plan, rows spread out.</summary>
    public static ImmutableArray<PlacedHole> Of(Plan plan) => throw new NotSupportedException("not built yet");
}
