using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A straight cut that runs along the piece at the allowance: everything beyond it comes off.</summary>
/// <param name="AngleRadians">Direction of the waste, from x towards y, 0 to 2π.</param>
/// <param name="OffsetMm">Distance of the line from the origin along that direction, mm.</param>
/// <param name="IsFlush">Whether it lies along a straight side of the piece's hull, not against a corner.</param>
public readonly record struct SupportCut(double AngleRadians, double OffsetMm, bool IsFlush)
{
    /// <summary>Direction of the waste, length 1.</summary>
    public Point Normal => Point.Direction(AngleRadians);

    /// <summary>Degrees off a square cut across the bar, 0 to 90; the bar runs along x.</summary>
    public double OffSquareDegrees
    {
        get
        {
            var d = AngleRadians * 180 / Math.PI % 180;
            return Math.Min(d, 180 - d);
        }
    }
}
