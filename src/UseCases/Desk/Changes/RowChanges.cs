using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Adds a row of holes as a maker types it.</summary>
/// <param name="Values">Keys of a row with what was typed; empty ones are left out, a missing name is found.</param>
public sealed record AddRow(ImmutableArray<(string Key, string Written)> Values) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => RowEdit.Add(file, Values);
}

/// <summary>Takes a row away, all its holes.</summary>
/// <param name="Name">Its name.</param>
public sealed record RemoveRow(string Name) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => RowEdit.Remove(file, Name);
}

/// <summary>Writes each hole of a row by itself, where and as large as it is.</summary>
/// <param name="Name">Name of the row.</param>
public sealed record RowAsHoles(string Name) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => RowEdit.AsHoles(file, Name);
}

/// <summary>Lays a row along the midline on the straight line between its ends.</summary>
/// <param name="Name">Name of the row.</param>
public sealed record RowAsLine(string Name) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => RowEdit.AsLine(file, Name);
}

/// <summary>Sets every hole of a row to the nearest drill owned.</summary>
/// <param name="Name">Name of the row.</param>
/// <param name="Drills">The drills owned.</param>
public sealed record RowOfDrills(string Name, ImmutableArray<DrillSize> Drills) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file)
    {
        if (Drills.IsEmpty) return No(file, "no drills are listed in the shop file", "list the drills you own first");
        var holes = HolePlacement.Of(file.Plan).Where(h => h.Row == Name).ToArray();
        if (holes.Length == 0) return No(file, $"the plan has no row named {Name}", "choose one of its rows");
        var names = holes.Select(h => Written(Drills.MinBy(d => Math.Abs(d.Diameter.Mm - h.Diameter.Mm))!, file.Plan.Units)).ToArray();
        return ValueEdit.Set(file, "hole_row", Name, "diameters", names.Distinct(StringComparer.Ordinal).Count() == 1 ? names[0] : string.Join(", ", names));
    }

    /// <summary>A metric drill in a plan in mm is a bare number, any other its name.</summary>
    private static string Written(DrillSize drill, LengthUnit units)
        => units == LengthUnit.Mm && drill.Name.EndsWith(" mm", StringComparison.Ordinal) ? drill.Name[..^3] : drill.Name;
}
