using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much of a hot oven a face still sees past its neighbour on the rack.</summary>
[Formula("share of the view left open between two facing strips: 1 + g / H − √(1 + (g / H)²)", "hottel-strings", "Strips long against their height H, gap g; neighbours as warm as the piece; air between them is not counted")]
public static class RackView
{
    /// <summary>Open share, 0 to 1.</summary>
    /// <param name="gapMm">Gap between the faces, mm.</param>
    /// <param name="heightMm">Height of the faces, mm.</param>
    public static double OpenShare(double gapMm, double heightMm)
    {
        var x = gapMm / heightMm;
        return 1 + x - Math.Sqrt(1 + (x * x));
    }
}
