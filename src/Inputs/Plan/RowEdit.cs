using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Changes rows of holes in a plan's text.</summary>
public static class RowEdit
{
    /// <summary>The row and the table it is written in; null when there is none of that name.</summary>
    internal static (HoleRow Row, TomlTable Table)? Find(PlanFile file, string name)
    {
        var items = (file.Root.Find("hole_row")?.Value as TomlTables)?.Items ?? [];
        for (var i = 0; i < items.Count; i++)
        {
            var own = (items[i].Find("name")?.Value as TomlText)?.Value.Trim() ?? (items.Count == 1 ? "R" : $"R{i + 1}");
            if (string.Equals(own, name, StringComparison.OrdinalIgnoreCase) && file.Plan.Holes.OfType<HoleRow>().FirstOrDefault(r => r.Name == own) is { } row) return (row, items[i]);
        }

        return null;
    }

    /// <summary>Changes keys of one row.</summary>
    internal static Checked<PlanFile> Write(PlanFile file, HoleRow row, TomlTable table, IReadOnlyList<KeyWrite> keys, Func<HoleRow, bool> isWanted)
        => PlanKeyEdit.Of(file, table, "hole_row", $"hole_row[{PlanEdit.Label(table)}]", keys, f => f.Plan.Holes.OfType<HoleRow>().Any(r => r.Name == row.Name && isWanted(r)));

    internal static Checked<PlanFile> NoRow(PlanFile file, string name)
        => PlanEdit.Refused(file, $"the plan has no row named {NumberText.Clip(name)}", "choose one of its rows");
}
