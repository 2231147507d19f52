using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A plan the open one can be compared with.</summary>
/// <param name="Key">Name a page calls it by.</param>
/// <param name="Says">What it is.</param>
public sealed record ComparableWith(string Key, string Says);

/// <summary>The open plan beside another one.</summary>
/// <param name="Says">What the other is: "revision A".</param>
/// <param name="Text">Its text.</param>
/// <param name="Other">The other, worked up in the same shop.</param>
/// <param name="IsSame">Whether nothing of the plan differs.</param>
/// <param name="Parts">What changed from the other to the open one.</param>
/// <param name="Numbers">What the numbers did.</param>
/// <param name="Findings">What the findings did.</param>
/// <param name="Drawing">Both outlines.</param>
public sealed record DeskComparison(
    string Says,
    string Text,
    Results Other,
    bool IsSame,
    ImmutableArray<PartInWords> Parts,
    ImmutableArray<NumberInWords> Numbers,
    FindingsDifference Findings,
    BothDrawn Drawing)
{
    private const string OfRevision = "revision:";
    private const string OfPlan = "plan:";

    /// <summary>Everything a plan can be compared with: its revisions, then the other plans of the folder.</summary>
    public static ImmutableArray<ComparableWith> Choices(PlanOnDesk plan, DeskFolder folder)
        =>
        [
            .. KeptRevisions.Of(plan, folder).Kept.Select(k => new ComparableWith(OfRevision + k.Revision, $"revision {k.Revision}" + (k.Date.Length > 0 ? $", {k.Date}" : ""))),
            .. folder.Plans().Where(p => p.Stem != plan.Stem).OrderByDescending(p => p.Stem.StartsWith(plan.Stem + ".", StringComparison.Ordinal))
                .Select(p => new ComparableWith(OfPlan + p.Stem, p.Stem == plan.Stem + ".desk" ? $"{p.Stem}: what the desk laid aside" : p.Stem)),
        ];

    /// <summary>The key of a revision.</summary>
    public static string KeyOf(KeptRevision kept) => OfRevision + kept.Revision;

    /// <summary>Compares.</summary>
    /// <param name="plan">The open plan.</param>
    /// <param name="folder">The folder.</param>
    /// <param name="key">Which other one, as in <see cref="Choices"/>.</param>
    public static Checked<DeskComparison> Of(PlanOnDesk plan, DeskFolder folder, string key)
    {
        var (says, text) = key.StartsWith(OfRevision, StringComparison.Ordinal)
            ? ("revision " + key[OfRevision.Length..], KeptRevisions.Text(plan, folder, key[OfRevision.Length..]))
            : key.StartsWith(OfPlan, StringComparison.Ordinal)
                ? (key[OfPlan.Length..], folder.PathOf(key[OfPlan.Length..]).Then(TextFile.Read))
                : ("", Checked<string>.Bad(Fault.OfFile(key, "is nothing to compare with", "choose one of those listed")));
        var now = plan.Results;
        return text.Then(t => plan.InSameShop(t, says).Then(other =>
        {
            var d = PlanDifference.Of(other, now);
            return Checked<DeskComparison>.Good(new DeskComparison(says, t, other, d.IsNone, PartInWords.Of(d, now.Plan.Units), NumberInWords.Of(d.Figures, now.Plan.Units), d.Findings, BothDrawn.Of(other, now)));
        }));
    }
}
