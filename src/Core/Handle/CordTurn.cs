using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Length of one turn of a cord wound tight round a flat handle.</summary>
/// <remarks>
/// The middle of the cord lies half a diameter off the steel: round a rectangle of width w and thickness t its way is that of a parallel curve, 2 (w + t) + π d (Steiner's formula for parallel bodies, Santaló,
/// Integral Geometry and Geometric Probability; place in the book from memory). A turn climbs by one pitch p, so that its length is √((2 (w + t) + π d)² + p²).
/// </remarks>
[Formula("Length of a turn of cord round a flat handle, mm", "santalo-1976", "One layer, wound tight, the cord not squashed; corners of the steel broken less than the cord is thick")]
public static class CordTurn
{
    /// <summary>Length of a turn, mm.</summary>
    /// <param name="widthMm">Width of the handle there, mm.</param>
    /// <param name="thicknessMm">Its thickness, mm.</param>
    /// <param name="cordMm">Diameter of the cord, mm.</param>
    /// <param name="pitchMm">From one turn to the next, mm.</param>
    public static double LengthMm(double widthMm, double thicknessMm, double cordMm, double pitchMm)
    {
        var ring = (2 * (widthMm + thicknessMm)) + (Math.PI * cordMm);
        return Math.Sqrt((ring * ring) + (pitchMm * pitchMm));
    }
}
