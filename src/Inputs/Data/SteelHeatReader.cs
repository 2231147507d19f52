using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads what a steel file says of heat treatment.</summary>
internal static class SteelHeatReader
{
    private const double ColdestC = -200, HottestC = 1350;

    /// <summary>All of it; faults go where the fields put them.</summary>
    /// <param name="one">The fields under a heading.</param>
    /// <param name="many">The fields of each of a heading that repeats.</param>
    /// <param name="source">Reads the source of a heading.</param>
    public static SteelHeat Read(Func<string, Fields> one, Func<string, IEnumerable<Fields>> many, Func<Fields, string?> source)
    {
        var (quenched, normalise, anneal, tempers) = (one("as_quenched"), one("normalise"), one("anneal"), one("tempers"));
        return new SteelHeat
        {
            Hardening = Hardening(one("hardening"), source),
            AsQuenched = With(quenched, source, f => f.Quantity("value", QuantityText.Hardness)),
            Critical = Critical(one("critical"), source),
            ConductivityWPerMK = With(one("conductivity"), source, f => f.Quantity("value", OtherTexts.WPerMK)),
            Normalise = With(normalise, source, f => f.Quantity("at", QuantityText.Temperature)),
            Anneal = anneal.Text("how") is { } how && source(anneal) is { } key ? new Sourced<string>(how, key) : null,
            Tempers = With(tempers, source, f => f.Whole("count", 1, 3)),
            TemperTable = [.. many("temper").Select(f => Temper(f, source)).OfType<TemperPoint>().OrderBy(t => t.At.Celsius)],
            Avoided = [.. many("avoid").Select(f => Avoided(f, source)).OfType<TemperAvoided>()],
        };
    }

    private static Sourced<T>? With<T>(Fields f, Func<Fields, string?> source, Func<Fields, T?> read)
        where T : struct
    {
        var (value, key) = (read(f), source(f));
        return value is { } v && key is not null ? new Sourced<T>(v, key) : null;
    }

    private static HardeningCycle? Hardening(Fields f, Func<Fields, string?> source)
    {
        var window = Two(f, "window", QuantityText.Temperature, t => t.Celsius, "[\"815 C\", \"845 C\"]");
        var soak = Two(f, "soak", OtherTexts.Minutes, m => m, "[\"5 min\", \"10 min\"]");
        var cooled = f.Word("cooled_in");
        var quench = f.Texts("quench", 10);
        var carbon = f.Number("dissolved_carbon", 0.05, 2);
        var chromium = f.Number("dissolved_chromium", 0, 20);
        var without = f.Word("without_oven");
        var key = source(f);
        if (window is not { } w || soak is not { } s || cooled < 0 || quench is null || without < 0 || key is null) return null;
        if (w.Low.Celsius < 600 || w.High.Celsius > HottestC)
        {
            f.Fault("window", "a hardening temperature outside 600 to 1350 C", "check the numbers and C or F");
            return null;
        }

        return new HardeningCycle(w.Low, w.High, s.Low, s.High, (CooledIn)cooled, [.. quench.Value.Select(q => q.Text)], carbon, chromium, (WithoutOven)without, key);
    }

    private static PublishedCritical? Critical(Fields f, Func<Fields, string?> source)
    {
        var (ac1, ac3, key) = (f.Quantity("ac1", QuantityText.Temperature), f.Quantity("ac3", QuantityText.Temperature), source(f));
        return ac1 is { } begins && key is not null ? new PublishedCritical(begins, ac3, key) : null;
    }

    private static TemperPoint? Temper(Fields f, Func<Fields, string?> source)
    {
        var (at, hardness, hold, key) = (f.Quantity("at", QuantityText.Temperature), f.Quantity("hardness", QuantityText.Hardness), f.Quantity("hold", OtherTexts.Minutes), source(f));
        if (at is not { } t || hardness is not { } h || hold is not { } m || key is null) return null;
        if (t.Celsius is >= ColdestC and <= HottestC) return new TemperPoint(t, 0.5 * (h.LowHrc + h.HighHrc), m / 60, key);
        f.Fault("at", "a temper outside -200 to 1350 C", "check the number and C or F");
        return null;
    }

    private static TemperAvoided? Avoided(Fields f, Func<Fields, string?> source)
    {
        var (from, to, why, key) = (f.Quantity("from", QuantityText.Temperature), f.Quantity("to", QuantityText.Temperature), f.Text("why"), source(f));
        if (from is not { } a || to is not { } b || why is null || key is null) return null;
        if (a.Celsius < b.Celsius) return new TemperAvoided(a, b, why, key);
        f.Fault("to", "it is not above where it begins", "write the lower temperature as from");
        return null;
    }

    internal static (T Low, T High)? Two<T>(Fields f, string key, Func<string, Reading<T>> read, Func<T, double> size, string example)
        where T : struct
    {
        switch (f.Node(key))
        {
            case null:
                return null;
            case TomlList { Items: [TomlText a, TomlText b] } when read(a.Value) is { IsGood: true } low && read(b.Value) is { IsGood: true } high && size(low.Value) <= size(high.Value):
                return (low.Value, high.Value);
            default:
                f.Fault(key, $"{key} is not two values, the lesser first", $"write them as {example}");
                return null;
        }
    }
}
