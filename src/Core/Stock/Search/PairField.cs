using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Where one piece may lie beside another: over all shifts of the second against the first, whether they meet (exact) and how badly (a guide for the search). mm.</summary>
/// <remarks>
/// Two polygons meet where an edge of one crosses an edge of the other, or one lies within the other. The shifts at which a given pair of
/// edges cross fill a parallelogram, so the shifts at which the pieces meet are a union of parallelograms and of the shifts of pure
/// containment. The plane of shifts is cut into cells; a cell is free, or met all over, or keeps the few parallelograms whose borders pass
/// through it. Touching within a hair counts as meeting.
/// </remarks>
internal sealed class PairField
{
    /// <summary>Cells to a field, at most and at least.</summary>
    public const int MostCells = 16384;

    /// <summary>The same, least.</summary>
    public const int LeastCells = 1024;

    private const float Unknown = -1;

    private readonly TurnedPiece _a;
    private readonly TurnedPiece _b;
    private readonly double _x0;
    private readonly double _y0;
    private readonly double _perCell;
    private readonly int _nx;
    private readonly int _ny;
    private readonly ushort[] _cells;
    private readonly int[] _from;
    private readonly EdgeMeeting[] _meetings;
    private readonly bool[] _mayHold;
    private readonly float[] _worst;
    private readonly int _nodes;

    private PairField(TurnedPiece a, TurnedPiece b, FieldCells cells)
    {
        (_a, _b, _x0, _y0, _perCell, _nx, _ny) = (a, b, cells.Left, cells.Low, 1 / cells.Size, cells.Columns, cells.Rows);
        (_cells, _from, _meetings, _mayHold) = (cells.Codes, [.. cells.From], [.. cells.Meetings], [.. cells.MayHold]);
        _nodes = (_nx / 2) + 2;
        _worst = new float[_nodes * ((_ny / 2) + 2)];
        Array.Fill(_worst, Unknown);
    }

    /// <summary>The field of two pieces in given ways.</summary>
    /// <param name="a">The first.</param>
    /// <param name="b">The second, which is shifted.</param>
    /// <param name="cells">About how many cells.</param>
    /// <param name="hair">Closer than this counts as meeting, mm.</param>
    public static PairField Of(TurnedPiece a, TurnedPiece b, int cells, double hair) => new(a, b, FieldCells.Of(a, b, cells, hair));

    /// <summary>How badly they meet; 0 when they do not.</summary>
    /// <param name="dx">The second's box from the first's, along, mm.</param>
    /// <param name="dy">Up, mm.</param>
    public float Loss(double dx, double dy)
    {
        var (fx, fy) = ((dx - _x0) * _perCell, (dy - _y0) * _perCell);
        var (ix, iy) = ((int)fx, (int)fy);
        if (fx < 0 || fy < 0 || ix >= _nx || iy >= _ny) return 0;
        var code = _cells[(iy * _nx) + ix];
        if (code == FieldCells.Free || (code > FieldCells.Met && !Meets(code - FieldCells.FirstList, dx, dy))) return 0;
        return Between(0.5 * fx, 0.5 * fy);
    }

    /// <summary>Between four nodes, two cells apart.</summary>
    private float Between(double fx, double fy)
    {
        var (ix, iy) = ((int)fx, (int)fy);
        var (tx, ty, at) = ((float)(fx - ix), (float)(fy - iy), (iy * _nodes) + ix);
        var (a, b) = (Worst(at, ix, iy), Worst(at + 1, ix + 1, iy));
        var (c, d) = (Worst(at + _nodes, ix, iy + 1), Worst(at + _nodes + 1, ix + 1, iy + 1));
        var (low, high) = (a + (tx * (b - a)), c + (tx * (d - c)));
        return low + (ty * (high - low));
    }

    private bool Meets(int list, double dx, double dy)
    {
        var (from, to) = (_from[list], _from[list + 1]);
        foreach (ref readonly var m in _meetings.AsSpan(from, to - from))
        {
            if (m.Holds(dx, dy)) return true;
        }

        return _mayHold[list] && Holds(_a, _b, dx, dy);
    }

    /// <summary>Whether one holds a place well inside the other.</summary>
    internal static bool Holds(TurnedPiece a, TurnedPiece b, double dx, double dy)
        => PlanarKernels.Inside(a.Xs, a.Ys, b.Inner.X + dx, b.Inner.Y + dy) || PlanarKernels.Inside(b.Xs, b.Ys, a.Inner.X - dx, a.Inner.Y - dy);

    private float Worst(int at, int ix, int iy)
    {
        var known = _worst[at];
        return known >= 0 ? known : _worst[at] = DiscLoss.Of(_a, _b, _x0 + (2 * ix / _perCell), _y0 + (2 * iy / _perCell));
    }
}
