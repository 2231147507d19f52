using System.Collections.Immutable;
using System.Text.Json;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A plan worked up, and what brings its balance where it is wanted.</summary>
/// <param name="Results">The plan worked up.</param>
/// <param name="Balance">The answer.</param>
public sealed record PlannedBalance(Results Results, BalanceAnswer Balance);

/// <summary>What moves weight and balance of a plan, and what brings them where they are wanted.</summary>
public static class PlanBalance
{
    /// <summary>Works it out.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    /// <param name="to">Balance wanted, from the datum, as a maker writes it; null: the plan's target.</param>
    /// <param name="weight">Weight wanted, as a maker writes it; null: the plan's target.</param>
    /// <param name="levers">Keys of the levers allowed, with commas; null: all.</param>
    public static Checked<PlannedBalance> Of(string planPath, string? shopPath, string? to, string? weight, string? levers)
        => OpenWork.Of(planPath, shopPath).Then(w => Of(w.WorkUp(), to, weight, levers));

    /// <summary>The same for a plan that is worked up already.</summary>
    internal static Checked<PlannedBalance> Of(Results r, string? to, string? weight, string? levers)
    {
        var (length, mass) = (r.Plan.Target.BalanceFromDatum, r.Plan.Target.Weight);
        if (to is not null)
        {
            var read = LengthText.Read(to, r.Plan.Units == LengthUnit.Inch ? Length.MmPerInch : 1);
            if (!read.IsGood) return Bad("--to", read.Message, read.Remedy);
            length = read.Value.Length;
        }

        if (weight is not null)
        {
            var read = QuantityText.MassAndTolerance(weight);
            if (!read.IsGood) return Bad("--weight", read.Message, read.Remedy);
            mass = read.Value.Value;
        }

        var known = BalanceLevers.Of(r).Select(l => l.Key).ToImmutableArray();
        ImmutableArray<string> allowed = levers is null ? [] : [.. levers.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
        if (levers is not null && allowed.IsEmpty) return Bad("--levers", "no lever is named", "name some of these: " + string.Join(", ", known));
        if (allowed.FirstOrDefault(k => !known.Contains(k)) is { } unknown) return Bad("--levers", $"\"{unknown}\" is no lever of this plan", "name some of these: " + string.Join(", ", known));
        return BalanceStudy.Of(r, length, mass, allowed) is { } answer
            ? Checked<PlannedBalance>.Good(new PlannedBalance(r, answer))
            : Bad("[stock] steel", $"the density of {r.Plan.Stock.Steel} is not known", "give it in a steel file");
    }

    /// <summary>The same as JSON; names are stable between versions.</summary>
    public static string Json(PlannedBalance planned) => JsonText.Of(w =>
    {
        var (r, b) = planned;
        w.WriteString("name", r.Plan.Name);
        w.WriteString("revision", r.Plan.Revision);
        w.WriteString("datum", r.Plan.Datum.Name);
        w.WriteString("stage", StageName.Key(r.Stages[^1].Stage));
        w.Object("now", () => Write(w, b.Now));
        w.Number("wanted_balance_mm", b.To?.Mm);
        w.Number("wanted_mass_g", b.Weight?.Grams);
        w.List("levers", b.Levers, a =>
        {
            var (l, unit) = (a.Lever, a.Lever.IsWeight ? "g" : "mm");
            w.WriteString("lever", l.Key);
            w.WriteString("says", l.Name);
            w.WriteString("unit", unit);
            w.Number("now", l.Now);
            w.Number("least", l.Low);
            w.Number("most", l.High);
            w.Number("mass_g_per_unit", a.GramsPerUnit);
            w.Number("balance_mm_per_unit", a.MmPerUnit);
            w.Number("mass_g_per_64th_in", l.IsWeight ? null : a.GramsPerUnit * BalanceWords.SixtyFourthMm);
            w.Number("balance_mm_per_64th_in", l.IsWeight ? null : a.MmPerUnit * BalanceWords.SixtyFourthMm);
            if (a.Reaches is not { } reaches) return;
            w.WriteBoolean("reaches", reaches);
            w.Number("value", a.Value);
            w.Object("then", () => Write(w, a.Then!.Value));
        });
        if (b.Together is not { } j) return;
        w.Object("together", () =>
        {
            w.WriteBoolean("reaches", j.Reaches);
            w.List("moves", j.Moves, m =>
            {
                w.WriteString("lever", m.Lever.Key);
                w.Number("now", m.Lever.Now);
                w.Number("value", m.Value);
            });
            w.Object("then", () => Write(w, j.Then));
        });
    });

    private static void Write(Utf8JsonWriter w, Weighed weighed)
    {
        w.Number("mass_g", weighed.Grams);
        w.Number("balance_from_datum_mm", weighed.FromDatumMm);
    }

    private static Checked<PlannedBalance> Bad(string where, string says, string remedy) => Checked<PlannedBalance>.Bad(Fault.OfFile(where, says, remedy));
}
