using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Ways out of findings that change holes, for single holes and holes of rows.</summary>
public static class HoleWays
{
    /// <summary>No hole is offered under this share of its planned diameter.</summary>
    public const double LeastShare = 0.5;

    /// <summary>The largest drill or reamer of the shop up to a diameter; the diameter itself, rounded down, when the shop is assumed or has none near; null when it would be under half of the planned one.</summary>
    public static DrillSize? AtMost(Shop shop, LengthUnit units, PlacedHole hole, double mm)
    {
        var least = LeastShare * hole.Diameter.Mm;
        IEnumerable<DrillSize> owned = shop.IsAssumed ? [] : hole.Make switch { HoleMake.Drill => shop.Drills, HoleMake.Ream => shop.Reamers, _ => [] };
        if (DrillSeries.SmallerOrEqual(owned, Length.OfMm(mm)) is { } best && best.Diameter.Mm >= least) return best;
        var bare = PlanStep.SizeDown(mm, units);
        return bare.Mm > 0 && bare.Mm >= least ? new DrillSize("", bare) : null;
    }

    /// <summary>Holes in other sizes, their centres where they are; no way when one of them stands in a row that would shift.</summary>
    public static ImmutableArray<RemedyWay> Resized(Plan plan, params IEnumerable<(PlacedHole Hole, DrillSize? Size)> sizes)
    {
        var all = sizes.ToArray();
        if (all.Any(s => s.Size is null || (s.Hole.Row is not null && Row(plan, s.Hole) is not { Spacing: RowSpacing.EqualPitch }))) return [];
        return [InSizes(plan, all.Select(s => (s.Hole, s.Size!)))];
    }

    /// <summary>Holes in other sizes, wherever rows then put them.</summary>
    public static RemedyWay InSizes(Plan plan, IEnumerable<(PlacedHole Hole, DrillSize Size)> sizes)
    {
        var all = sizes.ToArray();
        var changes = ImmutableArray.CreateBuilder<RemedyChange>();
        changes.AddRange(all.Where(s => s.Hole.Row is null).Select(s => new HoleResized(s.Hole.Name, s.Size.Diameter, Named(s.Size))));
        foreach (var inRow in all.Where(s => s.Hole.Row is not null).GroupBy(s => s.Hole.Row!))
        {
            var row = Row(plan, inRow.First().Hole)!;
            var diameters = HolePlacement.Diameters(row).Select(Length.OfMm).ToArray();
            foreach (var (hole, size) in inRow) diameters[Place(hole)] = size.Diameter;
            changes.Add(new RowResized(row.Name, diameters.Distinct().Count() == 1 ? [diameters[0]] : [.. diameters]));
        }

        return new RemedyWay("drill " + Listed(all), changes.ToImmutable());
    }

    /// <summary>A hole moved by a step; none when there is no step or it stands in a row.</summary>
    public static ImmutableArray<RemedyWay> Moved(WebChange? change)
        => change is { Step: { } step, Hole.Row: null } ? [new RemedyWay($"move {change.Hole.Name} {WebRemedy.StepInWords(step)}", [new HoleMoved(change.Hole.Name, change.Hole.At + step)])] : [];

    /// <summary>A hole left out; none when it stands in a row.</summary>
    public static ImmutableArray<RemedyWay> LeftOut(PlacedHole hole)
        => hole.Row is null ? [new RemedyWay($"leave out {hole.Name}", [new HoleLeftOut(hole.Name)])] : [];

    /// <summary>The row a hole stands in; null when it is single.</summary>
    public static HoleRow? Row(Plan plan, PlacedHole hole) => plan.Holes.OfType<HoleRow>().FirstOrDefault(r => r.Name == hole.Row);

    /// <summary>Place of a hole in its row, from 0.</summary>
    public static int Place(PlacedHole hole) => int.Parse(hole.Name.AsSpan(hole.Row!.Length), System.Globalization.CultureInfo.InvariantCulture) - 1;

    /// <summary>Sizes told short: holes of one new size together, the old one only when all had the same.</summary>
    private static string Listed((PlacedHole Hole, DrillSize Size)[] all)
        => string.Join("; ", all.GroupBy(s => s.Size.Diameter).Select(g =>
        {
            var before = g.Select(s => s.Hole.Diameter).Distinct().ToArray();
            var names = string.Join(", ", g.Select(s => s.Hole.Name));
            return $"{names} {Sized(g.First().Size)}{(before.Length == 1 ? $" instead of {Shown.Trimmed(before[0].Mm, 2)} mm" : "")}";
        }));

    private static string Sized(DrillSize size)
        => Named(size).Length > 0 ? $"{size.Name} ({Shown.Mm(size.Diameter)})" : $"{Shown.Trimmed(size.Diameter.Mm, 2)} mm ({Shown.Inch(size.Diameter)})";

    /// <summary>The name when it is more than a number of millimetres.</summary>
    private static string Named(DrillSize size) => size.Name.EndsWith(" mm", StringComparison.Ordinal) ? "" : size.Name;
}
