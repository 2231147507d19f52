using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Does the piece go in and out, and does its edge stay off the stitches?</summary>
public static class SheathFindings
{
    /// <summary>A sheath that cannot be drawn.</summary>
    public static IEnumerable<Finding> NoPattern(Results r)
    {
        if (r.Plan.Sheath is null || SheathPocket.Of(r.Plan, r.Piece, out var why) is not null) yield break;
        yield return new Finding(
            FindingCodes.SheathNone,
            Severity.Warning,
            "sheath",
            null,
            $"No sheath is drawn: {why}.",
            why,
            "an edge along the piece, inside the mouth",
            "geometry",
            "move the mouth to the handle's side of the edge, or take the sheath out and use the edge guard");
    }

    /// <summary>A mouth narrower than the blade inside it, or one that leaves edge bare.</summary>
    public static IEnumerable<Finding> Mouth(Results r)
    {
        if (SheathPocket.Of(r.Plan, r.Piece, out _) is not { } pocket) yield break;
        var place = new Point(pocket.Mouth.Mm, pocket.ToSheath.Dy * pocket.ToSheath.D * -1);
        if (pocket.Bare.Mm > SheathRules.GivesMm)
        {
            yield return new Finding(
                FindingCodes.SheathMouth,
                Severity.Warning,
                "sheath",
                place,
                $"{Shown.Both(pocket.Bare)} of the edge stay outside the sheath.",
                Shown.Both(pocket.Bare),
                Shown.Both(Length.OfMm(SheathRules.GivesMm)),
                SourceTag.CommonPractice,
                $"end the sheath at x {Shown.Both(pocket.EdgeEnds)}, where the edge ends, or beyond")
            {
                Ways = [To(pocket.EdgeEnds)],
            };
        }
        else if (pocket.Caught.Mm > SheathRules.GivesMm)
        {
            var tip = pocket.ToSheath.A;
            var coversEdge = (pocket.EdgeEnds - pocket.WidestAt).Mm * tip >= -SheathRules.GivesMm;
            yield return new Finding(
                FindingCodes.SheathMouth,
                Severity.Warning,
                "sheath",
                place,
                $"The blade is {Shown.Both(pocket.Caught)} wider inside than at the mouth: the sheath must be as wide there, so that it does not hold the blade at the mouth.",
                $"{Shown.Both(pocket.AtMouth)} at the mouth, {Shown.Both(pocket.Widest)} at x {Shown.Both(pocket.WidestAt)}",
                $"{Shown.Both(Length.OfMm(SheathRules.GivesMm))} wider, which the material gives",
                SourceTag.CommonPractice,
                coversEdge ? $"end the sheath at x {Shown.Both(pocket.WidestAt)}, where the blade is widest" : "hold the handle with a strap and snap, or make the sheath of two parts that open")
            {
                Ways = coversEdge ? [To(pocket.WidestAt)] : [],
            };
        }
    }

    /// <summary>Stitches or rivets too near the edge of the blade.</summary>
    public static IEnumerable<Finding> Seam(Results r)
    {
        if (r.Plan.Sheath is not { } sheath) yield break;
        var (has, wants) = (SheathRules.Finished(sheath) - SheathRules.FromEdge(sheath), SheathRules.ToBlade(sheath));
        if (has.Mm >= wants.Mm - 1e-9) yield break;
        var word = sheath.Kind == SheathKind.Leather ? "stitches" : "rivets";
        var seam = SheathRules.Seam(sheath) + (wants - has);
        yield return new Finding(
            FindingCodes.SheathSeam,
            Severity.Warning,
            "sheath",
            null,
            $"The {word} lie {Shown.Both(has)} from the blade: the edge reaches them.",
            Shown.Both(has),
            Shown.Both(wants),
            SourceTag.CommonPractice,
            sheath.Kind == SheathKind.Leather ? $"make the seam {Shown.Both(seam)} wide" : $"set the rivets {Shown.Both(SheathRules.Finished(sheath) - wants)} from the edge, or leave a wider seam")
        {
            Ways = sheath.Kind == SheathKind.Leather
                ? [new RemedyWay($"make the seam {Shown.Both(seam)} wide", [new LengthSet("sheath", "seam", seam)])]
                : [],
        };
    }

    private static RemedyWay To(Length x) => new($"end the sheath at x {Shown.Both(x)}", [new LengthSet("sheath", "mouth", x)]);
}
