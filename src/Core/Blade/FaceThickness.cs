using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Thickness T(x) of the steel between its two flat faces along the piece, before any bevel: that of the bar, thinner where a taper has been ground; straight between its kinks. mm.</summary>
public sealed class FaceThickness
{
    // ascending x; beyond the ends as at the ends
    private readonly double[] _x, _t;

    private FaceThickness(double stockMm, IEnumerable<(double X, double T)> knots)
    {
        StockMm = stockMm;
        var sorted = knots.OrderBy(k => k.X).ToArray();
        (_x, _t) = ([.. sorted.Select(k => k.X)], [.. sorted.Select(k => k.T)]);
        LeastMm = _t.Length == 0 ? stockMm : _t.Min();
    }

    /// <summary>Thickness of the bar, mm.</summary>
    public double StockMm { get; }

    /// <summary>Least thickness anywhere, mm.</summary>
    public double LeastMm { get; }

    /// <summary>Whether it is the same everywhere.</summary>
    public bool IsEven => _x.Length == 0;

    /// <summary>Where it has kinks, ascending x, mm.</summary>
    public ReadOnlySpan<double> KinksMm => _x;

    /// <summary>The same everywhere.</summary>
    /// <param name="stockMm">Thickness, mm.</param>
    public static FaceThickness Even(double stockMm) => new(stockMm, []);

    /// <summary>1 between two places and 0 elsewhere.</summary>
    internal static FaceThickness Strip(double fromMm, double toMm) => new(0, [(fromMm, 0), (fromMm, 1), (toMm, 1), (toMm, 0)]);

    /// <summary>That of a scale along the handle.</summary>
    public static FaceThickness Of(ScalesPlan scales)
        => new(scales.Thickness?.Mm ?? 0, scales.Stations.Select(s => (s.X.Mm, s.Thickness.Mm)));

    /// <summary>Each thickness replaced by another; straight between the same kinks, so the map must be straight too.</summary>
    internal FaceThickness Mapped(Func<double, double> straight) => new(straight(StockMm), _x.Zip(_t, (x, t) => (x, straight(t))));

    /// <summary>That of a plan, its tapers ground.</summary>
    public static FaceThickness Of(Plan plan)
    {
        var stock = plan.Stock.Thickness.Mm;
        return new FaceThickness(stock, Knots(plan.DistalTaper).Concat(Knots(plan.TangTaper)));

        IEnumerable<(double X, double T)> Knots(Taper? taper) => taper is null ? [] : [(taper.Starts.Mm, stock), (taper.Ends.Mm, Math.Min(stock, taper.Thickness.Mm))];
    }

    /// <summary>That of a plan at one of its stages: tapers are ground with the bevel, so they are there before hardening when the bevel is ground before, or when there is none; else only on the finished piece.</summary>
    public static FaceThickness Of(Plan plan, Stage stage) => IsTapered(plan, stage) ? Of(plan) : Even(plan.Stock.Thickness.Mm);

    /// <summary>Whether the tapers of a plan, if it has any, have been ground at a stage.</summary>
    public static bool IsTapered(Plan plan, Stage stage)
        => stage == Stage.Finished || (stage == Stage.BeforeHardening && plan.Bevel is not { Ground: GroundWhen.AfterHardening });

    /// <summary>Thickness at a place along the piece, mm.</summary>
    /// <param name="x">Plan's x, mm.</param>
    public double At(double x)
    {
        if (_x.Length == 0) return StockMm;
        if (x <= _x[0]) return _t[0];
        for (var i = 1; i < _x.Length; i++)
        {
            if (x <= _x[i]) return _x[i] > _x[i - 1] ? _t[i - 1] + ((_t[i] - _t[i - 1]) * (x - _x[i - 1]) / (_x[i] - _x[i - 1])) : _t[i];
        }

        return _t[^1];
    }
}
