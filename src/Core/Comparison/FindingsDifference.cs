using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What the findings did from one plan to another.</summary>
/// <param name="Gone">Findings that are no more.</param>
/// <param name="New">Findings that were not there.</param>
/// <param name="Changed">Findings of the same trouble in another measure or of other parts.</param>
public sealed record FindingsDifference(ImmutableArray<Finding> Gone, ImmutableArray<Finding> New, ImmutableArray<(Finding Was, Finding Now)> Changed)
{
    /// <summary>From one list to another. Findings of the same code and part belong together; one of a code that a plan has once only, as the rules that name all their holes, belongs to the other whatever its part.</summary>
    public static FindingsDifference Of(ImmutableArray<Finding> was, ImmutableArray<Finding> now)
    {
        var gone = was.ToList();
        var added = new List<Finding>();
        var changed = ImmutableArray.CreateBuilder<(Finding Was, Finding Now)>();
        foreach (var f in now)
        {
            var alone = was.Count(o => o.Code == f.Code) == 1 && now.Count(o => o.Code == f.Code) == 1 && IsOfMany(f.Code);
            var at = gone.FindIndex(o => o.Code == f.Code && o.Where == f.Where);
            if (at < 0 && alone) at = gone.FindIndex(o => o.Code == f.Code);
            if (at < 0)
            {
                added.Add(f);
                continue;
            }

            if (!SaysTheSame(gone[at], f)) changed.Add((gone[at], f));
            gone.RemoveAt(at);
        }

        return new([.. gone], [.. added], changed.ToImmutable());
    }

    private static bool IsOfMany(string code) => code is FindingCodes.EdgeDistanceRule or FindingCodes.PitchRule or FindingCodes.ShareOfHeight;

    private static bool SaysTheSame(Finding a, Finding b)
        => a.Severity == b.Severity && a.Where == b.Where && a.Message == b.Message && a.Found == b.Found && a.Limit == b.Limit;
}
