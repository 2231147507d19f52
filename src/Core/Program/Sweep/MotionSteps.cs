using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A motion taken apart into short straight steps.</summary>
internal static class MotionSteps
{
    /// <summary>Ends of the steps, start and end of the motion among them.</summary>
    /// <param name="motion">The motion.</param>
    /// <param name="stepMm">Longest step, mm.</param>
    /// <param name="sagMm">How far a step may leave an arc, mm.</param>
    public static SpacePoint[] Of(Motion motion, double stepMm, double sagMm)
    {
        var flat = motion.Flat();
        stepMm = Math.Max(stepMm, 1e-3);
        var count = flat is null ? 1 : Math.Max(Count(Math.Abs(motion.To.Z - motion.From.Z), stepMm), flat is Arc arc ? Count(arc.Length, Math.Min(stepMm, Math.Sqrt(8 * sagMm * arc.Radius))) : Count(flat.Length, stepMm));
        var ends = new SpacePoint[count + 1];
        for (var i = 0; i <= count; i++)
        {
            var share = (double)i / count;
            var at = flat?.At(share) ?? motion.To.Flat;
            ends[i] = new SpacePoint(at.X, at.Y, motion.HeightAt(share));
        }

        return ends;
    }

    private static int Count(double lengthMm, double stepMm) => lengthMm <= stepMm ? 1 : (int)Math.Ceiling(lengthMm / stepMm);

    /// <summary>The share of the motion during which its height is at most a limit; null when never.</summary>
    public static (double From, double To)? AtMost(this Motion motion, double heightMm)
    {
        var (a, b) = (motion.From.Z - heightMm, motion.To.Z - heightMm);
        if (a > 0 && b > 0) return null;
        if (a <= 0 && b <= 0) return (0, 1);
        var crossing = a / (a - b);
        return a <= 0 ? (0, crossing) : (crossing, 1);
    }
}
