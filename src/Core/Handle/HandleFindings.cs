using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What is wrong or risky about scales, pins, glue, cord and grip.</summary>
public static class HandleFindings
{
    /// <summary>Least distance from the centre of a pin to the edge of the scale, in diameters of the pin; common practice 2 to 3 in wood.</summary>
    public const double PinDiameters = 2;

    /// <summary>Names no file has.</summary>
    public static IEnumerable<Finding> Materials(Results r)
        => HandleMaterials.Unknown(r.Plan, r.Shop).Select(u => new Finding(
            FindingCodes.HandleMaterialUnknown,
            Severity.Warning,
            u.Heading,
            null,
            $"No file is known for \"{u.Name}\" ([{u.Heading}] {u.Key}): what is made of it is not weighed.",
            u.Name,
            "a file of data/handles or of your own folder handles",
            "data",
            "write one of the names of data/handles, or add a file of your own (docs/handle-material-file.md)"));

    /// <summary>Scales that cannot be drawn, or that reach over the bevel.</summary>
    public static IEnumerable<Finding> Front(Results r)
    {
        if (r.Plan.Scales is not { IsShaped: true }) yield break;
        if (ScaleOutline.Of(r.Plan) is not { } outline)
        {
            yield return new Finding(
                FindingCodes.ScalesNotDrawn,
                Severity.Warning,
                "scales",
                null,
                "The line of an end of the scales does not cut the tang: no scale can be drawn.",
                "no cut",
                "a line across the tang",
                "geometry",
                "write front as the x where the scales begin, on the handle");
            yield break;
        }

        if (EdgeSpan.Of(r.Plan, r.Piece) is not { } edge) yield break;
        if (Nearest.Distance(outline.Path, edge.Path.Segments[edge.Path.Segments.Length / 2].At(0.5)) < 0.1)
        {
            yield return new Finding(
                FindingCodes.ScalesOverBevel,
                Severity.Error,
                "scales",
                outline.Front.At(0.5),
                "The scales cover the blade: the line of their front end lies the wrong way.",
                "over the edge",
                "on the handle",
                "geometry",
                "write front as the x where the scales begin, or as two points of a line across the tang");
            yield break;
        }

        if (r.Plan.Bevel is null) yield break;
        var over = Over(r.Plan.Bevel, edge, outline);
        if (over <= 0.05) yield break;
        yield return new Finding(
            FindingCodes.ScalesOverBevel,
            Severity.Warning,
            "scales",
            outline.Front.At(0.5),
            $"The scales reach {Shown.Both(Length.OfMm(over))} over the bevel: they will not lie flat there.",
            Shown.Both(Length.OfMm(over)),
            "behind the plunge",
            "geometry",
            $"begin them {Shown.Both(Length.OfMm(over))} further back, and 3 to 6 mm (0.12 to 0.24 in) more for the step");
    }

    /// <summary>Pins too near the edge of a scale.</summary>
    public static IEnumerable<Finding> Pins(Results r)
    {
        if (ScaleShape.Of(r.Plan) is not { } shape) yield break;
        foreach (var u in UnderScale.Of(r, shape, HandleParts.Pins(r.Plan, r.Holes, shape)))
        {
            if (u is not { Pin: { } pin, Wood: { } wood } || wood.Mm + (0.5 * pin.Diameter.Mm) >= (PinDiameters * pin.Diameter.Mm) - 1e-9) continue;
            yield return new Finding(
                FindingCodes.PinNearScaleEdge,
                Severity.Warning,
                u.Hole.Name,
                u.Hole.MadeAt,
                $"{(wood.Mm > 0 ? $"Only {Shown.Both(wood)} of scale stand" : "No scale stands")} beside the pin in {u.Hole.Name}: it can split or break out while it is drilled and shaped.",
                Shown.Both(wood),
                $"{Shown.Both(Length.OfMm((PinDiameters - 0.5) * pin.Diameter.Mm))}: the centre two diameters from the edge",
                SourceTag.CommonPractice,
                "move the hole further in, or take a thinner pin");
        }
    }

    /// <summary>Wood that will move so far that a finger feels it.</summary>
    public static IEnumerable<Finding> Wood(Results r)
    {
        if (ScaleShape.Of(r.Plan) is not { } shape) yield break;
        foreach (var w in WoodChange.Of(r, HandleMaterials.Of(r.Plan, r.Shop), HandleCuts.Of(r, shape, null)))
        {
            if (!w.IsFelt || w.EachSide is not { } side || w.FromPercent is not { } from || w.ToPercent is not { } to) continue;
            var step = Length.OfMm(Math.Abs(side.Value.Mm));
            yield return new Finding(
                FindingCodes.WoodMoves,
                Severity.Warning,
                "scales",
                null,
                $"{w.Wood.Name} fitted at {Shown.Trimmed(from.Value, 1)} % and used at {Shown.Trimmed(to.Value, 1)} %: the {(side.Value.Mm < 0 ? "steel" : "wood")} will stand proud {Shown.Both(step)} at each edge.",
                $"{Shown.Both(step)}, between {Shown.Both(Length.OfMm(Math.Min(Math.Abs(side.Low.Mm), Math.Abs(side.High.Mm))))} and {Shown.Both(Length.OfMm(Math.Max(Math.Abs(side.Low.Mm), Math.Abs(side.High.Mm))))}{(side.OutsideRange.Length > 0 ? "; " + side.OutsideRange : "")}",
                $"{Shown.Both(Length.OfMm(WoodChange.FeltMm))}, which a finger begins to feel (common practice)",
                side.SourceKey,
                to.Value > WoodChange.WetForGluePercent ? "no wetter than the glue's maker allows: seal it, or use wood steeped in resin or a laminate" : $"bring the wood to {Shown.Number(Math.Round(to.Value), 0)} to {Shown.Number(Math.Round(to.Value) + 1, 0)} % before it is fitted");
        }
    }

    /// <summary>Glue that sets before one piece is clamped.</summary>
    public static IEnumerable<Finding> Glue(Results r)
    {
        var g = r.Shop.Gluing;
        if (r.Plan.Scales is not { IsShaped: true } || GlueBatches.Of(1, g.PieceMinutes, g.PotLifeMinutes, g.Clamps is null ? 0 : g.ClampsPerPiece, g.Clamps ?? 0).IsPossible) yield break;
        yield return ShopFinding.Of(r.Shop, new Finding(
            FindingCodes.GlueSetsFirst,
            Severity.Warning,
            "scales",
            null,
            $"Not one piece can be glued: {Shown.Trimmed(g.PieceMinutes, 1)} min a piece, a pot life of {Shown.Trimmed(g.PotLifeMinutes, 0)} min, {(g.Clamps is { } c ? $"{c} clamps" : "clamps not counted")}.",
            $"{Shown.Trimmed(g.PieceMinutes, 1)} min",
            $"{Shown.Trimmed(GlueBatches.UsedShare * g.PotLifeMinutes, 1)} min, and {g.ClampsPerPiece} clamps",
            SourceTag.CommonPractice,
            "a slower glue, fewer minutes a piece, or more clamps"));
    }

    /// <summary>A hand too near the edge, edges that hurt it, a cord nothing is known of.</summary>
    public static IEnumerable<Finding> Hand(Results r)
    {
        if (r.Plan is { Scales: not { IsShaped: true }, Cord: null, Hand: null }) yield break;
        var (shape, cord) = (ScaleShape.Of(r.Plan), CordWrap.Of(r.Plan, r.Shop));
        if (r.Plan.Cord is { } wanted && cord is null && (wanted.Material.Length == 0 || r.Shop.KnownHandles.Any(m => m.IsCalled(wanted.Material))))
        {
            yield return new Finding(
                FindingCodes.CordUnknown,
                Severity.Note,
                "cord",
                null,
                "The diameter of the cord is not known: its length is left out.",
                "no diameter",
                "a diameter",
                "data",
                "add diameter = 4 under [cord], or name a cord of data/handles");
        }

        if (GripCheck.Of(r, shape, cord, HandleCuts.Of(r, shape, cord)) is not { } g) yield break;
        if (g.EdgeAway is { Mm: < GripCheck.LeastFromEdgeMm } away)
        {
            yield return new Finding(
                FindingCodes.HandNearEdge,
                Severity.Warning,
                "grip",
                r.Plan.Grip?.From,
                $"The first finger lies {Shown.Both(away)} from the edge: it can slip onto it.",
                Shown.Both(away),
                Shown.Both(Length.OfMm(GripCheck.LeastFromEdgeMm)),
                SourceTag.CommonPractice,
                "end the edge earlier, begin the handle further back, or leave a drop or guard between them");
        }

        if (g.EdgeRound is { } round && round.Mm < g.LeastRoundMm - 1e-9)
        {
            yield return new Finding(
                FindingCodes.HotSpot,
                Severity.Note,
                "grip",
                r.Plan.Grip?.Middle,
                $"The long edges of the handle are broken by only {Shown.Both(round)}: they press into the hand.",
                Shown.Both(round),
                Shown.Both(Length.OfMm(g.LeastRoundMm)),
                SourceTag.CommonPractice,
                $"break them by {Shown.Both(Length.OfMm(g.LeastRoundMm))} or more");
        }
    }

    // how far the front end lies on the ground side of the plunge, or within the bevel's reach of the edge
    private static double Over(Bevel bevel, EdgeSpan edge, ScaleOutline outline)
    {
        Point[] front = [outline.Front.Start, outline.Front.At(0.5), outline.Front.End];
        if (bevel.Plunge is { } plunge)
        {
            var side = SteelThickness.GroundSide(edge, plunge);
            return front.Max(p => (p - plunge.A).Dot(side));
        }

        return bevel.Height is { } height ? front.Max(p => height.Mm - Nearest.Distance(edge.Path, p)) : 0;
    }
}
