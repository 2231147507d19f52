using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Fits in words, fine enough for them: mm to a thousandth, inches to a ten-thousandth.</summary>
public static class FitText
{
    /// <summary>"6.365 mm (0.2506 in)".</summary>
    public static string Size(Length size) => $"{Shown.Mm(size, 3)} ({Shown.Inch(size, 4)})";

    /// <summary>"6.350 to 6.365 mm (0.2500 to 0.2506 in)".</summary>
    public static string Band(Length least, Length most) => least == most ? Size(least) : $"{Mm(least)} to {Mm(most)} mm ({Inch(least)} to {Inch(most)} in)";

    /// <summary>"+0.050 mm (+0.0020 in)".</summary>
    public static string Signed(Length off) => $"{Sign(off)}{Shown.Mm(off, 3)} ({Sign(off)}{Shown.Inch(off, 4)})";

    /// <summary>"0.000 to 0.024 mm (0.0000 to 0.0009 in) of clearance: slides".</summary>
    public static string Clearance(FitResult fit) => fit.Kind switch
    {
        FitKind.Slides => $"{Band(fit.LeastClearance, fit.MostClearance)} of clearance: {fit.Says}",
        FitKind.Presses => $"{Band(Length.Max(-fit.MostClearance, Length.Zero), -fit.LeastClearance)} of overlap: {fit.Says}",
        _ => $"from {Size(-fit.LeastClearance)} of overlap to {Size(fit.MostClearance)} of clearance: {fit.Says}",
    };

    /// <summary>Nearest 1/64 in with what it is off by.</summary>
    public static string SixtyFourth(Length size) => SixtyFourths.Nearest(size) is var n && Math.Abs(n.Error.Mm) < 5e-4 ? $"{n} in" : $"nearest 1/64: {SixtyFourths.Nearest(size)} in, off by {Signed(SixtyFourths.Nearest(size).Error)}";

    private static string Sign(Length off) => off.Mm > 0 ? "+" : "";

    private static string Mm(Length l) => Shown.Number(l.Mm, 3);

    private static string Inch(Length l) => Shown.Number(l.Inches, 4);
}
