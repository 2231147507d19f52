using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The dent a Rockwell C test leaves, and how thick, how far apart and how far from an edge it needs the steel to be.</summary>
/// <remarks>The cone has 120°, a tip of 0.2 mm radius and 150 kgf on it; the scale is 100 less the depth the main load adds, in steps of 0.002 mm. The diameter of the dent is taken from the depth of the scale and that of the minor load, about 0.02 mm more.</remarks>
[Formula("depth of a Rockwell C dent, (100 − HRC) × 0.002 mm; least thickness 10 times that; spacing 3 dents, edge 2.5", "iso-6508-1", "20 to 70 HRC; depth by the definition of the scale, thickness, spacing and edge from memory of ISO 6508-1 and ASTM E18; the diameter counts the cone alone with 0.02 mm more for the first load, an engineering figure")]
public static class IndentDepth
{
    /// <summary>Depth a unit of the scale stands for, mm.</summary>
    public const double MmOfUnit = 0.002;

    /// <summary>Least thickness in depths.</summary>
    public const double DepthsThick = 10;

    /// <summary>Least distance between middles of dents, in diameters.</summary>
    public const double DiametersApart = 3;

    /// <summary>Least distance of a dent's middle from an edge, in diameters.</summary>
    public const double DiametersFromEdge = 2.5;

    private const double MinorLoadMm = 0.02;
    private const double TipRadiusMm = 0.2;
    private const double HalfAngleDegrees = 60;

    /// <summary>Depth the scale counts.</summary>
    /// <param name="hrc">Rockwell C hardness.</param>
    public static Length Of(double hrc) => Length.OfMm((100 - hrc) * MmOfUnit);

    /// <summary>Least thickness that can be tested.</summary>
    /// <param name="hrc">Rockwell C hardness.</param>
    public static Length LeastThickness(double hrc) => DepthsThick * Of(hrc);

    /// <summary>Diameter of the dent: a cone of 120° with a round tip.</summary>
    /// <param name="hrc">Rockwell C hardness.</param>
    public static Length Diameter(double hrc)
    {
        var half = HalfAngleDegrees * Math.PI / 180;
        var cutOff = TipRadiusMm * ((1 / Math.Sin(half)) - 1); // how far the round tip falls short of the sharp one
        return Length.OfMm(2 * (Of(hrc).Mm + MinorLoadMm + cutOff) * Math.Tan(half));
    }

    /// <summary>Least distance between the middles of two dents.</summary>
    /// <param name="hrc">Rockwell C hardness.</param>
    public static Length Apart(double hrc) => DiametersApart * Diameter(hrc);

    /// <summary>Least distance of a dent's middle from an edge.</summary>
    /// <param name="hrc">Rockwell C hardness.</param>
    public static Length FromEdge(double hrc) => DiametersFromEdge * Diameter(hrc);
}
