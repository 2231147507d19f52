using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The stock seen from above, from the program's zero.</summary>
internal static class StockOnTable
{
    /// <summary>Of an uncut bar this much past the piece is counted, for a clamp to hold, mm; common practice.</summary>
    private const double BarBeyondMm = 60;

    /// <summary>The bar as far as it is counted, the sawn rectangle, or the box around the profiled piece.</summary>
    public static Box Of(Results results, Point zero)
    {
        var (bench, box) = (results.Bench, results.Bench.StockBox);
        if (bench.State == DrilledIn.Bar)
        {
            var beyond = Math.Min(BarBeyondMm, Math.Max(0, (results.Plan.Stock.Length?.Mm ?? double.PositiveInfinity) - box.Width));
            box = bench.AlongSign > 0 ? box with { MaxX = box.MaxX + beyond } : box with { MinX = box.MinX - beyond };
        }

        return new(box.MinX - zero.X, box.MinY - zero.Y, box.MaxX - zero.X, box.MaxY - zero.Y);
    }
}
