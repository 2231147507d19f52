using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The handle card: what it weighs, rods, holes under the scales, wood, cord, and the handle against the hand.</summary>
public static class HandleCard
{
    /// <summary>Its key.</summary>
    public const string Key = "handle";

    private const string Title = "Handle card";

    /// <summary>Draws its sheets; none when the plan says nothing of a handle.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var p = request.Handle;
        if (p.Shape is null && p.Cord is null && p.Grip is null) return [];
        var head = HandleWords.Head(p, request.Units);
        var first = SheetTop.New(request, Key, Title, Title, char.ToUpperInvariant(head[0]) + head[1..] + ".");
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(p, request.Units, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Rows(HandlePlan p, UnitsShown units, double width)
    {
        if (!p.Parts.IsEmpty)
        {
            yield return CardRows.Table("Weight", [new("part", 0.35), new("weight", 0.65)], [.. HandleWords.Parts(p, units).Select(m => ImmutableArray.Create(m.Name, m.Weight))], width);
            yield return CardRows.Line(Sentence(HandleWords.Balance(p, units)), width, bold: true);
        }

        foreach (var line in HandleWords.Unknown(p)) yield return CardRows.Line(line, width);
        if (!p.Under.IsEmpty)
        {
            yield return CardRows.Said("Holes under the scales");
            foreach (var u in p.Under) yield return CardRows.Line($"{u.Hole.Name}: {HandleWords.Under(u, units)}", width, bold: u.IsDrilled);
            yield return CardRows.Line("Clamp one scale to the tang, drill through the tang, one pin at once, then the far one, then the rest; the second scale on the first pins. Keep scale and side together.", width, size: CardRows.NoteMm);
        }

        if (p.Shape is { Plan.Section: HandleSection.Octagon } shape)
        {
            yield return CardRows.Said("Facets");
            yield return CardRows.Line($"Scribe {FigureText.Size(Length.OfMm(shape.LegMm), units)} in from every long edge, on the face and on the side; saw or grind from line to line: eight sides.", width);
            yield return CardRows.Line($"To sixteen: {FigureText.Size(Length.OfMm(OctagonLeg.FromOctagonMm(shape.LegMm * Math.Sqrt(2))), units)} to both sides of each new edge, where the facets are alike; a wide flat stays wider. Left and right cut for cut, so that they stay alike.", width);
        }

        if (!p.Wood.IsEmpty)
        {
            yield return CardRows.Said("Wood and moisture");
            foreach (var line in p.Wood.SelectMany(w => HandleWords.Wood(w, units))) yield return CardRows.Line(line, width);
        }

        foreach (var h in p.Heat) yield return CardRows.Line(Sentence(HandleWords.Heat(h, units)), width, size: CardRows.NoteMm);
        if (p.Glue is { } glue) yield return CardRows.Line("Strength: " + HandleWords.Strength(glue), width, size: CardRows.NoteMm);
        if (p.Cord is { } cord)
        {
            yield return CardRows.Big("cut cord", HandleWords.Metres(cord.Cut), Sentence(HandleWords.Cord(cord, units)), width);
            yield return CardRows.Line("Turn beside turn, pulled tight, each one checked before the next; melted or glued ends tucked under. A cord that stretches or flattens takes less.", width, size: CardRows.NoteMm);
        }

        if (p.Grip is { } grip)
        {
            yield return CardRows.Said("In the hand");
            foreach (var line in HandleWords.Grip(grip, units)) yield return CardRows.Line(Sentence(line), width, size: CardRows.NoteMm);
            yield return CardRows.Line(HandleWords.GripGuidance, width, size: CardRows.NoteMm);
        }

        foreach (var caution in HandleWords.Cautions(p)) yield return CardRows.Line(caution, width, size: CardRows.NoteMm);
    }

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..] + (text[^1] == '.' ? "" : ".");
}
