using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A belt speed, or from slowest to fastest: <c>22 m/s</c>, <c>8 m/s to 30 m/s</c>, <c>4500 ft/min</c>.</summary>
public static class BeltSpeedText
{
    /// <summary>Reads it.</summary>
    public static Reading<(CuttingSpeed Low, CuttingSpeed High)> Read(string text)
    {
        var parts = text.Split(" to ", 2, StringSplitOptions.TrimEntries);
        var (low, high) = (One(parts[0]), One(parts[^1]));
        if (!low.IsGood) return Bad(low.Message, low.Remedy);
        if (!high.IsGood) return Bad(high.Message, high.Remedy);
        return low.Value.MetresPerMin <= high.Value.MetresPerMin ? Reading<(CuttingSpeed, CuttingSpeed)>.Of((low.Value, high.Value)) : Bad("the slowest speed is above the fastest", "write the slowest first, as 8 m/s to 30 m/s");

        static Reading<(CuttingSpeed, CuttingSpeed)> Bad(string message, string remedy) => Reading<(CuttingSpeed, CuttingSpeed)>.Bad(message, remedy);
    }

    private static Reading<CuttingSpeed> One(string text)
    {
        var (number, unit) = NumberText.Split(text.Trim());
        var value = NumberText.Read(number, unit, out _);
        if (!value.IsGood) return Reading<CuttingSpeed>.Bad(value.Message, "write a speed as 22 m/s or 4500 ft/min");
        CuttingSpeed? speed = unit.ToLowerInvariant() switch
        {
            "m/s" => CuttingSpeed.OfMetresPerMin(60 * value.Value),
            "ft/min" or "sfpm" or "fpm" => CuttingSpeed.OfFeetPerMin(value.Value),
            _ => null,
        };
        if (speed is not { } s) return Reading<CuttingSpeed>.Bad(unit.Length == 0 ? "a speed without its unit" : $"'{NumberText.Clip(unit)}' is no unit of belt speed", $"write {number} m/s or {number} ft/min");
        return s.MetresPerMin is >= 30 and <= 6000 ? Reading<CuttingSpeed>.Of(s) : Reading<CuttingSpeed>.Bad("a belt speed outside 0.5 to 100 m/s", "check the number and the unit");
    }
}
