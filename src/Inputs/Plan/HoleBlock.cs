using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Writes new holes and rows as blocks of a plan.</summary>
public static class HoleBlock
{
    /// <summary>Adds a hole as a maker types it, after the last one; empty values are left out.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="values">Keys of a hole with what was typed; without a name it gets the next free one of H1, H2, ...</param>
    public static Checked<PlanFile> AddHole(PlanFile file, ImmutableArray<(string Key, string Typed)> values) => Add(file, "hole", values);

    /// <summary>The next free name for a hole or a row: the letters with the first number that is not taken.</summary>
    public static string FreeName(Plan plan, string letters)
    {
        var taken = plan.Holes.Select(h => h.Name).Concat(HolePlacement.Of(plan).Select(h => h.Name)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        for (var i = 1; ; i++)
        {
            if (!taken.Contains($"{letters}{i}")) return $"{letters}{i}";
        }
    }

    internal static Checked<PlanFile> Add(PlanFile file, string heading, ImmutableArray<(string Key, string Typed)> values)
    {
        var given = values.Where(v => !string.IsNullOrWhiteSpace(v.Typed)).ToDictionary(v => v.Key, v => v.Typed, StringComparer.Ordinal);
        if (!given.ContainsKey("name")) given["name"] = heading == "hole" ? FreeName(file.Plan, "H") : FreeRowName(file.Plan);
        if (given.Keys.FirstOrDefault(k => PlanKeys.Table.Find(heading, k) is null) is { } unknown) return PlanEdit.Refused(file, $"{unknown} is no key of a {heading}", "name a key of docs/plan-file.md");
        var lines = PlanKeys.Table.Under(heading).Where(k => given.ContainsKey(k.Key)).Select(k => $"{k.Key} = {PlanValue.Of(k, given[k.Key]).InFile(file, null)}");
        return PlanBlock.Add(file, heading, given["name"].Trim(), lines, f => f.Plan.Holes.Length == file.Plan.Holes.Length + 1);
    }

    /// <summary>The lines of a hole.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="hole">The hole.</param>
    /// <param name="diameter">Its diameter as it stands in the file.</param>
    internal static IEnumerable<string> Lines(PlanFile file, PlacedHole hole, string diameter)
    {
        var at = hole.At;
        var decimals = file.Plan.Units == LengthUnit.Inch ? 4 : 3;
        yield return $"name = {PlanEdit.Quoted(hole.Name, null, file)}";
        yield return $"at = [{Shown.Trimmed(at.X / file.UnitMm, decimals)}, {Shown.Trimmed(at.Y / file.UnitMm, decimals)}]";
        yield return $"diameter = {diameter}";
        yield return $"use = \"{PlanKeys.Uses[(int)hole.Use]}\"";
        if (hole.Make != HoleMake.Drill) yield return $"make = \"{PlanKeys.Makes[(int)hole.Make]}\"";
    }

    private static string FreeRowName(Plan plan)
    {
        var names = plan.Holes.Select(h => h.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var letter in "RABCDEFGKMNPQSTUVW")
        {
            if (!names.Any(n => n.StartsWith(letter.ToString(), StringComparison.OrdinalIgnoreCase))) return letter.ToString();
        }

        return FreeName(plan, "row-");
    }
}
