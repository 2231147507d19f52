using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much the skin of a blade is stretched when it is bent over a shim between two ends: t κ / 2, with κ = 12 d / L² for a load in the middle.</summary>
[Formula("stretch of the skin of a strip bent over a shim, share: 6 t d / L²", "beam-bending", "Strip of one thickness, ends free to turn, bend small beside the span; hardened steel gives way for good near 0.85 of its strength over 205 GPa, an engineering figure")]
public static class StraightenBend
{
    /// <summary>Stiffness of steel, GPa; textbook value.</summary>
    public const double StiffnessGpa = 205;

    /// <summary>Stress at which hardened steel gives way for good, share of its strength; an engineering figure.</summary>
    public const double GivesWayShare = 0.85;

    private const double HardestPrintedHrc = 59;

    /// <summary>Stretch of the skin in the middle, share of its length.</summary>
    /// <param name="thickness">Thickness of the strip.</param>
    /// <param name="bend">How far the middle is moved.</param>
    /// <param name="span">Between the ends.</param>
    public static double StretchShare(Length thickness, Length bend, Length span) => 6 * thickness.Mm * bend.Mm / (span.Mm * span.Mm);

    /// <summary>Stretch at which steel of a hardness gives way for good; taken as at 59 HRC above that, where the table of strengths ends.</summary>
    /// <param name="hrc">Rockwell C hardness, from 20.</param>
    public static double GivesWayAtShare(double hrc) => GivesWayShare * RockwellTable.StrengthMpa(Math.Clamp(hrc, RockwellTable.Reach.LowHrc, HardestPrintedHrc))!.Value / (1000 * StiffnessGpa);
}
