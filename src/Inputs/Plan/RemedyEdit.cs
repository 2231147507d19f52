using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Makes the changes a way out of a finding asks for, in the plan's text.</summary>
public static class RemedyEdit
{
    /// <summary>All changes of a way, one after the other; none is made when one of them cannot be.</summary>
    public static Checked<PlanFile> Make(PlanFile file, RemedyWay way)
        => way.Changes.Aggregate(Checked<PlanFile>.Good(file), (done, change) => done.Then(f => Make(f, change)));

    private static Checked<PlanFile> Make(PlanFile file, RemedyChange change) => change switch
    {
        HoleResized { Drill.Length: > 0 } c => PlanEdit.SetDiameter(file, c.Hole, new DrillSize(c.Drill, c.Diameter)),
        HoleResized c => PlanEdit.SetDiameter(file, c.Hole, c.Diameter),
        HoleMoved c => PlanEdit.MoveHole(file, c.Hole, c.To),
        HoleLeftOut c => PlanEdit.RemoveHole(file, c.Hole),
        RowResized c => Row(file, c),
        LengthSet c => PlanEdit.SetLength(file, c.Heading, c.Key, c.Length),
        WordSet c => PlanEdit.SetText(file, c.Heading, c.Key, c.Word),
        AngleSet c => PlanEdit.Set(file, c.Heading, c.Key, _ => PathData.Number(c.Angle.Degrees, 1), (f, _) => f.Plan.Bevel?.SharpenPerSide is { } a && Math.Abs(a.Degrees - c.Angle.Degrees) < 1e-9),
        PointSet c => PlanEdit.Set(file, c.Heading, c.Key, old => PlanEdit.PointLike(file, old, c.Point), (f, n) => PointOf(f, n) is { } p && p.To(c.Point) < 1e-9),
        PlungeSet c => PlanEdit.Set(file, "bevel", "plunge", old => Plunge(file, old, c), (f, _) => f.Plan.Bevel?.Plunge is { } p && p.A.To(c.A) < 1e-9 && p.B.To(c.B) < 1e-9 || IsAcross(c)),
        CornerRounded c => Corner(file, c),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static Checked<PlanFile> Corner(PlanFile file, CornerRounded change)
    {
        var all = file.Plan.Outline.Segments;
        return OutlineEdit.RoundCorner(file, Enumerable.Range(0, all.Length).FirstOrDefault(i => all[i].Start.To(change.At) < 1e-6, -1), change.Radius);
    }

    /// <summary>Whether a line is square to the piece and so may be written as its x alone.</summary>
    private static bool IsAcross(PlungeSet line) => Math.Abs(line.A.X - line.B.X) < 1e-9;

    private static string Plunge(PlanFile file, TomlNode? old, PlungeSet line)
        => IsAcross(line) && old is not TomlList { Items.Count: 2 } ? PlanEdit.LengthLike(file, old, Length.OfMm(line.A.X)) : PlaceEdit.Pair(file, old, line.A, line.B);

    private static Point? PointOf(PlanFile file, TomlNode node)
        => node is TomlList { Items: { Count: 2 } pair } && PlanEdit.LengthOf(file, pair[0]) is { } x && PlanEdit.LengthOf(file, pair[1]) is { } y ? new Point(x.Mm, y.Mm) : null;

    private static Checked<PlanFile> Row(PlanFile file, RowResized change)
    {
        if (RowEdit.Find(file, change.Row) is not var (_, table) || table.Find("diameters")?.Value is not { } old) return RowEdit.NoRow(file, change.Row);
        return PlanSplice.Apply(
            file,
            Diameters(file, old, change.Diameters),
            f => f.Plan.Holes.OfType<HoleRow>().Any(r => r.Name == change.Row && Near(r.Diameters, change.Diameters)),
            $"hole_row[{PlanEdit.Label(table)}].diameters");
    }

    /// <summary>Each diameter at its place when there are as many, else the list anew.</summary>
    private static IEnumerable<Splice> Diameters(PlanFile file, TomlNode old, ImmutableArray<Length> diameters)
    {
        if (old is TomlList list && list.Items.Count == diameters.Length) return list.Items.Zip(diameters, (n, d) => new Splice(n.Offset, n.Length, PlanEdit.LengthLike(file, n, d)));
        var written = string.Join(", ", diameters.Select(d => PathData.Number(d.Mm, file.UnitMm)));
        return [new Splice(old.Offset, old.Length, diameters.Length == 1 && old is not TomlList ? PlanEdit.LengthLike(file, old, diameters[0]) : $"[{written}]")];
    }

    private static bool Near(ImmutableArray<Length> a, ImmutableArray<Length> b) => a.Length == b.Length && a.Zip(b).All(p => Math.Abs((p.First - p.Second).Mm) < 1e-9);
}
