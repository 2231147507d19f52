using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Changes the unit of bare numbers of a plan. No size changes: bare lengths get their old unit written to them, the outline's numbers are written anew.</summary>
internal static class PlanUnits
{
    public static Checked<PlanFile> Set(PlanFile file, string units)
    {
        var entry = file.Root.Find("units")!.Value;
        if (units == (entry as TomlText)?.Value) return Checked<PlanFile>.Good(file);
        var word = new Splice(entry.Offset, entry.Length, PlanEdit.Quoted(units, entry, file));
        double newMm;
        switch (units)
        {
            case "mm": newMm = 1; break;
            case "in": newMm = Length.MmPerInch; break;
            default: return PlanSplice.Apply(file, [word], _ => true, "units");
        }

        var splices = new List<Splice> { word };
        var unit = file.UnitMm == 1 ? "mm" : "in";
        foreach (var row in PlanKeys.Table.Keys)
        {
            foreach (var node in Values(file, row)) splices.AddRange(Pinned(node, row, unit, file));
        }

        if ((file.Root.Find("outline")?.Value as TomlTable)?.Find("path")?.Value is TomlText path) splices.Add(Outline(path, newMm, file));
        var may = PlanKeys.Table.Headings.Where(h => h.Name.Length > 0).Select(h => h.Name).Append("units").ToArray();
        return PlanSplice.Apply(file, splices, f => Same(f.Plan, file.Plan), may);
    }

    private static IEnumerable<TomlNode> Values(PlanFile file, KeyRow row)
    {
        IEnumerable<TomlTable> tables = row.Table.Length == 0 ? [file.Root] : file.Root.Find(row.Table)?.Value switch { TomlTable one => [one], TomlTables many => many.Items, _ => [] };
        return tables.Select(t => t.Find(row.Key)?.Value).OfType<TomlNode>();
    }

    private static IEnumerable<Splice> Pinned(TomlNode node, KeyRow row, string unit, PlanFile file)
    {
        if (!row.Kind.Contains("length", StringComparison.Ordinal) && !row.Kind.Contains("point", StringComparison.Ordinal)) return [];
        switch (node)
        {
            case TomlNumber:
                return [new Splice(node.Offset, node.Length, $"\"{PlanEdit.Raw(file, node)} {unit}\"")];
            case TomlList list:
                return list.Items.SelectMany(i => Pinned(i, row, unit, file));
            case TomlText t when LengthText.Read(t.Value, 1) is { IsGood: true, Value.Writing: LengthWriting.Bare }:
                return [new Splice(t.Offset, t.Length, PlanEdit.Quoted($"{t.Value.Trim()} {unit}", t, file))];
            case TomlText t when QuantityText.LengthAndTolerance(t.Value, 1) is { IsGood: true, Value.PlusMinus: not null }:
                var (number, after) = NumberText.Split(t.Value.Trim());
                return after[0] is '+' or '±' ? [new Splice(t.Offset, t.Length, PlanEdit.Quoted($"{number} {unit} {after}", t, file))] : [];
            default:
                return [];
        }
    }

    /// <summary>Every number of the path but an arc's turn and its two flags.</summary>
    private static Splice Outline(TomlText path, double newMm, PlanFile file)
    {
        var read = PathData.Read(path.Value, file.UnitMm);
        var text = new StringBuilder(path.Value);
        for (var i = read.Steps.Length - 1; i >= 0; i--)
        {
            var step = read.Steps[i];
            for (var k = step.NumberCount - 1; k >= 0; k--)
            {
                if (step.Kind == 'A' && k % 7 is 2 or 3 or 4) continue;
                var number = read.Numbers[step.FirstNumber + k];
                var old = path.Value.Substring(number.Offset, number.Length);
                var value = double.Parse(old, System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture) * file.UnitMm;
                var lead = number.Offset > 0 && (char.IsAsciiDigit(path.Value[number.Offset - 1]) || path.Value[number.Offset - 1] == '.') ? " " : "";
                var after = number.Offset + number.Length < path.Value.Length && path.Value[number.Offset + number.Length] is var c && (char.IsAsciiDigit(c) || c == '.') ? " " : "";
                text.Remove(number.Offset, number.Length).Insert(number.Offset, lead + PathData.Number(value, newMm) + after);
            }
        }

        return path.ContentOffset >= 0 ? new Splice(path.ContentOffset, path.Value.Length, text.ToString()) : new Splice(path.Offset, path.Length, PlanEdit.Quoted(text.ToString(), path, file));
    }

    private static bool Same(Plan a, Plan b)
        => a.Outline.Segments.Length == b.Outline.Segments.Length
            && a.Outline.Segments.Zip(b.Outline.Segments).All(p => p.First.At(0.5).To(p.Second.At(0.5)) < 1e-6 && p.First.Start.To(p.Second.Start) < 1e-6)
            && HolePlacement.Of(a).Zip(HolePlacement.Of(b)).All(p => p.First.At.To(p.Second.At) < 1e-6 && Math.Abs(p.First.Diameter.Mm - p.Second.Diameter.Mm) < 1e-9)
            && a.Stock == b.Stock && a.Datum == b.Datum && a.Edge == b.Edge && Same(a.Bevel, b.Bevel) && a.Grip == b.Grip && a.BrokenEdges == b.BrokenEdges && a.Layout == b.Layout && a.Target == b.Target
            && Same(a.DistalTaper, b.DistalTaper) && Same(a.TangTaper, b.TangTaper) && a.AddedMasses.SequenceEqual(b.AddedMasses) && Same(a.Scales, b.Scales) && a.Cord == b.Cord && a.Hand == b.Hand && a.UserAir == b.UserAir && a.Heat == b.Heat && a.Finish == b.Finish;

    /// <summary>A plunge written as one x reaches over the outline's box, which is the same but for rounding.</summary>
    private static bool Same(Bevel? a, Bevel? b)
        => a is null || b is null
            ? a == b
            : a with { Plunge = null } == b with { Plunge = null } && (a.Plunge is { } p && b.Plunge is { } q ? p.A.To(q.A) + p.B.To(q.B) < 1e-6 : a.Plunge == b.Plunge);

    /// <summary>An end written as one x reaches over the outline's box, which is the same but for rounding.</summary>
    private static bool Same(ScalesPlan? a, ScalesPlan? b)
    {
        return a is null || b is null ? a is null && b is null : (a with { Front = null, Rear = null }).Equals(b with { Front = null, Rear = null }) && At(a.Front, b.Front) && At(a.Rear, b.Rear);

        static bool At(PlungeLine? p, PlungeLine? q) => p is null || q is null ? p == q : p.A.To(q.A) + p.B.To(q.B) < 1e-6;
    }

    /// <summary>A taper that ends with the outline ends at the same place but for rounding.</summary>
    private static bool Same(Taper? a, Taper? b)
        => a is null || b is null ? a == b : a with { Ends = b.Ends } == b && Math.Abs(a.Ends.Mm - b.Ends.Mm) < 1e-6;
}
