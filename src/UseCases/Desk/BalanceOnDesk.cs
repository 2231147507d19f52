using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>One lever as the page shows it.</summary>
/// <param name="Key">Its stable name.</param>
/// <param name="Name">What it is.</param>
/// <param name="Now">What it is now.</param>
/// <param name="Alone">The value that alone does it, or how far it gets.</param>
/// <param name="Does">Whether it does it alone.</param>
/// <param name="Then">Weight and balance with it; empty when it is left as it is.</param>
/// <param name="Slopes">What a mm and 1/64 in of it do.</param>
/// <param name="InPlan">How the plan says it.</param>
public sealed record LeverShown(string Key, string Name, string Now, string Alone, bool Does, string Then, string Slopes, string InPlan);

/// <summary>Levers of weight and balance as the page shows them.</summary>
/// <param name="Now">Weight and balance as the plan stands.</param>
/// <param name="Wanted">What is wanted; empty when nothing is.</param>
/// <param name="Levers">Each lever.</param>
/// <param name="TogetherSays">What several together come to; empty when nothing is wanted.</param>
/// <param name="Together">Their moves, a line each.</param>
public sealed record BalanceShown(string Now, string Wanted, ImmutableArray<LeverShown> Levers, string TogetherSays, ImmutableArray<string> Together);

/// <summary>What brings the balance where it is wanted, for its page.</summary>
public static class BalanceOnDesk
{
    /// <summary>What comes first.</summary>
    public const string Caution = BalanceWords.Caution;

    /// <summary>What the figures stand on.</summary>
    public const string Ground = BalanceWords.Ground;

    /// <summary>Works it out.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="to">Balance wanted; empty: the plan's target.</param>
    /// <param name="weight">Weight wanted; empty: the plan's target.</param>
    /// <param name="without">Keys of levers not to move together.</param>
    public static Checked<BalanceShown> Of(Results r, string to, string weight, IReadOnlySet<string> without)
    {
        var levers = without.Count == 0 ? null : string.Join(',', BalanceLevers.Of(r).Where(l => !l.IsWeight && l.Key != "stock" && !without.Contains(l.Key)).Select(l => l.Key));
        var all = PlanBalance.Of(r, Or(to), Or(weight), null);
        return levers is null || !all.IsGood ? all.Then(p => Good(p, p.Balance.Together)) : PlanBalance.Of(r, Or(to), Or(weight), levers).Then(some => Good(all.Value, levers.Length == 0 ? null : some.Balance.Together));
    }

    private static string? Or(string text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    private static Checked<BalanceShown> Good(PlannedBalance planned, JointChange? together)
    {
        var (b, units) = (planned.Balance, planned.Results.Shop.Show);
        return Checked<BalanceShown>.Good(new(
            BalanceWords.Weighed(b.Now, units),
            BalanceWords.Wanted(b, units),
            [.. b.Levers.Select(a => Shown(a, units, planned.Results.Plan.Units))],
            together is not { } j ? "" : (j.Reaches ? "Moved as little as does it; then " : "As near as they get within their limits: ") + BalanceWords.Weighed(j.Then, units),
            together is null ? [] : [.. together.Moves.Where(BalanceWords.IsMoved).Select(m => $"{m.Lever.Name}: {BalanceWords.Value(m.Lever, m.Lever.Now, units)} to {BalanceWords.Value(m.Lever, m.Value, units)}")]));
    }

    private static LeverShown Shown(LeverAnswer a, UnitsShown units, LengthUnit written) => new(
        a.Lever.Key,
        a.Lever.Name,
        BalanceWords.Value(a.Lever, a.Lever.Now, units),
        BalanceWords.Alone(a, units),
        a.Reaches == true,
        a.Then is { } then && a.Value != a.Lever.Now ? BalanceWords.Weighed(then, units) : "",
        $"{BalanceWords.PerMm(a)}; {BalanceWords.PerSixtyFourth(a)}",
        a.Reaches == true ? string.Format(System.Globalization.CultureInfo.InvariantCulture, a.Lever.InPlan, Written(a, written)) : "");

    // as the plan writes it: a number in its own unit, a weight with its unit in quotes
    private static string Written(LeverAnswer a, LengthUnit unit) => a.Lever.IsWeight
        ? Foundation.Shown.Trimmed(a.Value!.Value, 1)
        : unit == LengthUnit.Inch ? Foundation.Shown.Trimmed(a.Value!.Value / Length.MmPerInch, 4) : Foundation.Shown.Trimmed(a.Value!.Value, 2);
}
