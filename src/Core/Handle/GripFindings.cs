using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Is the grip on the piece, and long enough?</summary>
public static class GripFindings
{
    /// <summary>Room for four fingers, mm; common practice: handles of 100 to 125 mm for an adult hand.</summary>
    public const double FourFingersMm = 100;

    /// <summary>Ends outside the piece.</summary>
    public static IEnumerable<Finding> Outside(Results r)
    {
        if (r.Plan.Grip is not { } grip) yield break;
        foreach (var (end, name) in new[] { (grip.From, "front"), (grip.To, "rear") })
        {
            var foot = Nearest.On(r.Piece.Outer, end);
            if (foot.Distance < 0.01 || Inside.Of(r.Piece.Outer, end)) continue;
            yield return new Finding(
                FindingCodes.GripOutside,
                Severity.Warning,
                "grip",
                end,
                $"The {name} end of the grip lies {Shown.Both(Length.OfMm(foot.Distance))} outside the piece.",
                $"{Shown.Both(Length.OfMm(foot.Distance))} outside",
                "on the piece",
                "geometry",
                $"move it to x {Shown.Both(Length.OfMm(foot.At.X))}, y {Shown.Both(Length.OfMm(foot.At.Y))} or further in")
            {
                Ways = [new RemedyWay($"move the {name} end to x {Shown.Both(Length.OfMm(foot.At.X))}, y {Shown.Both(Length.OfMm(foot.At.Y))}", [new PointSet("grip", name == "front" ? "from" : "to", PlanStep.Near(foot.At, r.Plan.Units))])],
            };
        }
    }

    /// <summary>Shorter than four fingers.</summary>
    public static IEnumerable<Finding> Short(Results r)
    {
        if (r.Plan.Grip is not { } grip) yield break;
        var length = Length.OfMm(grip.From.To(grip.To));
        if (length.Mm >= FourFingersMm - 1e-6) yield break;
        yield return new Finding(
            FindingCodes.GripShort,
            Severity.Note,
            "grip",
            grip.Middle,
            $"The grip is {Shown.Both(length)} long: short for four fingers.",
            Shown.Both(length),
            $"{Shown.Both(Length.OfMm(FourFingersMm))} to {Shown.Both(Length.OfMm(125))}",
            SourceTag.CommonPractice,
            $"lengthen it by {Shown.Both(Length.OfMm(FourFingersMm) - length)}, if it is meant for the whole hand")
        {
            Ways = [.. Longer(r, grip.From, grip.To, "to", "rear"), .. Longer(r, grip.To, grip.From, "from", "front")],
        };
    }

    /// <summary>One end moved outwards along the grip until four fingers have room; none when it would leave the piece.</summary>
    private static ImmutableArray<RemedyWay> Longer(Results r, Point stays, Point moves, string key, string name)
    {
        var to = PlanStep.Near(stays + ((moves - stays).Unit * (FourFingersMm + (2 * PlanStep.FineMm(r.Plan.Units)))), r.Plan.Units);
        return Inside.Of(r.Piece.Outer, to)
            ? [new RemedyWay($"move the {name} end {Shown.Both(Length.OfMm(moves.To(to)))} outwards, to x {Shown.Both(Length.OfMm(to.X))}, y {Shown.Both(Length.OfMm(to.Y))}", [new PointSet("grip", key, to)])]
            : [];
    }
}
