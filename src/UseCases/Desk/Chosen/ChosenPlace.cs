using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Measures of the ends of edge, plunge and grip, and of the datum.</summary>
internal static class ChosenPlace
{
    public static ChosenMeasures? Of(Results r, PlanFile file, Thing thing)
    {
        if (PlanChange.PlaceOf(r.Plan, thing) is not { } at) return null;
        var (name, about) = thing.Kind switch
        {
            ThingKind.EdgeEnd => (thing.IsFirst ? "Start of the sharpened part" : "End of the sharpened part", "It stays on the outline: what is typed goes to the nearest point of it."),
            ThingKind.PlungeEnd when IsSquare(file) => ("Plunge line", "Square to the piece, written as one x. Draw an end well across, or let it tilt, to write it as two points."),
            ThingKind.PlungeEnd => (thing.IsFirst ? "First end of the plunge line" : "Second end of the plunge line", "Where the bevel ends, seen from the face."),
            ThingKind.GripEnd => (thing.IsFirst ? "Front end of the grip" : "Rear end of the grip", "The hand holds between them; a struck tool turns about the middle."),
            _ => ("Datum" + (r.Plan.Datum.Name.Length > 0 ? $", {r.Plan.Datum.Name}" : ""), $"Measuring starts here: {Side(r.Plan.Datum.X)} and {Side(r.Plan.Datum.Y)}."),
        };
        return new(name, about, ChosenMeasures.Place(r, thing, at), Ways(r, file, thing), []);
    }

    private static ImmutableArray<ChosenWay> Ways(Results r, PlanFile file, Thing thing) => thing.Kind switch
    {
        ThingKind.PlungeEnd => [IsSquare(file) ? new("let it tilt", new WritePlunge(Square: false)) : new("square to the piece", new WritePlunge(Square: true)), new("take the plunge line away", new SetValue("bevel", "", "plunge", ""))],
        ThingKind.Datum =>
        [
            .. Sides("x", r.Plan.Datum.X, DatumSide.Left, DatumSide.Right),
            .. Sides("y", r.Plan.Datum.Y, DatumSide.Bottom, DatumSide.Top),
        ],
        _ => [],
    };

    private static IEnumerable<ChosenWay> Sides(string key, DatumMark now, params DatumSide[] sides)
        => sides.Where(s => s != now.Side).Select(s => new ChosenWay($"put it {Word(s)}", new SetValue("datum", "", key, s.ToString().ToLowerInvariant())));

    private static bool IsSquare(PlanFile file) => ValueEdit.Written(file, "bevel", "", "plunge") is { } written && !written.Contains(" to ", StringComparison.Ordinal);

    private static string Side(DatumMark mark) => mark.Side == DatumSide.At ? "a coordinate of its own" : Word(mark.Side);

    private static string Word(DatumSide side) => side switch
    {
        DatumSide.Left => "at the left end",
        DatumSide.Right => "at the right end",
        DatumSide.Bottom => "at the lower side",
        _ => "at the upper side",
    };
}
