using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Does the piece come out of the bar? The nominal width decides; what a product standard allows is a note.</summary>
public static class BarFitFindings
{
    /// <summary>Steel to leave beside the piece for mill edge and scale, mm a side; common practice 1 to 2.</summary>
    public const double MillEdgeMm = 1;

    private const string Nominal = "nominal size of the bar in the plan";

    /// <summary>Across the bar.</summary>
    public static IEnumerable<Finding> Width(Results r)
    {
        if (r.Plan.Stock.Width is not { } width) yield break;
        var height = r.Outline.Height;
        var spare = (width - height).Mm;
        if (spare < -1e-9)
        {
            yield return new Finding(
                FindingCodes.OutlineWiderThanStock,
                Severity.Error,
                "outline",
                r.Piece.Outer.Bounds.Centre,
                $"The piece is {Shown.Both(height)} high, the bar only {Shown.Both(width)} wide.",
                Shown.Both(height),
                Shown.Both(width),
                Nominal,
                $"a bar at least {Shown.Both(height + Length.OfMm(2 * MillEdgeMm))} wide, or {Shown.Both(height - width)} off the height")
            {
                Ways = [Wider(r)],
            };
            yield break;
        }

        var piece = r.Piece.Outer.Bounds;
        var (low, high) = r.Bench.State == DrilledIn.Bar ? (piece.MinY - r.Bench.StockBox.MinY, r.Bench.StockBox.MaxY - piece.MaxY) : (0.5 * spare, 0.5 * spare);
        var least = Length.OfMm(Math.Min(low, high));
        var side = low <= high ? "lower" : "upper";
        var place = new Point(piece.Centre.X, low <= high ? piece.MinY : piece.MaxY);
        if (least.Mm < -1e-9)
        {
            yield return new Finding(
                FindingCodes.OutlineWiderThanStock,
                Severity.Error,
                "outline",
                place,
                $"As laid out, the piece runs {Shown.Both(-least)} past the {side} long edge of the bar.",
                $"{Shown.Both(-least)} past the edge",
                "inside the bar",
                Nominal,
                $"an edge margin of at most {Shown.Both(Length.OfMm(Math.Max(0, spare - Math.Min(MillEdgeMm, 0.5 * spare))))}")
            {
                Ways = [Centred(spare)],
            };
            yield break;
        }

        if (least.Mm < MillEdgeMm - 1e-9)
        {
            yield return new Finding(
                FindingCodes.OutlineNearBarEdge,
                Severity.Warning,
                "outline",
                place,
                $"Only {Shown.Both(least)} between the piece and the {side} long edge of the bar.",
                Shown.Both(least),
                $"{Shown.Both(Length.OfMm(MillEdgeMm))} a side",
                SourceTag.CommonPractice + ": mill edge and scale come off",
                spare >= (2 * MillEdgeMm) - 1e-9 ? "centre the piece in the bar" : $"a bar {Shown.Both(height + Length.OfMm(2 * MillEdgeMm))} wide or wider, or {Shown.Both(Length.OfMm((2 * MillEdgeMm) - spare))} off the height")
            {
                Ways = spare >= (2 * MillEdgeMm) - 1e-9 ? [Centred(spare)] : [Wider(r)],
            };
        }

        if (IsRolledBar(r.Plan.Stock) && BarTolerance.WidthWorst(width) is { } worst && spare < worst.Under.Mm - 1e-9)
        {
            yield return new Finding(
                FindingCodes.StockWidthTolerance,
                Severity.Note,
                "stock",
                null,
                $"A rolled bar sold as {Shown.Both(width)} may be {Shown.Both(worst.Under)} narrower, and then does not hold the piece.",
                $"{Shown.Both(height)} high",
                $"{Shown.Both(width - worst.Under)}, the least width delivered",
                worst.Source,
                "measure the bar before laying out");
        }
    }

    /// <summary>Along the bar.</summary>
    public static IEnumerable<Finding> Along(Results r)
    {
        if (r.Plan.Stock.Length is not { } bar) yield break;
        var length = r.Outline.Length;
        var end = r.Plan.Layout.EndAllowance ?? r.Shop.EndAllowance;
        var wanted = length + (end * 2);
        var piece = r.Piece.Outer.Bounds;
        if (length.Mm > bar.Mm + 1e-9)
        {
            yield return new Finding(
                FindingCodes.OutlineLongerThanStock,
                Severity.Error,
                "outline",
                piece.Centre,
                $"The piece is {Shown.Both(length)} long, the bar only {Shown.Both(bar)}.",
                Shown.Both(length),
                Shown.Both(bar),
                "nominal size of the bar in the plan",
                $"a bar at least {Shown.Both(wanted)} long, or {Shown.Both(length - bar)} off the length")
            {
                Ways = [Longer(r, wanted)],
            };
        }
        else if (wanted.Mm > bar.Mm + 1e-9)
        {
            var finding = new Finding(
                FindingCodes.OutlineNearBarEnd,
                Severity.Warning,
                "outline",
                new Point(piece.MinX, piece.Centre.Y),
                $"The piece with {Shown.Both(end)} at each end takes {Shown.Both(wanted)} of a {Shown.Both(bar)} bar.",
                Shown.Both(wanted),
                Shown.Both(bar),
                "end allowance of the plan or the shop",
                $"an end allowance of at most {Shown.Both((bar - length) / 2)}, or a bar {Shown.Both(wanted)} long")
            {
                Ways = [Allowance(r, (bar - length) / 2), Longer(r, wanted)],
            };
            yield return r.Plan.Layout.EndAllowance is null ? ShopFinding.Of(r.Shop, finding) : finding;
        }
    }

    private static RemedyWay Wider(Results r)
    {
        var margin = r.Bench.State == DrilledIn.Bar ? Math.Max(MillEdgeMm, r.Plan.Layout.EdgeMargin?.Mm ?? 0) : MillEdgeMm;
        var width = PlanStep.SizeUp(r.Outline.Height.Mm + margin + MillEdgeMm, r.Plan.Units);
        return new RemedyWay($"take a bar {Shown.Both(width)} wide", [new LengthSet("stock", "width", width)]);
    }

    private static RemedyWay Centred(double spareMm)
        => new($"centre the piece in the bar: {Shown.Both(Length.OfMm(0.5 * spareMm))} a side", [new LengthSet("layout", "edge_margin", Length.OfMm(0.5 * spareMm))]);

    private static RemedyWay Longer(Results r, Length wanted)
    {
        var length = PlanStep.SizeUp(wanted.Mm, r.Plan.Units);
        return new RemedyWay($"take a bar {Shown.Both(length)} long", [new LengthSet("stock", "length", length)]);
    }

    private static RemedyWay Allowance(Results r, Length most)
    {
        var end = PlanStep.SizeDown(most.Mm, r.Plan.Units);
        return new RemedyWay($"leave {Shown.Both(end)} at each end", [new LengthSet("layout", "end_allowance", end)]);
    }

    /// <summary>Thinner stock is strip, which other standards rule.</summary>
    private static bool IsRolledBar(Stock stock) => stock.Thickness.Mm >= BarTolerance.LeastThicknessMm && !stock.Condition.Contains("ground", StringComparison.OrdinalIgnoreCase);
}
