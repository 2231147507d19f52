using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The straightening card: when it may be bent, shim by bow, how far the skin is stretched, boxes for what was done.</summary>
public static class StraighteningCard
{
    /// <summary>Its key.</summary>
    public const string Key = "straightening";

    private const string Title = "Straightening card";
    private const int Tries = 3;

    private static readonly ImmutableArray<double> BowsMm = [0.2, 0.5, 1, 1.5, 2, 3];

    /// <summary>Draws its sheet; none when nothing is known of the steel's hardening.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (request.Temper is not { } t) return [];
        var first = SheetTop.New(request, Key, Title, Title, "Bow is the gap under the middle on a flat plate. Straight enough (common practice): 0.5 mm in 200 mm (0.020 in in 8 in) for work, 0.2 mm (0.008 in) for the kitchen.");
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(request, t, first.Room.Width), after: Notes.Draw);
    }

    private static IEnumerable<FlowRow> Rows(SheetRequest request, TemperPlan t, double width)
    {
        var r = request.Results;
        var (units, thickness) = (request.Units, r.Plan.Stock.Thickness);
        var span = Length.OfMm(Math.Max(20, 0.9 * r.Outline.Length.Mm));
        var most = t.StraightenAtMost;
        yield return CardRows.Boxed("It can snap without a sign and throw pieces: face shield over glasses, leather gloves, nobody in line with it, a rag over the blade in the clamp. Never press a blade straight that was not tempered. No blows on the edge. Hot clamps burn. " + HeatWords.EveryCard, width);
        yield return CardRows.Said("Out of the quench, while it is warm");
        yield return CardRows.Line(request.Heat?.Critical.MartensiteBegins is { } ms
            ? $"Above {Shown.Both(ms)}, where martensite begins, it still bends by hand: gloves, light and even, on the edge of a board or in a vise with soft jaws. It gets stiff fast; some 100 °C (180 °F) lower stop: from there it snaps. Then between plates or clamped to a flat bar until it is cold."
            : "While it is still over about 200 °C (400 °F) it bends by hand (common practice): gloves, light and even. When it gets stiff stop: from there it snaps. Then between plates or clamped to a flat bar until it is cold.", width);
        yield return CardRows.Said("Later: clamp over a shim and temper");
        yield return most is { } m
            ? CardRows.Big("steel at most", Shown.Both(m), $"10 °C (18 °F) under the last temper; {(t.Oven.ReadsHighByC is { } off && Math.Abs(off) >= 0.05 ? $"{t.OvenName} set to {Shown.Both(Temperature.OfCelsius(m.Celsius + off))} at most" : "hotter, and it goes soft")}. An hour at heat for each try; let it cool in the clamp.", width)
            : CardRows.Big("steel at most", "10 °C (18 °F) under the last temper", "Hotter, and it goes soft. An hour at heat for each try; let it cool in the clamp.", width);
        var hrc = t.Gives?.Value ?? (t.Wanted is { } w ? 0.5 * (w.LowHrc + w.HighHrc) : 58);
        var gives = StraightenBend.GivesWayAtShare(hrc);
        string Small(double mm) => FigureText.Size(Length.OfMm(mm), units, brief: true);
        string Part(double bow, double over) => StraightenBend.StretchShare(thickness, Length.OfMm(bow * (1 + over)), span) is var s && s > 0.5 * gives ? $"{Shown.Number(100 * s, 2)} %: too much" : $"{Shown.Number(100 * s, 2)} %";
        yield return CardRows.Table(
            $"Bulge down on the shim, ends clamped; span {Small(span.Mm)}, {Small(thickness.Mm)} thick",
            [new("bow, and first shim", 0.22), new("skin stretched", 0.15), new("then 2 ×", 0.22), new("at most 3 ×", 0.22), new("skin stretched", 0.19)],
            [.. BowsMm.Select(b => ImmutableArray.Create(Small(b), Part(b, 1), Small(2 * b), Small(3 * b), Part(b, 3)))],
            width);
        yield return CardRows.Line($"On a flat bar, the bulge down on the shim, the hollow side up. The shim bends it past straight by its own height. At {Shown.Number(hrc, 0)} HRC the skin gives way near {Shown.Number(100 * gives, 1)} % (0.85 of the strength over 205 GPa, an engineering figure); scratches across, holes and corners let it break long before. Keep under half of that: bend less, heat it, try again. About four in five come straight so, after several tries (common practice).", width, size: CardRows.NoteMm);
        yield return CardRows.Line(Spare(r), width, size: CardRows.NoteMm);
        yield return Boxes();
    }

    private static string Spare(Results r)
        => r.Plan.Bevel is { Ground: GroundWhen.AfterHardening }
            ? "Bevels are ground after hardening: a bow under what they take off can be ground out there, the flats cannot unless the bar was thicker than the plan says."
            : "The plan leaves no steel on the flats for grinding a bow out: it takes its height off at the middle of one face and at the ends of the other, and thins the blade there.";

    private static FlowRow Boxes()
    {
        const double RowMm = 8.5;
        string[] heads = ["piece", "bow before", "span", "shim", "oven set", "hours", "bow after", "hardness after"];
        return new FlowRow(12 + (Tries * RowMm) + 2, (canvas, box) =>
        {
            canvas.Text("What was done", new Point(box.MinX, box.MaxY - 5), Canvas.TextMm, bold: true);
            var each = box.Width / heads.Length;
            for (var i = 0; i < heads.Length; i++)
            {
                canvas.Fitted(heads[i], new Point(box.MinX + (i * each), box.MaxY - 10.5), each - 1, Canvas.SmallMm);
                for (var k = 1; k <= Tries; k++) canvas.Line(new Point(box.MinX + (i * each), box.MaxY - 11 - (k * RowMm)), new Point(box.MinX + ((i + 1) * each) - 2, box.MaxY - 11 - (k * RowMm)), new Pen(0.18));
            }
        });
    }
}
