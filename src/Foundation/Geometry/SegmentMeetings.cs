namespace Tangwright.Foundation;

/// <summary>End points two segments share by construction.</summary>
[Flags]
internal enum Joints
{
    None = 0,
    EndToStart = 1,
    StartToEnd = 2,
}

/// <summary>A meeting of two segments by its parameters; for an overlap the first segment's stretch T0..Until0.</summary>
internal readonly record struct RawMeeting(double T0, double T1)
{
    public bool IsOverlap { get; init; }

    public double Until0 { get; init; }
}

/// <summary>Where two segments meet. Chord boxes widened by the sagitta bound h²/8 max|p''| prune; direction cones prove a crossing single; Newton's method makes it exact.</summary>
internal static class SegmentMeetings
{
    /// <summary>Closer than this is a touch, mm.</summary>
    public const double TouchMm = 1e-9;

    /// <summary>Pieces flatter than this are not split further, mm.</summary>
    private const double FlatMm = 1e-10;

    /// <summary>About a shared end point no crossing closer than this counts, mm.</summary>
    private const double JointMm = 1e-6;

    /// <summary>About a shared end point no touch closer than this counts, mm: where two strands leave it in one direction (a cusp) they part only with the square of the way.</summary>
    private const double CuspMm = 0.01;

    public static void Find(Segment a, Segment b, Joints joints, List<RawMeeting> found)
    {
        if (a is Line la && b is Line lb)
        {
            LineMeetings.Find(la, lb, joints, found);
            return;
        }

        var search = new Search(a, b, joints, found);
        search.Pair(Piece.Whole(a), Piece.Whole(b));
    }

    /// <summary>Whether a meeting lies at an end point the two share.</summary>
    public static bool AtJoint(Point p, Point q, Segment a, Segment b, Joints joints, double reach = JointMm)
    {
        if (joints.HasFlag(Joints.EndToStart) && p.To(a.End) <= reach && q.To(b.Start) <= reach) return true;
        return joints.HasFlag(Joints.StartToEnd) && p.To(a.Start) <= reach && q.To(b.End) <= reach;
    }

    /// <summary>A part of a segment with its chord, how far it may stray from it, and how far its direction may turn.</summary>
    private readonly record struct Piece(double T0, double T1, Point P0, Point P1, double Stray, double Turn)
    {
        public static Piece Whole(Segment s) => Of(s, 0, 1, s.Start, s.End);

        public static Piece Of(Segment s, double t0, double t1, Point p0, Point p1)
        {
            var bend = s switch
            {
                Bezier z => Math.Max(z.SecondDerivative(t0).Length, z.SecondDerivative(t1).Length),
                Arc c => c.Sweep * c.Sweep * (c.IsCircle ? c.Radius : Math.Sqrt(c.AxisU.Dot(c.AxisU) + c.AxisV.Dot(c.AxisV))),
                _ => 0,
            };
            var h2 = (t1 - t0) * (t1 - t0);
            var stray = bend * h2 / 8;
            var sine = bend * h2 / 2 / p0.To(p1);
            return new Piece(t0, t1, p0, p1, stray, sine < 1 ? Math.Asin(sine) : Math.PI);
        }

        public bool Apart(Piece o)
        {
            var m = Stray + o.Stray + TouchMm;
            return Math.Min(P0.X, P1.X) - m > Math.Max(o.P0.X, o.P1.X) || Math.Min(o.P0.X, o.P1.X) - m > Math.Max(P0.X, P1.X)
                || Math.Min(P0.Y, P1.Y) - m > Math.Max(o.P0.Y, o.P1.Y) || Math.Min(o.P0.Y, o.P1.Y) - m > Math.Max(P0.Y, P1.Y)
                || BesideChord(o, m) || o.BesideChord(this, m);
        }

        private bool BesideChord(Piece o, double m)
        {
            var d = P1 - P0;
            var l = d.Length;
            var (u, v) = (d.Cross(o.P0 - P0), d.Cross(o.P1 - P0));
            return (u > m * l && v > m * l) || (u < -m * l && v < -m * l);
        }
    }

    private ref struct Search(Segment a, Segment b, Joints joints, List<RawMeeting> found)
    {
        private int _visits;
        private bool _done;

        public void Pair(Piece p, Piece q)
        {
            if (_done || p.Apart(q)) return;
            if (++_visits == 300 && Overlap.Of(a, b) is { } along)
            {
                found.Clear();
                found.Add(along);
                _done = true;
                return;
            }

            if (_visits > 20_000) return;
            var joint = JointsOf(p, q);
            if (joint is Joints.EndToStart or Joints.StartToEnd && PartAtJoint(p, q, joint)) return;
            if (joint == Joints.None && Turned(p.P1 - p.P0, q.P1 - q.P0) > p.Turn + q.Turn && Newton(p, q)) return;
            if (p.Stray <= FlatMm && q.Stray <= FlatMm)
            {
                Leaf(p, q, joint);
                return;
            }

            if (p.Stray >= q.Stray)
            {
                var t = 0.5 * (p.T0 + p.T1);
                var m = a.At(t);
                Pair(Piece.Of(a, p.T0, t, p.P0, m), q);
                Pair(Piece.Of(a, t, p.T1, m, p.P1), q);
            }
            else
            {
                var t = 0.5 * (q.T0 + q.T1);
                var m = b.At(t);
                Pair(p, Piece.Of(b, q.T0, t, q.P0, m));
                Pair(p, Piece.Of(b, t, q.T1, m, q.P1));
            }
        }

        private readonly Joints JointsOf(Piece p, Piece q)
        {
            var j = Joints.None;
            if (p.T1 >= 1 && q.T0 <= 0) j |= joints & Joints.EndToStart;
            if (p.T0 <= 0 && q.T1 >= 1) j |= joints & Joints.StartToEnd;
            return j;
        }

        /// <summary>Whether the two pieces leave their shared end point in directions that cannot bring them together again.</summary>
        private static bool PartAtJoint(Piece p, Piece q, Joints joint)
        {
            var (u, v) = joint == Joints.EndToStart ? (p.P0 - p.P1, q.P1 - q.P0) : (p.P1 - p.P0, q.P0 - q.P1);
            return Math.Atan2(Math.Abs(u.Cross(v)), u.Dot(v)) > p.Turn + q.Turn;
        }

        /// <summary>Angle between two directions taken as lines, 0 to 90°.</summary>
        private static double Turned(Point u, Point v) => Math.Atan2(Math.Abs(u.Cross(v)), Math.Abs(u.Dot(v)));

        /// <summary>The single crossing two pieces of different directions can have; false when it is not found inside both.</summary>
        private readonly bool Newton(Piece p, Piece q)
        {
            var (t, u) = (0.5 * (p.T0 + p.T1), 0.5 * (q.T0 + q.T1));
            for (var k = 0; k < 12; k++)
            {
                var gap = b.At(u) - a.At(t);
                var (da, db) = (a.Derivative(Math.Clamp(t, 0, 1)), b.Derivative(Math.Clamp(u, 0, 1)));
                if (t is < 0 or > 1) gap -= da * (t - Math.Clamp(t, 0, 1));
                if (u is < 0 or > 1) gap += db * (u - Math.Clamp(u, 0, 1));
                var det = da.Cross(db);
                if (det == 0) return false;
                var (dt, du) = (gap.Cross(db) / det, gap.Cross(da) / det);
                t += dt;
                u += du;
                if (t < p.T0 - (p.T1 - p.T0) || t > p.T1 + (p.T1 - p.T0) || u < q.T0 - (q.T1 - q.T0) || u > q.T1 + (q.T1 - q.T0)) return false;
                if (Math.Abs(dt) + Math.Abs(du) > 1e-14) continue;
                break;
            }

            const double edge = 1e-13;
            if (t < p.T0 - edge || t > p.T1 + edge || u < q.T0 - edge || u > q.T1 + edge) return false;
            return Keep(Math.Clamp(t, 0, 1), Math.Clamp(u, 0, 1), JointMm);
        }

        private readonly bool Keep(double t, double u, double reach = CuspMm)
        {
            var (x, y) = (a.At(t), b.At(u));
            if (x.To(y) > TouchMm) return false;
            if (!AtJoint(x, y, a, b, joints, reach)) found.Add(new RawMeeting(t, u));
            return true;
        }

        /// <summary>Two pieces as good as straight and still within reach: a touch, an end on the other, or a near miss.</summary>
        private readonly void Leaf(Piece p, Piece q, Joints joint)
        {
            if (joint != Joints.None) return;
            var (t, u) = (0.5 * (p.T0 + p.T1), 0.5 * (q.T0 + q.T1));
            for (var k = 0; k < 8; k++)
            {
                var (da, db) = (a.Derivative(t), b.Derivative(u));
                var gap = a.At(t) - b.At(u);
                var (dda, ddb) = (a.SecondDerivative(t), b.SecondDerivative(u));
                var (f1, f2) = (da.Cross(db), gap.Dot(da));
                var (f1t, f1u) = (dda.Cross(db), da.Cross(ddb));
                var (f2t, f2u) = (da.Dot(da) + gap.Dot(dda), -db.Dot(da));
                var det = (f1t * f2u) - (f1u * f2t);
                if (det == 0) break;
                var (dt, du) = (((f1u * f2) - (f2u * f1)) / det, ((f2t * f1) - (f1t * f2)) / det);
                t = Math.Clamp(t + dt, 0, 1);
                u = Math.Clamp(u + du, 0, 1);
                if (Math.Abs(dt) + Math.Abs(du) < 1e-14) break;
            }

            var (wt, wu) = (p.T1 - p.T0, q.T1 - q.T0);
            if (t >= p.T0 - wt && t <= p.T1 + wt && u >= q.T0 - wu && u <= q.T1 + wu && Keep(t, u)) return;
            foreach (var (et, eu) in stackalloc[] { (p.T0, q.T0), (p.T0, q.T1), (p.T1, q.T0), (p.T1, q.T1) })
            {
                if (Keep(et, eu)) return;
            }

            if (p.T0 <= 0 && Keep(0, Nearest.On(b, p.P0).T)) return;
            if (p.T1 >= 1 && Keep(1, Nearest.On(b, p.P1).T)) return;
            if (q.T0 <= 0 && Keep(Nearest.On(a, q.P0).T, 0)) return;
            if (q.T1 >= 1) Keep(Nearest.On(a, q.P1).T, 1);
        }
    }
}
