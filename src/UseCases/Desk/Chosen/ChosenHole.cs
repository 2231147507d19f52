using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Measures of holes, and of the rows they stand in.</summary>
internal static class ChosenHole
{
    /// <summary>A hole, single or of a row.</summary>
    public static ChosenMeasures? Of(Results r, Thing thing)
    {
        if (r.Holes.FirstOrDefault(h => h.Name == thing.Name) is not { } hole) return null;
        var place = ChosenMeasures.Place(r, thing, hole.At, isFixed: hole.Row is not null);
        var diameter = ChosenMeasures.Sized(r, "diameter", hole.Diameter, hole.Row is null ? w => new Typed(thing, Measure.Diameter, w) : null, ChosenMeasures.Drills);
        if (hole.Row is null)
        {
            return new($"Hole {hole.Name}", $"{DeskFigures.Purpose(hole)}. Diameter as written: {hole.DiameterAsWritten}.", place.Add(diameter), [.. Nearest(r, hole, thing), new("take this hole away", new RemoveHole(hole.Name))], []);
        }

        if (Row(r, hole.Row) is not { } row) return null;
        return new($"Hole {hole.Name}", $"{DeskFigures.Purpose(hole)}. It stands in row {row.Name}, and its place and size follow from the row.", [.. place, diameter, .. OfRow(row)], Ways(r, row), []);
    }

    /// <summary>An end of a row.</summary>
    public static ChosenMeasures? RowEnd(Results r, Thing thing)
    {
        if (Row(r, thing.Owner) is not { } row || PlanChange.PlaceOf(r.Plan, thing) is not { } at) return null;
        var about = row.OnMidline ? "The row lies along the middle of the grip: its end goes to the nearest point there." : "The row lies on a straight line between its ends.";
        return new($"{(thing.IsFirst ? "First" : "Last")} end of row {row.Name}", about, [.. ChosenMeasures.Place(r, thing, at), .. OfRow(row)], Ways(r, row), []);
    }

    private static HoleRow? Row(Results r, string name) => r.Plan.Holes.OfType<HoleRow>().FirstOrDefault(h => h.Name == name);

    private static IEnumerable<ChosenMeasure> OfRow(HoleRow row)
    {
        yield return new("holes in the row", row.Count.ToString(System.Globalization.CultureInfo.InvariantCulture), "", w => new SetValue(PlanField.Row, row.Name, "count", w));
    }

    private static ImmutableArray<ChosenWay> Ways(Results r, HoleRow row)
    {
        var ways = ImmutableArray.CreateBuilder<ChosenWay>();
        ways.Add(new("whole row to the nearest drills owned", new RowOfDrills(row.Name, r.Shop.Drills)));
        if (row.OnMidline) ways.Add(new("lay the row on a straight line", new RowAsLine(row.Name)));
        ways.Add(new("write each hole of the row by itself", new RowAsHoles(row.Name)));
        ways.Add(new("take the row away", new RemoveRow(row.Name)));
        return ways.ToImmutable();
    }

    /// <summary>The drills owned just below and just above, when the hole is no drill owned.</summary>
    private static IEnumerable<ChosenWay> Nearest(Results r, PlacedHole hole, Thing thing)
    {
        var (less, more) = (DrillSeries.SmallerOrEqual(r.Shop.Drills, hole.Diameter), DrillSeries.LargerOrEqual(r.Shop.Drills, hole.Diameter));
        if (less is not null && Math.Abs(less.Diameter.Mm - hole.Diameter.Mm) < 1e-6) yield break;
        foreach (var drill in new[] { less, more }.OfType<DrillSize>()) yield return new($"make it {drill.Name}, a drill you own", new Typed(thing, Measure.Diameter, drill.Name));
    }
}
