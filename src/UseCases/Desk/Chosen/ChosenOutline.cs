using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Measures of points, control points, arcs and lines of the outline.</summary>
internal static class ChosenOutline
{
    private const string LineId = "segment:";

    /// <summary>A point, a control point or the middle of an arc.</summary>
    public static ChosenMeasures? Of(Results r, Thing thing)
    {
        if (PlanChange.PlaceOf(r.Plan, thing) is not { } at) return null;
        var (i, segments) = (thing.Segment, r.Plan.Outline.Segments);
        var place = ChosenMeasures.Place(r, thing, at);
        switch (thing.Kind)
        {
            case ThingKind.Control:
                return new($"{(thing.IsFirst ? "First" : "Second")} control point of line {i + 1}", "The curve leaves its end toward it; it is not on the outline itself.", place, Kinds(segments[i], i), []);
            case ThingKind.Bow:
                return new($"Arc {i + 1}", "The middle of the arc: its radius changes, its ends stay.", [Radius(r, (Arc)segments[i], i), .. place], [.. Kinds(segments[i], i), Between(segments[i])], []);
            default:
                ImmutableArray<ChosenWay> ways = [new("take this point away", new RemovePoint(i)), Between(segments[i]) with { Says = "add a point between this and the next" }];
                ImmutableArray<string> wheels = [.. r.Shop.Wheels.Select(w => DeskFigures.Typed(Length.OfMm(w.Diameter.Mm / 2), r.Plan.Units)).Distinct(StringComparer.Ordinal)];
                return new($"Point {i + 1}", $"of {segments.Length} on the outline, in the plan's own axes.", place, ways, [new("radius", "round this corner", wheels, w => new RoundCorner(i, w))]);
        }
    }

    /// <summary>A line of the outline, chosen where it was clicked; null when it is none.</summary>
    public static ChosenMeasures? Line(Results r, ChosenOnDrawing chosen)
    {
        var segments = r.Plan.Outline.Segments;
        if (!chosen.Id.StartsWith(LineId, StringComparison.Ordinal) || !int.TryParse(chosen.Id.AsSpan(LineId.Length), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var i) || i >= segments.Length) return null;
        var s = segments[i];
        var add = new ChosenWay("add a point here", new AddPoint(Nearest.On(s, chosen.At).At));
        var radius = s is Arc { IsCircle: true } arc ? [Radius(r, arc, i)] : ImmutableArray<ChosenMeasure>.Empty;
        return new(DrawnThings.LineName(s, i), $"from point {i + 1} to point {((i + 1) % segments.Length) + 1} of the outline.", [.. radius, ChosenMeasures.Sized(r, "long", Length.OfMm(s.Length), null)], [add, .. Kinds(s, i)], []);
    }

    private static ChosenMeasure Radius(Results r, Arc arc, int i) => ChosenMeasures.Sized(r, "radius", Length.OfMm(arc.Radius), w => new SetArcRadius(i, w));

    private static ChosenWay Between(Segment s) => new("add a point in its middle", new AddPoint(s.At(0.5)));

    private static ImmutableArray<ChosenWay> Kinds(Segment s, int i)
    {
        var ways = ImmutableArray.CreateBuilder<ChosenWay>();
        if (s is not Foundation.Line) ways.Add(new("make it straight", new SetSegmentKind(i, SegmentKind.Straight)));
        if (s is not Arc { IsCircle: true }) ways.Add(new("make it an arc", new SetSegmentKind(i, SegmentKind.Arc)));
        if (s is not Bezier) ways.Add(new("make it a curve", new SetSegmentKind(i, SegmentKind.Curve)));
        return ways.ToImmutable();
    }
}
