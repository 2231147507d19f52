using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Clearance about a glued rod, on the diameter; common practice.</summary>
public static class GlueRoom
{
    /// <summary>In the steel: scale of the heat treatment and a bent piece want more.</summary>
    public static (Length Least, Length Most) InSteel { get; } = (Length.OfMm(0.1), Length.OfMm(0.3));

    /// <summary>In the scales.</summary>
    public static (Length Least, Length Most) InScales { get; } = (Length.OfMm(0.05), Length.OfMm(0.1));
}
