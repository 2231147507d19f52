using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One time at one heat.</summary>
/// <param name="At">Temperature of the steel.</param>
/// <param name="Hours">How long, h.</param>
public readonly record struct TemperHold(Temperature At, double Hours);

/// <summary>Time and temperature of a temper in one figure: P = T (18 + log10 t) / 1000, T in K and t in h. The same figure, the same hardness.</summary>
[Formula("time and temperature of a temper in one figure, and the time at another temperature that does as much", "hollomon-jaffe-1945", "140 to 700 °C, 5 min to 24 h; 18 for low-alloy steel as in Grange and Baughman 1956, about 20 is usual for alloyed steel; several tempers and ramps add up as times at one temperature")]
public static class HollomonJaffe
{
    /// <summary>The constant.</summary>
    public const double C = 18;

    private const double KelvinOfZeroC = 273.15;
    private const double SliceHours = 1.0 / 60;

    /// <summary>The figure.</summary>
    /// <param name="at">Temperature of the steel.</param>
    /// <param name="hours">Time at heat, h; above 0.</param>
    public static double Of(Temperature at, double hours) => (at.Celsius + KelvinOfZeroC) * (C + Math.Log10(hours)) / 1000;

    /// <summary>Hours at one temperature that come to a figure.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="at">The temperature.</param>
    public static double HoursFor(double figure, Temperature at) => Math.Pow(10, (1000 * figure / (at.Celsius + KelvinOfZeroC)) - C);

    /// <summary>Temperature that comes to a figure in so many hours.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="hours">Time at heat, h; above 0.</param>
    public static Temperature At(double figure, double hours) => Temperature.OfCelsius((1000 * figure / (C + Math.Log10(hours))) - KelvinOfZeroC);

    /// <summary>Hours at one temperature that do as much as several holds.</summary>
    /// <param name="holds">The holds.</param>
    /// <param name="at">The temperature.</param>
    public static double HoursAt(IEnumerable<TemperHold> holds, Temperature at) => holds.Where(h => h.Hours > 0).Sum(h => HoursFor(Of(h.At, h.Hours), at));

    /// <summary>A steady change of temperature as holds of a minute each.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="hours">How long it takes, h.</param>
    public static ImmutableArray<TemperHold> Ramp(Temperature from, Temperature to, double hours)
    {
        var slices = Math.Max(1, (int)Math.Ceiling((hours / SliceHours) - 1e-9));
        return [.. Enumerable.Range(0, slices).Select(i => new TemperHold(Temperature.OfCelsius(from.Celsius + ((to.Celsius - from.Celsius) * (i + 0.5) / slices)), hours / slices))];
    }
}
