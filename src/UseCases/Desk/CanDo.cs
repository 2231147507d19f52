using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>One thing that can be done to what is chosen.</summary>
/// <param name="Says">The words on its button.</param>
/// <param name="Change">What it does.</param>
/// <param name="Then">Name of what is chosen afterwards; empty for nothing.</param>
public sealed record CanDo(string Says, PlanChange Change, string Then)
{
    /// <summary>What can be done to what is chosen on the drawing.</summary>
    public static ImmutableArray<CanDo> To(PlanOnDesk desk, ChosenOnDrawing? chosen)
    {
        if (chosen is null) return [];
        var outline = desk.Results.Plan.Outline;
        if (chosen.Line is { } i && i < outline.Segments.Length) return [new("add a point here", new AddPoint(chosen.At), $"point:{i + 1}"), .. Kinds(outline, i, chosen.Id)];
        return chosen.Thing switch
        {
            { Kind: ThingKind.Hole } hole => [new("take it away", new RemoveHole(hole.Name), "")],
            { Kind: ThingKind.OutlinePoint } p when p.Segment < outline.Segments.Length =>
            [
                new("take it away", new RemovePoint(p.Segment), ""),
                new("add a point after it", new AddPoint(outline.Segments[p.Segment].At(0.5)), $"point:{p.Segment + 1}"),
            ],
            { Kind: ThingKind.Control or ThingKind.Bow } t when t.Segment < outline.Segments.Length => [.. Kinds(outline, t.Segment, $"segment:{t.Segment}")],
            _ => [],
        };
    }

    /// <summary>What is chosen, in words; empty when nothing is.</summary>
    public static string Name(PlanOnDesk desk, ChosenOnDrawing? chosen)
    {
        var r = desk.Results;
        if (chosen is null) return "";
        if (chosen.Line is { } i) return i < r.Plan.Outline.Segments.Length ? DrawnThings.LineName(r.Plan.Outline.Segments[i], i) : "";
        if (chosen.Thing is not { } thing) return "";
        var id = thing.ToString();
        return DrawnThings.Rest(r).Concat(DrawnThings.Holes(r)).Concat(DrawnThings.RowHoles(r)).Concat(DrawnThings.OfOutline(r.Plan.Outline)).FirstOrDefault(t => t.Id == id)?.Name ?? "";
    }

    /// <summary>The corner that can be rounded; null when no point is chosen.</summary>
    public static int? Corner(ChosenOnDrawing? chosen) => chosen?.Thing is { Kind: ThingKind.OutlinePoint } p ? p.Segment : null;

    /// <summary>Radii of the wheels owned, as they would be typed in, with their names.</summary>
    public static ImmutableArray<(string Written, string Name)> Wheels(Results r)
        => [.. r.Shop.Wheels.Select(w => (Length.OfMm(0.5 * w.Diameter.Mm), w.Name)).Select(w => (DeskFigures.Typed(w.Item1, r.Plan.Units), $"{w.Name}, radius {Shown.Both(w.Item1)}"))];

    /// <summary>Diameter a new hole is given: that of the last single hole as written, else 6 mm or 1/4 in.</summary>
    public static string DiameterOfNew(Plan plan)
        => plan.Holes.OfType<Hole>().LastOrDefault()?.DiameterAsWritten is { Length: > 0 } written ? written : plan.Units == LengthUnit.Inch ? "1/4 in" : "6 mm";

    private static IEnumerable<CanDo> Kinds(Path outline, int i, string then)
    {
        var now = OutlineEdit.Kind(outline.Segments[i]);
        foreach (var (kind, says) in new[] { (SegmentKind.Straight, "make it straight"), (SegmentKind.Arc, "make it an arc"), (SegmentKind.Curve, "make it a curve") })
        {
            if (kind != now) yield return new(says, new SetSegmentKind(i, kind), then);
        }
    }
}
