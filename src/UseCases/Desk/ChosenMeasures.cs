using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>The measures of a chosen thing as they can be typed in.</summary>
/// <param name="Name">What it is: "Hole L1".</param>
/// <param name="About">More of it, in a sentence.</param>
/// <param name="IsFixed">Whether the desk cannot change it.</param>
/// <param name="Measures">The measures.</param>
public sealed record ChosenMeasures(string Name, string About, bool IsFixed, ImmutableArray<(Measure Measure, string Label, string Written)> Measures)
{
    /// <summary>Those of a thing; null when nothing is chosen or it is gone.</summary>
    public static ChosenMeasures? Of(PlanOnDesk desk, Thing? thing)
    {
        if (thing is null) return null;
        var (r, units) = (desk.Results, desk.Results.Plan.Units);
        if (thing.Kind == ThingKind.OutlinePoint)
        {
            return PlanChange.PlaceOf(r.Plan, thing) is { } p ? new($"Point {thing.Segment + 1}", $"of {r.Plan.Outline.Segments.Length} on the outline, in the plan's own axes.", false, Place(p)) : null;
        }

        if (r.Holes.FirstOrDefault(h => h.Name == thing.Name) is not { } hole) return null;
        var about = DeskFigures.Purpose(hole) + (hole.Row is { } row ? $". It stands in row {row}; the row is changed in the plan file." : $". Diameter as written: {hole.DiameterAsWritten}.");
        return new($"Hole {hole.Name}", about, hole.Row is not null, Place(hole.At).Add((Measure.Diameter, "diameter", DeskFigures.Typed(hole.Diameter, units))));

        ImmutableArray<(Measure Measure, string Label, string Written)> Place(Point at) =>
        [
            (Measure.X, "x", DeskFigures.Typed(Length.OfMm(at.X), units)),
            (Measure.Y, "y", DeskFigures.Typed(Length.OfMm(at.Y), units)),
        ];
    }
}
