using System.Collections.Immutable;
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
                $"a thinner edge: 0.5 mm (0.020 in) finished on a hatchet, 0.25 mm (0.010 in) on a kitchen knife ({SourceTag.CommonPractice})")
            {
                Ways = what == "finished" ? [.. Finished(stock, 0.5, "as on a hatchet"), .. Finished(stock, 0.25, "as on a kitchen knife")] : BeforeHardening(bevel, stock),
            };
        }
    }

    /// <summary>Sharpening angle no steeper than the bevel. Bevel angle per side = atan((T − e) / 2h), one-sided atan((T − e) / h), where it is flattest.</summary>
    public static IEnumerable<Finding> Sharpening(Results r, EdgeSpan? span)
    {
        if (r.Plan.Bevel is not { SharpenPerSide: { } sharpen } bevel || bevel.EdgeFinished >= r.Plan.Stock.Thickness) yield break;
        if (bevel.AnglePerSide is { } constant)
        {
            if (sharpen.Radians > constant.Radians + 1e-9) yield break;
            yield return new Finding(
                FindingCodes.SharpeningFlatterThanBevel,
                Severity.Warning,
                "edge",
                null,
                $"Sharpening at {Shown.PerSide(sharpen)} is no steeper than the bevel, {Shown.PerSide(constant)}.",
                Shown.PerSide(sharpen),
                $"steeper than {Shown.PerSide(constant)}",
                "geometry",
                $"sharpen at {Shown.PerSide(Angle.OfDegrees(Math.Ceiling(constant.Degrees + 1)))} or more, or grind the bevel at a smaller angle")
            {
                Ways = Steeper(constant),
            };
            yield break;
        }

        var height = bevel.Height?.Mm ?? (span is null ? 0 : BevelFindings.Depths(r, span).DefaultIfEmpty(0).Max());
        if (height <= 0) yield break;
        var angle = BevelAngle.Of(r.Plan.Stock.Thickness.Mm, bevel.EdgeFinished.Mm, height, bevel.OneSided);
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
            $"sharpen at {Shown.PerSide(Angle.OfDegrees(Math.Ceiling(angle.Degrees + 1)))} or more, or raise the bevel to {Shown.Both(Length.OfMm(Math.Ceiling(height * Math.Tan(angle.Radians) / Math.Tan(sharpen.Radians) * 10) / 10))}")
        {
            Ways = [.. Steeper(angle), .. Higher(r, 1.0001 * height * Math.Tan(angle.Radians) / Math.Tan(sharpen.Radians))],
        };
    }

    private static ImmutableArray<RemedyWay> Finished(Length stock, double mm, string asOn)
        => mm < stock.Mm ? [new RemedyWay($"finish the edge {Shown.Both(Length.OfMm(mm))} thick, {asOn}", [new LengthSet("bevel", "edge_finished", Length.OfMm(mm))])] : [];

    /// <summary>An edge of 1 mm left for hardening (common practice), no thinner than the finished one; none when that is as thick as the stock too.</summary>
    private static ImmutableArray<RemedyWay> BeforeHardening(Bevel bevel, Length stock)
    {
        var edge = Length.Max(Length.OfMm(1), bevel.EdgeFinished);
        return edge < stock ? [new RemedyWay($"leave the edge {Shown.Both(edge)} thick for hardening", [new LengthSet("bevel", "edge_before_hardening", edge)])] : [];
    }

    private static ImmutableArray<RemedyWay> Steeper(Angle bevel)
    {
        var angle = Angle.OfDegrees(Math.Ceiling(bevel.Degrees + 1));
        return angle.Degrees < 60 ? [new RemedyWay($"sharpen at {Shown.PerSide(angle)}", [new AngleSet("bevel", "sharpen_per_side", angle)])] : [];
    }

    private static ImmutableArray<RemedyWay> Higher(Results r, double mm)
    {
        if (r.Plan.Bevel!.Height is null) return [];
        var height = PlanStep.SizeUp(mm, r.Plan.Units);
        return [new RemedyWay($"grind the bevel {Shown.Both(height)} high", [new LengthSet("bevel", "height", height)])];
    }
}
