using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Steel to lay pieces on: first the bars there are, in this order, then bars of one length, as many as need be. One endless strip when none is given and that length is infinite.</summary>
/// <param name="WidthMm">Width of all of them, less their margins, mm.</param>
/// <param name="FirstMm">Lengths of those to be used up first, less their margins, mm.</param>
/// <param name="ThenMm">Length of those after, less its margins, mm; infinite: one endless strip.</param>
public sealed record StripStock(double WidthMm, ImmutableArray<double> FirstMm, double ThenMm)
{
    /// <summary>One endless strip.</summary>
    public static StripStock Endless(double widthMm) => new(widthMm, [], double.PositiveInfinity);
}

/// <summary>Bars laid end to end with a gap between, so that one search fills them all; what is used of the last shrinks. mm.</summary>
internal sealed class StripRoom
{
    private readonly StripStock _stock;
    private readonly double _gap;
    private readonly List<(double From, double To)> _bars = [];

    public StripRoom(StripStock stock)
    {
        (_stock, _gap) = (stock, 1e-3 * stock.WidthMm);
        Add();
    }

    public double Width => _stock.WidthMm;

    /// <summary>Narrowest piece; a rest of a bar shorter than this is of no use.</summary>
    public double Narrowest { get; set; }

    public int Bars => _bars.Count;

    /// <summary>Where a bar begins.</summary>
    public double Start(int bar) => _bars[bar].From;

    /// <summary>How long a bar is.</summary>
    public double LengthOf(int bar) => bar < _stock.FirstMm.Length ? _stock.FirstMm[bar] : _stock.ThenMm;

    /// <summary>One bar more.</summary>
    public void Add()
    {
        var from = _bars.Count == 0 ? 0 : _bars[^1].To + _gap;
        _bars.Add((from, from + LengthOf(_bars.Count)));
    }

    /// <summary>Which bar a place is in, or the one before it.</summary>
    public int BarAt(double x)
    {
        var bar = 0;
        while (bar + 1 < _bars.Count && _bars[bar + 1].From <= x) bar++;
        return bar;
    }

    /// <summary>A length at which something can lie in the last bar it reaches into.</summary>
    public double Usable(double length)
    {
        var bar = BarAt(length);
        return bar > 0 && length < _bars[bar].From + Narrowest ? _bars[bar - 1].To : Math.Min(length, _bars[bar].To);
    }

    /// <summary>The nearest place a piece fits, as long as bars reach no further than a length.</summary>
    public double Fit(double x, double pieceWidth, double length)
    {
        if (_bars.Count == 1) return Math.Clamp(x, 0, Math.Max(0, length - pieceWidth));
        var (best, far) = (0.0, double.PositiveInfinity);
        foreach (var (from, to) in _bars)
        {
            var room = Math.Min(to, length) - from - pieceWidth;
            if (room < 0) continue;
            var at = Math.Clamp(x, from, from + room);
            if (Math.Abs(at - x) >= far) continue;
            (best, far) = (at, Math.Abs(at - x));
        }

        return best;
    }

    /// <summary>A place by lot; not a number when there is none.</summary>
    public double ByLot(double pieceWidth, double length, ref SeededChance chance)
    {
        if (_bars.Count == 1) return length < pieceWidth ? double.NaN : chance.NextShare() * (length - pieceWidth);
        var whole = 0.0;
        foreach (var (from, to) in _bars) whole += Math.Max(0, Math.Min(to, length) - from - pieceWidth + _gap);
        var at = chance.NextShare() * whole;
        foreach (var (from, to) in _bars)
        {
            var room = Math.Min(to, length) - from - pieceWidth;
            if (room + _gap < 0) continue;
            if (at <= room + _gap) return room < 0 ? double.NaN : from + Math.Min(at, room);
            at -= room + _gap;
        }

        return double.NaN;
    }

    /// <summary>No layout of so much area can end before this.</summary>
    public double Least(double area)
    {
        for (var bar = 0; bar < _bars.Count; bar++)
        {
            var holds = LengthOf(bar) * Width;
            if (area <= holds) return _bars[bar].From + (area / Width);
            area -= holds;
        }

        return 0;
    }
}
