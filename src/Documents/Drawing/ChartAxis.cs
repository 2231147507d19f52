using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A tick of an axis.</summary>
/// <param name="At">Its value.</param>
/// <param name="Label">What stands at it; empty for a short tick alone.</param>
/// <param name="Second">The same in other units; empty for none.</param>
internal readonly record struct ChartTick(double At, string Label, string Second = "");

/// <summary>An axis of a chart.</summary>
/// <param name="Title">What it counts, with unit: "temper, °C".</param>
/// <param name="From">Value at its start.</param>
/// <param name="To">Value at its end.</param>
/// <param name="IsLog">Whether equal steps are equal ratios; values are then above 0.</param>
/// <param name="Ticks">Its ticks.</param>
internal sealed record ChartAxis(string Title, double From, double To, bool IsLog, ImmutableArray<ChartTick> Ticks)
{
    /// <summary>What the second labels count: "°F"; empty for none.</summary>
    public string SecondTitle { get; init; } = "";

    /// <summary>An even axis with round ticks.</summary>
    /// <param name="title">What it counts.</param>
    /// <param name="from">Least value shown.</param>
    /// <param name="to">Greatest value shown.</param>
    /// <param name="mostTicks">No more ticks than this.</param>
    public static ChartAxis Even(string title, double from, double to, int mostTicks = 10)
    {
        var step = Step(to - from, mostTicks);
        return new ChartAxis(title, from, to, IsLog: false, [.. Values(from, to, step).Select(v => new ChartTick(v, Shown.Trimmed(v, 3)))]);
    }

    /// <summary>An even axis of temperatures in °C, with °F as second labels.</summary>
    /// <param name="title">What it counts, without unit.</param>
    /// <param name="fromC">Least, °C.</param>
    /// <param name="toC">Greatest, °C.</param>
    /// <param name="mostTicks">No more ticks than this.</param>
    public static ChartAxis Celsius(string title, double fromC, double toC, int mostTicks = 10)
    {
        var step = Step(toC - fromC, mostTicks);
        return new ChartAxis(title + ", °C", fromC, toC, IsLog: false, [.. Values(fromC, toC, step).Select(v => new ChartTick(v, Shown.Number(v, 0), Shown.Number(Temperature.OfCelsius(v).Fahrenheit, 0)))]) { SecondTitle = "°F" };
    }

    /// <summary>A logarithmic axis with ticks at 1, 2 and 5 of each decade.</summary>
    /// <param name="title">What it counts.</param>
    /// <param name="from">Least, above 0.</param>
    /// <param name="to">Greatest.</param>
    public static ChartAxis Log(string title, double from, double to)
    {
        var ticks = ImmutableArray.CreateBuilder<ChartTick>();
        for (var decade = Math.Floor(Math.Log10(from)); decade <= Math.Log10(to); decade++)
        {
            foreach (var m in (ReadOnlySpan<double>)[1, 2, 5])
            {
                var v = m * Math.Pow(10, decade);
                if (v >= from * (1 - 1e-9) && v <= to * (1 + 1e-9)) ticks.Add(new ChartTick(v, Shown.Trimmed(v, (int)Math.Max(0, -decade))));
            }
        }

        return new ChartAxis(title, from, to, IsLog: true, ticks.ToImmutable());
    }

    /// <summary>Share of the axis at which a value lies, 0 at its start and 1 at its end.</summary>
    public double ShareOf(double value) => IsLog ? (Math.Log(Math.Max(value, 1e-12)) - Math.Log(From)) / (Math.Log(To) - Math.Log(From)) : (value - From) / (To - From);

    private static IEnumerable<double> Values(double from, double to, double step)
    {
        for (var k = (int)Math.Ceiling((from / step) - 1e-9); k * step <= to + (1e-9 * step); k++) yield return k * step;
    }

    private static double Step(double span, int mostTicks)
    {
        var least = span / mostTicks;
        var decade = Math.Pow(10, Math.Floor(Math.Log10(least)));
        foreach (var m in (ReadOnlySpan<double>)[1, 2, 5])
        {
            if (m * decade >= least * (1 - 1e-9)) return m * decade;
        }

        return 10 * decade;
    }
}
