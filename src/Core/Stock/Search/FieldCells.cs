namespace Tangwright.Core;

/// <summary>Cuts the plane of shifts of two pieces into cells, halving it and dropping the pairs of edges that cannot matter any more. mm.</summary>
internal sealed class FieldCells
{
    /// <summary>They do not meet anywhere in the cell.</summary>
    public const ushort Free = 0;

    /// <summary>They meet all over it.</summary>
    public const ushort Met = 1;

    /// <summary>From here on: the number of the list, more than this.</summary>
    public const ushort FirstList = 2;

    private const int Tile = 8;

    /// <summary>A shift may be taken for one of the next cell when it is this close to it, in cells.</summary>
    private const double RoundingShare = 0.002;

    private readonly TurnedPiece _a;
    private readonly TurnedPiece _b;
    private readonly double _hair;
    private readonly List<int> _pairs = [];
    private readonly Pair[] _all;

    private FieldCells(TurnedPiece a, TurnedPiece b, int cells, double hair)
    {
        (_a, _b, _hair) = (a, b, hair);
        (Left, Low) = (-b.Width - (4 * hair), -b.Height - (4 * hair));
        var (width, height) = (a.Width - Left + (4 * hair), a.Height - Low + (4 * hair));
        Size = Math.Sqrt(width * height / cells);
        (Columns, Rows) = ((int)Math.Ceiling(width / Size), (int)Math.Ceiling(height / Size));
        Codes = new ushort[Columns * Rows];
        _all = Pairs();
        Tiles();
        From.Add(Meetings.Count);
    }

    /// <summary>Side of a cell, mm.</summary>
    public double Size { get; }

    /// <summary>Where the cells begin, mm of shift.</summary>
    public double Left { get; }

    /// <summary>The same, upward.</summary>
    public double Low { get; }

    public int Columns { get; }

    public int Rows { get; }

    public ushort[] Codes { get; }

    public List<int> From { get; } = [];

    public List<EdgeMeeting> Meetings { get; } = [];

    public List<bool> MayHold { get; } = [];

    public static FieldCells Of(TurnedPiece a, TurnedPiece b, int cells, double hair) => new(a, b, cells, hair);

    /// <summary>Tile by tile, each with the pairs whose shifts reach it.</summary>
    private void Tiles()
    {
        var (across, up) = ((Columns + Tile - 1) / Tile, (Rows + Tile - 1) / Tile);
        var lists = new List<int>?[across * up];
        var near = (3 * _hair) + (RoundingShare * Size);
        for (var p = 0; p < _all.Length; p++)
        {
            ref readonly var pair = ref _all[p];
            var (halfX, halfY) = ((0.5 * (Math.Abs(pair.Ex) + Math.Abs(pair.Fx))) + near, (0.5 * (Math.Abs(pair.Ey) + Math.Abs(pair.Fy))) + near);
            for (var y = At(pair.Y - halfY - Low); y <= Math.Min(up - 1, At(pair.Y + halfY - Low)); y++)
            {
                for (var x = At(pair.X - halfX - Left); x <= Math.Min(across - 1, At(pair.X + halfX - Left)); x++) (lists[(y * across) + x] ??= []).Add(p);
            }
        }

        for (var y = 0; y < up; y++)
        {
            for (var x = 0; x < across; x++)
            {
                _pairs.Clear();
                if (lists[(y * across) + x] is { } list) _pairs.AddRange(list);
                Fill(x * Tile, y * Tile, Math.Min(Columns, (x + 1) * Tile), Math.Min(Rows, (y + 1) * Tile), 0);
            }
        }

        int At(double from) => Math.Max(0, (int)(from / (Size * Tile)));
    }

    private Pair[] Pairs()
    {
        var (n, m) = (_a.Xs.Length, _b.Xs.Length);
        var pairs = new List<Pair>(n * m);
        for (var i = 0; i < n; i++)
        {
            var (ax, ay) = (_a.Xs[i], _a.Ys[i]);
            var (ex, ey) = (_a.Xs[(i + 1) % n] - ax, _a.Ys[(i + 1) % n] - ay);
            for (var j = 0; j < m; j++)
            {
                var (bx, by) = (_b.Xs[j], _b.Ys[j]);
                var (fx, fy) = (_b.Xs[(j + 1) % m] - bx, _b.Ys[(j + 1) % m] - by);
                var (le, lf) = (Math.Sqrt((ex * ex) + (ey * ey)), Math.Sqrt((fx * fx) + (fy * fy)));

                // edges that run the same way only slide along each other; their neighbours tell when they meet
                if (Math.Abs((ex * fy) - (ey * fx)) <= 1e-9 * le * lf) continue;
                pairs.Add(new(ax, ay, ex, ey, bx, by, fx, fy, ax - bx + (0.5 * (ex - fx)), ay - by + (0.5 * (ey - fy)), 0.5 * (le + lf), new(ax, ay, ex, ey, bx, by, fx, fy, _hair)));
            }
        }

        return [.. pairs];
    }

    private void Fill(int x0, int y0, int x1, int y1, int from)
    {
        var (half, to) = (0.5 * Size * Math.Sqrt(((x1 - x0) * (double)(x1 - x0)) + ((y1 - y0) * (double)(y1 - y0))), _pairs.Count);
        var (dx, dy) = (Left + (0.5 * Size * (x0 + x1)), Low + (0.5 * Size * (y0 + y1)));
        var reach = half + (2 * _hair) + (RoundingShare * Size);
        for (var p = from; p < to; p++)
        {
            ref readonly var pair = ref _all[_pairs[p]];
            var (ox, oy, far) = (dx - pair.X, dy - pair.Y, pair.Reach + reach);
            if ((ox * ox) + (oy * oy) > far * far) continue;
            var border = pair.ToBorder(dx, dy);
            if (border > reach)
            {
                if (!pair.Meeting.Holds(dx, dy)) continue;
                Whole(x0, y0, x1, y1, Met);
                _pairs.RemoveRange(to, _pairs.Count - to);
                return;
            }

            _pairs.Add(_pairs[p]);
        }

        if (_pairs.Count == to)
        {
            Whole(x0, y0, x1, y1, MayHoldAt(dx, dy, half) && PairField.Holds(_a, _b, dx, dy) ? Met : Free);
        }
        else if (x1 - x0 == 1 && y1 - y0 == 1)
        {
            Codes[(y0 * Columns) + x0] = (ushort)(FirstList + From.Count);
            From.Add(Meetings.Count);
            for (var p = to; p < _pairs.Count; p++) Meetings.Add(_all[_pairs[p]].Meeting);
            MayHold.Add(MayHoldAt(dx, dy, 0.5 * Size));
        }
        else if (x1 - x0 >= y1 - y0)
        {
            var middle = (x0 + x1) / 2;
            Fill(x0, y0, middle, y1, to);
            Fill(middle, y0, x1, y1, to);
        }
        else
        {
            var middle = (y0 + y1) / 2;
            Fill(x0, y0, x1, middle, to);
            Fill(x0, middle, x1, y1, to);
        }

        _pairs.RemoveRange(to, _pairs.Count - to);
    }

    private bool MayHoldAt(double dx, double dy, double h)
        => (dx + h >= 0 && dy + h >= 0 && dx - h + _b.Width <= _a.Width && dy - h + _b.Height <= _a.Height)
            || (dx - h <= 0 && dy - h <= 0 && dx + h + _b.Width >= _a.Width && dy + h + _b.Height >= _a.Height);

    private void Whole(int x0, int y0, int x1, int y1, ushort code)
    {
        if (code == Free) return;
        for (var y = y0; y < y1; y++) Codes.AsSpan((y * Columns) + x0, x1 - x0).Fill(code);
    }

    private readonly record struct Pair(double Ax, double Ay, double Ex, double Ey, double Bx, double By, double Fx, double Fy, double X, double Y, double Reach, EdgeMeeting Meeting)
    {
        /// <summary>Distance from a shift to the border of the shifts at which they cross.</summary>
        public double ToBorder(double dx, double dy)
        {
            var (bx, by) = (Bx + dx, By + dy);
            var least = PlanarKernels.PointToSegmentSquared(Ax, Ay, bx, by, bx + Fx, by + Fy);
            least = Math.Min(least, PlanarKernels.PointToSegmentSquared(Ax + Ex, Ay + Ey, bx, by, bx + Fx, by + Fy));
            least = Math.Min(least, PlanarKernels.PointToSegmentSquared(bx, by, Ax, Ay, Ax + Ex, Ay + Ey));
            least = Math.Min(least, PlanarKernels.PointToSegmentSquared(bx + Fx, by + Fy, Ax, Ay, Ax + Ex, Ay + Ey));
            return Math.Sqrt(least);
        }
    }
}
