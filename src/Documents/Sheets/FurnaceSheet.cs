using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The furnace program: what the oven is set to, step by step, and what to know before it is lit.</summary>
public static class FurnaceSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "furnace";

    private const string Title = "Furnace program";

    /// <summary>Draws its sheets; none when nothing is known of the steel's hardening.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (request.Heat is not { } p) return [];
        var first = SheetTop.New(request, Key, Title, Title, HeatWords.Head(p) + ". " + HeatWords.Clock);
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued. " + HeatWords.Clock), head: null, Rows(p, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Rows(HeatPlan p, double width)
    {
        yield return CardRows.Said("Steps");
        foreach (var (s, i) in p.Oven.Select((s, i) => (s, i)))
        {
            var off = s.Set.Celsius - s.Piece.Celsius;
            var offset = Math.Abs(off) < 0.05 ? "" : $"; the oven reads {Shown.Number(Math.Abs(off), 0)} °C ({Shown.Number(1.8 * Math.Abs(off), 0)} °F) {(off > 0 ? "high" : "low")}, so the piece is at {Shown.Both(s.Piece)}";
            yield return CardRows.Big($"{i + 1}  set", $"{Shown.Both(s.Set)}, hold {HeatWords.Range(s.HoldMinutes)}", $"{s.What}{offset}; then: {s.Then}", width);
        }

        yield return CardRows.Line(HeatWords.HeatUp(p), width, bold: true);
        foreach (var line in HeatWords.Critical(p).Append(HeatWords.Loads(p)).Append(HeatWords.Skin(p)).Append(HeatWords.Left(p)).Append(HeatWords.Cold(p)).Where(l => l.Length > 0)) yield return CardRows.Line(line, width);
        foreach (var line in p.Remarks) yield return CardRows.Line(line, width);
        if (!p.Critical.Opinions.IsEmpty)
        {
            yield return CardRows.Table(
                "Where austenite begins and ends on heating, by each source",
                [new("source", 0.34), new("begins", 0.33), new("ends", 0.33)],
                [.. p.Critical.Opinions.Select(o => ImmutableArray.Create(o.By, Shown.Both(o.Lower), o.Upper is { } u ? Shown.Both(u) : "the same place, or over the eutectoid"))],
                width);
        }

        yield return CardRows.Boxed(string.Join(" ", HeatWords.Cautions(p)), width);
        yield return CardRows.Line(HeatWords.Start, width);
    }
}
