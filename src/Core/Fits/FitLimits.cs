using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The limits of a size of some class.</summary>
/// <param name="Nominal">The size.</param>
/// <param name="Class">The class.</param>
/// <param name="LowerDeviation">Lower limit less the size.</param>
/// <param name="UpperDeviation">Upper limit less the size.</param>
public sealed record FitLimits(Length Nominal, ToleranceClass Class, Length LowerDeviation, Length UpperDeviation)
{
    /// <summary>Least size.</summary>
    public Length Least => Nominal + LowerDeviation;

    /// <summary>Greatest size.</summary>
    public Length Most => Nominal + UpperDeviation;

    /// <summary>The limits of a size; one fault outside the tables.</summary>
    public static Checked<FitLimits> Of(Length size, ToleranceClass wanted)
        => FundamentalDeviation.Of(size, wanted) is { } d
            ? Checked<FitLimits>.Good(new(size, wanted, d.Lower, d.Upper))
            : Checked<FitLimits>.Bad(Fault.OfFile(
                Shown.Both(size),
                $"has no limits here: the tables run from over 0 to {Shown.Trimmed(ToleranceGrade.Largest.Mm, 0)} mm",
                $"choose a size up to {Shown.Trimmed(ToleranceGrade.Largest.Mm, 0)} mm ({Shown.Inch(ToleranceGrade.Largest, 2)}); check the unit"));
}
