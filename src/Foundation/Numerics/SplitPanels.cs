using System.Numerics;

namespace Tangwright.Foundation;

/// <summary>Integrals, several at once, of functions that are smooth save for breaks whose places are not known beforehand.</summary>
/// <remarks>
/// Each sample carries a story: a number that names the case it fell into. A panel is measured by the 3-point Gauss and the 7-point Kronrod rule (nodes: Kronrod 1965; error estimate as in QUADPACK,
/// Piessens et al. 1983, eq. 2.2.4 ff.) and halved until they agree. Where neighbouring samples tell different stories the panel is split at the break itself, found by halving, so that a step cannot hide
/// between the nodes; next to a break the variable is squared, which tames the square root a grazing ray leaves there.
/// </remarks>
public sealed class SplitPanels
{
    private const int Nodes = 7;
    private const int Deepest = 40;

    // from memory, checked in the tests: exact to degree 11
    private static readonly double[] KronrodNodes = [-0.96049126870802028342, -0.77459666924148337704, -0.43424374934680255800, 0, 0.43424374934680255800, 0.77459666924148337704, 0.96049126870802028342];
    private static readonly double[] KronrodWeights = [0.10465622602646726519, 0.26848808986833344073, 0.40139741477596222291, 0.45091653865847414235, 0.40139741477596222291, 0.26848808986833344073, 0.10465622602646726519];
    private static readonly double[] GaussWeights = [0, 5.0 / 9, 0, 8.0 / 9, 0, 5.0 / 9, 0];

    // components fill whole vectors; what is over stays 0
    private readonly int _count;
    private readonly double[] _scale, _sums, _panel;
    private readonly double[][] _room;
    private readonly int[] _stories = new int[Nodes];
    private readonly double[] _places = new double[Nodes];
    private readonly double[] _rate = new double[Nodes];
    private readonly double[] _left, _right, _middle;

    private Sample _sample = (_, _) => 0;

    /// <summary>For functions of so many components.</summary>
    /// <param name="scale">Error allowed per panel in each component.</param>
    public SplitPanels(ReadOnlySpan<double> scale)
    {
        _count = scale.Length;
        var n = (_count + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;
        (_scale, _sums, _panel, _left, _right, _middle) = (new double[n], new double[n], new double[n], new double[n], new double[n], new double[n]);
        scale.CopyTo(_scale);
        _room = [.. Enumerable.Range(0, Nodes).Select(_ => new double[n])];
    }

    /// <summary>A sample: writes the values at x and returns the story.</summary>
    public delegate int Sample(double x, Span<double> values);

    /// <summary>How many samples were taken.</summary>
    public int Samples { get; private set; }

    /// <summary>The integrals so far.</summary>
    public ReadOnlySpan<double> Sums => _sums.AsSpan(0, _count);

    /// <summary>Adds the integrals of a function from a to b.</summary>
    /// <param name="sample">The function.</param>
    /// <param name="a">From.</param>
    /// <param name="b">To.</param>
    public void Add(Sample sample, double a, double b)
    {
        _sample = sample;
        if (b > a) Panel(a, b, breakAtA: false, breakAtB: false, 0);
    }

    private void Panel(double a, double b, bool breakAtA, bool breakAtB, int depth)
    {
        for (var i = 0; i < Nodes; i++)
        {
            (_places[i], var rate) = Place(a, b, breakAtA, breakAtB, 0.5 * (1 + KronrodNodes[i]));
            _rate[i] = 0.5 * rate;
            _stories[i] = Take(_places[i], _room[i]);
        }

        var agree = Measure() || depth >= Deepest;
        for (var i = 1; i < Nodes && depth < Deepest; i++)
        {
            if (_stories[i] == _stories[i - 1] || IsNothing(b - a)) continue;
            var (lo, hi) = Break(i, 1e-5 * (b - a));

            // another story but neither a step nor a kink that is felt
            if (agree && !IsStep(b - a)) continue;
            for (var c = 0; c < _sums.Length; c++) _sums[c] += 0.5 * (_left[c] + _right[c]) * (hi - lo);
            Panel(a, lo, breakAtA, breakAtB: true, depth + 1);
            Panel(hi, b, breakAtA: true, breakAtB, depth + 1);
            return;
        }

        if (agree)
        {
            for (var c = 0; c < _sums.Length; c++) _sums[c] += _panel[c];
            return;
        }

        var mid = 0.5 * (a + b);
        Panel(a, mid, breakAtA, breakAtB: false, depth + 1);
        Panel(mid, b, breakAtA: false, breakAtB, depth + 1);
    }

    private int Take(double x, double[] values)
    {
        Samples++;
        return _sample(x, values.AsSpan(0, _count));
    }

    // v in 0..1 to x and dx/dv; squared towards an end with a break
    private static (double X, double Rate) Place(double a, double b, bool breakAtA, bool breakAtB, double v)
    {
        var l = b - a;
        return (breakAtA, breakAtB) switch
        {
            (true, true) => (a + (l * v * v * (3 - (2 * v))), 6 * l * v * (1 - v)),
            (true, false) => (a + (l * v * v), 2 * l * v),
            (false, true) => (b - (l * (1 - v) * (1 - v)), 2 * l * (1 - v)),
            _ => (a + (l * v), l),
        };
    }

    private bool IsNothing(double width)
    {
        foreach (var values in _room)
        {
            for (var c = 0; c < values.Length; c++)
            {
                if (Math.Abs(values[c]) * width > 0.1 * _scale[c]) return false;
            }
        }

        return true;
    }

    // the sliver between two nodes in which the story changes, so narrow that its place no longer counts
    private (double Lo, double Hi) Break(int i, double narrow)
    {
        var (lo, hi) = (_places[i - 1], _places[i]);
        _room[i - 1].CopyTo(_left, 0);
        _room[i].CopyTo(_right, 0);
        var story = _stories[i - 1];
        for (var k = 0; k < 60 && (hi - lo > narrow || Counts(hi - lo)); k++)
        {
            var mid = 0.5 * (lo + hi);
            if (mid <= lo || mid >= hi) break;
            if (Take(mid, _middle) == story)
            {
                lo = mid;
                _middle.CopyTo(_left, 0);
            }
            else
            {
                hi = mid;
                _middle.CopyTo(_right, 0);
            }
        }

        return (lo, hi);
    }

    // whether the values on the two sides of the last break differ by more than a panel may err
    private bool IsStep(double panel)
    {
        for (var c = 0; c < _scale.Length; c++)
        {
            if (Math.Abs(_left[c] - _right[c]) * panel > _scale[c] + (1e-4 * panel * Math.Max(Math.Abs(_left[c]), Math.Abs(_right[c])))) return true;
        }

        return false;
    }

    private bool Counts(double width)
    {
        for (var c = 0; c < _scale.Length; c++)
        {
            if (Math.Abs(_left[c] - _right[c]) * width > 0.01 * _scale[c]) return true;
        }

        return false;
    }

    // the Kronrod rule, and whether its error, spread · (200 |K − G| / spread)^1.5 but no more than the spread, is within the scale
    private bool Measure()
    {
        var agree = true;
        for (var c = 0; c < _scale.Length; c += Vector<double>.Count)
        {
            var (gauss, kronrod, spread) = (Vector<double>.Zero, Vector<double>.Zero, Vector<double>.Zero);
            for (var i = 0; i < Nodes; i++)
            {
                var f = new Vector<double>(_room[i], c) * _rate[i];
                gauss += f * GaussWeights[i];
                kronrod += f * KronrodWeights[i];
            }

            kronrod.CopyTo(_panel, c);
            for (var i = 0; i < Nodes; i++) spread += Vector.Abs((new Vector<double>(_room[i], c) * _rate[i]) - (kronrod * 0.5)) * KronrodWeights[i];
            var (error, scale) = (Vector.Abs(kronrod - gauss) * 200, new Vector<double>(_scale, c));
            agree &= !Vector.GreaterThanAny(spread, scale) || !Vector.GreaterThanAny(Vector.ConditionalSelect(Vector.GreaterThan(spread, scale), error * error * error, Vector<double>.Zero), scale * scale * spread);
        }

        return agree;
    }
}
