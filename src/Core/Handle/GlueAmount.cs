using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Glue for a joint.</summary>
/// <param name="Net">What stays in the joint.</param>
/// <param name="NetMass">Its mass.</param>
/// <param name="ToMix">What is mixed: what is pressed out, stays in the cup and on the stick is in it.</param>
/// <param name="MassToMix">Its mass.</param>
public sealed record GlueNeeded(Volume Net, Mass NetMass, Volume ToMix, Mass MassToMix);

/// <summary>How much glue a joint takes: area times the line of glue.</summary>
/// <remarks>
/// A handle of 124 by 24 mm, two faces, takes 1.2 ml at 0.2 mm, 1.8 ml at 0.3 mm; the "about 2 ml" of the trade is a line of 0.34 mm.
/// Each joint counts once: one line of glue lies between a scale and the tang.
/// </remarks>
[Formula("glue for a joint, mm³ and g", "common practice", "line of 0.1 to 0.35 mm of two-part epoxy of 1.15 g/cm³; holes, hollows and open wood take more; mixing twice the net is common practice")]
public static class GlueAmount
{
    /// <summary>Usual density of mixed epoxy, g/cm³.</summary>
    public const double EpoxyGramsPerCm3 = 1.15;

    /// <summary>What is mixed against what stays in the joint.</summary>
    public const double MixFactor = 2;

    /// <summary>What is bought against what stays in the joint.</summary>
    public const double BuyFactor = 1.5;

    /// <summary>Usual line of glue under light pressure.</summary>
    public static Length UsualLine => Length.OfMm(0.2);

    /// <summary>Thickest line this is for.</summary>
    public static Length ThickestLine => Length.OfMm(0.35);

    /// <summary>The glue.</summary>
    /// <param name="bonded">All glued area, each joint once.</param>
    /// <param name="line">Thickness of the line of glue.</param>
    /// <param name="gramsPerCm3">Density of the mixed glue, g/cm³.</param>
    /// <param name="wasteFactor">What is mixed against what stays in the joint, 1 or more.</param>
    public static GlueNeeded Of(Area bonded, Length line, double gramsPerCm3 = EpoxyGramsPerCm3, double wasteFactor = MixFactor)
    {
        var (net, density) = (bonded * line, Density.OfGramsPerCm3(gramsPerCm3));
        var mixed = Volume.OfMm3(net.Mm3 * Math.Max(1, wasteFactor));
        return new GlueNeeded(net, net * density, mixed, mixed * density);
    }
}
