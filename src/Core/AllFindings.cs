using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What is wrong or risky, gravest first.</summary>
public static class AllFindings
{
    /// <summary>What is wrong or risky, gravest first.</summary>
    public static ImmutableArray<Finding> Of(Results results) => throw new NotSupportedException("not built yet");
}
