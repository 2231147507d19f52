using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Whether pins go through.</summary>
internal enum PinsGo
{
    /// <summary>Proven: a laying was found with every rod inside every hole.</summary>
    Through,

    /// <summary>Proven: no laying can do it.</summary>
    NotThrough,

    /// <summary>Not proven either way within the steps allowed.</summary>
    Undecided,
}

/// <summary>One trial: holes scattered, and whether there is a laying of the parts, shift and turn, that lets straight rods through.</summary>
/// <remarks>
/// Off-centres, rod less hole, are asked to lie in discs of half the clearance. Those that rods and layings can bring about are one of them plus a flat space; each off-centre is measured in its part's least half clearance,
/// and what is square to the flat space is then what is left after the mean over the parts (weighed) and the best shift and turn of each part (least squares) are taken away.
/// Beginning with the least squares, steps go toward the discs within the flat: a few onto the half-space that all discs lie in, then alternating projections with momentum. They end inside every disc, to a ten-thousandth of it, when there is room.
/// A direction square to the flat along which all discs together do not reach as far as the flat lies proves that there is no laying.
/// Turns are small: the second order, half the turn squared times the length, is under 1e-4 mm on a knife.
/// </remarks>
internal sealed class PinTrial
{
    private const int MostSteps = 400;
    private const int HalfSpaceSteps = 3;
    private const double LeastScaleMm = 1e-6;
    private const double Inside = 1 + 1e-4;

    private readonly int _pins;
    private readonly int _parts;
    private readonly bool _free;
    private readonly bool _enters;
    private readonly double[] _px;
    private readonly double[] _py;
    private readonly double _spread;
    private readonly double[] _weight;
    private readonly double[] _sigma;
    private readonly double[] _room;
    private readonly double[] _x;
    private readonly double[] _y;
    private readonly double[] _vx;
    private readonly double[] _vy;
    private readonly double[] _lx;
    private readonly double[] _ly;
    private readonly double[] _wx;
    private readonly double[] _wy;

    /// <summary>Makes ready for many trials.</summary>
    public PinTrial(PinnedParts of)
    {
        (_pins, _parts, _free) = (of.Pins.Length, of.Parts.Length, of.IsFree);
        var mean = RigidFit.Mean(of.Pins);
        _px = [.. of.Pins.Select(p => p.X - mean.X)];
        _py = [.. of.Pins.Select(p => p.Y - mean.Y)];
        _spread = Enumerable.Range(0, _pins).Sum(k => (_px[k] * _px[k]) + (_py[k] * _py[k]));
        _enters = of.Parts.All(p => p.Clearances.All(c => c.Mm >= 0));
        double[] scale = [.. of.Parts.Select(p => Math.Max(LeastScaleMm, 0.5 * p.Clearances.Min(c => c.Mm)))];
        var norm = Math.Sqrt(scale.Sum(s => 1 / (s * s)));
        _weight = [.. scale.Select(s => 1 / (s * norm))];
        _sigma = [.. of.Parts.SelectMany((p, j) => p.SigmasMm.Select(s => s / scale[j]))];
        _room = [.. of.Parts.SelectMany((p, j) => p.Clearances.Select(c => 0.5 * c.Mm / scale[j]))];
        (_x, _y, _vx, _vy, _lx, _ly, _wx, _wy) = (New(), New(), New(), New(), New(), New(), New(), New());

        double[] New() => new double[_pins * _parts];
    }

    /// <summary>Runs one trial.</summary>
    /// <param name="chance">Where its deviates come from.</param>
    public PinsGo Run(ref SeededChance chance)
    {
        if (!_enters) return PinsGo.NotThrough;
        for (var i = 0; i < _x.Length; i++)
        {
            // drawn even where a part does not scatter, so that every way of making is tried on the same numbers
            _x[i] = _sigma[i] * NormalDeviate.Next(ref chance);
            _y[i] = _sigma[i] * NormalDeviate.Next(ref chance);
        }

        SquareToFlat(_x, _y);
        for (var step = 0; step < MostSteps; step++)
        {
            if (IsInside()) return PinsGo.Through;
            if (IsProvenOutside(out var outside, out var along)) return PinsGo.NotThrough;
            if (step < HalfSpaceSteps) Step(along > 0 ? outside / along : 1);
            else Glide(step - HalfSpaceSteps);
        }

        return PinsGo.Undecided;
    }

    private void Step(double share)
    {
        for (var i = 0; i < _x.Length; i++)
        {
            _x[i] -= share * (_vx[i] - _lx[i]);
            _y[i] -= share * (_vy[i] - _ly[i]);
        }
    }

    // a plain alternating step, and on by a share of the way from where the last one ended (Nesterov 1983)
    private void Glide(int step)
    {
        var on = step / (step + 3.0);
        for (var i = 0; i < _x.Length; i++)
        {
            var (x, y) = (_x[i] - (_vx[i] - _lx[i]), _y[i] - (_vy[i] - _ly[i]));
            (_x[i], _wx[i]) = (x + (on * (x - _wx[i])), x);
            (_y[i], _wy[i]) = (y + (on * (y - _wy[i])), y);
        }
    }

    private bool IsInside()
    {
        var inside = true;
        for (var i = 0; i < _x.Length; i++)
        {
            var room = _room[i] * Inside;
            inside &= (_x[i] * _x[i]) + (_y[i] * _y[i]) <= room * room;
        }

        return inside;
    }

    // what sticks out of the discs, split into the part along the flat and the part square to it; the latter is the direction that may prove it
    private bool IsProvenOutside(out double outside, out double along)
    {
        (outside, along) = (0, 0);
        for (var i = 0; i < _x.Length; i++)
        {
            var far = (_x[i] * _x[i]) + (_y[i] * _y[i]);
            var over = far <= _room[i] * _room[i] ? 0 : 1 - (_room[i] / Math.Sqrt(far));
            (_vx[i], _vy[i]) = (over * _x[i], over * _y[i]);
            (_lx[i], _ly[i]) = (_vx[i], _vy[i]);
            outside += over * over * far;
        }

        SquareToFlat(_lx, _ly);
        var (reach, discs) = (0.0, 0.0);
        for (var i = 0; i < _x.Length; i++)
        {
            reach += (_lx[i] * _x[i]) + (_ly[i] * _y[i]);
            discs += _room[i] * Math.Sqrt((_lx[i] * _lx[i]) + (_ly[i] * _ly[i]));
            var (fx, fy) = (_vx[i] - _lx[i], _vy[i] - _ly[i]);
            along += (fx * fx) + (fy * fy);
        }

        return reach > discs;
    }

    private void SquareToFlat(double[] x, double[] y)
    {
        for (var k = 0; k < _pins; k++)
        {
            var (sx, sy) = (0.0, 0.0);
            for (var j = 0; j < _parts; j++)
            {
                sx += _weight[j] * x[(j * _pins) + k];
                sy += _weight[j] * y[(j * _pins) + k];
            }

            for (var j = 0; j < _parts; j++)
            {
                x[(j * _pins) + k] -= _weight[j] * sx;
                y[(j * _pins) + k] -= _weight[j] * sy;
            }
        }

        if (!_free) return;
        for (var j = 0; j < _parts; j++) LessShiftAndTurn(x.AsSpan(j * _pins, _pins), y.AsSpan(j * _pins, _pins));
    }

    private void LessShiftAndTurn(Span<double> x, Span<double> y)
    {
        var (sx, sy, turn) = (0.0, 0.0, 0.0);
        for (var k = 0; k < x.Length; k++)
        {
            sx += x[k];
            sy += y[k];
            turn += (_px[k] * y[k]) - (_py[k] * x[k]);
        }

        (sx, sy, turn) = (sx / _pins, sy / _pins, _spread > 0 ? turn / _spread : 0);
        for (var k = 0; k < x.Length; k++)
        {
            x[k] -= sx - (turn * _py[k]);
            y[k] -= sy + (turn * _px[k]);
        }
    }
}
