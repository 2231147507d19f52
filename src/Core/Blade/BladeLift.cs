using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Both faces of a blade over its plan, and the walls between them. Over each point of the plan stands a column of points; where two meet, as on a keen edge, they are one.</summary>
internal sealed class BladeLift
{
    private const double SameMm = 1e-4;

    // a rim that turns by more than this, degrees, has a corner to be drawn
    private const double CornerDegrees = 15;

    private readonly BladePlan _plan;
    private readonly FlatMesh _flat;
    private readonly double _stock;
    private readonly bool _oneSided;
    private readonly BladeFace[] _face;
    private readonly List<double>[] _columns;
    private readonly int[] _first;
    private readonly ImmutableArray<MeshTriangle>.Builder _triangles = ImmutableArray.CreateBuilder<MeshTriangle>();
    private readonly ImmutableArray<BladeFace>.Builder _faces = ImmutableArray.CreateBuilder<BladeFace>();
    private readonly ImmutableArray<int>.Builder _lines = ImmutableArray.CreateBuilder<int>();

    public BladeLift(BladePlan plan, double stock, bool oneSided)
    {
        (_plan, _flat, _stock, _oneSided) = (plan, plan.Flat, stock, oneSided);
        _face = [.. Enumerable.Range(0, _flat.TriangleCount).Select(plan.Face)];
        _columns = [.. Enumerable.Range(0, _flat.PointCount).Select(_ => new List<double>(2))];
        for (var t = 0; t < _flat.TriangleCount; t++)
        {
            var (a, b, c) = _flat.Corners(t);
            Stand(t, a);
            Stand(t, b);
            Stand(t, c);
        }

        _first = new int[_flat.PointCount];
        var n = 0;
        for (var p = 0; p < _columns.Length; p++)
        {
            _columns[p].Sort();
            _first[p] = n;
            n += _columns[p].Count;
        }

        for (var t = 0; t < _flat.TriangleCount; t++) PutFaces(t);
        for (var s = 0; s < _flat.SideCount; s++) PutWalls(s);
        RuleCorners();
    }

    /// <summary>What each triangle belongs to.</summary>
    public ImmutableArray<BladeFace> Faces => _faces.ToImmutable();

    /// <summary>Lines to draw, pairs of points.</summary>
    public ImmutableArray<int> Lines => _lines.ToImmutable();

    /// <summary>Which face a triangle of the plan belongs to.</summary>
    public BladeFace FaceOf(int triangle) => _face[triangle];

    /// <summary>The solid, the corner of a box at the origin.</summary>
    public TriangleMesh Solid(Box box)
    {
        var points = ImmutableArray.CreateBuilder<MeshPoint>();
        for (var p = 0; p < _columns.Length; p++)
        {
            var at = _flat.At(p);
            foreach (var z in _columns[p]) points.Add(new MeshPoint((float)(at.X - box.MinX), (float)(at.Y - box.MinY), (float)(z + (0.5 * _stock))));
        }

        return new TriangleMesh(points.ToImmutable(), _triangles.ToImmutable());
    }

    // lower and upper face at a corner of a triangle, from the middle of the stock
    private (double Low, double High) Levels(int triangle, int point)
    {
        var flat = _plan.FlatThickness(point);
        var t = _face[triangle] == BladeFace.Flat ? flat : _plan.Thickness(point);
        return _oneSided ? (-0.5 * flat, t - (0.5 * flat)) : (-0.5 * t, 0.5 * t);
    }

    private void Stand(int triangle, int point)
    {
        var (low, high) = Levels(triangle, point);
        foreach (var z in (ReadOnlySpan<double>)[low, high])
        {
            if (!_columns[point].Exists(there => Math.Abs(there - z) < SameMm)) _columns[point].Add(z);
        }
    }

    private int Level(int point, double z) => _columns[point].FindIndex(there => Math.Abs(there - z) < SameMm);

    private int Numbered(int point, double z) => _first[point] + Level(point, z);

    private void PutFaces(int t)
    {
        var (a, b, c) = _flat.Corners(t);
        var (la, lb, lc) = (Levels(t, a), Levels(t, b), Levels(t, c));
        Put(Numbered(a, la.High), Numbered(b, lb.High), Numbered(c, lc.High), _face[t]);
        Put(Numbered(a, la.Low), Numbered(c, lc.Low), Numbered(b, lb.Low), _oneSided ? BladeFace.Flat : _face[t]);
    }

    private void Put(int a, int b, int c, BladeFace face)
    {
        _triangles.Add(new MeshTriangle(a, b, c));
        _faces.Add(face);
    }

    private void PutWalls(int side)
    {
        var (other, here) = (_flat.Across(side), side / 3);
        var (a, b) = _flat.Ends(side);
        var (la, lb) = (Levels(here, a), Levels(here, b));
        if (other < 0)
        {
            Wall(a, la, b, lb);
            Line(a, la.High, b, lb.High);
            if (la.Low != la.High || lb.Low != lb.High) Line(a, la.Low, b, lb.Low);
            return;
        }

        var there = other / 3;
        var (ma, mb) = (Levels(there, a), Levels(there, b));

        // from the thicker side: the step above and the step below
        if (la.High - ma.High > SameMm || lb.High - mb.High > SameMm) Step(a, (ma.High, la.High), b, (mb.High, lb.High));
        if (ma.Low - la.Low > SameMm || mb.Low - lb.Low > SameMm) Step(a, (la.Low, ma.Low), b, (lb.Low, mb.Low));
        if (side < other && _face[here] != _face[there])
        {
            Line(a, la.High, b, lb.High);
            if (!_oneSided) Line(a, la.Low, b, lb.Low);
        }
    }

    private void Step(int a, (double Low, double High) at, int b, (double Low, double High) bt)
    {
        Wall(a, at, b, bt);
        Line(a, at.High, b, bt.High);
        Line(a, at.Low, b, bt.Low);
    }

    // upright lines where the outline has a corner
    private void RuleCorners()
    {
        var arriving = new Dictionary<int, Point>();
        var rim = Enumerable.Range(0, _flat.SideCount).Where(s => _flat.Across(s) < 0).Select(_flat.Ends).ToArray();
        foreach (var (a, b) in rim) arriving[b] = _flat.At(b) - _flat.At(a);
        foreach (var (a, b) in rim)
        {
            var (before, after) = (arriving[a], _flat.At(b) - _flat.At(a));
            if (Math.Abs(Math.Atan2(before.Cross(after), before.Dot(after))) < CornerDegrees * Math.PI / 180) continue;
            for (var level = 1; level < _columns[a].Count; level++) _lines.AddRange(_first[a] + level - 1, _first[a] + level);
        }
    }

    private void Line(int a, double za, int b, double zb) => _lines.AddRange(Numbered(a, za), Numbered(b, zb));

    // an upright strip from a to b seen from its right side, between two columns with all that stands in them
    private void Wall(int a, (double Low, double High) at, int b, (double Low, double High) bt)
    {
        var (i, iEnd) = (Level(a, at.Low), Level(a, at.High));
        var (j, jEnd) = (Level(b, bt.Low), Level(b, bt.High));
        while (i < iEnd || j < jEnd)
        {
            var (p, q) = (_first[a] + i, _first[b] + j);
            if (i == iEnd || (j < jEnd && _columns[b][j + 1] <= _columns[a][i + 1]))
            {
                Put(p, q, q + 1, BladeFace.Wall);
                j++;
            }
            else
            {
                Put(p, q, p + 1, BladeFace.Wall);
                i++;
            }
        }
    }
}
