using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>What a way out of a finding would do to everything else, worked up beside the open plan without touching it.</summary>
/// <param name="Way">The way.</param>
/// <param name="Parts">What of the plan would change.</param>
/// <param name="Numbers">What the numbers would do.</param>
/// <param name="Findings">What the findings would do.</param>
public sealed record RemedyEffect(RemedyWay Way, ImmutableArray<PartInWords> Parts, ImmutableArray<NumberInWords> Numbers, FindingsDifference Findings)
{
    /// <summary>Works it up.</summary>
    public static Checked<RemedyEffect> Of(PlanOnDesk desk, RemedyWay way)
    {
        var now = desk.Results;
        return desk.Trial(new MakeRemedy(way)).Then(then =>
        {
            var d = PlanDifference.Of(now, then);
            return Checked<RemedyEffect>.Good(new RemedyEffect(way, PartInWords.Of(d, then.Plan.Units), NumberInWords.Of(d.Figures, then.Plan.Units), d.Findings));
        });
    }
}
