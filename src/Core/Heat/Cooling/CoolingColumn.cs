namespace Tangwright.Core;

/// <summary>Half a thickness of plate, from its middle plane to one face, while it cools. SI: m, s, °C, W.</summary>
/// <remarks>Finite volumes, implicit through the thickness (Crank and Nicolson), properties and heat transfer taken in the middle of the step; changes of austenite are followed in every cell and their heat goes back into it.</remarks>
internal sealed class CoolingColumn
{
    /// <summary>Cells from middle to face.</summary>
    public const int Cells = 20;

    private readonly double _cellM, _bathC;
    private readonly Func<double, double> _transfer;
    private readonly AusteniteDecay? _decay;
    private readonly HeatProperties _properties;
    private readonly double[] _t = new double[Cells], _old = new double[Cells], _mid = new double[Cells], _lower = new double[Cells], _diagonal = new double[Cells], _right = new double[Cells], _heat = new double[Cells], _conduct = new double[Cells];
    private readonly double[] _pearlite = new double[Cells], _bainite = new double[Cells], _ferrite = new double[Cells], _turned = new double[Cells];

    public CoolingColumn(double halfM, double startC, double bathC, Func<double, double> transfer, AusteniteDecay? decay, HeatProperties properties)
    {
        _properties = properties;
        _cellM = halfM / Cells;
        _bathC = bathC;
        _transfer = transfer;
        _decay = decay;
        Array.Fill(_t, startC);
        Array.Fill(_old, startC);
        FaceC = startC;
        for (var k = 0; k < 20; k++) FaceC = Face(startC, FaceC);
    }

    /// <summary>Temperature of the face, °C.</summary>
    public double FaceC { get; private set; }

    /// <summary>Temperature of the middle plane, °C; zero slope there.</summary>
    public double CentreC => _t[0] + ((_t[0] - _t[1]) / 8);

    /// <summary>Temperatures of the cells, °C.</summary>
    public ReadOnlySpan<double> Temperatures => _t;

    /// <summary>Fastest change of the last step, °C/s.</summary>
    public double FastestCPerSecond { get; private set; }

    /// <summary>Shares turned in a cell: pearlite, bainite, ferrite; what is left is austenite or martensite.</summary>
    public (double Pearlite, double Bainite, double Ferrite) Turned(int cell)
    {
        var ferrite = TransformationShare.Share(_ferrite[cell]);
        var pearlite = (1 - ferrite) * TransformationShare.Share(_pearlite[cell]);
        return (pearlite, (1 - ferrite - pearlite) * TransformationShare.Share(_bainite[cell]), ferrite);
    }

    /// <summary>What a first step may change at most, °C/s.</summary>
    public double FirstGuessCPerSecond => _transfer(FaceC) * (FaceC - _bathC) / (_properties.DensityKgPerM3 * _properties.HeatJPerKgK(FaceC) * _cellM);

    /// <summary>One step.</summary>
    /// <param name="seconds">Its length, s.</param>
    /// <param name="lastSeconds">Length of the step before, s; 0 for the first.</param>
    /// <param name="along">Heat that comes from beside into each cell, W/m³; empty for none.</param>
    public void Step(double seconds, double lastSeconds, ReadOnlySpan<double> along)
    {
        var ahead = lastSeconds > 0 ? 0.5 * seconds / lastSeconds : 0;
        for (var i = 0; i < Cells; i++) _mid[i] = _t[i] + (ahead * (_t[i] - _old[i]));
        Turn(seconds);
        for (var i = 0; i < Cells; i++)
        {
            _conduct[i] = _properties.ConductivityWPerMK(_mid[i]);
            var storage = _properties.DensityKgPerM3 * (_properties.HeatJPerKgK(_mid[i]) + MartensiteHeat(i)) * _cellM / seconds;
            _heat[i] = (_heat[i] * _properties.DensityKgPerM3 * _cellM / seconds) + (along.IsEmpty ? 0 : along[i] * _cellM);
            _diagonal[i] = storage;
        }

        var face = Face(_mid[^1], FaceC);
        face = Face(_mid[^1], face);
        var out0 = 1 / ((1 / _transfer(face)) + (0.5 * _cellM / _conduct[^1]));
        Solve(out0);
        FastestCPerSecond = 0;
        for (var i = 0; i < Cells; i++) FastestCPerSecond = Math.Max(FastestCPerSecond, Math.Abs(_t[i] - _old[i]) / seconds);
        FaceC = Face(_t[^1], face);
        FaceC = Face(_t[^1], FaceC);
    }

    // half the flux of the old temperatures, half of the new
    private void Solve(double outward)
    {
        // _right[i] = storage·T + ½ div(k grad T) + heat ; unknown: new T
        for (var i = 0; i < Cells; i++)
        {
            var left = i == 0 ? 0 : Between(i - 1);
            var right = i == Cells - 1 ? outward : Between(i);
            var beyond = i == Cells - 1 ? _bathC : _t[i + 1];
            var before = i == 0 ? _t[0] : _t[i - 1];
            _right[i] = (_diagonal[i] * _t[i]) + (0.5 * ((left * (before - _t[i])) + (right * (beyond - _t[i])))) + _heat[i] + (i == Cells - 1 ? 0.5 * right * _bathC : 0);
            _diagonal[i] += 0.5 * (left + right);
            _lower[i] = -0.5 * left;
        }

        for (var i = 1; i < Cells; i++)
        {
            var m = _lower[i] / _diagonal[i - 1];
            _diagonal[i] -= m * _lower[i];
            _right[i] -= m * _right[i - 1];
        }

        Array.Copy(_t, _old, Cells);
        _t[Cells - 1] = _right[Cells - 1] / _diagonal[Cells - 1];
        for (var i = Cells - 2; i >= 0; i--) _t[i] = (_right[i] - (_lower[i + 1] * _t[i + 1])) / _diagonal[i];
    }

    private double Between(int i) => 2 * _conduct[i] * _conduct[i + 1] / ((_conduct[i] + _conduct[i + 1]) * _cellM);

    private double Face(double lastCellC, double faceC)
    {
        var h = _transfer(faceC);
        var inside = _properties.ConductivityWPerMK(lastCellC) / (0.5 * _cellM);
        return ((h * _bathC) + (inside * lastCellC)) / (h + inside);
    }

    // heat given back this step, J/kg, left in _heat
    private void Turn(double seconds)
    {
        Array.Clear(_heat);
        if (_decay is null) return;
        for (var i = 0; i < Cells; i++)
        {
            var (p, b, f) = _decay.Rates(_mid[i]);
            if (p + b + f <= 0) continue;
            _pearlite[i] += p * seconds;
            _bainite[i] += b * seconds;
            _ferrite[i] += f * seconds;
            if (_pearlite[i] + _bainite[i] + _ferrite[i] < NothingYet) continue;
            var (was, now) = (_turned[i], Turned(i));
            _turned[i] = now.Pearlite + now.Bainite + now.Ferrite;
            _heat[i] = (_turned[i] - was) * (b > p ? Austenite.BainiteJPerKg : Austenite.PearliteJPerKg);
        }
    }

    // S of a share of 1e-5: less gives no heat worth counting
    private const double NothingYet = 1e-3;

    // martensite gives its heat as the temperature falls: it counts as heat capacity
    private double MartensiteHeat(int i)
        => _decay is { } d && _mid[i] < d.MartensiteStartCelsius ? (1 - _turned[i]) * Austenite.MartensiteJPerKg * d.AlphaRatio * Math.Exp(-d.AlphaRatio * (d.MartensiteStartCelsius - _mid[i])) : 0;
}
