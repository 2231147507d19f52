using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The temper card: what the oven is set to, what comes out, times with alarms, the curve, limits.</summary>
public static class TemperCard
{
    /// <summary>Its key.</summary>
    public const string Key = "temper";

    private const string Title = "Temper card";
    private const double ChartMm = 58;

    /// <summary>Draws its sheets; none when nothing is known of the steel's hardening.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (request.Temper is not { } t) return [];
        var first = SheetTop.New(request, Key, Title, Title, TemperWords.Head(t) + ". A start: go by a test piece of the same bar.");
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), head: null, Rows(t, first.Room.Width), after: Notes.Draw);
    }

    /// <summary>Hardness over temperature with the band wanted and what is not tempered; null when nothing is known.</summary>
    internal static Chart? Curve(TemperPlan t)
    {
        if (t.Curve.Length < 2) return null;
        var shift = t.Log.Bias.MeanHrc;
        var least = Math.Min(t.Wanted?.LowHrc - 3 ?? 52, 52);
        ImmutableArray<TemperCurvePoint> shown = [.. t.Curve.Where(p => p.Hrc.Value + shift >= least - 2)];
        if (shown.Length < 2) shown = t.Curve;
        var (low, high) = (Math.Floor(Math.Min(shown.Min(p => p.Hrc.Low), t.Wanted?.LowHrc ?? 99) + Math.Min(shift, 0)), Math.Ceiling(Math.Max(shown.Max(p => p.Hrc.High), t.Wanted?.HighHrc ?? 0) + Math.Max(shift, 0)));
        var (from, to) = (shown[0].At.Celsius, shown[^1].At.Celsius);
        ImmutableArray<Point> Line(Func<Estimate<double>, double> of) => [.. shown.Select(p => new Point(p.At.Celsius, of(p.Hrc) + shift))];
        return new Chart(ChartAxis.Celsius("steel at the temper", from, to), ChartAxis.Even("hardness, HRC; dashed: how far it may be off", low, high, 12))
        {
            Bands =
            [
                .. t.Steel.Heat.Avoided.Where(a => a.From.Celsius < to && a.To.Celsius > from).Select(a => new ChartBand(a.From.Celsius, a.To.Celsius, IsUpright: true, "not here")),
                .. t.Wanted is { } w ? [new ChartBand(w.LowHrc, w.HighHrc, IsUpright: false, "wanted")] : (ImmutableArray<ChartBand>)[],
            ],
            Lines =
            [
                new ChartLine(Line(e => e.Value), $"{TemperWords.Cycle(t)}", Pen.Wide),
                new ChartLine(Line(e => e.Low), "", new Pen(0.18, LineKind.Dashed)),
                new ChartLine(Line(e => e.High), "", new Pen(0.18, LineKind.Dashed)),
            ],
            Dots = t is { SteelAt: { } at, Gives: { } gives } ? [new ChartDot(new Point(at.Celsius, gives.Value), $"{Shown.Number(at.Celsius, 0)} °C, {Shown.Number(gives.Value, 0)} HRC")] : [],
        };
    }

    private static IEnumerable<FlowRow> Rows(TemperPlan t, double width)
    {
        if (TemperWords.Trouble(t) is { Length: > 0 } trouble && t.SetPoint?.Verdict != TemperVerdict.NoData) yield return CardRows.Boxed(trouble, width);
        if (t.Set is not null) yield return CardRows.Big("set", $"{TemperWords.Set(t)}, {TemperWords.Cycle(t)}", TemperWords.SetWhy(t), width);
        if (t is { Set: not null, Gives: { } gives })
        {
            yield return CardRows.Big("gives", TemperWords.Estimate(gives), TemperWords.From(t), width);
        }
        else if (t.SetPoint is null && t.Set is null)
        {
            yield return CardRows.Line("The plan names no hardness: take the temperature from the curve.", width);
        }

        yield return Times(t);
        if (Curve(t) is { } curve)
        {
            yield return new FlowRow(ChartMm + 2, (canvas, box) => curve.Draw(canvas, box with { MinY = box.MinY + 2 }));
            if (t.Gives is null) yield return CardRows.Line(TemperWords.From(t), width, size: CardRows.NoteMm);
        }
        else
        {
            yield return CardRows.Boxed(char.ToUpperInvariant(Tempered.NoData[0]) + Tempered.NoData[1..] + ". Three pieces 25 °C (45 °F) apart are enough to begin with; the steel maker's sheet comes first.", width);
        }

        foreach (var line in TemperWords.Limits(t)) yield return CardRows.Line(line, width, size: CardRows.NoteMm);
        yield return CardRows.Line(TemperWords.Learned(t), width, size: CardRows.NoteMm);
        yield return CardRows.Boxed("Just-quenched steel can break like glass: no blow, no fall, no bending cold. Wipe the oil off first: it smokes and can take fire. " + HeatWords.EveryCard, width);
    }

    private static FlowRow Times(TemperPlan t)
    {
        const double RowMm = 8.5;
        string[] heads = ["", "in at", "steel at heat", $"alarm, {Shown.Trimmed(t.Cycle.HoldHours, 1)} h later", "out at", "read on the piece"];
        double[] share = [0, 0.24, 0.38, 0.54, 0.72, 0.85];
        var rows = Enumerable.Range(1, t.Cycle.Count).SelectMany(i => i < t.Cycle.Count ? new[] { $"temper {i}", "cool to the hand" } : [$"temper {i}"]).ToArray();
        return new FlowRow(7 + (rows.Length * RowMm) + 3, (canvas, box) =>
        {
            double X(int i) => box.MinX + ((i < share.Length ? share[i] : 1) * box.Width);
            for (var i = 0; i < heads.Length; i++) canvas.Fitted(heads[i], new Point(X(i), box.MaxY - 5.5), X(i + 1) - X(i) - 1, Canvas.SmallMm);
            for (var k = 0; k < rows.Length; k++)
            {
                var y = box.MaxY - 7 - ((k + 1) * RowMm);
                canvas.TickBox(box.MinX, y + (RowMm / 2));
                canvas.Fitted(rows[k], new Point(box.MinX + 9, y + 2.6), X(1) - box.MinX - 10, Canvas.TextMm, bold: true);
                if (rows[k].StartsWith("cool", StringComparison.Ordinal)) canvas.Fitted("in still air, until the hand bears it", new Point(X(1), y + 2.6), X(5) - X(1) - 2, CardRows.NoteMm);
                else for (var i = 1; i < heads.Length; i++) canvas.Line(new Point(X(i), y + 1), new Point(X(i + 1) - 2, y + 1), new Pen(0.18));
            }
        });
    }
}
