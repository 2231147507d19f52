using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Sheath and edge guard: what to do in words, then the patterns at true scale. Without a sheath in the plan only the edge guard.</summary>
public static class SheathSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "sheath";

    private const string Title = "Sheath";

    /// <summary>Draws its sheets; none without an edge.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var r = request.Results;
        var guard = EdgeGuard.Of(r.Plan, r.Piece);
        if (SheathPattern.Of(r.Plan, r.Piece, out _) is not { } pattern)
            return guard is null ? [] : TrueScaleSheets.Draw(request, Key, "Edge guard", [SheathShapes.Guard(guard, request.Units)]);
        var words = Words(request, pattern, guard);
        var shapes = SheathShapes.Of(pattern, request.Units);
        if (guard is not null) shapes = shapes.Add(SheathShapes.Guard(guard, request.Units));
        return [.. words, .. TrueScaleSheets.Draw(request, Key, "Sheath pattern", shapes, words.Length)];
    }

    private static ImmutableArray<Sheet> Words(SheetRequest request, SheathPattern p, EdgeGuard? guard)
    {
        var first = SheetTop.New(request, Key, Title, Title, "Made on the finished piece, before the last sharpening. The patterns follow at true scale.");
        var sheets = Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(request, p, guard, first.Room.Width), after: Notes.Draw);
        var from = request.SheetNumbers.TryGetValue(Key, out var span) ? span.First : 0;
        return [.. sheets.Select((s, i) => TitleBlock.AddTo(request, s, from + i, request.SheetCount))];
    }

    private static IEnumerable<FlowRow> Rows(SheetRequest request, SheathPattern p, EdgeGuard? guard, double width)
    {
        var units = request.Units;
        yield return CardRows.Boxed(SheathWords.Caution(p.Asked.Kind), width);
        yield return CardRows.Table("What it takes", [new("", 0.22), new("", 0.78)], [.. SheathWords.Figures(p, units).Select(l => ImmutableArray.Create(l.Name, l.Value))], width);
        yield return CardRows.Line(SheathWords.DrawOut(p, units), width, CardRows.NoteMm, bold: p.Pocket.Caught.Mm > SheathRules.GivesMm);
        if (SheathWords.HandleIn(p, units) is { Length: > 0 } handle) yield return CardRows.Line(handle, width, CardRows.NoteMm);
        yield return CardRows.Line(SheathWords.Holds(p), width, CardRows.NoteMm);
        yield return CardRows.Said("What to do");
        foreach (var step in SheathWords.Steps(p, units)) yield return CardRows.Line(step, width, CardRows.NoteMm);
        if (guard is not null) yield return CardRows.Line($"For bench and post: {SheathWords.Guard(guard, units)}. Clip it, or rivet it past both ends of the edge.", width, CardRows.NoteMm);
        yield return CardRows.Line(SheathWords.Ground(p.Asked.Kind), width, CardRows.NoteMm);
    }
}
