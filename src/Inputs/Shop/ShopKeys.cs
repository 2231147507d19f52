using System.Collections.Immutable;

namespace Tangwright.Inputs;

/// <summary>The headings and keys of a shop file.</summary>
public static class ShopKeys
{
    /// <summary>Words of <c>way</c>, in the order of <see cref="Core.PlacingWay"/>.</summary>
    public static ImmutableArray<string> PlacingWays { get; } = ["punch", "careful punch", "through other part", "guide piece", "drilled together", "readout", "cnc", "cnc bored"];

    /// <summary>Words of a saw's <c>kind</c>, in the order of <see cref="Core.SawKind"/>.</summary>
    public static ImmutableArray<string> SawKinds { get; } = ["band saw", "portable band saw", "hacksaw", "chop saw", "disc", "plasma"];

    /// <summary>The table that checks and documents a shop file.</summary>
    public static KeyTable Table { get; } = new(
        [
            new("", false, false, "What the file is. These lines stand before the first heading."),
            new("tooling", false, false, "Drills and reamers you own. A list is yours as a whole: what is not in it you do not have."),
            new("machine", true, false, "A machine that makes holes. Write the heading once for each."),
            new("spot_drill", true, false, "A short stiff drill to start holes. Write the heading once for each."),
            new("countersink", true, false, "A countersink for the rims of holes. Write the heading once for each."),
            new("end_mill", true, false, "An end mill. Write the heading once for each."),
            new("clamp", true, false, "A clamp that holds the stock under the mill, as a box. Write the heading once for each."),
            new("placing", true, false, "How well you place holes, for one way of doing it. What is not written is taken from common practice. Write the heading once for each way, or for each machine."),
            new("saw", true, false, "A saw. Write the heading once for each."),
            new("wheel", true, false, "A contact or small wheel of the belt grinder. Write the heading once for each."),
            new("belt", true, false, "A belt of the grinder. Write the heading once for each; the coarsest grinds to the line."),
            new("grinder", false, false, "The belt grinder."),
            new("oven", false, false, "The hardening oven."),
            new("temper_oven", false, false, "The tempering oven, when it is another one."),
            new("quenchant", false, false, "What you quench in."),
            new("printer", true, false, "A printer for templates. Write the heading once for each; the first is used unless another is asked for."),
            new("allowances", false, false, "Steel you leave for later."),
            new("rack", true, false, "A bar in the rack, used before new ones are bought. Write the heading once for each."),
            new("bar", true, false, "A bar that can be bought, and its price. Write the heading once for each."),
            new("starts", false, false, "How many pieces you start for so many good ones."),
        ],
        [
            Must("", "tangwright", "whole number", "Version of the file's form; 1", "1"),
            May("", "name", "text", "Name of the shop", "own shop", "\"Shed\""),
            Word("", "units", false, "Unit of bare numbers", "mm", "\"mm\"", ["mm", "in"]),
            Word("", "show", false, "Units that sheets show", "both", "\"both\"", ["mm", "in", "both"]),
            May("", "money", "text", "What prices are counted in", "", "\"EUR\""),
            May("tooling", "drills", "list of sizes", "Single sizes; number or letter drills from one to another; fractions and mm from one to another by a step", "the built-in shop's", "[\"#1 to #60\", \"1 mm to 13 mm by 0.5 mm\", \"1/4 in\"]"),
            May("tooling", "reamers", "list of sizes", "As drills", "the built-in shop's", "[\"5 mm\", \"1/4 in\"]"),
            Word("tooling", "drill_metal", false, "What the drills are made of", "hss", "\"cobalt\"", ["hss", "cobalt", "carbide"]),
            May("tooling", "drill_point", "angle", "Point angle of the drills, in degrees, both sides together", "118", "135"),
            May("tooling", "split_point", "true or false", "Whether the points are split, so that they hardly wander", "false", "true"),
            Word("tooling", "drill_reach", false, "How long they are: stub, jobber (usual), long", "jobber", "\"stub\"", ["stub", "jobber", "long"]),
            Must("machine", "name", "text", "What you call it", "\"bench press\""),
            Word("machine", "kind", true, "Drill press; drilling vise: a press with a vise, a stop and a finished piece as guide; mill-drill: by hand; cnc mill", "", "\"drill press\"", ["drill press", "drilling vise", "mill-drill", "cnc mill"]),
            Must("machine", "speeds_rpm", "list of numbers, or a text \"100 to 3000\"", "Spindle speeds in turns a minute: each step of the pulley, or from and to when any speed between can be set", "[500, 900, 1500, 2500]"),
            May("machine", "chuck", "length", "Largest drill it holds", "", "\"13 mm\""),
            May("machine", "throat", "length", "Spindle to column", "", "104"),
            May("machine", "travel", "two lengths", "Travel of the table, along and across", "", "[300, 200]"),
            May("machine", "power_w", "number", "Motor power in watts", "", "350"),
            May("machine", "readout", "true or false", "Whether the table has a digital readout", "false", "true"),
            May("machine", "table", "two lengths", "Size of the table, along and across", "", "[200, 200]"),
            May("machine", "vise_opens", "length", "How wide its vise opens", "", "70"),
            May("machine", "travel_z", "length", "Travel of the spindle", "", "50"),
            May("machine", "most_thrust", "force", "Push on the drill that it bears without springing away, in N or lb", "", "\"1500 N\""),
            May("machine", "backlash", "length", "Play of the table screws", "", "\"0.15 mm\""),
            May("machine", "efficiency", "number", "Share of the motor's power that reaches the spindle, 0 to 1", "by common practice for its drive", "0.8"),
            May("machine", "tool_change_s", "number", "Seconds to change a tool", "30", "20"),
            May("machine", "rapid_mm_per_min", "number", "Speed of a move that does not cut, in mm a minute", "1000", "3000"),
            Word("machine", "program_units", false, "Unit its program is written in", "mm", "\"in\"", ["mm", "in"]),
            May("machine", "drill_cycles", "true or false", "Whether its program may use drill cycles G81 G82 G83", "true", "false"),
            May("machine", "arcs", "true or false", "Whether its program may use arcs G2 G3", "true", "false"),
            May("machine", "helix", "true or false", "Whether an arc may go down at the same time", "true", "false"),
            May("machine", "tool_change", "true or false", "Whether M6 stops for the next tool; else M0 is written", "true", "false"),
            Must("spot_drill", "name", "text", "What you call it", "\"6 mm spot drill\""),
            Must("spot_drill", "diameter", "length", "Diameter of its body", "6"),
            May("spot_drill", "point", "angle", "Point angle in degrees, both sides together", "90", "142"),
            Must("countersink", "name", "text", "What you call it", "\"90 degree countersink\""),
            Must("countersink", "diameter", "length", "Greatest diameter", "20"),
            May("countersink", "point", "angle", "Angle in degrees, both sides together", "90", "82"),
            Must("end_mill", "name", "text", "What you call it", "\"6 mm end mill\""),
            Must("end_mill", "diameter", "length", "Diameter", "6"),
            May("end_mill", "flutes", "whole number", "Cutting edges", "3", "4"),
            May("end_mill", "cutting_length", "length", "Length that cuts", "", "20"),
            May("end_mill", "carbide", "true or false", "Solid carbide, not high-speed steel", "true", "false"),
            May("end_mill", "feed_per_tooth", "length", "Feed of one tooth in the steel you use", "by common practice for its diameter", "\"0.03 mm\""),
            Must("clamp", "name", "text", "What you call it", "\"strap clamp\""),
            Must("clamp", "size", "two lengths", "Along the stock's edge, and how far it reaches onto the stock", "[25, 20]"),
            Must("clamp", "height", "length", "How far it stands above the stock's upper face", "15"),
            Word("placing", "way", true, "Which way of placing holes", "", "\"readout\"", PlacingWays),
            May("placing", "machine", "text", "Name of the machine it holds for", "any machine", "\"mill-drill\""),
            Must("placing", "zone", "length", "Diameter of the circle that 99 of 100 hole centres fall in", "\"0.12 mm\""),
            May("placing", "measured_sigma", "length", "Scatter along one axis that measured holes prove with 95 in 100; written by the program", "", "\"0.03 mm\""),
            May("placing", "measured_holes", "whole number", "How many holes that was learnt from; written by the program", "", "12"),
            Must("saw", "name", "text", "What you call it", "\"portable band saw\""),
            Must("saw", "kerf", "length", "Width it removes", "1.1"),
            May("saw", "throat", "length", "Depth of its throat: blade to frame", "", "120"),
            Word("saw", "kind", false, "Band saw: with a table; portable band saw: its frame ends the cut; hacksaw; chop saw: across the bar only, a horizontal band saw too; disc: angle grinder with a cut-off disc; plasma: torch along a guide", "band saw", "\"portable band saw\"", SawKinds),
            May("saw", "longest_cut", "length", "Longest cut it makes", "", "300"),
            May("saw", "most_angle", "angle", "Greatest angle off a square cut across the bar, in degrees: 0 square only, 90 any", "90; 0 for a chop saw", "45"),
            May("saw", "wander", "length", "How far its cut strays, both sides together", "by common practice for its kind", "\"0.8 mm\""),
            May("saw", "rate_cm2_per_min", "number", "Steel it parts in a minute: length of the cut times thickness", "by common practice for its kind", "8"),
            May("saw", "set_up_min", "number", "Minutes to mark, clamp and start one cut", "by common practice for its kind", "1.5"),
            May("saw", "teeth_per_inch", "list of numbers", "Teeth per inch of the blades you own", "", "[14, 18, 24]"),
            May("saw", "disc_diameter", "length", "Diameter of the cut-off disc", "125 mm for a disc", "\"4 1/2 in\""),
            Must("wheel", "name", "text", "What you call it", "\"contact wheel\""),
            Must("wheel", "diameter", "length", "Diameter over the belt", "250"),
            Must("belt", "name", "text", "What you call it", "\"ceramic P36\""),
            Must("belt", "grit", "number", "P grade of its grain", "36"),
            May("belt", "grams_per_min", "number", "Steel it takes off in a minute, average over its life", "by common practice for its grit", "18"),
            May("belt", "grams_per_belt", "number", "Steel it takes off before it is worn out", "by common practice for its grit", "1200"),
            May("grinder", "power_w", "number", "Motor power in watts", "", "1100"),
            .. Oven("oven"),
            .. Oven("temper_oven"),
            Must("quenchant", "name", "text", "Kind: medium oil, fast oil, plates, ...; \"none\" when you have none", "\"medium oil\""),
            May("quenchant", "volume", "volume", "How much, in L or gal", "", "\"15 L\""),
            Must("printer", "name", "text", "What you call it", "\"office printer\""),
            Word("printer", "paper", true, "Paper it holds", "", "\"a4\"", ["a4", "letter", "a3", "roll"]),
            May("printer", "roll_width", "length", "Width of the roll; needed with roll", "", "\"24 in\""),
            May("printer", "margin", "length", "Margin it cannot print", "10 mm", "6"),
            May("printer", "bar_across", "length", "What the 100 mm bar across the sheet measured", "100 mm", "\"97.2 mm\""),
            May("printer", "bar_along", "length", "What the 100 mm bar along the feed measured", "100 mm", "\"97.0 mm\""),
            May("allowances", "end", "length", "Steel left beyond the piece at a sawn end", "the built-in shop's", "3"),
            May("allowances", "edge", "length", "Steel left beside the piece in a sawn rectangle", "the built-in shop's", "2"),
            May("allowances", "bar_edge", "length", "Steel left between a piece and a long edge of the bar when pieces are laid out", "0.5 mm", "1"),
            May("allowances", "rough", "length", "Steel left outside the line at a rough saw cut, for the grinder", "1 mm", "\"1.5 mm\""),
            May("allowances", "profile", "length", "How far the width of the profiled piece may be off, either way", "0.3 mm", "\"0.2 mm\""),
            Must("rack", "name", "text", "What is written on it", "\"drop of March\""),
            Must("rack", "steel", "text", "Name of its steel, as in the plan", "\"80CrV2\""),
            Must("rack", "thickness", "length", "Its thickness", "\"1/4 in\""),
            Must("rack", "width", "length", "Its width", "\"3 in\""),
            Must("rack", "length", "length", "Its length", "\"855 mm\""),
            Must("bar", "steel", "text", "Name of its steel, as in the plan", "\"80CrV2\""),
            Must("bar", "thickness", "length", "Its thickness", "\"1/4 in\""),
            Must("bar", "width", "length", "Its width", "\"3 in\""),
            Must("bar", "length", "length", "Its length", "\"48 in\""),
            May("bar", "price", "number", "What one bar costs", "", "42"),
            May("bar", "price_per_kg", "number", "What a kilogram costs, when there is no price for the bar; holds for other lengths too", "", "9.5"),
            May("starts", "yield", "number", "Share of started pieces that come out good, 0.05 to 1", "0.9 is assumed, and said", "0.95"),
            May("starts", "chance", "number", "Chance of enough good pieces that you ask for, under 1", "0.9", "0.95"),
        ]);

    private static ImmutableArray<KeyRow> Oven(string heading) =>
    [
        Must(heading, "name", "text", "What you call it; \"none\" when you have none", "\"kiln\""),
        May(heading, "width", "length", "Width of the chamber", "", "150"),
        May(heading, "height", "length", "Height of the chamber", "", "140"),
        May(heading, "depth", "length", "Depth of the chamber", "", "450"),
        May(heading, "reads_high_by", "temperature difference", "How much too high it reads; negative when it reads low", "not measured", "\"14 C\""),
    ];

    private static KeyRow Must(string table, string key, string kind, string meaning, string example) => new(table, key, kind, true, meaning, "", example, []);

    private static KeyRow May(string table, string key, string kind, string meaning, string absent, string example) => new(table, key, kind, false, meaning, absent, example, []);

    private static KeyRow Word(string table, string key, bool required, string meaning, string absent, string example, ImmutableArray<string> words)
        => new(table, key, "word", required, meaning, absent, example, words);
}
