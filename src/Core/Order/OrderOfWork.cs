using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The order of work.</summary>
public static class OrderOfWork
{
    /// <summary>The order of work.</summary>
    public static ImmutableArray<WorkStep> Of(Plan plan, Shop shop, ImmutableArray<PlacedHole> holes) => throw new NotSupportedException("not built yet");
}
