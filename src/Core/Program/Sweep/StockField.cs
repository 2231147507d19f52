using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What is left of stock and spoil board while tools sweep through it: for each cell of a grid seen from above, how high material stands. A tool takes everything above its own underside away, as a tool on a straight shank from above does.</summary>
internal sealed class StockField
{
    private const double CellMm = 0.1;
    private const double MostCells = 4e6;
    private const double MarginMm = 12;
    private const double NoticedMm = 1e-4;

    private readonly double _cell;
    private readonly int _columns;
    private readonly int _rows;
    private readonly Box _area;
    private readonly float[] _height;

    /// <summary>Whole stock on its spoil board.</summary>
    public StockField(Box stock, double thicknessMm)
    {
        _area = stock.Grown(MarginMm);
        _cell = Math.Max(CellMm, Math.Sqrt(_area.Width * _area.Height / MostCells));
        (_columns, _rows) = ((int)Math.Ceiling(_area.Width / _cell), (int)Math.Ceiling(_area.Height / _cell));
        _height = new float[_columns * _rows];
        for (var j = 0; j < _rows; j++)
        {
            for (var i = 0; i < _columns; i++) _height[(j * _columns) + i] = stock.Holds(Centre(i, j)) ? 0 : (float)-thicknessMm;
        }
    }

    /// <summary>Sweeps a tool along a motion. Says whether it meets material; takes the material away when asked.</summary>
    /// <param name="motion">The motion.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="takesAway">Whether what it meets is gone afterwards.</param>
    /// <param name="slackMm">How much thinner than the tool it sweeps, mm.</param>
    public bool Sweep(Motion motion, SweptTool tool, bool takesAway, double slackMm = 0)
    {
        var radius = Math.Max(tool.Radius - slackMm, _cell);
        if (Math.Min(motion.From.Z, motion.To.Z) >= 0) return false;
        var met = false;
        if (motion.From.Z == motion.To.Z)
        {
            var ends = MotionSteps.Of(motion, 2 * radius, 0.002);
            for (var i = 1; i < ends.Length; i++) met |= Pass(ends[i - 1].Flat, ends[i].Flat, motion.To.Z, radius, tool.Slope, takesAway);
            return met;
        }

        foreach (var at in MotionSteps.Of(motion, 0.2, 0.002)) met |= at.Z < 0 && Pass(at.Flat, at.Flat, at.Z, radius, tool.Slope, takesAway);
        return met;
    }

    /// <summary>How high material stands at a place, mm; nothing is known beyond the grid.</summary>
    public double HeightAt(Point p)
    {
        var (i, j) = ((int)Math.Floor((p.X - _area.MinX) / _cell), (int)Math.Floor((p.Y - _area.MinY) / _cell));
        return i < 0 || j < 0 || i >= _columns || j >= _rows ? double.NegativeInfinity : _height[(j * _columns) + i];
    }

    private Point Centre(int i, int j) => new(_area.MinX + ((i + 0.5) * _cell), _area.MinY + ((j + 0.5) * _cell));

    private bool Pass(Point a, Point b, double z, double radius, double slope, bool takesAway)
    {
        var box = Box.Around(a, b).Grown(radius);
        var (i0, i1) = (Math.Max(0, (int)((box.MinX - _area.MinX) / _cell)), Math.Min(_columns - 1, (int)((box.MaxX - _area.MinX) / _cell)));
        var (j0, j1) = (Math.Max(0, (int)((box.MinY - _area.MinY) / _cell)), Math.Min(_rows - 1, (int)((box.MaxY - _area.MinY) / _cell)));
        var along = b - a;
        var long2 = along.Dot(along);
        var met = false;
        for (var j = j0; j <= j1; j++)
        {
            for (var i = i0; i <= i1; i++)
            {
                var off = Centre(i, j) - a;
                if (long2 > 0) off -= along * Math.Clamp(off.Dot(along) / long2, 0, 1);
                var far2 = off.Dot(off);
                if (far2 > radius * radius) continue;
                var underside = slope > 0 ? z + (Math.Sqrt(far2) * slope) : z;
                ref var height = ref _height[(j * _columns) + i];
                if (underside >= height - NoticedMm) continue;
                met = true;
                if (!takesAway) return true;
                height = (float)underside;
            }
        }

        return met;
    }
}
