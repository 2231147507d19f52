using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads what a plan puts on the steel.</summary>
internal sealed class AddedMassReading(SourceText source, double unitMm, List<Fault> faults, Path? outline)
{
    private const int Most = 100;

    public ImmutableArray<AddedMass> Read(TomlTable root)
    {
        var tables = (root.Find("added_mass")?.Value as TomlTables)?.Items ?? [];
        if (tables.Count > Most)
        {
            faults.Add(source.Fault(tables[Most].Offset, $"more than {Most} added masses", "put some of them together"));
            return [];
        }

        var read = ImmutableArray.CreateBuilder<AddedMass>();
        var lines = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        foreach (var table in tables)
        {
            var f = new Fields(source, table, "added_mass", PlanKeys.Table, unitMm, faults);
            if (One(f) is not { } mass) continue;
            if (lines.TryGetValue(mass.Name, out var line)) f.Fault("name", $"two added masses are named {mass.Name}; the other one is at line {line}", "give one of them another name");
            lines[mass.Name] = source.LineOf(table.Offset);
            read.Add(mass);
        }

        return read.ToImmutable();
    }

    private AddedMass? One(Fields f)
    {
        var name = f.Text("name");
        var weight = f.Quantity("mass", QuantityText.MassAndTolerance)?.Value;
        var density = f.Quantity("density", OtherTexts.GramsPerCm3);
        var thickness = f.Length("thickness");
        var sides = f.Whole("sides", 1, 2) ?? 2;
        var (at, over) = (f.Point("at"), Over(f));
        if (f.Has("mass") && f.Has("density")) f.Fault("density", "density beside mass", "keep the weight if it was weighed and take density out; else take mass out");
        if (!f.Has("mass") && !f.Has("density")) f.FaultAt(f.Offset, "an added mass without its weight", "add mass = \"9 g\", or density = \"0.61 g/cm3\" with thickness and over");
        if (!f.Has("mass") && f.Has("density") && !f.Has("thickness")) f.Fault("density", "density without thickness", "add thickness = 8, on one side");
        if (!f.Has("mass") && f.Has("density") && !f.Has("over")) f.Fault("density", "density without over", "add over = [206, 330], from one x to another; a mass at one place needs its weight");
        if (f.Has("at") && f.Has("over")) f.Fault("at", "at beside over", "keep at for a mass at one place, or over for one that covers the outline");
        if (!f.Has("at") && !f.Has("over")) f.FaultAt(f.Offset, "an added mass without its place", "add at = [266, 34], or over = [206, 330] for what covers the outline from one x to another");
        return name is null || (weight is null && density is null) || (at is null && over is null) ? null : new AddedMass(name, weight, density is { } d ? Density.OfGramsPerCm3(d) : null, thickness, sides, at, over);
    }

    private (Length From, Length To)? Over(Fields f)
    {
        if (f.Node("over") is not { } node) return null;
        if (node is not TomlList { Items: [var from, var to] })
        {
            f.Fault("over", "over is not two lengths", "write two x in brackets, as [206, 330]");
            return null;
        }

        if (f.Length(from, "over", positive: false, drills: false)?.Length is not { } a || f.Length(to, "over", positive: false, drills: false)?.Length is not { } b) return null;
        if (b < a) (a, b) = (b, a);
        if (outline is null) return (a, b);
        var box = outline.Bounds;
        if (Math.Min(b.Mm, box.MaxX) - Math.Max(a.Mm, box.MinX) > 0.1) return (a, b);
        f.Fault("over", "over covers nothing of the outline", $"write two x between {Shown.Both(Length.OfMm(box.MinX))} and {Shown.Both(Length.OfMm(box.MaxX))}");
        return null;
    }
}
