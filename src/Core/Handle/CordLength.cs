using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Cord for a wrapped handle.</summary>
/// <param name="Turns">Turns about the handle.</param>
/// <param name="PerTurn">Cord in one turn.</param>
/// <param name="Wrapped">Cord on the handle.</param>
public sealed record CordNeed(double Turns, Length PerTurn, Length Wrapped);

/// <summary>How much cord a wrap takes.</summary>
/// <remarks>
/// A turn is that of <see cref="CordTurn"/>, about any round or flat section without hollows: √((girth + π d)² + pitch²), a helix laid out flat. Rings would be shorter by what the pitch adds, 0.1 % in the usual wrap.
/// </remarks>
[Formula("cord in a wrap, mm", "santalo-1976", "cord pulled tight on a girth that stays the same and has no hollows, uncrushed; a stretched cord needs less, one that flattens too")]
public static class CordLength
{
    /// <summary>Spare for a wrap, as a share (common practice).</summary>
    public const double SpareShare = 0.10;

    /// <summary>Both tails together (common practice).</summary>
    public static Length Tails => Length.OfMm(500);

    /// <summary>A wrap of turns side by side.</summary>
    /// <param name="along">Length of handle that is wrapped.</param>
    /// <param name="girth">Way round the bare handle.</param>
    /// <param name="diameter">Diameter of the cord as it lies.</param>
    /// <param name="spacingFactor">Pitch against the diameter; 1 when turn lies at turn.</param>
    public static CordNeed Of(Length along, Length girth, Length diameter, double spacingFactor = 1) => Helix(along, girth, diameter, diameter * spacingFactor);

    /// <summary>A criss-cross wrap of two strands that run round the handle against each other, each climbing by the pitch in a turn; turns are those of one strand, cord that of both.</summary>
    /// <remarks>Where they cross the upper one climbs over the lower: that is not counted, it is in the spare.</remarks>
    /// <param name="along">Length of handle that is wrapped.</param>
    /// <param name="girth">Way round the bare handle.</param>
    /// <param name="diameter">Diameter of the cord as it lies.</param>
    /// <param name="pitch">How far a strand climbs in a turn.</param>
    public static CordNeed Crossed(Length along, Length girth, Length diameter, Length pitch)
    {
        var one = Helix(along, girth, diameter, pitch);
        return one with { Wrapped = one.Wrapped * 2 };
    }

    /// <summary>What to cut off: the wrap with its spare and tails.</summary>
    /// <param name="wrapped">Cord on the handle.</param>
    public static Length ToCut(Length wrapped) => (wrapped * (1 + SpareShare)) + Tails;

    private static CordNeed Helix(Length along, Length girth, Length diameter, Length pitch)
    {
        if (!(pitch.Mm > 0)) return new CordNeed(0, Length.Zero, Length.Zero);
        var (turns, turn) = (along / pitch, Length.OfMm(CordTurn.LengthMm(0.5 * girth.Mm, 0, diameter.Mm, pitch.Mm)));
        return new CordNeed(turns, turn, turn * turns);
    }
}
