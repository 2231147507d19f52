using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Does the piece meet what the maker wants, with what the plan puts on the steel? Left out when it is not known.</summary>
public static class TargetFindings
{
    /// <summary>Tolerance of the weight when the plan gives none; common practice.</summary>
    public const double WeightShare = 0.03;

    /// <summary>Tolerance of the balance point when the plan gives none, mm; common practice.</summary>
    public const double BalanceMm = 2;

    /// <summary>Weight.</summary>
    public static IEnumerable<Finding> Weight(Results r)
    {
        if (r.Plan.Target.Weight is not { } wanted || Finished(r)?.Mass is not { } mass) yield break;
        var tolerance = r.Plan.Target.WeightTolerance ?? Mass.OfGrams(WeightShare * wanted.Grams);
        var off = (mass - wanted).Grams;
        if (Math.Abs(off) <= tolerance.Grams + 1e-9) yield break;
        var miss = Math.Abs(off) - tolerance.Grams;
        var (heavy, density) = (off > 0, r.Steel?.Density?.Value.GramsPerCm3);
        var area = density is { } d && d > 0 ? $", {Shown.Number(miss / d * 1000 / r.Plan.Stock.Thickness.Mm, 0)} mm² of full thickness" : "";
        yield return new Finding(
            FindingCodes.TargetWeight,
            Gravity(r),
            "weight",
            null,
            $"{(IsAssembled(r) ? "Assembled it" : "The finished steel")} weighs {Shown.Both(mass)}, {Shown.Both(Mass.OfGrams(Math.Abs(off)))} {(heavy ? "over" : "under")} the {Shown.Both(wanted)} wanted.{WithoutScales(r)}",
            Shown.Both(mass),
            $"{Shown.Both(wanted)} +/- {Shown.Both(tolerance)}",
            r.Plan.Target.WeightTolerance is null ? "the plan's target, tolerance 3 % (common practice)" : "the plan's target",
            heavy ? $"take off {Shown.Both(Mass.OfGrams(miss))}{area}" : $"leave {Shown.Both(Mass.OfGrams(miss))} more{area}: fewer or smaller holes");
    }

    /// <summary>Balance point.</summary>
    public static IEnumerable<Finding> Balance(Results r)
    {
        if (r.Plan.Target.BalanceFromDatum is not { } wanted || Finished(r) is not { } finished) yield break;
        var tolerance = r.Plan.Target.BalanceTolerance ?? Length.OfMm(BalanceMm);
        var off = finished.BalanceFromDatum - wanted;
        if (Math.Abs(off.Mm) <= tolerance.Mm + 1e-9) yield break;
        var miss = Length.OfMm(Math.Abs(off.Mm)) - tolerance;
        yield return new Finding(
            FindingCodes.TargetBalance,
            Gravity(r),
            "balance",
            finished.Balance,
            $"The balance point lies {Shown.Both(finished.BalanceFromDatum)} from the datum, {Shown.Both(Length.OfMm(Math.Abs(off.Mm)))} {(off.Mm > 0 ? "further" : "nearer")} than wanted.{WithoutScales(r)}",
            Shown.Both(finished.BalanceFromDatum),
            $"{Shown.Both(wanted)} +/- {Shown.Both(tolerance)}",
            r.Plan.Target.BalanceTolerance is null ? "the plan's target, tolerance 2 mm (common practice)" : "the plan's target",
            $"shift it {Shown.Both(miss)}: {Lever(r, finished, off, miss)}{(r.Steel?.Density is null ? "" : "; other ways, alone and together: tangwright balance, or the balance page")}");
    }

    // a handle that will be glued or pinned on moves both figures; until the plan says what it weighs they are those of the steel
    private static bool ScalesToCome(Results r) => !IsAssembled(r) && r.Holes.Any(h => h.Use is HoleUse.Pin or HoleUse.Glue);

    private static Severity Gravity(Results r) => ScalesToCome(r) ? Severity.Note : Severity.Warning;

    private static string WithoutScales(Results r) => ScalesToCome(r) ? " That is the steel alone: the plan does not say what scales and pins weigh." : "";

    private static StageFigures? Finished(Results r) => r.Stages.IsDefaultOrEmpty ? null : r.Stages[^1];

    private static bool IsAssembled(Results r) => Finished(r) is { Stage: Stage.Assembled };

    /// <summary>Steel to take off at the far end of the piece: at distance d from the balance point, s V / (d + s) moves it by s.</summary>
    private static string Lever(Results r, StageFigures finished, Length off, Length miss)
    {
        var box = r.Piece.Outer.Bounds;
        var towardMaxX = off.Mm > 0 == BalanceGrowsWithX(r);
        var arm = towardMaxX ? box.MaxX - finished.Balance.X : finished.Balance.X - box.MinX;
        if (arm <= 0) return "take steel off on that side";
        var volume = miss.Mm * (finished.Stage == Stage.Assembled ? finished.Solid.AreaMm2 : finished.Volume.Mm3) / (arm + miss.Mm);
        var grams = r.Steel?.Density?.Value is { } density ? $"{Shown.Both(Volume.OfMm3(volume) * density)}" : $"{Shown.Number(volume, 0)} mm³";
        return $"{grams} off at the {(towardMaxX ? "right" : "left")} end does it, more if nearer the middle";
    }

    private static bool BalanceGrowsWithX(Results r)
        => r.Plan.Datum.X.Side switch
        {
            DatumSide.Right => false,
            DatumSide.At => r.Plan.Datum.X.At.Mm <= r.Piece.Outer.Bounds.Centre.X,
            _ => true,
        };
}
