using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a steel's austenite does on cooling, made ready once: factors, starts, the law of martensite.</summary>
public sealed class AusteniteDecay
{
    /// <summary>Grain size assumed, ASTM number.</summary>
    public const double UsualGrain = 8;

    private readonly double _pearlite, _bainite, _ferrite, _ae1, _ae3, _bs;
    private readonly bool _hasBainite, _hasFerrite;

    /// <summary>For a composition in solution.</summary>
    /// <param name="dissolved">Composition in solution at heat.</param>
    /// <param name="grain">Grain size, ASTM number.</param>
    public AusteniteDecay(Chemistry dissolved, double grain = UsualGrain)
    {
        Dissolved = dissolved;
        _pearlite = TransformationTime.SteelFactor(Product.Pearlite, dissolved) / Math.Pow(2, 0.32 * grain);
        _bainite = TransformationTime.SteelFactor(Product.Bainite, dissolved) / Math.Pow(2, 0.29 * grain);
        _ferrite = TransformationTime.SteelFactor(Product.Ferrite, dissolved) / Math.Pow(2, 0.41 * grain);
        _ae1 = AndrewsCritical.LowerCelsius(dissolved);
        _ae3 = AndrewsCritical.UpperCelsius(dissolved);
        _bs = BainiteStart.LiCelsius(dissolved);
        MartensiteStartCelsius = MartensiteStart.Celsius(dissolved);
        AlphaRatio = RetainedAustenite.Alpha(dissolved);
        _hasBainite = dissolved.CarbonPercent <= 0.65;
        _hasFerrite = dissolved.CarbonPercent < 0.70 && _ae3 > _ae1 + 20;
    }

    /// <summary>Composition in solution.</summary>
    public Chemistry Dissolved { get; }

    /// <summary>Martensite begins, °C.</summary>
    public double MartensiteStartCelsius { get; }

    /// <summary>Share of austenite lost for each °C under it.</summary>
    public double AlphaRatio { get; }

    /// <summary>Below it pearlite is no longer counted, °C.</summary>
    public double DiffusionEndCelsius => Math.Max(MartensiteStartCelsius, 400);

    /// <summary>What a second at a temperature adds to the sums, 1/s; 0 where nothing forms.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public (double Pearlite, double Bainite, double Ferrite) Rates(double celsius)
    {
        if (celsius >= Math.Max(_ae1, _ae3) || celsius <= MartensiteStartCelsius) return default;
        var move = Math.Exp(-13839.9597 / (celsius + 273.15));
        return (
            celsius >= _ae1 || celsius < DiffusionEndCelsius ? 0 : Cube(_ae1 - celsius) * move / _pearlite,
            !_hasBainite || celsius >= _bs ? 0 : (_bs - celsius) * (_bs - celsius) * move / _bainite,
            !_hasFerrite || celsius >= _ae3 || celsius < _bs ? 0 : Cube(_ae3 - celsius) * move / _ferrite);
    }

    /// <summary>Where the curve of one share lies: time at a temperature, s; infinite where it does not form.</summary>
    /// <param name="product">Product.</param>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="share">Share turned.</param>
    public double Seconds(Product product, double celsius, double share)
    {
        var (p, b, f) = Rates(celsius);
        var rate = product switch { Product.Pearlite => p, Product.Bainite => b, _ => f };
        return rate > 0 ? TransformationShare.Sum(share) / rate : double.PositiveInfinity;
    }

    /// <summary>Nose of the curve of one share: the temperature where it begins first and the time there.</summary>
    /// <param name="product">Product.</param>
    /// <param name="share">Share turned.</param>
    public (double Celsius, double Seconds) Nose(Product product, double share = 0.01)
    {
        var best = (Celsius: double.NaN, Seconds: double.PositiveInfinity);
        for (var t = Math.Ceiling(MartensiteStartCelsius + 1); t < Math.Max(_ae1, _ae3); t++)
        {
            var s = Seconds(product, t, share);
            if (s < best.Seconds) best = (t, s);
        }

        return best;
    }

    /// <summary>Slowest steady cooling that keeps a product under 1 %, °C/s; 0 when it never forms.</summary>
    /// <param name="product">Product.</param>
    public double CriticalCPerSecond(Product product)
    {
        var sum = 0.0;
        for (var t = MartensiteStartCelsius + 0.5; t < Math.Max(_ae1, _ae3); t++)
        {
            var (p, b, f) = Rates(t);
            sum += product switch { Product.Pearlite => p, Product.Bainite => b, _ => f };
        }

        return sum / TransformationShare.Sum(0.01);
    }

    private static double Cube(double x) => x * x * x;
}
