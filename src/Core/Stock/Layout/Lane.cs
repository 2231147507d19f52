using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One piece in a lane.</summary>
/// <param name="Lie">How it lies.</param>
/// <param name="AlongMm">Left end of its box, mm from the lane's start.</param>
/// <param name="UpMm">Lower side of its box, mm above the lane's lower side.</param>
public readonly record struct LanePlace(Lie Lie, double AlongMm, double UpMm)
{
    /// <summary>Which of several patterns, from 0.</summary>
    public int Pattern { get; init; }
}

/// <summary>Pieces of one pattern one behind the other.</summary>
/// <param name="Places">From left to right.</param>
/// <param name="LengthMm">From the first piece's left end to the last one's right end, mm.</param>
/// <param name="AtLeastMm">No layout of the kind is shorter than this, mm: pieces that can be slid apart along the bar, on the heights looked at.</param>
public sealed record LaneLayout(ImmutableArray<LanePlace> Places, double LengthMm, double AtLeastMm)
{
    /// <summary>Whether it is the shortest of its kind.</summary>
    public bool IsShortest => LengthMm <= AtLeastMm + 1e-6;
}

/// <summary>The shortest ways of laying equal pieces one behind the other in a bar of one width: exact dynamic programming over how each lies and how high.</summary>
[Formula("shortest lane of equal pieces on a bar of one width, mm", "bellman-1957", "Pieces along the bar, turned end for end and if allowed over, that can be slid apart along the bar; heights on a grid of at most 0.5 mm with both ends; up to 2000 in a bar")]
public sealed class Lane
{
    /// <summary>Greatest step of the grid of heights, mm.</summary>
    public const double GridMm = 0.5;

    /// <summary>Most pieces laid in one bar.</summary>
    public const int MostInBar = 2000;

    private const int MostHeights = 201;

    private readonly LanePiece _piece;
    private readonly double _clearance;
    private readonly double[] _ups;
    private readonly double[][] _steps; // [left lie, right lie][difference of heights]
    private readonly List<double[]> _length = [];
    private readonly List<int[]> _from = [];
    private readonly Lazy<Lane>? _lower;

    private Lane(LanePiece piece, double slackMm, double clearanceMm, double longestMm)
    {
        (_piece, _clearance) = (piece, clearanceMm);
        var n = slackMm <= 1e-9 ? 1 : Math.Min(MostHeights, (int)Math.Ceiling((slackMm / GridMm) - 1e-9) + 1);
        _ups = [.. Enumerable.Range(0, n).Select(i => n == 1 ? 0 : slackMm * i / (n - 1))];
        _steps = Steps();
        Fill(longestMm);
        if (n > 1) _lower = new(() => new Lane(piece, slackMm > 0.05 * piece.HeightMm ? 0.5 * slackMm : 0, clearanceMm, longestMm));
    }

    /// <summary>The piece that is laid.</summary>
    public LanePiece Piece => _piece;

    /// <summary>Clearance between pieces, mm; what chords may lie off their curves is added on top.</summary>
    public double ClearanceMm => _clearance;

    /// <summary>Most pieces it was worked out for.</summary>
    public int Most => _length.Count;

    /// <summary>A lane; null when the piece is higher than it.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="widthMm">Width of the lane: the bar less its margins, mm.</param>
    /// <param name="clearanceMm">Clearance between pieces, mm; 0: they may touch.</param>
    /// <param name="longestMm">How long it may become, mm.</param>
    public static Lane? Of(LanePiece piece, double widthMm, double clearanceMm, double longestMm)
    {
        var slack = widthMm - piece.HeightMm;
        if (slack < -1e-9) return null;

        // chords of curves lie a hair off them, on both pieces; so the true outlines keep the clearance
        var hair = piece.OffMm > 0 ? (2 * piece.OffMm) + 1e-4 : 1e-7;

        // two that would pass each other are no longer one lane: heights stop short of that
        return new Lane(piece, Math.Clamp(slack, 0, 0.9 * piece.HeightMm), clearanceMm > 0 ? clearanceMm + hair : 2 * piece.OffMm, longestMm);
    }

    /// <summary>The shortest layout of so many, at most <see cref="Most"/>.</summary>
    public LaneLayout Lay(int count)
    {
        var best = Traced(count);
        if (best.IsShortest || _lower is null || count > _lower.Value.Most) return best;
        var other = _lower.Value.Lay(count);
        return other.LengthMm < best.LengthMm - 1e-9 ? other with { AtLeastMm = best.AtLeastMm } : best;
    }

    /// <summary>The most that fit a length, with their layout; null when not one does.</summary>
    public LaneLayout? MostIn(double lengthMm)
    {
        var n = 0;
        while (n < Most && Least(n + 1) <= lengthMm + 1e-9) n++;
        for (; n > 0; n--)
        {
            var layout = Lay(n);
            if (layout.LengthMm <= lengthMm + 1e-9) return layout;
        }

        return null;
    }

    private double Least(int count) => _length[count - 1].Min() + _piece.LengthMm;

    private double[][] Steps()
    {
        var lies = _piece.Flanks.Length;
        var (n, gap) = (_ups.Length, _ups.Length > 1 ? _ups[1] : 0);
        var steps = new double[lies * lies][];
        for (var l = 0; l < lies; l++)
        {
            for (var r = 0; r < lies; r++)
            {
                var row = steps[(l * lies) + r] = new double[(2 * n) - 1];
                for (var d = 0; d < row.Length; d++) row[d] = LeastStep.Mm(_piece.Flanks[l], _piece.Flanks[r], gap * (d - n + 1), _clearance);
            }
        }

        return steps;
    }

    private void Fill(double longestMm)
    {
        var (lies, n) = (_piece.Flanks.Length, _ups.Length);
        var row = new double[lies * n];
        _from.Add([]);
        while (row.Min() + _piece.LengthMm <= longestMm + 1e-9 && _length.Count < MostInBar)
        {
            _length.Add(row);
            var (next, from) = (new double[row.Length], new int[row.Length]);
            for (var t = 0; t < row.Length; t++)
            {
                var (lie, up) = (t / n, t % n);
                var (best, at) = (double.PositiveInfinity, 0);
                for (var l = 0; l < lies; l++)
                {
                    var steps = _steps[(l * lies) + lie];
                    for (var u = 0; u < n; u++)
                    {
                        var length = row[(l * n) + u] + steps[up - u + n - 1];
                        if (length < best - 1e-9) (best, at) = (length, (l * n) + u);
                    }
                }

                (next[t], from[t]) = (best, at);
            }

            _from.Add(from);
            row = next;
        }
    }

    private LaneLayout Traced(int count)
    {
        var n = _ups.Length;
        var last = _length[count - 1];
        var states = new int[count];
        for (var s = 1; s < last.Length; s++)
        {
            if (last[s] < last[states[^1]] - 1e-9) states[^1] = s;
        }

        for (var k = count - 1; k > 0; k--) states[k - 1] = _from[k][states[k]];

        // where they truly lie: clear of every earlier piece, not of the neighbour alone
        var along = new double[count];
        var lies = _piece.Flanks.Length;
        for (var j = 1; j < count; j++)
        {
            for (var i = j - 1; i >= 0; i--)
            {
                var step = _steps[((states[i] / n) * lies) + (states[j] / n)][(states[j] % n) - (states[i] % n) + n - 1];
                along[j] = Math.Max(along[j], along[i] + step);
                if (along[j] - along[i] > 2 * (_piece.LengthMm + _clearance)) break;
            }
        }

        return new LaneLayout([.. states.Select((s, i) => new LanePlace((Lie)(s / n), along[i], _ups[s % n]))], along.Max() + _piece.LengthMm, last[states[^1]] + _piece.LengthMm);
    }
}
