using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads how a plan wants its piece heat treated.</summary>
internal static class HeatReading
{
    private const double LeastTemperC = 80, MostTemperC = 700;

    public static HeatWish? Read(Fields f) => f.IsThere ? new HeatWish { Temper = Within(f, "temper", LeastTemperC, MostTemperC, "tempering") } : null;

    private static Temperature? Within(Fields f, string key, double lowC, double highC, string what)
    {
        if (f.Quantity(key, QuantityText.Temperature) is not { } t) return null;
        if (t.Celsius >= lowC && t.Celsius <= highC) return t;
        f.Fault(key, $"{key}: {Shown.Both(t)} is no {what} temperature", $"write it between {Shown.Both(Temperature.OfCelsius(lowC))} and {Shown.Both(Temperature.OfCelsius(highC))}");
        return null;
    }
}
