using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>How the handle is worded, the same on sheets, command line and desk.</summary>
public static class HandleWords
{
    private const string LocalFirst = "Local rules and the makers' sheets come first.";

    /// <summary>Caution for glue.</summary>
    public const string GlueCaution = "Uncured resin and hardener can make the skin sore for good (sensitising): nitrile gloves, eyes covered, fresh air; wash off with soap, never with solvent. Solvent: no flame, no spark, air moving. Do not sand before it has cured. A large pot heats itself and can smoke: mix little. " + LocalFirst;

    /// <summary>Caution for grips.</summary>
    public const string GripGuidance = "Guidance, not law: hands differ. Try a mock-up of card or plywood in the hand before steel is cut.";

    /// <summary>"2 scales of black walnut, 8.00 mm (0.315 in), bulged; pins of brass C260".</summary>
    public static string Head(HandlePlan p, UnitsShown units)
    {
        var s = p.Results.Plan.Scales;
        if (p.Shape is not null && s is not null)
        {
            var of = s.BackMaterial.Length > 0 ? $"{s.Material} in front, {s.BackMaterial} behind" : s.Material;
            var liner = s.LinerThickness.Mm > 0 ? $"; liners of {s.Liner}, {FigureText.Size(s.LinerThickness, units)}" : "";
            return $"scales of {of}, {Thick(s, units)} each, {Of(s.Section)}{liner}{(s.Rod.Length > 0 && !p.Pins.IsEmpty ? $"; {p.Pins.Length} {(p.Pins.Length == 1 ? "pin" : "pins")} of {s.Rod}" : "")}";
        }

        if (p.Cord is { } cord) return $"bare handle wound with cord of {FigureText.Size(cord.Diameter, units)}";
        return "bare handle";
    }

    /// <summary>"flat faces".</summary>
    public static string Of(HandleSection section) => section switch
    {
        HandleSection.Oval => "bulged",
        HandleSection.Octagon => "eight-sided",
        _ => "flat faces with rounded edges",
    };

    /// <summary>Weight of each part; the band is that of the material.</summary>
    public static ImmutableArray<(string Name, string Weight)> Parts(HandlePlan p, UnitsShown units)
        => [.. p.Parts.Select(m => (m.Name, $"{FigureText.Weight(m.Weight, units)}{(BandOf(p, m.Name) is { } share ? $" ± {Shown.Number(100 * share, 0)} %" : "")}")), .. PlacedMass.Of(p.Results.Plan).Select(m => (m.Name, $"{FigureText.Weight(m.Weight, units)}, an added mass of the plan"))];

    /// <summary>Weight and balance with the handle, and without.</summary>
    public static string Balance(HandlePlan p, UnitsShown units)
    {
        var r = p.Results;
        if (r.At(Stage.Finished) is not { Mass: { } steel } bare) return "the steel's density is not known, so weight and balance are left out";
        if (r.At(Stage.Assembled) is not { Mass: { } with } whole) return $"the steel alone: {FigureText.Weight(steel, units)}, balance {FigureText.Size(bare.BalanceFromDatum, units)} from the datum";
        return $"{FigureText.Weight(with, units)} in all, {FigureText.Weight(steel, units)} of it steel; balance {FigureText.Size(whole.BalanceFromDatum, units)} from the datum, the steel alone {FigureText.Size(bare.BalanceFromDatum, units)}";
    }

    /// <summary>What cannot be weighed.</summary>
    public static ImmutableArray<string> Unknown(HandlePlan p)
        =>
        [
            .. p.Shape is null && p.Results.Plan.Scales is { IsShaped: true } ? ["The scales cannot be drawn or weighed: the line of an end does not cut the tang ([scales] front, rear)."] : (ImmutableArray<string>)[],
            .. p.Shape is null && p.Results.Plan.AddedMasses.Length > 0 ? ["What the plan adds as masses is weighed, but its shape is not known: the hand is looked at as if the steel were bare. Scales under [scales] have a shape."] : (ImmutableArray<string>)[],
            .. HandleMaterials.Unknown(p.Results.Plan, p.Results.Shop).Select(u => $"No file is known for \"{u.Name}\" ([{u.Heading}] {u.Key}): what is made of it is not weighed."),
            .. p.Shape is not null && !p.Pins.IsEmpty && p.Results.Plan.Scales is { Rod.Length: 0 } ? ["The plan does not say what the pins are made of ([scales] rod): they are not weighed."] : (ImmutableArray<string>)[],
            .. p.Made.Cord is { GramsPerMetre: null } ? ["The weight of the cord is not known."] : (ImmutableArray<string>)[],
        ];

    /// <summary>Layers from face to face at a pin, and what they add up to.</summary>
    public static string Layers(HandlePlan p, HandlePin pin, UnitsShown units)
    {
        var tang = FaceThickness.Of(p.Results.Plan).At(pin.Hole.At.X);
        var scale = p.Shape!.At(pin.Hole.At);
        var liner = p.Shape.Plan.LinerThickness;
        var inner = liner.Mm > 0 ? $" + liner {FigureText.Size(liner, units)}" : "";
        var outer = liner.Mm > 0 ? $"liner {FigureText.Size(liner, units)} + " : "";
        return $"scale {FigureText.Size(Length.OfMm(scale), units)}{inner} + steel {FigureText.Size(Length.OfMm(tang), units)} + {outer}scale {FigureText.Size(Length.OfMm(scale), units)} = {FigureText.Size(pin.Length, units)}";
    }

    /// <summary>What a rod is cut to: flush length and 3 mm each side.</summary>
    public static Length CutLength(HandlePin pin) => pin.Length + Length.OfMm(6);

    /// <summary>A hole under the scales.</summary>
    public static string Under(UnderScale u, UnitsShown units)
    {
        if (u is { Pin: not null, Wood.Mm: <= 0 }) return "the pin cuts through the end or edge of the scale: move the hole or the end";
        if (u.Pin is { } pin) return $"DRILL through it for the {(pin.Bore.Mm > 0 ? "tube" : "rod")} of {BevelWords.Fine(pin.Diameter, units)}{(u.Wood is { } wood ? $"; {FigureText.Size(wood, units)} of scale left beside it" : "")}";
        if (u.IsDrilled) return $"DRILL through it, {FigureText.Size(u.Hole.MadeDiameter, units)}";
        var why = u.Hole.Use switch { HoleUse.Glue => "it is filled with glue", HoleUse.Lightening => "it only saves weight", HoleUse.Locating => "it only locates the piece", _ => "nothing goes through it" };
        return $"NO PIN: {why}{(u.Loose is { Mm: > 0 } loose ? $"; a rod would be loose by {FigureText.Size(loose, units)}" : "")}";
    }

    /// <summary>What the wood will do.</summary>
    public static ImmutableArray<string> Wood(WoodChange w, UnitsShown units)
    {
        var way = w.IsAlongRings ? w.GrainIsSaid ? "flat-sawn" : "as flat-sawn, since the plan does not say how the rings lie" : "quarter-sawn";
        var each = $"{Capital(w.Wood.Name)}, {FigureText.Size(w.Across, units)} across the grain, {way}: each edge moves {Fine(w.EachSidePerPercent, units)} for 1 % of moisture";
        if (w.Change is not { } change || w.EachSide is not { } side || w.FromPercent is not { } from || w.ToPercent is not { } to)
        {
            var missing = (w.FromPercent, w.ToPercent) switch
            {
                (null, null) => "Say its moisture now ([scales] moisture, or [air] of the shop) and where it will live ([user_air])",
                (null, _) => "Say its moisture now: [scales] moisture by the meter, or [air] of the shop",
                _ => "Say where it will live: [user_air] with temperature and humidity, or the moisture wood has there",
            };
            return [each + ".", missing + "; then it is worked out how proud the tang will stand."];
        }

        var now = $"{Shown.Trimmed(from.Value, 1)} %{(w.FromMeter ? " by the meter" : " by the air of the shop")}";
        var then = $"{Shown.Trimmed(to.Value, 1)} %";
        var shrinks = change.Value.Mm < 0;
        var what = Math.Abs(change.Value.Mm) < 0.005
            ? $"From {now} to {then} it does not move to speak of."
            : $"From {now} to {then} it {(shrinks ? "shrinks" : "grows")} {Fine(Abs(change.Value), units)} ({Fine(Length.Min(Abs(change.Low), Abs(change.High)), units)} to {Fine(Length.Max(Abs(change.Low), Abs(change.High)), units)}): the {(shrinks ? "steel will stand proud" : "wood will stand proud of the steel")} {Fine(Abs(side.Value), units)} at each edge{(w.IsFelt ? ", which a fingertip feels" : ", which no finger feels")}.";
        var advice = !w.IsFelt ? "" : to.Value > WoodChange.WetForGluePercent
            ? $"Wood as damp as that glues badly: fit it no wetter than the glue's maker allows, seal it all round, or use wood steeped in resin or a laminate."
            : $"Bring the wood to {Wanted(to.Value)} before it is fitted: weeks in air of that kind, weighed until it no longer changes. Or use wood steeped in resin, or a laminate.";
        var flag = change.OutsideRange.Length > 0 ? char.ToUpperInvariant(change.OutsideRange[0]) + change.OutsideRange[1..] + "." : "";
        return [.. new[] { each + ".", what, advice, flag }.Where(t => t.Length > 0)];
    }

    /// <summary>What heat does.</summary>
    public static string Heat(HeatGrowth h, UnitsShown units)
        => $"{h.Faces}: {Shown.Number(h.DifferenceC, 0)} °C ({Shown.Number(h.DifferenceC * 1.8, 0)} °F) hotter, as in washing water, {(h.More.Mm < 0 ? "they grow less than the steel by" : "they grow more than the steel by")} {Fine(Abs(h.More), units)} over their length. Room-cured epoxy softens at 50 to 60 °C (120 to 140 °F, from memory): no dishwasher.";

    /// <summary>Blank of a scale.</summary>
    public static string Blank(ScaleBlank b, UnitsShown units)
        => $"blank {Size(b.Size.Long, units)} along the grain × {Size(b.Size.Wide, units)} × {Size(b.Size.Thick, units)} thick; 3 mm (0.12 in) more than the scale all round, two to a piece";

    /// <summary>What comes out of a board; empty without one.</summary>
    public static ImmutableArray<string> Board(HandlePlan p, UnitsShown units)
    {
        if (p.Blank is not { Yield: { } y } b || p.Wanted.Board is not { } board) return [];
        var size = $"board {Size(board.Long, units)} × {Size(board.Wide, units)} × {Size(board.Thick, units)}";
        if (y.Pairs == 0) return [$"{size}: no pair of blanks comes out of it{(y.Blanks == 1 ? ", only one blank" : board.Thick < b.Size.Thick ? $": {Size(b.Size.Thick - board.Thick, units)} too thin" : board.Long < b.Size.Long ? $": {Size(b.Size.Long - board.Long, units)} too short" : board.Wide < b.Size.Wide ? $": {Size(b.Size.Wide - board.Wide, units)} too narrow" : "")}."];
        return
        [
            $"{size}: {y.Blanks} blanks, {y.Pairs} {(y.Pairs == 1 ? "pair" : "pairs")}{(y.Singles > 0 ? $", {y.Singles} without a mate" : "")}, {Shown.Number(100 * y.YieldShare, 0)} % of the board; saw cut {FigureText.Size(b.Kerf, units)}.{(b.Boards is > 1 ? $" {p.Wanted.Pieces} pieces take {b.Boards} such boards." : "")}",
            .. y.Cuts.Select(c => $"saw {Way(c.Way)} at {string.Join(", ", c.At.Take(12).Select(at => Size(at, units)))}: pieces of {Size(c.Each, units)}{(c.OnEachOf > 1 ? $", on each of {c.OnEachOf}" : "")}"),
            .. b.IsBookMatched ? ["The two of a pair lie one on the other in the board: mark both before they part, open them like a book, plane only the outer faces."] : (ImmutableArray<string>)[],
            .. y.Cuts.Any(c => c.Way == BlankCutWay.ToThickness) ? ["Caution: a short blank sawn through its thickness is one of the worst cuts for a hand. Saw the long board through first where it can be, then to length; else a jig or push block, never held by hand. No planing machine for short or thin pieces."] : (ImmutableArray<string>)[],
        ];
    }

    /// <summary>The glue of one piece and of the batch.</summary>
    public static ImmutableArray<string> Glue(GlueUp g, UnitsShown units)
    {
        var one = g.Each;
        var limit = g.Batches.Limit switch { GlueLimit.PotLife => $"the glue sets: {Shown.Number(100 * GlueBatches.UsedShare, 0)} % of {Shown.Trimmed(g.Shop.PotLifeMinutes, 0)} min is counted with", GlueLimit.Clamps => $"there are {g.Shop.Clamps} clamps, {g.Shop.ClampsPerPiece} a piece", _ => "" };
        return
        [
            $"joint {FigureText.Surface(g.Joint, units)}, {g.Joints} of them; {Ml(one.Net)} stays in a piece{(g.Holes.Mm3 > 0 ? $", {Ml(g.Holes)} of it in the glue holes" : "")}; mix {Ml(one.ToMix)} ({Shown.Number(one.MassToMix.Grams, 1)} g) a piece",
            g.Batches.IsPossible
                ? $"{g.Pieces} {(g.Pieces == 1 ? "piece" : "pieces")}: {g.Batches.Mixes} {(g.Batches.Mixes == 1 ? "mix" : "mixes")} of {Each(g.Batches)}{(limit.Length > 0 ? $"; {limit}" : "")}{(g.Batches.WaitsForClamps is > 0 and var waits ? $"; {(waits == 1 ? "once" : $"{waits} times")} wait for the cure until clamps are free" : "")}"
                : g.Batches.MostByClamps is 0 ? $"not one piece can be glued: it takes {g.Shop.ClampsPerPiece} clamps, the shop has {g.Shop.Clamps}" : "not one piece can be glued before the glue sets: a slower glue, or fewer minutes a piece",
            g.Shop.IsSaid ? $"pot life {Shown.Trimmed(g.Shop.PotLifeMinutes, 0)} min, {Shown.Trimmed(g.Shop.PieceMinutes, 1)} min a piece, glue line {FigureText.Size(g.Shop.Line, units)}{Thick(g.Shop)}, cures {Shown.Trimmed(g.Shop.CureHours, 1)} h" : $"the shop does not say how it glues ([gluing]): a pot life of {Shown.Trimmed(g.Shop.PotLifeMinutes, 0)} min, {Shown.Trimmed(g.Shop.PieceMinutes, 1)} min a piece, a glue line of {FigureText.Size(g.Shop.Line, units)} and {Shown.Trimmed(g.Shop.CureHours, 0)} h to cure are assumed",
        ];
    }

    /// <summary>Pins against glue.</summary>
    public static string Strength(GlueUp g)
    {
        var bond = $"glue {Kilo(g.Bond.Low)} to {Kilo(g.Bond.High)} kN in shear, next to nothing against peel";
        return g.Pins is var (low, high)
            ? $"{bond}; pins {(low == high ? Kilo(low) : $"{Kilo(low)} to {Kilo(high)}")} kN in double shear. {(high.Newtons < g.Bond.Low.Newtons ? "In shear the glue holds more" : low.Newtons > g.Bond.High.Newtons ? "The pins hold more than the glue" : "About alike")}, all pins loaded alike; wood round a pin crushes long before that. The pins are there against peel, blows and wet."
            : bond + ".";
    }

    /// <summary>The cord.</summary>
    public static string Cord(CordWrap c, UnitsShown units)
        => $"{Shown.Trimmed(c.Turns, 1)} turns of {Shown.Number(c.TurnLength.Mm, 1)} mm ({Shown.Inch(c.TurnLength, 2)}) over {FigureText.Size(c.Along, units)}: {Metres(c.Wound)} wound; cut {Metres(c.Cut)}, a tenth more and the tails{(c.Grams is { } g ? $"; {FigureText.Weight(Mass.OfGrams(g), units)} on the handle" : "")}";

    /// <summary>The handle against the hand.</summary>
    public static ImmutableArray<string> Grip(GripCheck g, UnitsShown units)
    {
        var hands = g.IsSurvey
            ? $"hands {Size(g.SmallHand, units)} to {Size(g.LargeHand, units)} long, {Size(g.SmallBreadth, units)} to {Size(g.LargeBreadth, units)} broad: one woman in twenty has a smaller one, one man in twenty a larger (ANSUR II survey, 2012; lengths from memory)"
            : $"the plan's own hand{(g.IsGloved ? ", gloved" : "")}: {(g.SmallHand == g.LargeHand ? $"{Size(g.LargeHand, units)} long" : "its length not said, so that of the survey's hands")}, {(g.SmallBreadth == g.LargeBreadth ? $"{Size(g.LargeBreadth, units)} broad" : "its breadth not said, so that of the survey's hands")}";
        var (small, large) = g.BestRound;
        var girths = $"girth {Girth(g.Least, units)} to {Girth(g.Most, units)}, as a round of {Size(g.Least.Round, units)} to {Size(g.Most.Round, units)}";
        var best = small == large ? Size(small, units) : $"{Size(small, units)} to {Size(large, units)}";
        return
        [
            .. new[]
            {
                hands,
                $"room for four fingers: the handle is {FigureText.Size(g.Room, units)} long; it suits hands up to {Size(g.LargestThatFits, units)} broad{(g.HasRoom ? "" : $", the largest wants {Size(g.LargeBreadth, units)}")} (10 mm more than the hand{(g.IsGloved ? ", 15 mm for the glove" : "")}: common practice)",
                $"{girths}; hardest grip on a round of {best} (19.7 % of the hand's length, Kong and Lowe 2005, tried on rounds of 25 to 50 mm (1 to 2 in); to go by the girth of other shapes is our reading){(g.Most.Round < small ? ": thinner, as knives for the fingertips are; it turns in the hand under a hard pull" : g.Least.Round > large ? ": thicker than any hand wants" : "")}",
                $"width {(Math.Abs(g.Least.Width.Mm - g.Most.Width.Mm) < 0.05 ? "" : Size(Length.Min(g.Least.Width, g.Most.Width), units) + " to ")}{Size(Length.Max(g.Least.Width, g.Most.Width), units)}; palm swell {Size(g.Swell, units)} over the ends{(g.Swell.Mm < 1 ? ": none to speak of" : "")}",
                g.EdgeAway is { } away ? $"first finger {Size(away, units)} from the edge{(away.Mm < GripCheck.LeastFromEdgeMm ? ": too near without a guard" : "")} (10 mm at least: common practice)" : "",
                g.KnuckleRoom is { } k ? $"from the handle down to the level of the edge {Size(k, units)}{(k.Mm < GripCheck.KnucklesMm ? ": knuckles meet the board" : ": knuckles clear the board")} (20 mm: common practice)" : "",
                g.EdgeRound is { } round ? round.Mm < g.LeastRoundMm - 1e-9 ? $"long edges broken by {Size(round, units)}: a hot spot, break them by {Shown.Trimmed(g.LeastRoundMm, 1)} mm or more (common practice)" : $"long edges rounded by {Size(round, units)}: no hot spot" : g.IsBare ? "the plan does not say how the long edges are broken ([broken_edges] outline): sharp edges are hot spots, 0.3 to 0.8 mm (common practice)" : "",
            }.Where(t => t.Length > 0),
        ];
    }

    /// <summary>Dust and other cautions of the materials, each once.</summary>
    public static ImmutableArray<string> Cautions(HandlePlan p)
    {
        var made = new[] { p.Made.Front, p.Made.Back, p.Made.Liner, p.Made.Rod, p.Made.Cord }.OfType<HandleMaterial>().Distinct().ToArray();
        return
        [
            .. made.SelectMany(m => m.Cautions.Select(c => $"{Capital(m.Name)}: {c}")).Distinct(),
            .. made.SelectMany(m => m.DustLimits).Distinct().Select(l => Capital(l.Line) + "."),
        ];
    }

    /// <summary>Thickness of the scales: one, or least to greatest.</summary>
    public static string Thick(ScalesPlan s, UnitsShown units)
        => s.Stations.IsEmpty ? FigureText.Size(s.Thickness ?? default, units) : $"{FigureText.Size(Length.OfMm(s.Stations.Min(t => t.Thickness.Mm)), units)} to {FigureText.Size(Length.OfMm(s.Stations.Max(t => t.Thickness.Mm)), units)}";

    /// <summary>"3.05 m (10.0 ft)".</summary>
    public static string Metres(Length l) => $"{Shown.Number(l.Mm / 1000, 2)} m ({Shown.Number(l.Inches / 12, 1)} ft)";

    /// <summary>"7 to 8 %".</summary>
    public static string Wanted(double percent) => $"{Shown.Number(Math.Round(percent), 0)} to {Shown.Number(Math.Round(percent) + 1, 0)} %";

    private static string Each(GlueBatchPlan b) => b.Mixes <= 6 ? string.Join(" + ", b.PiecesEach) : string.Join(" and ", b.PiecesEach.GroupBy(n => n).Select(g => $"{g.Count()} of {g.Key}"));

    private static string Thick(Gluing g) => g.Line > GlueAmount.ThickestLine ? " (thicker than the figures are for)" : "";

    private static string Girth(HandleCut c, UnitsShown units) => $"{Size(c.Girth, units)} at {Size(c.Station, units)} from its front";

    private static string Size(Length l, UnitsShown units) => units switch
    {
        UnitsShown.Mm => Shown.Number(l.Mm, 1) + " mm",
        UnitsShown.Inch => Shown.Number(l.Inches, 3) + " in",
        _ => $"{Shown.Number(l.Mm, 1)} mm ({Shown.Number(l.Inches, 3)} in)",
    };

    private static string Fine(Length l, UnitsShown units) => BevelWords.Fine(l, units);

    private static Length Abs(Length l) => Length.OfMm(Math.Abs(l.Mm));

    private static string Ml(Volume v) => $"{Shown.Number(v.Mm3 / 1000, 1)} ml";

    private static string Kilo(Force f) => Shown.Number(f.Newtons / 1000, 1);

    private static string Way(BlankCutWay way) => way switch { BlankCutWay.ToLength => "across the grain", BlankCutWay.ToWidth => "along the grain", _ => "through the thickness" };

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static double? BandOf(HandlePlan p, string part)
    {
        var of = part.StartsWith("back", StringComparison.Ordinal) ? p.Made.Back : part.Contains("scale", StringComparison.Ordinal) ? p.Made.Front : part == "liners" ? p.Made.Liner : part == "cord" ? p.Made.Cord : part == "glue" ? null : p.Made.Rod;
        return of?.DensityBandShare;
    }
}
