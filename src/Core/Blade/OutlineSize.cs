using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Figures of the outline.</summary>
public static class OutlineSize
{
    /// <summary>Figures of the outline.</summary>
    public static OutlineFigures Of(Plan plan, ImmutableArray<PlacedHole> holes) => throw new NotSupportedException("not built yet");
}
