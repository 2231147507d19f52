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
    private readonly ushort[] _cells;
    private readonly int[] _from;
    private readonly EdgeMeeting[] _meetings;
    private readonly bool[] _mayHold;
    private readonly float[] _worst;
    private readonly int _nodes;

    private PairField(TurnedPiece a, TurnedPiece b, FieldCells cells)
    {
        (_a, _b, Left, Low, PerCell, Columns, Rows) = (a, b, cells.Left, cells.Low, 1 / cells.Size, cells.Columns, cells.Rows);
        (_cells, _from, _meetings, _mayHold) = (cells.Codes, [.. cells.From], [.. cells.Meetings], [.. cells.MayHold]);
        _nodes = (Columns / 2) + 2;
        _worst = new float[_nodes * ((Rows / 2) + 2)];
        Array.Fill(_worst, Unknown);
        Kinds = new uint[(_cells.Length + 15) / 16];
        for (var i = 0; i < _cells.Length; i++) Kinds[i >> 4] |= (uint)Math.Min(_cells[i], FieldCells.FirstList) << ((i & 15) << 1);
    }

    /// <summary>Where the cells begin, mm of shift along.</summary>
    public double Left { get; }

    /// <summary>The same, upward.</summary>
    public double Low { get; }

    /// <summary>Cells to a millimetre.</summary>
    public double PerCell { get; }

    /// <summary>Cells along.</summary>
    public int Columns { get; }

    /// <summary>Cells upward.</summary>
    public int Rows { get; }

    /// <summary>The kind of each cell, two bits each.</summary>
    public uint[] Kinds { get; }

    /// <summary>The field of two pieces in given ways.</summary>
    /// <param name="a">The first.</param>
    /// <param name="b">The second, which is shifted.</param>
    /// <param name="cells">About how many cells.</param>
    /// <param name="hair">Closer than this counts as meeting, mm.</param>
    public static PairField Of(TurnedPiece a, TurnedPiece b, int cells, double hair) => new(a, b, FieldCells.Of(a, b, cells, hair));

    /// <summary>How badly they meet where they do: between four nodes, two cells apart; the place in nodes.</summary>
    public float Between(float fx, float fy)
    {
        var (ix, iy) = ((int)fx, (int)fy);
        var (tx, ty, at) = (fx - ix, fy - iy, (iy * _nodes) + ix);
        var (a, b) = (Worst(at, ix, iy), Worst(at + 1, ix + 1, iy));
        var (c, d) = (Worst(at + _nodes, ix, iy + 1), Worst(at + _nodes + 1, ix + 1, iy + 1));
        var (low, high) = (a + (tx * (b - a)), c + (tx * (d - c)));
        return low + (ty * (high - low));
    }

    /// <summary>Whether they meet at a shift in a cell of the mixed kind.</summary>
    public bool Meets(int cell, double dx, double dy)
    {
        var list = _cells[cell] - FieldCells.FirstList;
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
        return known >= 0 ? known : _worst[at] = DiscLoss.Of(_a, _b, Left + (2 * ix / PerCell), Low + (2 * iy / PerCell));
    }
}
