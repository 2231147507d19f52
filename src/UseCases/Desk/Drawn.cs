using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>What is chosen on the drawing.</summary>
/// <param name="Id">Its name there; empty when nothing is.</param>
/// <param name="At">Where it was clicked, plan's axes, mm.</param>
public sealed record ChosenOnDrawing(string Id, Point At)
{
    /// <summary>The thing; the hole itself for its rim; null when none.</summary>
    public Thing? Thing => UseCases.Thing.Of(Drawn.HoleOfRim(Id) is { } hole ? $"hole:{hole}" : Id);
}

/// <summary>What a drag on the drawing means.</summary>
public static class Drawn
{
    private const string Rim = "rim:";

    /// <summary>The change a step of a drag asks for; null when the page names no thing.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="id">Name of the thing on the drawing.</param>
    /// <param name="x">Along, mm; the diameter for a rim.</param>
    /// <param name="y">Across, mm.</param>
    /// <param name="rounded">To the nearest half millimetre or 1/64 in.</param>
    /// <param name="drill">Name of the drill owned a rim holds on to; else empty.</param>
    public static PlanChange? Moved(PlanOnDesk desk, string id, double x, double y, bool rounded, string drill)
    {
        if (HoleOfRim(id) is not { } hole) return Thing.Of(id) is { } thing ? new PutAt(thing, new Point(x, y), rounded) : null;
        var written = drill.Length is > 0 and < 40 ? drill : DeskFigures.Typed(Length.OfMm(x), desk.Results.Plan.Units);
        return new Typed(new Thing(ThingKind.Hole, hole), Measure.Diameter, written);
    }

    /// <summary>Name of the hole whose rim it is; null when it is no rim.</summary>
    internal static string? HoleOfRim(string id) => id.StartsWith(Rim, StringComparison.Ordinal) ? id[Rim.Length..] : null;
}
