using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Can the bevel be ground as planned: the wheel of a hollow, a jig of one angle?</summary>
public static class WheelFindings
{
    /// <summary>A wheel that leaves the steel behind the edge thinner than the edge.</summary>
    public static IEnumerable<Finding> Wheel(Results r)
    {
        if (r.Plan.Bevel is not { Grind: Grind.Hollow, Wheel: { } wheel, Height: { } height } bevel || bevel.EdgeFinished >= r.Plan.Stock.Thickness) yield break;
        var (stock, edge) = (r.Plan.Stock.Thickness, bevel.EdgeFinished);
        var v = WheelVerdict.Of("", wheel, stock, edge, height, bevel.OneSided);
        if (v.Answer is WheelAnswer.Good or WheelAnswer.GoodWithNote) yield break;
        var least = Length.OfMm(Math.Ceiling(WheelVerdict.LeastDiameter(stock, edge, height, bevel.OneSided).Mm));
        var lower = PlanStep.SizeDown(v.MostHeight.Mm, r.Plan.Units);
        yield return new Finding(
            FindingCodes.WheelTooSmall,
            v.Answer == WheelAnswer.Thin ? Severity.Warning : Severity.Error,
            "bevel",
            null,
            v.Thinnest is { } thin
                ? $"The wheel of {Shown.Both(wheel)} leaves {Shown.Both(thin)} of steel {Shown.Both(v.ThinnestUp)} behind an edge of {Shown.Both(edge)}."
                : $"The wheel of {Shown.Both(wheel)} cuts through behind the edge.",
            v.Thinnest is { } t ? Shown.Both(t) : "nothing left",
            $"{Shown.Both(edge)}, the edge; {Shown.Number(100 * WheelVerdict.ThinShare, 0)} % of it is let pass ({SourceTag.CommonPractice})",
            "geometry of the wheel's circle",
            $"a wheel of {Shown.Both(least)}, or a bevel {Shown.Both(lower)} high")
        {
            Ways =
            [
                new RemedyWay($"take a wheel of {Shown.Both(least)}", [new LengthSet("bevel", "wheel", least)]),
                .. lower.Mm > 0 ? [new RemedyWay($"grind the bevel {Shown.Both(lower)} high", [new LengthSet("bevel", "height", lower)])] : Array.Empty<RemedyWay>(),
            ],
        };
    }

    /// <summary>A full flat bevel whose angle changes along the edge.</summary>
    public static IEnumerable<Finding> Jig(Results r)
    {
        if (r.Plan.Bevel is not { Grind: Grind.Flat } bevel || !bevel.IsFull || bevel.EdgeFinished >= r.Plan.Stock.Thickness || r.Plan.Edge is null) yield break;
        if (BevelStations.Of(r) is not { WantsManyAngles: true, Range: { } range }) yield break;
        yield return new Finding(
            FindingCodes.JigCannotFollow,
            Severity.Note,
            "bevel",
            null,
            $"To the spine the bevel leans from {Shown.PerSide(range.Flattest)} to {Shown.PerSide(range.Steepest)} along the edge: a jig of one angle does not follow.",
            $"{Shown.Number(range.Steepest.Degrees - range.Flattest.Degrees, 2)}° per side apart",
            $"{Shown.Number(BevelTable.JigDegrees, 1)}° per side ({SourceTag.CommonPractice})",
            "geometry",
            "grind free to the thicknesses of the stations, taper the spine, or plan one angle: angle_per_side instead of height");
    }
}
