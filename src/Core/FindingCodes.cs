using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One kind of finding.</summary>
/// <param name="Code">Stable code.</param>
/// <param name="Severity">Its severity, the gravest when it has more than one; a note whenever it rests on the assumed shop.</param>
/// <param name="Meaning">What it means, one line.</param>
public sealed record FindingCode(string Code, Severity Severity, string Meaning);

/// <summary>All kinds of findings, gravest first.</summary>
public static class FindingCodes
{
    /// <summary>The outline crosses or touches itself.</summary>
    public const string OutlineCrossesItself = "outline.crosses-itself";

    /// <summary>The outline holds no piece.</summary>
    public const string OutlineTooSmall = "outline.too-small";

    /// <summary>The outline is wider than the bar.</summary>
    public const string OutlineWiderThanStock = "outline.wider-than-stock";

    /// <summary>The outline is longer than the bar.</summary>
    public const string OutlineLongerThanStock = "outline.longer-than-stock";

    /// <summary>The outline comes too near the mill edge of the bar.</summary>
    public const string OutlineNearBarEdge = "outline.near-bar-edge";

    /// <summary>The piece fits the bar but its end allowance does not.</summary>
    public const string OutlineNearBarEnd = "outline.near-bar-end";

    /// <summary>A bar at its least width would not hold the piece.</summary>
    public const string StockWidthTolerance = "stock.width-tolerance";

    /// <summary>A concave curve is tighter than any wheel.</summary>
    public const string InsideRadius = "outline.inside-radius";

    /// <summary>A sharp inside corner.</summary>
    public const string SharpInsideCorner = "outline.sharp-inside-corner";

    /// <summary>A hole outside or across the outline.</summary>
    public const string HoleOutside = "hole.outside-outline";

    /// <summary>Two holes run into one another.</summary>
    public const string HoleOverlap = "hole.overlap";

    /// <summary>The same hole twice.</summary>
    public const string HoleTwice = "hole.twice";

    /// <summary>Little steel between two holes.</summary>
    public const string WebToHole = "hole.web-to-hole";

    /// <summary>Little steel between a hole and the outline.</summary>
    public const string WebToOutline = "hole.web-to-outline";

    /// <summary>Centre nearer to the outline than the structural rule.</summary>
    public const string EdgeDistanceRule = "hole.edge-distance-rule";

    /// <summary>Centres nearer to one another than the structural rule.</summary>
    public const string PitchRule = "hole.pitch-rule";

    /// <summary>Hole wide for the height of the piece there.</summary>
    public const string ShareOfHeight = "hole.share-of-height";

    /// <summary>No drill of that size.</summary>
    public const string DrillNotOwned = "hole.drill-not-owned";

    /// <summary>No reamer of that size.</summary>
    public const string ReamerNotOwned = "hole.reamer-not-owned";

    /// <summary>The edge ends short of the plunge line.</summary>
    public const string EdgeShortOfPlunge = "edge.short-of-plunge";

    /// <summary>The edge runs past the plunge line.</summary>
    public const string EdgePastPlunge = "edge.past-plunge";

    /// <summary>The plunge line misses the piece.</summary>
    public const string PlungeMissesPiece = "plunge.misses-piece";

    /// <summary>The plunge line runs through a hole.</summary>
    public const string PlungeThroughHole = "plunge.through-hole";

    /// <summary>The bevel runs into a hole.</summary>
    public const string BevelIntoHole = "bevel.into-hole";

    /// <summary>The bevel is higher than the piece.</summary>
    public const string BevelPastSpine = "bevel.past-spine";

    /// <summary>The wheel of a hollow bevel thins the steel behind the edge.</summary>
    public const string WheelTooSmall = "bevel.wheel-too-small";

    /// <summary>The angle of a full bevel changes along the edge.</summary>
    public const string JigCannotFollow = "bevel.jig-cannot-follow";

    /// <summary>Hollow bevel without its wheel computed as flat.</summary>
    public const string BevelTakenAsFlat = "bevel.taken-as-flat";

    /// <summary>The edge is as thick as the stock.</summary>
    public const string EdgeThickerThanStock = "edge.thicker-than-stock";

    /// <summary>The sharpening angle is no steeper than the bevel.</summary>
    public const string SharpeningFlatterThanBevel = "edge.sharpening-flatter-than-bevel";

    /// <summary>The grip lies outside the piece.</summary>
    public const string GripOutside = "grip.outside-piece";

    /// <summary>The grip is short.</summary>
    public const string GripShort = "grip.short";

    /// <summary>A material of the handle has no file.</summary>
    public const string HandleMaterialUnknown = "handle.material-unknown";

    /// <summary>The scales cannot be drawn.</summary>
    public const string ScalesNotDrawn = "handle.scales-not-drawn";

    /// <summary>The scales reach over the bevel.</summary>
    public const string ScalesOverBevel = "handle.scales-over-bevel";

    /// <summary>A pin near the edge of a scale.</summary>
    public const string PinNearScaleEdge = "handle.pin-near-edge";

    /// <summary>Wood that moves.</summary>
    public const string WoodMoves = "handle.wood-moves";

    /// <summary>Glue that sets first.</summary>
    public const string GlueSetsFirst = "handle.glue-sets-first";

    /// <summary>The hand is near the edge.</summary>
    public const string HandNearEdge = "grip.near-edge";

    /// <summary>Long edges that press.</summary>
    public const string HotSpot = "grip.hot-spot";

    /// <summary>A cord of unknown diameter.</summary>
    public const string CordUnknown = "handle.cord-unknown";

    /// <summary>The finished weight misses the target.</summary>
    public const string TargetWeight = "target.weight";

    /// <summary>The balance point misses the target.</summary>
    public const string TargetBalance = "target.balance";

    /// <summary>The steel does not harden in its thickness and quenchant.</summary>
    public const string WillNotHarden = "heat.will-not-harden";

    /// <summary>The steel hardens in part, or not for sure.</summary>
    public const string HardensMarginally = "heat.marginal";

    /// <summary>The bath is let come too near its flash point.</summary>
    public const string NearFlashPoint = "heat.flash-point";

    /// <summary>One piece warms the oil too much.</summary>
    public const string OilTooLittle = "heat.oil-too-little";

    /// <summary>The steel wants a held soak and the shop has no oven.</summary>
    public const string WantsOven = "heat.wants-oven";

    /// <summary>Hardening temperature outside the steel's window.</summary>
    public const string OutsideWindow = "heat.outside-window";

    /// <summary>The piece does not go into the oven.</summary>
    public const string OvenTooSmall = "heat.oven-too-small";

    /// <summary>The quenchant has no file.</summary>
    public const string QuenchantUnknown = "heat.quenchant-unknown";

    /// <summary>The hardness wanted needs a temper at which the steel is not tempered.</summary>
    public const string HeatTrough = "heat.trough";

    /// <summary>The temper planned is not for the hardness wanted.</summary>
    public const string TemperMisses = "heat.temper-misses";

    /// <summary>The hardness wanted cannot be had by tempering.</summary>
    public const string HardnessOutOfReach = "heat.hardness-out-of-reach";

    /// <summary>The blade is caught by the mouth of its sheath, or its edge is left bare.</summary>
    public const string SheathMouth = "sheath.mouth";

    /// <summary>The edge reaches the stitches of the sheath.</summary>
    public const string SheathSeam = "sheath.seam";

    /// <summary>No sheath can be drawn.</summary>
    public const string SheathNone = "sheath.not-drawn";

    /// <summary>No file for the steel.</summary>
    public const string SteelUnknown = "steel.unknown";

    /// <summary>No density for the steel.</summary>
    public const string SteelNoDensity = "steel.no-density";

    /// <summary>What was assumed about the bench edges.</summary>
    public const string BenchEdge = "bench.edge";

    /// <summary>No machine turns slowly enough for a hole.</summary>
    public const string TooFast = "drilling.too-fast";

    /// <summary>No chuck holds the drill.</summary>
    public const string ChuckTooSmall = "drilling.chuck-too-small";

    /// <summary>The drill pushes harder than the machine bears.</summary>
    public const string ThrustTooGreat = "drilling.thrust";

    /// <summary>The motor is too weak for the drill.</summary>
    public const string PowerTooGreat = "drilling.power";

    /// <summary>The column stands in the way.</summary>
    public const string ThroatTooShort = "drilling.throat";

    /// <summary>The stock is wider than the vise opens.</summary>
    public const string ViseTooNarrow = "drilling.vise";

    /// <summary>No machine can bore the hole.</summary>
    public const string CannotBore = "drilling.cannot-bore";

    /// <summary>A hole planned after hardening.</summary>
    public const string DrilledHard = "drilling.after-hardening";

    /// <summary>The stock hangs far over the table.</summary>
    public const string TableTooSmall = "drilling.table";

    /// <summary>Holes spread wider than the table travels.</summary>
    public const string BeyondTravel = "drilling.travel";

    /// <summary>No room for two clamps.</summary>
    public const string ClampInTheWay = "drilling.clamp-in-the-way";

    /// <summary>Stock thinner than the drill's point is long.</summary>
    public const string ThinStock = "drilling.thin-stock";

    /// <summary>Drills longer than needed.</summary>
    public const string DrillTooLong = "drilling.drill-too-long";

    /// <summary>No drill that leaves what the reamer needs.</summary>
    public const string NoDrillBeforeReaming = "drilling.no-drill-before-reaming";

    /// <summary>No saw cuts across the bar.</summary>
    public const string SawCannotCross = "saw.cannot-cross-bar";

    /// <summary>No blade has the teeth for the thickness.</summary>
    public const string SawTeeth = "saw.teeth";

    /// <summary>A measured hole that the plan does not have.</summary>
    public const string MeasuredNotInPlan = "measured.not-in-plan";

    /// <summary>A hole measured far from its place.</summary>
    public const string MeasuredFarOff = "measured.far-off";

    /// <summary>A rod that may not go into its hole.</summary>
    public const string RodTight = "fit.rod-tight";

    /// <summary>A measured hole that its rod does not pass.</summary>
    public const string MeasuredRod = "measured.rod";

    /// <summary>A measured hole that cannot be mended.</summary>
    public const string MeasuredScrap = "measured.scrap";

    /// <summary>A guide piece measured in part.</summary>
    public const string MeasuredIncomplete = "measured.incomplete";

    /// <summary>The pins will likely not go through the scales.</summary>
    public const string AssemblyChance = "assembly.chance";

    /// <summary>All of them, gravest first, then by code.</summary>
    public static ImmutableArray<FindingCode> All { get; } =
    [
        .. new FindingCode[]
        {
            new(OutlineCrossesItself, Severity.Error, "The outline crosses or touches itself, or runs along itself, so it bounds no piece."),
            new(OutlineTooSmall, Severity.Error, "The outline holds no steel worth the name: a size under 5 mm or next to no area."),
            new(OutlineWiderThanStock, Severity.Error, "The piece is wider than the bar."),
            new(OutlineLongerThanStock, Severity.Error, "The piece is longer than the bar."),
            new(HoleOutside, Severity.Error, "A hole lies outside the outline or breaks through it."),
            new(HoleOverlap, Severity.Error, "Two holes run into one another."),
            new(HoleTwice, Severity.Error, "The same hole is in the plan twice."),
            new(WebToHole, Severity.Error, "Little steel between two holes: warning under the stock thickness, error under half of it or under 1.5 mm."),
            new(WebToOutline, Severity.Error, "Little steel between a hole and the outline: warning under the stock thickness, error under half of it or under 1.5 mm."),
            new(PlungeMissesPiece, Severity.Error, "The plunge line does not cross the piece."),
            new(EdgeThickerThanStock, Severity.Error, "The edge is planned as thick as the stock or thicker: there is nothing to grind."),
            new(WheelTooSmall, Severity.Error, "A wheel so small that the steel behind the edge comes out thinner than the edge, under half of it or cut through; thinner than 95 % is a warning."),
            new(OutlineNearBarEdge, Severity.Warning, "The piece comes within 1 mm of the bar's long edge, where mill edge and scale are."),
            new(OutlineNearBarEnd, Severity.Warning, "The piece fits the bar, but not with its end allowance."),
            new(InsideRadius, Severity.Warning, "A hollow of the outline is tighter than the smallest wheel of the shop."),
            new(SharpInsideCorner, Severity.Warning, "A sharp inside corner: no wheel makes it, and cracks start there in the quench."),
            new(DrillNotOwned, Severity.Warning, "The shop has no drill of a hole's size."),
            new(ReamerNotOwned, Severity.Warning, "The shop has no reamer of a reamed hole's size."),
            new(EdgeShortOfPlunge, Severity.Warning, "The sharpened part ends more than 0.5 mm short of the plunge line."),
            new(PlungeThroughHole, Severity.Warning, "The plunge line runs through a hole."),
            new(BevelIntoHole, Severity.Warning, "The bevel runs into a hole."),
            new(BevelPastSpine, Severity.Warning, "The bevel is higher than the piece over more than half of the edge."),
            new(SharpeningFlatterThanBevel, Severity.Warning, "The sharpening angle is not steeper than the bevel, so there is no edge bevel."),
            new(GripOutside, Severity.Warning, "An end of the grip lies outside the piece."),
            new(HandleMaterialUnknown, Severity.Warning, "No file is known for a material of the handle: what is made of it is not weighed."),
            new(ScalesNotDrawn, Severity.Warning, "The line of an end of the scales does not cut the tang."),
            new(ScalesOverBevel, Severity.Warning, "The scales reach over the bevel and will not lie flat."),
            new(PinNearScaleEdge, Severity.Warning, "A pin lies nearer than two of its diameters to the edge of its scale."),
            new(WoodMoves, Severity.Warning, "The wood comes to rest at another moisture, and steel or wood will stand proud so far that a finger feels it."),
            new(GlueSetsFirst, Severity.Warning, "The glue sets, or the clamps run out, before one piece is glued."),
            new(HandNearEdge, Severity.Warning, "The first finger lies nearer than 10 mm to the edge."),
            new(SheathMouth, Severity.Warning, "The blade is wider inside the sheath than at its mouth, or part of the edge stays outside."),
            new(SheathSeam, Severity.Warning, "The edge reaches the stitches or rivets of the sheath."),
            new(SheathNone, Severity.Warning, "The plan asks for a sheath and none can be drawn: the edge runs across the piece or lies outside the mouth."),
            new(TargetWeight, Severity.Warning, "The finished steel misses the weight wanted."),
            new(TargetBalance, Severity.Warning, "The balance point misses the place wanted."),
            new(WillNotHarden, Severity.Error, "The steel does not harden in its thickness and quenchant, by its cooling and by ideal diameter."),
            new(HardensMarginally, Severity.Warning, "The steel hardens only in part in its thickness and quenchant, or two methods do not agree."),
            new(NearFlashPoint, Severity.Error, "The quench oil is let come nearer than 28 °C to its flash point."),
            new(OilTooLittle, Severity.Warning, "One piece warms the quench oil past the warmest it is let get."),
            new(WantsOven, Severity.Warning, "The steel wants a soak that only an oven holds, and the shop has none."),
            new(OutsideWindow, Severity.Warning, "The hardening temperature of the plan lies outside the steel's window."),
            new(OvenTooSmall, Severity.Warning, "The piece does not go into the hardening oven."),
            new(QuenchantUnknown, Severity.Note, "The quenchant has no file, so it cannot be said whether the steel hardens."),
            new(HeatTrough, Severity.Warning, "The hardness wanted needs a temper at which the steel is less tough than above and below."),
            new(TemperMisses, Severity.Warning, "The temper the plan names leaves another hardness than the plan wants."),
            new(HardnessOutOfReach, Severity.Warning, "The hardness wanted is harder than the coldest temper leaves, or softer than is known of the steel."),
            new(SteelUnknown, Severity.Warning, "There is no file for the steel: masses are left out."),
            new(StockWidthTolerance, Severity.Note, "A bar at the least width its product standard allows would not hold the piece."),
            new(EdgeDistanceRule, Severity.Note, "A hole's centre lies nearer to the outline than the structural rule of 1.2 hole diameters."),
            new(PitchRule, Severity.Note, "Two centres lie nearer to one another than the structural rule of 2.2 hole diameters."),
            new(ShareOfHeight, Severity.Note, "A hole takes more than 0.45 of the height of the piece there."),
            new(EdgePastPlunge, Severity.Note, "The sharpened part runs more than 0.5 mm past the plunge line, where there is no bevel."),
            new(JigCannotFollow, Severity.Note, "The angle of a bevel to the spine changes so much along the edge that a jig of one angle does not follow it."),
            new(BevelTakenAsFlat, Severity.Note, "A hollow bevel is weighed and drawn as a flat one because the plan does not say its wheel."),
            new(GripShort, Severity.Note, "The grip is shorter than four fingers need."),
            new(HotSpot, Severity.Note, "The long edges of the handle are hardly broken and press into the hand."),
            new(CordUnknown, Severity.Note, "The diameter of the cord is not known: its length is left out."),
            new(SteelNoDensity, Severity.Note, "The steel's file gives no density: masses are left out."),
            new(MeasuredScrap, Severity.Error, "A measured hole of the guide piece cannot be mended; a warning on other pieces."),
            new(MeasuredNotInPlan, Severity.Warning, "A hole was measured that the plan does not have."),
            new(MeasuredFarOff, Severity.Warning, "A hole was measured more than 2 mm from its planned place: mistyped, or measured from other edges."),
            new(RodTight, Severity.Warning, "The rod the plan names may not go into its hole as the hole comes out."),
            new(AssemblyChance, Severity.Warning, "Made as the plan says, the pins go through tang and scales less often than the plan asks."),
            new(MeasuredRod, Severity.Warning, "The rod does not pass a measured hole, or sits too loose in it."),
            new(MeasuredIncomplete, Severity.Note, "Only some holes of the guide piece were measured."),
            new(BenchEdge, Severity.Note, "What was assumed about the edges to measure from."),
            new(TooFast, Severity.Warning, "No machine of the shop turns slowly enough for a hole in this steel."),
            new(ChuckTooSmall, Severity.Warning, "The drill of a hole fits no chuck of the shop."),
            new(ThrustTooGreat, Severity.Warning, "A drill pushes harder than any machine of the shop bears."),
            new(PowerTooGreat, Severity.Warning, "A drill takes more power than any machine of the shop has at its spindle."),
            new(ThroatTooShort, Severity.Warning, "A hole lies further from the stock's edge than spindle from column."),
            new(ViseTooNarrow, Severity.Warning, "The stock is wider than the vise opens."),
            new(CannotBore, Severity.Warning, "A hole is to be bored and no machine of the shop can."),
            new(DrilledHard, Severity.Warning, "A hole is planned after hardening."),
            new(TableTooSmall, Severity.Warning, "The stock hangs far over the table of the machine that makes the holes."),
            new(BeyondTravel, Severity.Warning, "The holes spread wider than the table travels: the piece is clamped anew on two pinned holes."),
            new(ClampInTheWay, Severity.Warning, "No two places along the stock are clear for a clamp."),
            new(ThinStock, Severity.Warning, "The stock is thinner than the drill's point is long, so that the drill grabs as it breaks through."),
            new(DrillTooLong, Severity.Note, "The drills are longer than the holes need."),
            new(SawCannotCross, Severity.Warning, "No saw of the shop cuts across the bar."),
            new(SawTeeth, Severity.Warning, "No blade of a saw has 3 to 24 teeth in the steel."),
            new(NoDrillBeforeReaming, Severity.Warning, "The shop has no drill that leaves what a reamer needs."),
        }.OrderByDescending(c => c.Severity).ThenBy(c => c.Code, StringComparer.Ordinal),
    ];
}
