using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Keeps account of what is drawn where on a sheet, in cells, and finds free places for words and bars.</summary>
internal sealed class FreeRoom
{
    private const int MostCells = 500_000;

    private readonly Box _window;
    private readonly double _cell;
    private readonly int _columns;
    private readonly int _rows;
    private readonly int[] _taken;
    private readonly int[] _sums;
    private bool _stale = true;

    /// <summary>An empty sheet.</summary>
    /// <param name="window">Where things may stand, mm.</param>
    public FreeRoom(Box window)
    {
        _window = window;
        _cell = Math.Max(1, Math.Sqrt(window.Width * window.Height / MostCells));
        _columns = Math.Max(1, (int)(window.Width / _cell));
        _rows = Math.Max(1, (int)(window.Height / _cell));
        _taken = new int[_columns * _rows];
        _sums = new int[(_columns + 1) * (_rows + 1)];
    }

    /// <summary>How little a place may be covered: a line may be written over at need, words and hole centres hardly ever.</summary>
    public const int Words = 8;

    /// <summary>Takes a box.</summary>
    /// <param name="b">The box.</param>
    /// <param name="weight">How bad it is to cover it: 1 for lines.</param>
    public void Take(Box b, int weight = 1)
    {
        _stale = true;
        var (c0, c1) = (Column(b.MinX), Column(b.MaxX));
        var (r0, r1) = (Row(b.MinY), Row(b.MaxY));
        for (var r = Math.Max(0, r0); r <= Math.Min(_rows - 1, r1); r++)
        {
            for (var c = Math.Max(0, c0); c <= Math.Min(_columns - 1, c1); c++) _taken[(r * _columns) + c] = Math.Max(weight, _taken[(r * _columns) + c]);
        }
    }

    /// <summary>Takes the cells a path runs through, and those within a distance of it.</summary>
    public void Take(Path path, double near = 0.8)
    {
        Point? last = null;
        foreach (var p in PathPoints.Of(path))
        {
            if (last is { } q) Along(q, p, near);
            last = p;
        }
    }

    /// <summary>Finds a place for a box: the free one that costs least, or where none is free the one that covers least. It is not taken yet.</summary>
    /// <param name="width">Width, mm.</param>
    /// <param name="height">Height, mm.</param>
    /// <param name="cost">How unwelcome a place is.</param>
    /// <param name="within">Where to look; null: everywhere.</param>
    /// <returns>The place, and how much it covers; 0 when free.</returns>
    public (Box Box, int Covers) Find(double width, double height, Func<Box, double> cost, Box? within = null)
    {
        Sum();
        var area = within ?? _window;
        var (w, h) = ((int)Math.Ceiling(width / _cell), (int)Math.Ceiling(height / _cell));
        var corner = new Box(_window.MinX, _window.MinY, _window.MinX + width, _window.MinY + height);
        var (best, bestCost, bestCovers) = (corner, double.PositiveInfinity, int.MaxValue);
        for (var r = Math.Max(0, Row(area.MinY)); r + h <= _rows && r <= Row(area.MaxY - height); r++)
        {
            for (var c = Math.Max(0, Column(area.MinX)); c + w <= _columns && c <= Column(area.MaxX - width); c++)
            {
                var covered = At(c + w, r + h) - At(c, r + h) - At(c + w, r) + At(c, r);
                if (covered * 1000.0 >= bestCost) continue;
                var x = _window.MinX + (c * _cell);
                var y = _window.MinY + (r * _cell);
                var box = new Box(x, y, x + width, y + height);
                var total = (covered * 1000.0) + cost(box);
                if (total < bestCost) (best, bestCost, bestCovers) = (box, total, covered);
            }
        }

        return (best, bestCovers);
    }

    /// <summary>Finds a place for words or a bar, and takes it.</summary>
    public Box Place(double width, double height, Func<Box, double> cost, Box? within = null)
    {
        var box = Find(width, height, cost, within).Box;
        Take(box.Grown(1), Words);
        return box;
    }

    private void Along(Point a, Point b, double near)
    {
        // runs outside the window cost nothing
        if (!Box.Around(a, b).Grown(near).Touches(_window)) return;
        var steps = Math.Max(1, (int)Math.Ceiling(a.To(b) / _cell));
        for (var i = 0; i <= steps; i++)
        {
            var p = a.Toward(b, (double)i / steps);
            if (_window.DistanceTo(p) <= near) Take(new Box(p.X - near, p.Y - near, p.X + near, p.Y + near));
        }
    }

    private int Column(double x) => (int)Math.Floor((Math.Clamp(x, _window.MinX - 10, _window.MaxX + 10) - _window.MinX) / _cell);

    private int Row(double y) => (int)Math.Floor((Math.Clamp(y, _window.MinY - 10, _window.MaxY + 10) - _window.MinY) / _cell);

    private int At(int c, int r) => _sums[(r * (_columns + 1)) + c];

    private void Sum()
    {
        if (!_stale) return;
        _stale = false;
        for (var r = 0; r < _rows; r++)
        {
            var line = 0;
            for (var c = 0; c < _columns; c++)
            {
                line += _taken[(r * _columns) + c];
                _sums[((r + 1) * (_columns + 1)) + c + 1] = _sums[(r * (_columns + 1)) + c + 1] + line;
            }
        }
    }
}
