using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The edges that can be measured from at the bench.</summary>
public static class BenchEdges
{
    /// <summary>The edges that can be measured from at the bench.</summary>
    public static BenchDatum Of(Plan plan, Shop shop) => throw new NotSupportedException("not built yet");
}
