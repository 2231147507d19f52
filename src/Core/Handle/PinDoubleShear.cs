using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a pin through scale, tang and scale holds before it is sheared at both faces of the tang: F = 2 A τ.</summary>
[Formula("load that shears a pin or tube at two faces, N", "shigley-pins", "no bending, no gap: what scales of wood crush at is far less; tau as the file of the metal gives it, yield or ultimate")]
public static class PinDoubleShear
{
    /// <summary>A solid pin.</summary>
    /// <param name="diameter">Its diameter.</param>
    /// <param name="shearMPa">Shear strength, MPa.</param>
    public static Force Of(Length diameter, double shearMPa) => Tube(diameter, Length.Zero, shearMPa);

    /// <summary>A tube, empty.</summary>
    /// <param name="outside">Its diameter.</param>
    /// <param name="bore">Diameter of its bore; held to 0 to the outside.</param>
    /// <param name="shearMPa">Shear strength, MPa.</param>
    public static Force Tube(Length outside, Length bore, double shearMPa)
    {
        var inside = Math.Clamp(bore.Mm, 0, outside.Mm);
        return Force.OfNewtons(0.5 * Math.PI * ((outside.Mm * outside.Mm) - (inside * inside)) * shearMPa);
    }
}
