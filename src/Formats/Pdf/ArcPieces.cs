using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>An arc as cubic Béziers, for formats that have no arcs.</summary>
/// <remarks>
/// Each piece spans an angle θ and has its handles along the end tangents, of length 4/3 tan(θ/4) radii. It then leaves the circle outwards by at most
/// 2/27 · sin⁶(θ/4) / cos²(θ/4) of the radius (M. Goldapp, "Approximation of circular arcs by cubic polynomials", Computer Aided Geometric Design 8 (1991)
/// 227–238; from memory, and held against a dense sampling in the tests): 2.7e-4 for a quarter turn, falling with θ⁶.
/// </remarks>
public static class ArcPieces
{
    /// <summary>Distance the pieces may leave the true arc by, mm.</summary>
    public const double ToleranceMm = 2e-5;

    /// <summary>The pieces in order, the first starting and the last ending exactly where the arc does.</summary>
    public static IEnumerable<Bezier> Of(Arc arc)
    {
        var size = Math.Sqrt(arc.AxisU.Dot(arc.AxisU) + arc.AxisV.Dot(arc.AxisV));
        var span = Math.Min(Math.PI / 2, Math.PI / 2 * Math.Pow(ToleranceMm / (2.8e-4 * size), 1.0 / 6));
        var count = Math.Max(1, (int)Math.Ceiling((Math.Abs(arc.Sweep) / span) - 1e-9));
        var handle = 4.0 / 3 * Math.Tan(arc.Sweep / count / 4);
        var (p, dp) = (arc.Start, arc.Derivative(0));
        for (var i = 1; i <= count; i++)
        {
            var t = (double)i / count;
            var (q, dq) = (i == count ? arc.End : arc.At(t), arc.Derivative(t));

            // the derivative by angle is the derivative by t over the sweep
            yield return new Bezier(p, p + (dp * (handle / arc.Sweep)), q - (dq * (handle / arc.Sweep)), q);
            (p, dp) = (q, dq);
        }
    }
}
