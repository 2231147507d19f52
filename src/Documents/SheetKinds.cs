using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>One kind of bench sheet: a name to ask for it by, and how it is drawn. Adding a sheet to the packet is one file and one line in <see cref="SheetKinds.All"/>.</summary>
/// <param name="Key">Name on the command line: <c>holes</c>.</param>
/// <param name="Title">Title on the sheet.</param>
/// <param name="For">What it is for, in one line.</param>
/// <param name="Draw">Draws its sheets, without title block: the packet adds that with the sheet numbers. No sheet when it does not apply.</param>
/// <param name="NamesNumbers">Whether it names sheet numbers, so that it is drawn again when they are known; the count of its sheets must not depend on them.</param>
/// <param name="HasOwnStrip">Whether its sheets carry title, revision, date and sheet number themselves and get no title block.</param>
public sealed record SheetKind(string Key, string Title, string For, Func<SheetRequest, ImmutableArray<Sheet>> Draw, bool NamesNumbers = false, bool HasOwnStrip = false);

/// <summary>All kinds of sheets, in the order of the packet.</summary>
public static class SheetKinds
{
    /// <summary>All kinds, in the order of the packet.</summary>
    public static ImmutableArray<SheetKind> All { get; } =
    [
        new(Cover.Key, "Cover and drawing", "dimensioned drawing, figures, weight and balance", Cover.Draw, NamesNumbers: true),
        new(OrderSheet.Key, "Order of work", "every step on this shop's machines, with ticks and gates", OrderSheet.Draw, NamesNumbers: true),
        new(FindingsSheet.Key, "Findings", "what is wrong or risky, and the smallest change that would pass", FindingsSheet.Draw),
        new(BuyList.Key, "Buy list", "how many to start, bars to buy and to take from the rack; with a count of pieces", BuyList.Draw),
        new(CutMap.Key, "Cut map", "each bar to scale with stop dimensions from one end, pieces, drop; with a count of pieces", CutMap.Draw),
        new(BarTags.Key, "Bar and drop tags", "to cut out and tie on: steel, heat number, size, pieces, place in the rack; with a count of pieces", BarTags.Draw),
        new(RoughCutCard.Key, "Rough-cut card", "straight saw cuts before the grinder, numbered, with marks to lay off, and what is then left to grind", RoughCutCard.Draw),
        new(WidthsSheet.Key, "Widths and weight", "the profiled piece at even stations, go and no-go, and what it must weigh", WidthsSheet.Draw),
        new(BalanceSheet.Key, "Weight and balance", "what brings the balance where it is wanted: each change alone, and several together; with a target", BalanceSheet.Draw),
        new(HolesSheet.Key, "Hole table", "where each hole lies from two edges, its size and drill, room for what was measured", HolesSheet.Draw),
        new(HoleCard.Key, "Hole card", "by machine and tool: speed, depth, feed, and a tick for each hole", HoleCard.Draw),
        new(FitsSheet.Key, "Pins and fits", "pinned and reamed holes: what they come out at, the room about the rod, drill and reamer", FitsSheet.Draw),
        new(AssemblySheet.Key, "Will it go together", "chance that the pins go through tang and scales, by every way of making them, and the holes it takes", AssemblySheet.Draw),
        new(MeasuredSheet.Key, "Measured holes", "as built beside planned, position, best fit, and what to do with each hole", MeasuredSheet.Draw),
        new(TemplateKinds.Key, "Template", "the piece at true scale, on one sheet or tiled, with check bars", TemplateKinds.Full, NamesNumbers: true, HasOwnStrip: true),
        new(TemplateKinds.DrillKey, "Drill template", "hole centres at true scale, to glue on for punching", TemplateKinds.DrillOnly, NamesNumbers: true, HasOwnStrip: true),
        new(ReadoutList.Key, "Readout list", "holes of each tool in the order they are visited, front face and back", ReadoutList.Draw),
        new(SetUpSheet.Key, "Set-up for the mill", "stock, clamps and zero under the mill, tools in order, what to do step by step", SetUpSheet.Draw),
        new(GuideCard.Key, "Guide-piece card", "blanks drilled through a finished piece: pins, order, how far beside, as built", GuideCard.Draw),
        new(LayoutCard.Key, "Layout card", "lines to scribe, both faces, with ticks", LayoutCard.Draw),
        new(ScribeCard.Key, "Scribe card", "height gauge settings for the bar as sold and as measured, plunge and shoulder by station", ScribeCard.Draw),
        new(ThicknessTable.Key, "Thickness and grams", "thickness by station before and after hardening, gauges to cut out, grams per side with a tally", ThicknessTable.Draw),
        new(WheelAndJigCard.Key, "Wheels, jig and sections", "angle by station per side and inclusive, wheels judged, sections to scale", WheelAndJigCard.Draw),
        new(FurnaceSheet.Key, "Furnace program", "what the oven is set to, step by step, its error counted in; coming to heat and soak apart", FurnaceSheet.Draw),
        new(RunCard.Key, "Run card, hardening", "by load and piece: set and actual, times, oil before and after, file test; what to expect out of the quench", RunCard.Draw),
        new(CoolingSheet.Key, "Cooling and change", "the cooling curve over the curves of the change, edge and spine", CoolingSheet.Draw),
        new(TemperCard.Key, "Temper card", "what the oven is set to for the hardness wanted, its error counted in, times with alarms, the curve and its limits", TemperCard.Draw),
        new(StraighteningCard.Key, "Straightening card", "when it may be bent, shim by bow, how far the skin is stretched, the hottest it may get", StraighteningCard.Draw),
        new(HardnessSheet.Key, "Hardness sheet", "where to test, what passes, boxes for readings, and what earlier ones have taught", HardnessSheet.Draw),
        new(FinishCard.Key, "Finish ladder", "grits in order with ticks for both faces, what each takes off, time, belts, and when to dip", FinishCard.Draw),
        new(SharpeningCard.Key, "Sharpening card", "angle, block height, facet and what to look for", SharpeningCard.Draw),
        new(HandleCard.Key, "Handle card", "what the handle weighs, rods, which holes are drilled through, what the wood will do, and whether a hand can hold it", HandleCard.Draw),
        new(ScaleTemplate.Key, "Scale template", "both scales at true scale, the back one mirrored, with the holes to drill, saw line and facet lines", ScaleTemplate.Draw, NamesNumbers: true, HasOwnStrip: true),
        new(SectionGauges.Key, "Section gauges", "half sections at true scale to cut out and hold against the handle", SectionGauges.Draw, NamesNumbers: true, HasOwnStrip: true),
        new(RodList.Key, "Rods and pair labels", "rods to cut with ticks, labels for the pairs of scales, a tag for the moisture of the wood", RodList.Draw),
        new(GlueUpCard.Key, "Glue-up card", "what must be ready, mixes and pieces in each, times, clamps, the witness pot", GlueUpCard.Draw),
        new(SheathSheet.Key, "Sheath and edge guard", "what to do, and the patterns at true scale with check bars; without a sheath in the plan the edge guard", SheathSheet.Draw, NamesNumbers: true, HasOwnStrip: true),
        new(CautionsSheet.Key, "Cautions", "drilling, grinding, sawing, heat, dust and sharp edges", CautionsSheet.Draw),
    ];
}
