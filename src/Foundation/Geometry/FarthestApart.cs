namespace Tangwright.Foundation;

/// <summary>How far two closed paths lie apart at most: the greatest distance from a point of one to the nearest point of the other, both ways (the Hausdorff distance; Hausdorff, Grundzüge der Mengenlehre, 1914, ch. VIII; from memory), mm.</summary>
[Formula("Greatest distance between two outlines (Hausdorff)", SourceTag.FromMemory, "Closed paths; to 0.01 mm unless 20 000 looks were not enough")]
public static class FarthestApart
{
    /// <summary>The answer is no further from the truth than this, mm.</summary>
    public const double WithinMm = 0.01;

    private const int MostLooks = 20_000;

    /// <summary>The greatest distance and where it is, on the path that has the point.</summary>
    /// <remarks>The distance to a path changes no faster than the point moves, so a stretch of length l with distances d0 and d1 at its ends holds none over (d0 + d1 + l) / 2: stretches that could hold more are halved, the most promising first.</remarks>
    public static (double Mm, Point At) Of(Path a, Path b)
    {
        var (there, back) = (OneWay(a, b), OneWay(b, a));
        return there.Mm >= back.Mm ? there : back;
    }

    private static (double Mm, Point At) OneWay(Path from, Path to)
    {
        var best = (Mm: 0.0, At: from.Start);
        var waiting = new PriorityQueue<Stretch, double>();
        var same = to.Segments.Select(Points).ToHashSet();
        foreach (var s in from.Segments)
        {
            // a segment that is in both paths lies nowhere apart from the other
            if (!same.Contains(Points(s))) Look(new Stretch(s, SpeedAtMost(s), 0, 1, Nearest.Distance(to, s.Start), Nearest.Distance(to, s.End)));
        }

        for (var looks = 0; looks < MostLooks && waiting.TryDequeue(out var w, out _); looks++)
        {
            if (w.Most <= best.Mm + WithinMm) break;
            var t = 0.5 * (w.T0 + w.T1);
            var d = Nearest.Distance(to, w.On.At(t));
            Look(w with { T1 = t, D1 = d });
            Look(w with { T0 = t, D0 = d });
        }

        return best;

        void Look(Stretch s)
        {
            if (s.D0 > best.Mm) best = (s.D0, s.On.At(s.T0));
            if (s.D1 > best.Mm) best = (s.D1, s.On.At(s.T1));
            if (s.Most > best.Mm + WithinMm) waiting.Enqueue(s, -s.Most);
        }
    }

    /// <summary>What tells one segment from another: five points of it, either way round.</summary>
    private static (Point, Point, Point, Point, Point) Points(Segment s)
        => s.Start.X < s.End.X || (s.Start.X == s.End.X && s.Start.Y <= s.End.Y) ? (s.Start, At(s, 0.25), At(s, 0.5), At(s, 0.75), s.End) : (s.End, At(s, 0.75), At(s, 0.5), At(s, 0.25), s.Start);

    /// <summary>To 1e-9 mm, so that both ways round give the same.</summary>
    private static Point At(Segment s, double t) => new(Math.Round(s.At(t).X, 9), Math.Round(s.At(t).Y, 9));

    /// <summary>A bound of the length run through in one t.</summary>
    private static double SpeedAtMost(Segment s) => s switch
    {
        Arc a => Math.Abs(a.Sweep) * (a.IsCircle ? a.Radius : Math.Sqrt((a.AxisU.Length * a.AxisU.Length) + (a.AxisV.Length * a.AxisV.Length))),
        Bezier b => 3 * Math.Max(b.Start.To(b.Control1), Math.Max(b.Control1.To(b.Control2), b.Control2.To(b.End))),
        _ => s.Start.To(s.End),
    };

    private readonly record struct Stretch(Segment On, double Speed, double T0, double T1, double D0, double D1)
    {
        public double Most => 0.5 * (D0 + D1 + (Speed * (T1 - T0)));
    }
}
