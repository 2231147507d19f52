namespace Tangwright.Foundation;

/// <summary>A motion as geometry.</summary>
public static class MotionPath
{
    /// <summary>The motion seen from above; null when it goes straight up or down, or its place is not known.</summary>
    public static Segment? Flat(this Motion motion)
    {
        var (from, to) = (motion.From.Flat, motion.To.Flat);
        if (motion.Kind == MotionKind.Arc) return ArcOf(from, to, motion.Centre, motion.IsCounterClockwise);
        return from.To(to) > 0 ? new Line(from, to) : null;
    }

    /// <summary>Whether start and end are known.</summary>
    public static bool IsKnown(this Motion motion)
        => double.IsFinite(motion.From.X + motion.From.Y + motion.From.Z + motion.To.X + motion.To.Y + motion.To.Z);

    /// <summary>Height at a share of the motion, mm.</summary>
    public static double HeightAt(this Motion motion, double share) => motion.From.Z + ((motion.To.Z - motion.From.Z) * share);

    /// <summary>An arc between two points about a centre; a full turn when they are one. The radius is that of the start.</summary>
    public static Arc ArcOf(Point from, Point to, Point centre, bool counterClockwise)
    {
        var (a, b) = (from - centre, to - centre);
        var start = Math.Atan2(a.Y, a.X);
        var sweep = Math.Atan2(b.Y, b.X) - start;
        if (from.To(to) < 1e-9) sweep = 0;
        if (counterClockwise && sweep <= 1e-12) sweep += 2 * Math.PI;
        if (!counterClockwise && sweep >= -1e-12) sweep -= 2 * Math.PI;
        return Arc.Between(from, to, centre, new Point(a.Length, 0), new Point(0, a.Length), start, sweep);
    }
}
