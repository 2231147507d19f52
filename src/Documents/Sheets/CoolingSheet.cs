using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The cooling curve over the curves of the change: how near the quench comes to the soft side.</summary>
public static class CoolingSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "cooling";

    private const string Title = "Cooling and change";

    /// <summary>Draws its sheet; none without a known quenchant.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (request.Heat is not { Hardens: { } h } p) return [];
        var open = SheetTop.New(request, Key, Title, Title, HeatWords.Head(p) + ". " + Plain(h));
        var room = open.Room;
        var height = Math.Min(0.46 * room.Height, 105);
        Of(p, h).Draw(open.Canvas, new Box(room.MinX, room.MaxY - height, room.MaxX, room.MaxY));
        var rest = new OpenSheet(open.Canvas, room with { MaxY = room.MaxY - height - 4 });
        return Flow.Over(rest, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(p, h, room.Width), after: Notes.Draw);
    }

    /// <summary>The chart in one plain line.</summary>
    internal static string Plain(Hardens h) => h.At[0].Structure is null
        ? "The lines are the steel cooling; in this grade nothing soft forms at such speeds."
        : "The falling lines are the steel cooling; the bulging ones show when it would begin to turn soft. The further left a line keeps of the bulges the less turns soft; how much is said beside it, by thickness.";

    /// <summary>The chart.</summary>
    internal static Chart Of(HeatPlan p, Hardens h)
    {
        var thick = h.At[^1];
        var last = Math.Clamp(thick.Run.Curve[^1].AtSeconds * 1.5, 60, 1000);
        var lines = ImmutableArray.CreateBuilder<ChartLine>();
        lines.Add(new([.. thick.Run.Curve.Where(c => c.AtSeconds > 0.08).Select(c => new Point(c.AtSeconds, c.CentreCelsius))], $"{thick.Station.Where}, middle", Pen.Wide));
        if (h.At.Length > 1) lines.Add(new([.. h.At[0].Run.Curve.Where(c => c.AtSeconds > 0.08).Select(c => new Point(c.AtSeconds, c.CentreCelsius))], h.At[0].Station.Where, Pen.Narrow));
        var bands = ImmutableArray<ChartBand>.Empty;
        if (thick.Structure is not null && InSolution.Of(p.Subject.Steel) is { } x)
        {
            var decay = new AusteniteDecay(x);
            foreach (var (share, words) in ((double, string)[])[(0.01, "1 % soft"), (0.5, "half soft")])
            {
                ImmutableArray<Point> curve = [.. Enumerable.Range(0, 200).Select(i => decay.MartensiteStartCelsius + 1 + (2.5 * i)).Select(t => new Point(Math.Min(decay.Seconds(Product.Pearlite, t, share), decay.Seconds(Product.Bainite, t, share)), t)).Where(q => q.X is > 0.08 and < 2000)];
                if (curve.Length > 1) lines.Add(new(curve, words, share < 0.1 ? new Pen(0.35, LineKind.LongDashDot) : new Pen(0.18, LineKind.LongDashDot)));
            }

            bands = [new(decay.MartensiteStartCelsius - 1.5, decay.MartensiteStartCelsius + 1.5, false, "martensite begins")];
        }

        return new Chart(ChartAxis.Log("time from the quench, s", 0.1, last), ChartAxis.Celsius("temperature", 0, 900, 10)) { Lines = lines.ToImmutable(), Bands = bands };
    }

    private static IEnumerable<FlowRow> Rows(HeatPlan p, Hardens h, double width)
    {
        yield return CardRows.Table(
            "By thickness",
            [new("where", 0.3), new("thickness", 0.24), new("540 °C after", 0.11), new("200 °C after", 0.11), new("soft", 0.09), new("as quenched", 0.15)],
            [.. h.At.Select(a => ImmutableArray.Create(a.Station.Where, Shown.Both(Length.OfMm(a.Station.ThicknessMm)), Seconds(a.Run.Seconds(540)), Seconds(a.Run.Seconds(200)), a.Structure is { } s ? HeatWords.Share(s.SoftShare) : "-", a.Hardness is { } q ? $"{Shown.Number(q.Low, 0)} to {Shown.Number(q.High, 0)} HRC" : "-"))],
            width);
        yield return CardRows.Line(HeatWords.Why(p), width);
        if (HeatWords.Diameter(p) is { Length: > 0 } diameter) yield return CardRows.Line(diameter, width);
        foreach (var line in HeatWords.Ways(p, h.Verdict is HardensVerdict.Marginal or HardensVerdict.WillNot ? HeatWays.Of(p.Subject, p.At) : null)) yield return CardRows.Line(line, width);
        yield return CardRows.Line("Cooling by conduction through the thickness with the heat a quenchant takes as published (±30 % between laboratories) and the heat of the changes; curves of the change by Li and others 1998, good to a factor of 2. Grain size 8 assumed.", width, size: CardRows.NoteMm);
        yield return CardRows.Boxed(HeatWords.EveryCard, width);
    }

    private static string Seconds(double? s) => s is { } t ? $"{Shown.Number(t, t < 10 ? 1 : 0)} s" : "-";
}
