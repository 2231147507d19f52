using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>A flat piece cut into triangles that can be made finer: sides are halved or cut at a line, and turned so that no triangle is flatter than needed (Delaunay, kept to marked sides). mm.</summary>
/// <remarks>Turning sides until each triangle's circle is empty: Lawson, 1977; halving the sides that are too long: Rivara, International Journal for Numerical Methods in Engineering 20 (1984) (both from memory).</remarks>
public sealed class FlatMesh
{
    // twice the area of a triangle that counts as none, mm²
    private const double Flat = 1e-6;

    private readonly List<Point> _points;

    // three a triangle; side k runs from corner k to corner k + 1; _across names the side on the other side of it, −1 at the rim
    private readonly List<int> _corners = [];
    private readonly List<int> _across = [];
    private readonly List<int> _marks = [];

    private FlatMesh(List<Point> points) => _points = points;

    /// <summary>Whether a side is to be cut, and where.</summary>
    /// <param name="side">The side.</param>
    /// <param name="at">Where.</param>
    public delegate bool Cut(int side, out Point at);

    /// <summary>Number of points.</summary>
    public int PointCount => _points.Count;

    /// <summary>Number of triangles.</summary>
    public int TriangleCount => _corners.Count / 3;

    /// <summary>Number of sides, each told once from either triangle.</summary>
    public int SideCount => _corners.Count;

    /// <summary>From triangles between given points.</summary>
    /// <param name="points">The points.</param>
    /// <param name="triangles">Three numbers of points each, counter-clockwise.</param>
    public static FlatMesh Of(IEnumerable<Point> points, ImmutableArray<int> triangles)
    {
        var mesh = new FlatMesh([.. points]);
        var sides = new Dictionary<(int, int), int>(triangles.Length);
        foreach (var corner in triangles)
        {
            mesh._corners.Add(corner);
            mesh._across.Add(-1);
            mesh._marks.Add(0);
        }

        for (var s = 0; s < mesh.SideCount; s++)
        {
            var (a, b) = mesh.Ends(s);
            if (sides.TryGetValue((b, a), out var other)) (mesh._across[s], mesh._across[other]) = (other, s);
            sides[(a, b)] = s;
        }

        mesh.Settle(Enumerable.Range(0, mesh.SideCount));
        return mesh;
    }

    /// <summary>A point.</summary>
    public Point At(int point) => _points[point];

    /// <summary>The two ends of a side, its triangle to the left.</summary>
    public (int From, int To) Ends(int side) => (_corners[side], _corners[Next(side)]);

    /// <summary>The side of the neighbouring triangle; −1 at the rim.</summary>
    public int Across(int side) => _across[side];

    /// <summary>Marks of a side; one with a mark is never turned.</summary>
    public int Marks(int side) => _marks[side];

    /// <summary>The three corners of a triangle.</summary>
    public (int A, int B, int C) Corners(int triangle) => (_corners[3 * triangle], _corners[(3 * triangle) + 1], _corners[(3 * triangle) + 2]);

    /// <summary>Marks a side.</summary>
    public void Mark(int side, int mark)
    {
        _marks[side] |= mark;
        if (_across[side] >= 0) _marks[_across[side]] |= mark;
    }

    /// <summary>Cuts every side that asks for it, once, new sides left as they come.</summary>
    /// <param name="cut">Whether and where.</param>
    /// <returns>Whether any was cut.</returns>
    public bool CutOnce(Cut cut)
    {
        var (count, any) = (SideCount, false);
        var seen = new HashSet<(int, int)>();
        for (var s = 0; s < count; s++)
        {
            var (a, b) = Ends(s);
            if (!seen.Add(a < b ? (a, b) : (b, a)) || !cut(s, out var at)) continue;
            Split(s, at);
            any = true;
        }

        return any;
    }

    /// <summary>Cuts sides until none asks for it any more.</summary>
    /// <param name="cut">Whether and where.</param>
    /// <param name="most">No more triangles than these.</param>
    /// <param name="turn">Whether sides are turned between.</param>
    public void CutAll(Cut cut, int most, bool turn)
    {
        var fine = new HashSet<(int, int)>();
        var wanted = new List<(int Side, int From, int To, double Length)>();
        var touched = new List<int>();
        for (var pass = 0; pass < 400; pass++)
        {
            wanted.Clear();
            for (var s = 0; s < SideCount; s++)
            {
                var (a, b) = Ends(s);
                if ((_across[s] >= 0 && b < a) || fine.Contains((a, b))) continue;
                if (cut(s, out _)) wanted.Add((s, a, b, _points[a].To(_points[b])));
                else fine.Add((a, b));
            }

            // the longest first; of a triangle cut meanwhile the rest comes in the next round
            wanted.Sort((x, y) => y.Length.CompareTo(x.Length) is var c and not 0 ? c : x.Side.CompareTo(y.Side));
            touched.Clear();
            foreach (var (s, a, b, _) in wanted)
            {
                if (TriangleCount >= most) break;
                if (Ends(s) != (a, b) || !cut(s, out var at)) continue;
                var first = SideCount;
                Split(s, at);
                var (t, u) = (s - (s % 3), _across[s] < 0 ? -1 : _across[s] - (_across[s] % 3));
                for (var k = 0; k < 3; k++)
                {
                    touched.Add(t + k);
                    if (u >= 0) touched.Add(u + k);
                }

                for (var k = first; k < SideCount; k++) touched.Add(k);
            }

            if (touched.Count == 0) return;
            if (turn) Settle(touched);
        }
    }

    /// <summary>Turns sides until every triangle's circle is empty of its neighbours' corners.</summary>
    public void Settle() => Settle(Enumerable.Range(0, SideCount));

    /// <summary>Twice the area of the triangle of three points, mm²; positive counter-clockwise.</summary>
    public static double Twice(Point a, Point b, Point c) => (b - a).Cross(c - a);

    private static int Next(int side) => side % 3 == 2 ? side - 2 : side + 1;

    private static int Before(int side) => side % 3 == 0 ? side + 2 : side - 1;

    private void Set(int side, int corner, int across, int mark)
    {
        (_corners[side], _across[side], _marks[side]) = (corner, across, mark);
        if (across >= 0) _across[across] = side;
    }

    private void Split(int side, Point at)
    {
        var m = _points.Count;
        _points.Add(at);
        var other = _across[side];
        var mark = _marks[side];
        var (near, nearB) = Half(side, m);
        if (other < 0) return;
        var (far, farB) = Half(other, m);
        Join(near, farB, mark);
        Join(nearB, far, mark);
    }

    // (a, b, c) becomes (a, m, c) in its place and (m, b, c) at the end; gives the sides a–m and m–b
    private (int First, int Second) Half(int side, int m)
    {
        var (next, before) = (Next(side), Before(side));
        var (b, c) = (_corners[next], _corners[before]);
        var (across, mark, acrossMark) = (_across[next], _marks[side], _marks[next]);
        var n = SideCount;
        for (var k = 0; k < 3; k++)
        {
            _corners.Add(0);
            _across.Add(-1);
            _marks.Add(0);
        }

        Set(n, m, -1, mark);
        Set(n + 1, b, across, acrossMark);
        Set(n + 2, c, next, 0);
        Set(next, m, n + 2, 0);
        _across[side] = -1;
        return (side, n);
    }

    private void Join(int a, int b, int mark)
    {
        (_across[a], _across[b]) = (b, a);
        (_marks[a], _marks[b]) = (mark, mark);
    }

    private void Settle(IEnumerable<int> sides)
    {
        var waiting = new Stack<int>(sides);
        var patience = 60L * (SideCount + 100);
        while (waiting.TryPop(out var s) && patience-- > 0)
        {
            var o = _across[s];
            if (o < 0 || _marks[s] != 0) continue;
            var (a, b, c, d) = (_corners[s], _corners[Next(s)], _corners[Before(s)], _corners[Before(o)]);
            if (!WouldBeBetter(_points[a], _points[b], _points[c], _points[d])) continue;

            // (a, b, c) and (b, a, d) become (a, d, c) and (d, b, c)
            var (sn, sb, on, ob) = (Next(s), Before(s), Next(o), Before(o));
            var (bc, ca, ad, db) = ((_across[sn], _marks[sn]), (_across[sb], _marks[sb]), (_across[on], _marks[on]), (_across[ob], _marks[ob]));
            Set(s, a, ad.Item1, ad.Item2);
            Set(sb, c, ca.Item1, ca.Item2);
            Set(o, b, bc.Item1, bc.Item2);
            Set(ob, d, db.Item1, db.Item2);
            (_corners[sn], _corners[on]) = (d, c);
            Join(sn, on, 0);
            waiting.Push(s);
            waiting.Push(sb);
            waiting.Push(o);
            waiting.Push(ob);
        }
    }

    private static bool WouldBeBetter(Point a, Point b, Point c, Point d)
    {
        // the other diagonal must lie inside
        var (first, second) = (Twice(a, d, c), Twice(d, b, c));
        if (first <= Flat || second <= Flat) return false;
        var (p, q, r) = (a - d, b - d, c - d);
        var det = (p.Dot(p) * q.Cross(r)) + (q.Dot(q) * r.Cross(p)) + (r.Dot(r) * p.Cross(q));
        var size = p.Dot(p) + q.Dot(q) + r.Dot(r);
        return det > 1e-12 * size * size;
    }
}
