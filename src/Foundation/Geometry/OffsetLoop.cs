using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>A closed path at a distance from another. Lines and circular arcs exactly; ellipses and Béziers by cubics fitted to <see cref="FitMm"/>. Outside corners get an arc about the corner, inside corners are cut where the neighbours cross.</summary>
/// <param name="Path">The path; null when there is none.</param>
/// <param name="WorstMm">Greatest error of the fitted cubics that was measured, mm; 0 when all is exact.</param>
/// <param name="Why">Why there is none; empty when there is.</param>
/// <param name="At">Where; null when it is not one place.</param>
public sealed record OffsetLoop(Path? Path, double WorstMm, string Why, Point? At)
{
    /// <summary>Fitted curves stay this close, mm.</summary>
    public const double FitMm = 0.005;

    private const int DeepestSplit = 10;

    /// <summary>The loop offset outward by a distance, mm; inward when negative.</summary>
    public static OffsetLoop Of(Path loop, double outward)
    {
        // to the left of the path's direction
        var left = outward * (Moments.Of(loop).AreaMm2 > 0 ? -1 : 1);
        var (worst, sides) = (0.0, new List<(Segment[] Offset, Segment From)>());
        foreach (var s in loop.Segments)
        {
            var offset = new List<Segment>();
            if (!Side(s, left, 0, offset, ref worst)) continue;
            sides.Add(([.. offset], s));
        }

        if (worst > FitMm) return No("a curve turns too tightly for it", null);
        if (sides.Count < 2) return No("nothing would be left", null);
        var rows = sides.ConvertAll(s => s.Offset.ToList());
        var corners = new Arc?[rows.Count];
        for (var i = 0; i < rows.Count; i++)
        {
            var (a, b) = (rows[i], rows[(i + 1) % rows.Count]);
            var corner = sides[(i + 1) % rows.Count].From.Start;
            if (a[^1].End.To(b[0].Start) < 1e-7) continue;
            var touches = sides[i].From.End.To(corner) < 1e-9;
            var turn = touches ? a[^1].Derivative(1).Unit.Cross(b[0].Derivative(0).Unit) : 0;
            if (touches && turn * left < 0)
            {
                var (from, to) = (a[^1].End - corner, b[0].Start - corner);
                corners[i] = Arc.Between(a[^1].End, b[0].Start, corner, new Point(Math.Abs(left), 0), new Point(0, Math.Abs(left)), Math.Atan2(from.Y, from.X), Math.Atan2(from.Cross(to), from.Dot(to)));
            }
            else if (!Cut(a, b))
            {
                return No("the corner is too tight for it", corner);
            }
        }

        var all = ImmutableArray.CreateBuilder<Segment>();
        for (var i = 0; i < rows.Count; i++)
        {
            all.AddRange(rows[i]);
            if (corners[i] is { } arc) all.Add(arc);
        }

        return Closed(all) is not { } path ? No("it does not close", null)
            : Moments.Of(path).AreaMm2 * Moments.Of(loop).AreaMm2 <= 0 ? No("nothing would be left", null)
            : Crossings.Of(path, 1) is [var meeting, ..] ? No("it would cross itself", meeting.At)
            : new OffsetLoop(path, worst, "", null);
    }

    private static OffsetLoop No(string why, Point? at) => new(null, 0, why, at);

    /// <summary>Adds the offset of one segment; false when it vanishes.</summary>
    private static bool Side(Segment s, double left, int depth, List<Segment> into, ref double worst)
    {
        switch (s)
        {
            case Line:
                var step = (s.End - s.Start).Unit.Left * left;
                into.Add(new Line(s.Start + step, s.End + step));
                return true;
            case Arc { IsCircle: true } arc:
                var radius = arc.Radius - (arc.IsCounterClockwise ? left : -left);
                if (radius <= 1e-6) return false;
                into.Add(Arc.OfCircle(arc.Centre, radius, arc.StartAngle, arc.Sweep));
                return true;
            case Arc { Sweep: var sweep } when Math.Abs(sweep) > Math.PI / 2 + 1e-9:
                return Side(s.Part(0, 0.5), left, depth, into, ref worst) & Side(s.Part(0.5, 1), left, depth, into, ref worst);
        }

        // a cubic with the offset's own ends and end speeds: an offset runs (1 − d κ) times as fast
        Point Off(double t) => s.At(t) + (s.Derivative(t).Unit.Left * left);
        Point Speed(double t)
        {
            var (v, a) = (s.Derivative(t), s.SecondDerivative(t));
            return v * (1 - (left * v.Cross(a) / Math.Pow(Math.Max(v.Length, 1e-9), 3)));
        }

        var cubic = new Bezier(Off(0), Off(0) + (Speed(0) * (1.0 / 3)), Off(1) - (Speed(1) * (1.0 / 3)), Off(1));
        var error = 0.0;
        for (var i = 1; i < 16; i++) error = Math.Max(error, Math.Abs(Nearest.Distance(s, cubic.At(i / 16.0)) - Math.Abs(left)));
        if (error > FitMm && depth < DeepestSplit)
        {
            return Side(s.Part(0, 0.5), left, depth + 1, into, ref worst) & Side(s.Part(0.5, 1), left, depth + 1, into, ref worst);
        }

        worst = Math.Max(worst, error);
        into.Add(cubic);
        return true;
    }

    /// <summary>Cuts two rows where the last of the first meets the first of the second; segments wholly past the meeting fall away.</summary>
    private static bool Cut(List<Segment> a, List<Segment> b)
    {
        for (var i = a.Count - 1; i >= 0; i--)
        {
            for (var j = 0; j < b.Count; j++)
            {
                var met = Crossings.Between(new Path([a[i]], closed: false), new Path([b[j]], closed: false), 4);
                if (met.IsEmpty) continue;
                var (t, u) = (met[^1].First.T, met[^1].Second.T);
                if (t <= 1e-9 || u >= 1 - 1e-9) continue;
                var (kept, rest) = (a[i].Part(0, t), b[j].Part(u, 1));
                a.RemoveRange(i, a.Count - i);
                a.Add(kept);
                b.RemoveRange(0, j + 1);
                b.Insert(0, rest);
                return true;
            }
        }

        return false;
    }

    /// <summary>The pieces with ends laid exactly on one another.</summary>
    private static Path? Closed(IReadOnlyList<Segment> pieces)
    {
        var all = ImmutableArray.CreateBuilder<Segment>(pieces.Count);
        for (var i = 0; i < pieces.Count; i++)
        {
            var (s, to) = (pieces[i], pieces[(i + 1) % pieces.Count].Start);
            if (s.End.To(to) > 1e-5) return null;
            all.Add(WithEnd(s, to));
        }

        return new Path(all.ToImmutable(), closed: true);
    }

    private static Segment WithEnd(Segment s, Point end) => s switch
    {
        Bezier b => new Bezier(b.Start, b.Control1, b.Control2, end),
        Arc a => Arc.Between(a.Start, end, a.Centre, a.AxisU, a.AxisV, a.StartAngle, a.Sweep),
        _ => new Line(s.Start, end),
    };
}
