using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads how a plan wants its piece heat treated.</summary>
internal static class HeatReading
{
    private const double LeastTemperC = 80, MostTemperC = 700, LeastHardenC = 680, MostHardenC = 1250, LeastColdC = -200, MostColdC = 10;

    public static HeatWish? Read(Fields f)
    {
        if (!f.IsThere) return null;
        var quenchant = f.Text("quenchant");
        var (soak, hold) = (f.Quantity("soak", OtherTexts.Minutes), f.Quantity("hold", OtherTexts.Minutes));
        return new HeatWish
        {
            Temper = Within(f, "temper", LeastTemperC, MostTemperC, "tempering"),
            Harden = Within(f, "harden", LeastHardenC, MostHardenC, "hardening"),
            SubZero = Within(f, "sub_zero", LeastColdC, MostColdC, "sub-zero"),
            SoakMinutes = soak,
            HoldMinutes = hold,
            Tempers = f.Whole("tempers", 1, 4),
            Quenchant = quenchant is null ? null : new Quenchant(quenchant, null) { Medium = QuenchList.BuiltIn.Find(quenchant) },
        };
    }

    private static Temperature? Within(Fields f, string key, double lowC, double highC, string what)
    {
        if (f.Quantity(key, QuantityText.Temperature) is not { } t) return null;
        if (t.Celsius >= lowC && t.Celsius <= highC) return t;
        f.Fault(key, $"{key}: {Shown.Both(t)} is no {what} temperature", $"write it between {Shown.Both(Temperature.OfCelsius(lowC))} and {Shown.Both(Temperature.OfCelsius(highC))}");
        return null;
    }
}
