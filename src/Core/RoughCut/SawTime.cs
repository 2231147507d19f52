using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How long a straight cut takes.</summary>
[Formula("time of a saw cut, min: set-up + length × thickness / rate", SourceTag.CommonPractice, "Flat stock fed at a steady rate; the rate is a planning value with a band, or the shop's own")]
public static class SawTime
{
    /// <summary>Minutes.</summary>
    /// <param name="cutMm">Length of the cut, mm.</param>
    /// <param name="thicknessMm">Thickness, mm.</param>
    /// <param name="rateCm2PerMin">Steel parted in a minute, cm²/min.</param>
    /// <param name="setUpMinutes">Minutes to mark, clamp and start.</param>
    public static double Minutes(double cutMm, double thicknessMm, double rateCm2PerMin, double setUpMinutes) => setUpMinutes + (0.01 * cutMm * thicknessMm / rateCm2PerMin);
}
