using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Drilling through a guide piece in words.</summary>
internal static class GuideText
{
    /// <summary>The steps, to tick.</summary>
    public static ImmutableArray<string> Steps(GuidePiece guide, Results results, UnitsShown units)
    {
        var steps = ImmutableArray.CreateBuilder<string>();
        if (guide.Elsewhere.Length > 0) steps.Add($"Not through the guide on this machine: {Names(guide.Elsewhere)}. {Made(guide.Elsewhere, results)}");
        steps.Add("Guide and blank deburred and wiped, no chip between them, same edges against the same stop, a board beneath. Guide on top.");
        var holes = guide.Holes;
        if (guide.PinsApart is not { } apart)
        {
            steps.Add("Fewer than two holes can be pinned: two clamps that are not moved until the last hole is drilled, and the stop.");
            return steps.ToImmutable();
        }

        var (first, second) = (holes[0], holes[1]);
        steps.Add($"Drill {first.Hole.Name}. Without moving a clamp put a pin through guide and blank: {Pin(first)}.");
        steps.Add($"Drill {second.Hole.Name}, pin it: {Pin(second)}. These two because they are the farthest apart of those that can be pinned, {FigureText.Size(apart, units, brief: true)}: the farther apart, the less the play of the pins can turn the blank.");
        if (holes.Length > 2) steps.Add($"Both pins in, clamps still tight: {Names(holes.Skip(2).Select(h => h.Hole))}{(holes.Length > 3 ? ", in this order" : "")}. Brush the chips off after each.");
        return steps.ToImmutable();
    }

    /// <summary>Where the figures come from and what they leave out.</summary>
    public static IEnumerable<string> Limits(GuidePiece guide, UnitsShown units)
    {
        var bush = guide.Holes[0];
        yield return $"Beside: a drill leans in its guide hole until it touches at both ends; clearance / guide thickness x blank thickness + half the clearance ({FigureText.Size(bush.Clearance, units, brief: true)} at {bush.Hole.Name} makes {FigureText.Size(bush.Walk, units, brief: true)}). It is the most, not the usual; bending of a thin drill is not counted."
            + (guide.Holes.Any(h => !h.IsMeasured) ? " Not measured: the clearance is the most by which AND10387 lets a drilled hole be over. Measure the guide and write it into the measured file." : "");
        if (guide.Holes.Where(h => h.Shift is not null).MaxBy(h => h.Shift!.Value.Mm) is { Shift: { } shift } worst)
            yield return $"The pins leave the blank as much play as they have in both holes: at {worst.Hole.Name} it can lie {FigureText.Size(shift, units, brief: true)} beside the guide at most, besides what the drill leans.";
        yield return "A guide hole wears: measure again every ten pieces (common practice). On a weak machine drill only a cone through the guide, take the guide off, then pilot and drill on the cones.";
    }

    /// <summary>When a hole is drilled.</summary>
    public static string Turn(GuideHole hole) => hole.Turn switch
    {
        GuideTurn.First => "first, then pinned",
        GuideTurn.Second => "second, then pinned",
        _ => "with both pins in",
    };

    private static string Pin(GuideHole hole) => $"{hole.Drill?.Name} rod or the drill's own shank; it enters by hand and does not shake";

    private static string Made(IEnumerable<PlacedHole> holes, Results results)
    {
        var made = results.Drilling.ByMachine.Where(g => g.Machine is not null)
            .Select(g => (g.Machine, Names: Names(g.Holes.Select(h => h.Hole).Where(h => holes.Any(o => o.Name == h.Name)))))
            .Where(g => g.Names.Length > 0)
            .Select(g => $"{g.Names} on the {g.Machine!.Name}");
        return string.Join("; ", made) is { Length: > 0 } words ? $"Make {words}, from the same edges." : "See the hole card.";
    }

    private static string Names(IEnumerable<PlacedHole> holes) => string.Join(", ", holes.Select(h => h.Name));
}
