using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Feed of a drill a turn by its diameter, as taught; mm a turn.</summary>
[Formula("feed of a drill, mm a turn", "navy-14345", "high-speed steel in steel, 0.3 to 50 mm; the lower end for the harder")]
public static class DrillFeed
{
    private static readonly (double ToInches, double Low, double High)[] Table = [(0.125, 0.001, 0.002), (0.25, 0.002, 0.004), (0.5, 0.004, 0.007), (1, 0.007, 0.015), (double.PositiveInfinity, 0.015, 0.025)];

    /// <summary>The band, its middle the value.</summary>
    public static Estimate<double> For(Length drill)
    {
        var row = Array.Find(Table, r => drill.Inches <= r.ToInches + 1e-9);
        var (low, high) = (row.Low * Length.MmPerInch, row.High * Length.MmPerInch);
        return new((low + high) / 2, low, high, "navy-14345");
    }
}
