using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A finding as a page shows it.</summary>
/// <param name="Key">What tells it from the others while numbers change: code, part, and which of its kind.</param>
/// <param name="Finding">The finding.</param>
public sealed record FindingShown((string Code, string Where, int Nth) Key, Finding Finding)
{
    /// <summary>All of a plan, in their order.</summary>
    public static ImmutableArray<FindingShown> Of(Results r)
    {
        var met = new Dictionary<(string Code, string Where), int>();
        return [.. r.Findings.Select(f => new FindingShown((f.Code, f.Where, met[(f.Code, f.Where)] = met.GetValueOrDefault((f.Code, f.Where)) + 1), f))];
    }
}
