using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The sharpened facets on an edge of a thickness. mm.</summary>
/// <param name="HeightMm">Height of the facet, square to the edge.</param>
/// <param name="FaceMm">Width of one facet, along its face.</param>
/// <param name="ShoulderMm">Thickness where facet and bevel meet.</param>
public readonly record struct EdgeFacet(double HeightMm, double FaceMm, double ShoulderMm);

/// <summary>Edge bevel: where facets at φ per side meet faces at α per side when the apex stays where the edge is: y = (t / 2) / (tan φ − tan α).</summary>
[Formula("edge bevel: y = (t / 2) / (tan φ − tan α), face y / cos φ, shoulder 2 y tan φ; after s ground back t + 2 s tan α", "similar-triangles", "φ steeper than α; both faces sharpened alike; the apex does not recede in the first sharpening")]
public static class EdgeBevel
{
    /// <summary>The facets; null when the sharpening is no steeper than the bevel.</summary>
    /// <param name="edgeMm">Thickness at the edge before sharpening.</param>
    /// <param name="sharpen">Sharpening angle per side.</param>
    /// <param name="bevel">Slope of the bevel per side at the edge.</param>
    /// <param name="oneSided">One face ground and sharpened, the other left flat.</param>
    public static EdgeFacet? Of(double edgeMm, Angle sharpen, Angle bevel, bool oneSided = false)
    {
        var sides = oneSided ? 1 : 2;
        var rise = Math.Tan(sharpen.Radians) - Math.Tan(bevel.Radians);
        if (!(rise > 1e-9)) return null;
        var y = edgeMm / (sides * rise);
        return new EdgeFacet(y, y / Math.Cos(sharpen.Radians), sides * y * Math.Tan(sharpen.Radians));
    }

    /// <summary>Thickness at the edge once so much of it has been sharpened away, mm.</summary>
    public static double AfterMm(double edgeMm, double groundBackMm, Angle bevel) => edgeMm + (2 * groundBackMm * Math.Tan(bevel.Radians));
}
