namespace Tangwright.Foundation;

/// <summary>The interval that a chance lies in with 95 in 100, from how often something came about in so many trials.</summary>
/// <param name="LowShare">Its lower end.</param>
/// <param name="HighShare">Its upper end.</param>
[Formula("Interval of a chance with 95 in 100, from counts", "wilson-1927", "Any counts, 0 and all among them; holds for 95 in 100 on the average over chances")]
public readonly record struct WilsonInterval(double LowShare, double HighShare)
{
    private const double Z = 1.959963984540054;

    /// <summary>The interval.</summary>
    /// <param name="hits">How often it came about.</param>
    /// <param name="trials">Of how many, above 0.</param>
    public static WilsonInterval Of(double hits, double trials)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(trials);
        var p = hits / trials;
        var grown = 1 + (Z * Z / trials);
        var middle = (p + (Z * Z / (2 * trials))) / grown;
        var half = Z * Math.Sqrt((p * (1 - p) / trials) + (Z * Z / (4 * trials * trials))) / grown;
        return new(Math.Max(0, middle - half), Math.Min(1, middle + half));
    }
}
