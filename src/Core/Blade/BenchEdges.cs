using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The two edges that can be measured from at the bench, from how the piece lies in the stock when it is drilled.</summary>
public static class BenchEdges
{
    /// <summary>The edges for a plan in a shop.</summary>
    /// <remarks>Drilled in the uncut bar: sawn end and long edge. In a sawn rectangle: two of its sides. On the profiled piece: its extremes. A datum at a coordinate cannot be touched with a square or an edge finder, so the end and edge nearest to it stand in and the remark says so.</remarks>
    public static BenchDatum Of(Plan plan, Shop shop)
    {
        var piece = plan.Outline.Bounds;
        var remark = "";
        var state = plan.Layout.DrilledIn;
        if (state == DrilledIn.Bar && plan.Stock.Width is null)
        {
            state = DrilledIn.Rectangle;
            remark = "The plan gives no bar width, so measure from a sawn rectangle.";
        }

        var right = AtFarSide(plan.Datum.X, DatumSide.Right, piece.MinX, piece.MaxX);
        var top = AtFarSide(plan.Datum.Y, DatumSide.Top, piece.MinY, piece.MaxY);
        if (plan.Datum.X.Side == DatumSide.At) remark = Joined(remark, $"The datum along the piece is a coordinate, which cannot be touched: measure from the {(right ? "right" : "left")} end.");
        if (plan.Datum.Y.Side == DatumSide.At) remark = Joined(remark, $"The datum across the piece is a coordinate, which cannot be touched: measure from the {(top ? "upper" : "lower")} side.");

        var stock = StockAround(plan, shop, piece, state, top);
        var corner = new Point(right ? stock.MaxX : stock.MinX, top ? stock.MaxY : stock.MinY);
        var (end, edge) = (right ? "right" : "left", top ? "upper" : "lower");
        var (along, across) = state switch
        {
            DrilledIn.Bar => ($"sawn end at the {end}", $"{edge} long edge of the bar"),
            DrilledIn.Rectangle => ($"{end} end of the sawn rectangle", $"{edge} side of the sawn rectangle"),
            _ => ($"{end} end of the profiled piece", $"{edge} side of the profiled piece"),
        };
        if (plan.Datum.Name.Length > 0 && state == DrilledIn.Profile) along += $" ({plan.Datum.Name})";
        return new BenchDatum(state, along, across, corner, right ? -1 : 1, top ? -1 : 1, stock, remark);
    }

    private static bool AtFarSide(DatumMark mark, DatumSide far, double min, double max)
        => mark.Side == far || (mark.Side == DatumSide.At && mark.At.Mm > 0.5 * (min + max));

    private static string Joined(string a, string b) => a.Length == 0 ? b : a + " " + b;

    private static Box StockAround(Plan plan, Shop shop, Box piece, DrilledIn state, bool top)
    {
        if (state == DrilledIn.Profile) return piece;
        var end = (plan.Layout.EndAllowance ?? shop.EndAllowance).Mm;
        if (state == DrilledIn.Rectangle)
        {
            var side = (plan.Layout.EdgeMargin ?? shop.EdgeMargin).Mm;
            return new Box(piece.MinX - end, piece.MinY - side, piece.MaxX + end, piece.MaxY + side);
        }

        var width = plan.Stock.Width!.Value.Mm;
        var margin = plan.Layout.EdgeMargin?.Mm ?? (0.5 * (width - piece.Height));
        var (low, high) = top ? (piece.MaxY + margin - width, piece.MaxY + margin) : (piece.MinY - margin, piece.MinY - margin + width);
        return new Box(piece.MinX - end, low, piece.MaxX + end, high);
    }
}
