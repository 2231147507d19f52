using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>One value of a plan as a form shows it.</summary>
/// <param name="Heading">Heading; empty for the top.</param>
/// <param name="Item">Name of the hole or row; else empty.</param>
/// <param name="Key">Key.</param>
/// <param name="Label">What stands at it.</param>
/// <param name="Help">What it is, in a sentence, with an example.</param>
/// <param name="Written">As it stands in the plan; empty when it does not.</param>
/// <param name="Beside">The same in the other unit; empty when it is no length.</param>
/// <param name="Choices">What can be chosen, value and words; none when it is typed.</param>
/// <param name="Offer">Name of the list of values that are offered while typing; empty when none.</param>
/// <param name="IsLong">Whether it takes several lines.</param>
public sealed record PlanField(string Heading, string Item, string Key, string Label, string Help, string Written, string Beside, ImmutableArray<(string Value, string Says)> Choices, string Offer, bool IsLong)
{
    /// <summary>Heading of single holes.</summary>
    public const string Hole = "hole";

    /// <summary>Heading of rows.</summary>
    public const string Row = "hole_row";

    /// <summary>Name of the list of drills owned.</summary>
    public const string Drills = "drills-owned";

    /// <summary>Name of the list of steels known.</summary>
    public const string Steels = "steels-known";

    /// <summary>The change when something else is typed in.</summary>
    public PlanChange Set(string written)
        => (Heading, Key) is (Hole, "x" or "y") ? new Typed(new Thing(ThingKind.Hole, Item), Key == "x" ? Measure.X : Measure.Y, written) : new SetValue(Heading, Item, Key, written);

    /// <summary>The centre of a hole as two values, along and across.</summary>
    internal IEnumerable<PlanField> Apart(LengthUnit units)
    {
        var written = Written.Split(',', 2, StringSplitOptions.TrimEntries);
        foreach (var (i, key, says) in new[] { (0, "x", "Along the piece"), (1, "y", "Across the piece") })
        {
            var one = i < written.Length ? written[i] : "";
            yield return this with { Key = key, Label = key, Help = says + ", centre in the plan's own axes.", Written = one, Beside = BesideLength.OtherUnit(one, units) };
        }
    }

    internal static PlanField Of(PlanFile file, KeyRow row, string item)
    {
        var written = ValueEdit.Written(file, row.Table, item, row.Key) ?? "";
        return new(
            row.Table,
            item,
            row.Key,
            row.Key.Replace('_', ' '),
            Sentence(row, written),
            written,
            InOtherUnit(row, written, file.Plan.Units),
            Choose(row),
            row.Kind.Contains("drill", StringComparison.Ordinal) ? Drills : row is { Table: "stock", Key: "steel" } ? Steels : "",
            row.Kind == "path data");
    }

    /// <summary>What it is; while it is empty also how it is written and what holds then.</summary>
    private static string Sentence(KeyRow row, string written)
    {
        var meaning = row.Meaning.EndsWith("...", StringComparison.Ordinal) ? row.Meaning : row.Meaning.TrimEnd('.') + ".";
        if (written.Length > 0) return meaning;
        var example = row.Words.Length > 0 || row.Kind is "true or false" or "path data" ? "" : $" Written as {Example(row)}.";
        return meaning + example + (row.Required ? "" : row.Default switch { "" => " Empty: left out.", "-" => "", var d => $" Empty: {d}." });
    }

    /// <summary>The example of the key table without the signs of the file's form: points without brackets, texts without quotes.</summary>
    private static string Example(KeyRow row) => row.Example.Replace("]], [[", " to ", StringComparison.Ordinal).Replace("], [", " to ", StringComparison.Ordinal).Replace("[", "", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal).Trim('"', '\'');

    private static string InOtherUnit(KeyRow row, string written, LengthUnit units)
        => row.Kind.StartsWith("length", StringComparison.Ordinal) || row.Kind.EndsWith("length", StringComparison.Ordinal)
            ? BesideLength.Of(written, units)
            : row.Kind == "point" ? string.Join(", ", written.Split(',').Select(w => BesideLength.OtherUnit(w, units))).Trim(',', ' ') : "";

    private static ImmutableArray<(string Value, string Says)> Choose(KeyRow row)
    {
        ImmutableArray<(string Value, string Says)> some = row.Kind == "true or false" ? [("true", "yes"), ("false", "no")] : [.. row.Words.Select(w => (w, w))];
        return some.IsEmpty || row.Required ? some : some.Insert(0, ("", row.Default switch { "" => "left out", "false" => "not said: no", var d => $"not said: {d}" }));
    }
}
