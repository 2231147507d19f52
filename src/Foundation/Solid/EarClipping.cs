using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>A flat polygon with holes cut into triangles between its own corners.</summary>
/// <remarks>Each hole is first joined to what surrounds it by a bridge from its leftmost corner; then ears are cut off. Eberly, Triangulation by Ear Clipping, 2002 (from memory). Corners on a straight side are kept.</remarks>
public static class EarClipping
{
    // twice the area of a triangle that counts as none, mm²
    private const double Flat = 1e-9;

    /// <summary>The triangles, three numbers of corners each, counter-clockwise; empty when the loops cross or touch one another.</summary>
    /// <param name="corners">All corners.</param>
    /// <param name="loops">Corners of each loop by number in their order: the outer loop first, counter-clockwise, then holes, clockwise.</param>
    public static ImmutableArray<int> Of(IReadOnlyList<Point> corners, IReadOnlyList<ImmutableArray<int>> loops)
    {
        var ring = new Ring(corners);
        var outer = ring.Add(loops[0]);
        foreach (var hole in loops.Skip(1).Select(l => l[Leftmost(corners, l)..].AddRange(l[..Leftmost(corners, l)])).OrderBy(l => corners[l[0]].X))
        {
            if (!ring.Bridge(outer, ring.Add(hole))) return [];
        }

        var cut = ring.Clip(outer);
        var (area, whole) = (0.0, 0.0);
        for (var i = 0; i < cut.Length; i += 3) area += (corners[cut[i + 1]] - corners[cut[i]]).Cross(corners[cut[i + 2]] - corners[cut[i]]);
        foreach (var l in loops)
        {
            for (var i = 0; i < l.Length; i++) whole += corners[l[i]].Cross(corners[l[(i + 1) % l.Length]]);
        }

        return Math.Abs(area - whole) < 1e-8 * Math.Abs(whole) ? cut : [];
    }

    private static int Leftmost(IReadOnlyList<Point> corners, ImmutableArray<int> loop)
    {
        var best = 0;
        for (var i = 1; i < loop.Length; i++)
        {
            var (p, q) = (corners[loop[i]], corners[loop[best]]);
            if (p.X < q.X || (p.X == q.X && p.Y < q.Y)) best = i;
        }

        return best;
    }

    // corners linked in a ring; a bridge passes its two corners twice
    private sealed class Ring(IReadOnlyList<Point> corners)
    {
        private readonly List<int> _corner = [], _next = [], _before = [];
        private readonly HashSet<int> _gone = [];
        private Squares _inward = new([], []);

        public int Add(ImmutableArray<int> loop)
        {
            var first = _corner.Count;
            for (var i = 0; i < loop.Length; i++)
            {
                _corner.Add(loop[i]);
                _next.Add(first + ((i + 1) % loop.Length));
                _before.Add(first + ((i + loop.Length - 1) % loop.Length));
            }

            return first;
        }

        public bool Bridge(int outer, int hole)
        {
            var h = At(hole);
            var (m, reach) = (-1, double.NegativeInfinity);
            var p = outer;
            do
            {
                var (a, b) = (At(p), At(_next[p]));
                if (h.Y <= a.Y && h.Y >= b.Y && a.Y != b.Y)
                {
                    var x = a.X + ((h.Y - a.Y) * (b.X - a.X) / (b.Y - a.Y));
                    if (x <= h.X && x > reach) (reach, m) = (x, a.X < b.X ? p : _next[p]);
                }

                p = _next[p];
            }
            while (p != outer);
            if (m < 0) return false;

            // a corner that hides the one found, nearest to the level line, is taken instead
            var (q, steepest) = (At(m), double.PositiveInfinity);
            var (low, high) = h.Y < q.Y ? (h.X, reach) : (reach, h.X);
            p = outer;
            do
            {
                var c = At(p);
                if (c.X < h.X && c.X >= q.X && Holds(new Point(low, h.Y), q, new Point(high, h.Y), c))
                {
                    var steep = Math.Abs(h.Y - c.Y) / (h.X - c.X);
                    if (LooksInto(p, h) && (steep < steepest || (steep == steepest && c.X > At(m).X))) (m, steepest) = (p, steep);
                }

                p = _next[p];
            }
            while (p != outer);
            Join(m, hole);
            return true;
        }

        public ImmutableArray<int> Clip(int start)
        {
            var cut = ImmutableArray.CreateBuilder<int>();
            var (p, left, idle) = (start, Count(start), 0);
            int[] inward = [.. Enumerable.Range(0, _corner.Count).Where(q => Turn(_before[q], q, _next[q]) <= Flat)];
            _inward = new Squares(inward, [.. inward.Select(At)]);
            while (left > 3 && idle <= left)
            {
                if (!IsEar(p))
                {
                    p = _next[p];
                    idle++;
                    continue;
                }

                var (before, next) = (_before[p], _next[p]);
                cut.AddRange(_corner[before], _corner[p], _corner[next]);
                (_next[before], _before[next]) = (next, before);
                _gone.Add(p);

                // going on beyond the next corner keeps the ears from fanning out of one corner
                p = _next[next];
                left--;
                idle = 0;
            }

            if (left == 3 && Turn(_before[p], p, _next[p]) > 0) cut.AddRange(_corner[_before[p]], _corner[p], _corner[_next[p]]);
            return cut.ToImmutable();
        }

        private Point At(int node) => corners[_corner[node]];

        private double Turn(int a, int b, int c) => (At(b) - At(a)).Cross(At(c) - At(a));

        private int Count(int start)
        {
            var n = 1;
            for (var p = _next[start]; p != start; p = _next[p]) n++;
            return n;
        }

        private void Join(int m, int hole)
        {
            var (m2, hole2) = (_corner.Count, _corner.Count + 1);
            _corner.AddRange([_corner[m], _corner[hole]]);
            _next.AddRange([_next[m], m2]);
            _before.AddRange([hole2, _before[hole]]);
            _before[_next[m]] = m2;
            _next[_before[hole]] = hole2;
            (_next[m], _before[hole]) = (hole, m);
        }

        private bool LooksInto(int p, Point h)
        {
            var (a, b, c) = (At(_before[p]), At(p), At(_next[p]));
            return (b - a).Cross(c - a) > 0
                ? (h - b).Cross(c - b) <= 0 && (a - b).Cross(h - b) <= 0
                : (h - b).Cross(c - b) < 0 || (a - b).Cross(h - b) < 0;
        }

        private bool IsEar(int p)
        {
            var (before, next) = (_before[p], _next[p]);
            if (Turn(before, p, next) <= Flat) return false;
            var (a, b, c) = (At(before), At(p), At(next));
            return !_inward.AnyIn(Box.Around(a, b, c), q => At(q) is var d && d != a && d != b && d != c && !_gone.Contains(q) && Turn(_before[q], q, _next[q]) <= Flat && Holds(a, b, c, d));
        }

        private static bool Holds(Point a, Point b, Point c, Point p)
            => (b - a).Cross(p - a) >= -Flat && (c - b).Cross(p - b) >= -Flat && (a - c).Cross(p - c) >= -Flat;
    }

    // places sorted into squares, for finding those in a box
    private sealed class Squares
    {
        private readonly Dictionary<(int, int), List<int>> _in = [];
        private readonly (int Number, Point At)[] _all;
        private readonly double _side;

        public Squares(IReadOnlyList<int> numbers, IReadOnlyList<Point> places)
        {
            _all = [.. numbers.Zip(places)];
            var box = places.Aggregate(Box.Nothing, (b, p) => b.With(p));
            _side = Math.Max(1e-3, Math.Sqrt(box.Width * box.Height / Math.Max(1, places.Count)));
            foreach (var (number, at) in _all)
            {
                var key = Key(at);
                if (!_in.TryGetValue(key, out var list)) _in.Add(key, list = []);
                list.Add(number);
            }
        }

        public bool AnyIn(Box box, Func<int, bool> holds)
        {
            var ((x0, y0), (x1, y1)) = (Key(new(box.MinX, box.MinY)), Key(new(box.MaxX, box.MaxY)));
            if ((long)(x1 - x0 + 1) * (y1 - y0 + 1) > _all.Length)
            {
                foreach (var (number, at) in _all)
                {
                    if (box.Holds(at) && holds(number)) return true;
                }

                return false;
            }

            for (var x = x0; x <= x1; x++)
            {
                for (var y = y0; y <= y1; y++)
                {
                    if (_in.TryGetValue((x, y), out var list) && list.Exists(n => holds(n))) return true;
                }
            }

            return false;
        }

        private (int X, int Y) Key(Point p) => ((int)Math.Floor(p.X / _side), (int)Math.Floor(p.Y / _side));
    }
}
