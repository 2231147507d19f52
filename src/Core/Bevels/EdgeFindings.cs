using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Do edge thickness, bevel and sharpening angle go together?</summary>
public static class EdgeFindings
{
    /// <summary>Edge as thick as the stock.</summary>
    public static IEnumerable<Finding> Thickness(Results r)
    {
        if (r.Plan.Bevel is not { } bevel) yield break;
        var stock = r.Plan.Stock.Thickness;
        foreach (var (edge, what) in new[] { (bevel.EdgeBeforeHardening, "before hardening"), (bevel.EdgeFinished, "finished") })
        {
            if (edge is not { } e || e < stock) continue;
            yield return new Finding(
                FindingCodes.EdgeThickerThanStock,
                Severity.Error,
                "edge",
                null,
                $"The edge, {what}, is planned {Shown.Both(e)} thick in {Shown.Both(stock)} stock: nothing is left to grind.",
                Shown.Both(e),
                $"under {Shown.Both(stock)}, the stock",
                "geometry",
                $"a thinner edge: 0.5 mm (0.020 in) finished on a hatchet, 0.25 mm (0.010 in) on a kitchen knife ({SourceTag.CommonPractice})");
        }
    }

    /// <summary>Sharpening angle no steeper than the bevel. Bevel angle per side = atan((T − e) / 2h), one-sided atan((T − e) / h), where it is flattest.</summary>
    public static IEnumerable<Finding> Sharpening(Results r, EdgeSpan? span)
    {
        if (r.Plan.Bevel is not { SharpenPerSide: { } sharpen } bevel || bevel.EdgeFinished >= r.Plan.Stock.Thickness) yield break;
        var height = bevel.Height?.Mm ?? (span is null ? 0 : BevelFindings.Depths(r, span).DefaultIfEmpty(0).Max());
        if (height <= 0) yield break;
        var angle = Angle.OfRadians(Math.Atan((r.Plan.Stock.Thickness - bevel.EdgeFinished).Mm / ((bevel.OneSided ? 1 : 2) * height)));
        if (sharpen.Radians > angle.Radians + 1e-9) yield break;
        yield return new Finding(
            FindingCodes.SharpeningFlatterThanBevel,
            Severity.Warning,
            "edge",
            null,
            $"Sharpening at {Shown.PerSide(sharpen)} is no steeper than the bevel, {Shown.PerSide(angle)}.",
            Shown.PerSide(sharpen),
            $"steeper than {Shown.PerSide(angle)}",
            "geometry",
            $"sharpen at {Shown.PerSide(Angle.OfDegrees(Math.Ceiling(angle.Degrees + 1)))} or more, or raise the bevel to {Shown.Both(Length.OfMm(Math.Ceiling(height * Math.Tan(angle.Radians) / Math.Tan(sharpen.Radians) * 10) / 10))}");
    }
}
