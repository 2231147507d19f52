using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The piece seen on its face, cut into triangles over each of which the thickness runs straight: corners on the outline and the rims of the holes, sides along the end of the bevel, the sharpened facet and the plunge line. mm.</summary>
internal sealed class BladePlan
{
    /// <summary>Largest distance of a chord from the outline or a rim, mm.</summary>
    public const double ChordMm = 0.002;

    // a line of the bevel within this of a corner passes through the corner
    private const double SameMm = 0.01;
    private const double LeastSideMm = 0.2;
    private const double LeastHeightMm = 0.02;
    private const double MostOffMm = 0.003;
    private const int MostTriangles = 60_000;

    private const int PlungeMark = 1, FirstKinkMark = 2, LastKinkMark = 4, TaperMark = 8, RimShift = 4;

    private readonly ImmutableArray<Path> _loops;
    private readonly SteelThickness? _ground;
    private readonly FaceThickness _faces;
    private readonly List<double> _thickness = [];

    private BladePlan(ImmutableArray<Path> loops, SteelThickness? ground, FaceThickness faces, FlatMesh flat)
        => (_loops, _ground, _faces, Flat) = (loops, ground, faces, flat);

    /// <summary>The triangles.</summary>
    public FlatMesh Flat { get; }

    /// <summary>Cuts a piece up; null when its loops cross or touch one another.</summary>
    /// <param name="piece">Outline and holes.</param>
    /// <param name="edge">The sharpened part; null when nothing is ground.</param>
    /// <param name="ground">Thickness of the ground steel; null when nothing is ground.</param>
    /// <param name="faces">Thickness of the flat faces.</param>
    public static BladePlan? Of(Region piece, EdgeSpan? edge, SteelThickness? ground, FaceThickness faces)
    {
        // the ends of the sharpened part are corners
        var outer = edge is null || edge.IsWholeLoop ? piece.Outer : new Path([.. edge.Path.Segments, .. piece.Outer.Between(edge.To, edge.From).Segments], closed: true);
        ImmutableArray<Path> loops = [outer, .. piece.Holes];
        var (corners, rings) = (new List<Point>(), new List<ImmutableArray<int>>());
        foreach (var loop in loops)
        {
            var first = corners.Count;
            foreach (var c in Chords.Of(loop, ChordMm))
            {
                if (corners.Count == first || (corners[^1].To(c) > 0.1 * SameMm && corners[first].To(c) > 0.1 * SameMm)) corners.Add(c);
            }

            rings.Add([.. Enumerable.Range(first, corners.Count - first)]);
            if (corners.Count - first < 3) return null;
        }

        var cut = EarClipping.Of(corners, rings);
        if (cut.IsEmpty) return null;
        var plan = new BladePlan(loops, ground, faces, FlatMesh.Of(corners, cut));
        plan.MarkRims(rings);
        plan.Refine(piece.Outer.Bounds);
        return plan;
    }

    /// <summary>Thickness at a point of the plan, the plunge line left out of account, mm.</summary>
    public double Thickness(int point)
    {
        while (_thickness.Count <= point)
        {
            var at = Flat.At(_thickness.Count);
            _thickness.Add(_ground is null || BeyondKink(at, last: true) > -SameMm ? _faces.At(at.X) : Snapped(_ground.At(at), _faces.At(at.X)));
        }

        return _thickness[point];
    }

    /// <summary>Thickness of the flat faces at a point of the plan, mm.</summary>
    public double FlatThickness(int point) => _faces.At(Flat.At(point).X);

    /// <summary>Which face a triangle belongs to.</summary>
    public BladeFace Face(int triangle)
    {
        if (_ground is null) return BladeFace.Flat;
        var (a, b, c) = Flat.Corners(triangle);
        var middle = (Flat.At(a) + Flat.At(b) + Flat.At(c)) * (1.0 / 3);
        if (_ground.BeyondPlunge(middle) < 0) return BladeFace.Flat;
        var (_, distance, facet, bevel) = _ground.Foot(middle);
        if (bevel <= 0 || (distance >= bevel && IsFlat(a) && IsFlat(b) && IsFlat(c))) return BladeFace.Flat;
        return distance < facet ? BladeFace.Facet : BladeFace.Bevel;
    }

    /// <summary>How far the straight faces are from the law of thickness, at worst, measured at the middles of sides and triangles, mm of thickness; triangles too small to be cut further, which stand where the law itself steps, are left out.</summary>
    public double WorstMm(Func<int, BladeFace> face)
    {
        var worst = 0.0;
        for (var t = 0; _ground is not null && t < Flat.TriangleCount; t++)
        {
            var (a, b, c) = Flat.Corners(t);
            var box = Box.Around(Flat.At(a), Flat.At(b), Flat.At(c));
            if (face(t) == BladeFace.Flat || Math.Max(box.Width, box.Height) < 2 * LeastSideMm) continue;
            Look((Flat.At(a) + Flat.At(b) + Flat.At(c)) * (1.0 / 3), (Thickness(a) + Thickness(b) + Thickness(c)) / 3);
            for (var s = 3 * t; s < (3 * t) + 3; s++)
            {
                var (from, to) = Flat.Ends(s);
                if (Flat.Across(s) < s) Look(Flat.At(from).Toward(Flat.At(to), 0.5), 0.5 * (Thickness(from) + Thickness(to)));
            }
        }

        return worst;

        void Look(Point at, double straight) => worst = Math.Max(worst, Math.Abs(_ground.At(at) - straight));
    }

    private static double Snapped(double t, double flat) => t < 1e-4 ? 0 : flat - t < 1e-4 ? flat : t;

    private bool IsFlat(int point) => Thickness(point) >= FlatThickness(point);

    private void MarkRims(List<ImmutableArray<int>> rings)
    {
        var loopOf = new int[Flat.PointCount];
        for (var i = 0; i < rings.Count; i++)
        {
            foreach (var p in rings[i]) loopOf[p] = i;
        }

        for (var s = 0; s < Flat.SideCount; s++)
        {
            if (Flat.Across(s) < 0) Flat.Mark(s, (loopOf[Flat.Ends(s).From] + 1) << RimShift);
        }
    }

    private void Refine(Box box)
    {
        var size = new Point(box.Width, box.Height).Length;
        Flat.CutAll(TooLong(size / 25), MostTriangles / 4, turn: true);
        foreach (var x in _faces.KinksMm.ToArray()) CutAlong(q => q.X - x, _ => true, TaperMark);
        if (_ground is null) return;
        Flat.CutAll(TooLongInBevel(Math.Clamp(size / 90, 0.5, 4)), MostTriangles / 2, turn: true);
        if (_ground.IsSharpened) CutAlong(q => BeyondKink(q, last: false), _ => true, FirstKinkMark);

        // a full height ends on the outline or where two bevels meet
        if (!_ground.IsFullHeight) CutAlong(q => BeyondKink(q, last: true), _ => true, LastKinkMark);
        if (_ground.HasPlunge) CutAlong(_ground.BeyondPlunge, q => BeyondKink(q, last: true) < 2 * SameMm, PlungeMark);
        Flat.Settle();
        Flat.CutAll(TooFarOff, MostTriangles, turn: true);

        // a side between two points of a keen edge would make both faces one
        Flat.CutOnce((int side, out Point at) =>
        {
            var (a, b) = Flat.Ends(side);
            at = Flat.At(a).Toward(Flat.At(b), 0.5);
            return Flat.Across(side) >= 0 && Thickness(a) == 0 && Thickness(b) == 0;
        });
    }

    private FlatMesh.Cut TooLong(double most) => (int side, out Point at) =>
    {
        var (a, b) = Flat.Ends(side);
        at = default;
        if (Flat.At(a).To(Flat.At(b)) <= most) return false;
        at = MiddleOf(side);
        return true;
    };

    private FlatMesh.Cut TooLongInBevel(double most) => (int side, out Point at) =>
    {
        var (a, b) = Flat.Ends(side);
        at = default;
        if (Flat.At(a).To(Flat.At(b)) <= most || IsThin(side)) return false;
        at = MiddleOf(side);
        return !IsFlat(a) || !IsFlat(b) || BeyondKink(at, last: true) < -SameMm;
    };

    private bool TooFarOff(int side, out Point at)
    {
        var (a, b) = Flat.Ends(side);
        at = default;
        var (p, q) = (Flat.At(a), Flat.At(b));
        if ((IsFlat(a) && IsFlat(b) && Flat.Marks(side) == 0) || p.To(q) < LeastSideMm || IsThin(side)) return false;
        var middle = p.Toward(q, 0.5);
        if (_ground!.BeyondPlunge(middle) < -SameMm || Math.Abs(_ground.At(middle) - (0.5 * (Thickness(a) + Thickness(b)))) <= MostOffMm) return false;
        at = MiddleOf(side);
        return true;
    }

    // signed distance beyond the end of the facet or of the bevel, mm
    private double BeyondKink(Point q, bool last)
    {
        var (_, distance, facet, bevel) = _ground!.Foot(q);
        return bevel <= 0 ? 1 : distance - (last ? bevel : facet);
    }

    // puts corners where sides pass through a line and marks the sides that then lie along it
    private void CutAlong(Func<Point, double> beyond, Func<Point, bool> wanted, int mark)
    {
        var value = new List<double>();
        var onLine = new HashSet<Point>();
        Flat.CutAll(
            (int side, out Point at) =>
            {
                at = default;
                Fill();
                var (a, b) = Flat.Ends(side);
                if (value[a] * value[b] >= 0) return false;
                at = Root(Flat.At(a), value[a], Flat.At(b));
                if (!wanted(at)) return false;
                onLine.Add(at);
                return true;
            },
            int.MaxValue,
            turn: false);
        Fill();
        for (var s = 0; s < Flat.SideCount; s++)
        {
            var (a, b) = Flat.Ends(s);
            if (value[a] == 0 && value[b] == 0) Flat.Mark(s, mark);
        }

        void Fill()
        {
            for (var p = value.Count; p < Flat.PointCount; p++) value.Add(onLine.Contains(Flat.At(p)) || beyond(Flat.At(p)) is > -SameMm and < SameMm ? 0 : beyond(Flat.At(p)));
        }

        Point Root(Point a, double va, Point b)
        {
            var (lo, hi) = (0.0, 1.0);
            for (var i = 0; i < 24; i++)
            {
                var t = 0.5 * (lo + hi);
                if (beyond(a.Toward(b, t)) * va > 0) lo = t;
                else hi = t;
            }

            return a.Toward(b, Math.Clamp(0.5 * (lo + hi), 1e-3, 1 - 1e-3));
        }
    }

    // the middle of a side, put back onto the curve or the end of the bevel it runs along
    private Point MiddleOf(int side)
    {
        var (a, b) = Flat.Ends(side);
        var middle = Flat.At(a).Toward(Flat.At(b), 0.5);
        var marks = Flat.Marks(side);
        var wanted = middle;
        if (marks >> RimShift is var rim && rim > 0)
        {
            wanted = Nearest.On(_loops[rim - 1], middle).At;
        }
        else if ((marks & (FirstKinkMark | LastKinkMark)) != 0 && (marks & (PlungeMark | TaperMark)) == 0)
        {
            var (foot, _, facet, bevel) = _ground!.Foot(middle);
            if (bevel > 0) wanted = foot + ((middle - foot).Unit * ((marks & LastKinkMark) != 0 ? bevel : facet));
        }

        return wanted.To(middle) > 1e-5 && Fits(side, wanted) && (Flat.Across(side) < 0 || Fits(Flat.Across(side), wanted)) ? wanted : middle;
    }

    // whether a triangle beside it is so flat that halving the side would only make flatter ones
    private bool IsThin(int side)
    {
        return Height(side) < LeastHeightMm || (Flat.Across(side) >= 0 && Height(Flat.Across(side)) < LeastHeightMm);

        double Height(int s)
        {
            var ((a, b), (p, q, r)) = (Flat.Ends(s), Flat.Corners(s / 3));
            return FlatMesh.Twice(Flat.At(p), Flat.At(q), Flat.At(r)) / Flat.At(a).To(Flat.At(b));
        }
    }

    private bool Fits(int side, Point at)
    {
        var (a, b, c) = Flat.Corners(side / 3);
        return (side % 3) switch
        {
            0 => Holds(a, b, c),
            1 => Holds(b, c, a),
            _ => Holds(c, a, b),
        };

        bool Holds(int from, int to, int top)
        {
            var whole = 0.1 * FlatMesh.Twice(Flat.At(from), Flat.At(to), Flat.At(top));
            return FlatMesh.Twice(Flat.At(from), at, Flat.At(top)) > whole && FlatMesh.Twice(at, Flat.At(to), Flat.At(top)) > whole;
        }
    }
}
