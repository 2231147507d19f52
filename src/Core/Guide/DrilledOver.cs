using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much larger than its drill a drilled hole may come out.</summary>
[Formula("Drilled hole less drill, at most, mm", "and10387", "Drilled in a jig or fixture with a drill of 0.0135 to 2 in; a drill ground off centre cuts more")]
public static class DrilledOver
{
    private static readonly (double ToIn, double OverIn)[] Rows = [(0.125, 0.004), (0.25, 0.005), (0.5, 0.006), (0.75, 0.008), (1, 0.010), (2, 0.012)];

    /// <summary>The most it is over by the standard's tolerance.</summary>
    public static Length Most(Length drill)
        => Length.OfInches(Array.Find(Rows, r => drill.Inches <= r.ToIn + 1e-9) is { OverIn: > 0 } row ? row.OverIn : Rows[^1].OverIn);
}
