using System.Collections.Immutable;

namespace Tangwright.Inputs;

/// <summary>The headings and keys of a plan file.</summary>
public static class PlanKeys
{
    /// <summary>Words of <c>use</c>, in the order of <see cref="Core.HoleUse"/>.</summary>
    public static ImmutableArray<string> Uses { get; } = ["lightening", "pin", "lanyard", "glue", "locating", "hanging"];

    /// <summary>Words of <c>make</c>, in the order of <see cref="Core.HoleMake"/>.</summary>
    public static ImmutableArray<string> Makes { get; } = ["drill", "ream", "bore"];

    /// <summary>The table that checks and documents a plan file.</summary>
    public static KeyTable Table { get; } = new(
        [
            new("", false, true, "What the file is. These lines stand before the first heading."),
            new("target", false, false, "What you want the finished piece to be. It is compared, never forced."),
            new("stock", false, true, "The bar the piece is cut from."),
            new("outline", false, true, "The shape of the piece."),
            new("datum", false, false, "Where measuring starts: the extreme of a side, or a coordinate."),
            new("edge", false, false, "The part of the outline that is sharpened, from one point to the other in the direction the outline is written."),
            new("bevel", false, false, "The main bevel; it needs `[edge]`."),
            new("distal_taper", false, false, "Both faces thinned evenly toward the tip, from the thickness of the bar."),
            new("tang_taper", false, false, "Both faces of the tang thinned evenly toward the butt."),
            new("grip", false, false, "Where the hand holds: the middle is what a struck tool turns about."),
            new("broken_edges", false, false, "How much the sharp edges are broken, both faces."),
            new("layout", false, false, "How the piece lies in the stock when it is laid out and drilled. It decides which edges can be measured from."),
            new("scales", false, false, "How the scales are put on."),
            new("added_mass", true, false, "What is put on the steel: scales, pins, a bolster. It is weighed with the finished steel, and balance and weight wanted are those of the whole. Write the heading once for each."),
            new("heat", false, false, "How the piece is hardened and tempered."),
            new("finish", false, false, "The finish of the faces."),
            new("sheath", false, false, "The sheath; it needs `[edge]`. An edge guard is drawn without it."),
            new("hole", true, false, "One hole. Write the heading once for each."),
            new("hole_row", true, false, "A row of holes, named after the row: R1, R2, ... Write the heading once for each row."),
        ],
        [
            Must("", "tangwright", "whole number", "Version of the file's form; 1", "1"),
            Must("", "name", "text", "Name of the pattern", "\"Skeleton hatchet 275\""),
            May("", "revision", "text", "Revision, printed on every sheet", "-", "\"A\""),
            Word("", "units", true, "Unit of bare numbers and of the outline", "", "\"mm\"", ["mm", "in"]),
            May("target", "weight", "weight", "Finished weight, with what is allowed", "", "\"450 g +/- 15\""),
            May("target", "balance_from_datum", "length", "Balance point along the piece, from the datum into it", "", "\"110 mm +/- 5\""),
            May("target", "hardness", "hardness", "Hardness wanted", "", "\"57 HRC +/- 1\""),
            Must("stock", "steel", "text", "Name of the steel, as in its steel file", "\"80CrV2\""),
            Must("stock", "thickness", "length", "Nominal thickness of the bar", "\"1/4 in\""),
            May("stock", "width", "length", "Width of the bar", "", "\"3 in\""),
            May("stock", "length", "length", "Length of the bar", "", "\"48 in\""),
            May("stock", "condition", "text", "Condition as delivered: annealed, hot rolled, ground, ...", "", "\"annealed\""),
            Must("outline", "path", "path data", "One closed path: M L H V C S Q T A Z of SVG 1.1, read with y up. An arc's sweep flag 1 means counter-clockwise", "\"M 0 0 L 100 0 L 100 30 L 0 30 Z\""),
            May("datum", "x", "left, right or a length", "Along the piece", "left", "\"left\""),
            May("datum", "y", "bottom, top or a length", "Across the piece", "bottom", "\"bottom\""),
            May("datum", "name", "text", "What you call the point", "", "\"heel\""),
            Must("edge", "from", "point", "First point, within 0.05 mm of the outline", "[2, 68.78]"),
            Must("edge", "to", "point", "Last point, within 0.05 mm of the outline", "[72, 68.78]"),
            Word("bevel", "grind", false, "Shape of the ground face", "flat", "\"flat\"", ["flat", "hollow", "convex"]),
            May("bevel", "one_sided", "true or false", "Ground on one face only", "false", "true"),
            May("bevel", "height", "length or \"full\"", "Height square to the edge; full goes to the spine", "`angle_per_side` must be there", "26"),
            May("bevel", "angle_per_side", "angle", "Instead of a height: angle of one face of a flat bevel that is the same everywhere, in degrees; the height follows the thickness", "`height` must be there", "5.9"),
            May("bevel", "wheel", "length", "Diameter of the wheel a hollow bevel is ground on", "it is weighed as a flat one, and a finding says so", "\"254 mm\""),
            May("bevel", "radius", "length", "Radius of the bulge of a convex bevel", "it runs tangent into the flat", "\"200 mm\""),
            Word("bevel", "ground", false, "Before or after hardening", "before", "\"before\"", ["before", "after"]),
            May("bevel", "edge_before_hardening", "length", "Edge thickness left for hardening, when ground before", "", "1.0"),
            Must("bevel", "edge_finished", "length", "Edge thickness before sharpening", "0.5"),
            May("bevel", "sharpen_per_side", "angle", "Sharpening angle of one face, in degrees", "", "16"),
            May("bevel", "plunge", "length or two points", "Where the bevel ends: x of a line square to the piece, or two points of a line", "the bevel runs out at the ends of the edge", "198"),
            Must("distal_taper", "starts", "length", "x where it begins; the faces have the bar's thickness there", "190"),
            May("distal_taper", "ends", "length", "x where it has the thickness below; it stays so beyond", "the outline's end on the tip side", "12"),
            Must("distal_taper", "thickness", "length", "Thickness of the faces where it ends", "1.5"),
            Must("tang_taper", "starts", "length", "x where it begins; the faces have the bar's thickness there", "206"),
            May("tang_taper", "ends", "length", "x where it has the thickness below; it stays so beyond", "the outline's end on the butt side", "320"),
            Must("tang_taper", "thickness", "length", "Thickness of the faces where it ends", "1.5"),
            Must("grip", "from", "point", "Front end of the grip", "[150, 18]"),
            Must("grip", "to", "point", "Rear end of the grip", "[250, 18]"),
            May("broken_edges", "rims", "length", "Rims of the holes", "", "0.5"),
            May("broken_edges", "outline", "length", "Long edges of the outline, the sharpened part left out", "", "\"1/64 in\""),
            Word("broken_edges", "form", false, "The length is the leg of a 45 degree chamfer, or the radius of a round", "chamfer", "\"chamfer\"", ["chamfer", "round"]),
            Word("layout", "drilled_in", false, "The uncut bar, a sawn rectangle, or the profiled piece", "bar", "\"bar\"", ["bar", "rectangle", "profile"]),
            May("layout", "end_allowance", "length", "Steel between the sawn end and the piece", "the shop's", "3"),
            May("layout", "edge_margin", "length", "Steel between the long edge of the stock and the piece", "centred in the bar, or the shop's", "1"),
            Word("scales", "holes", false, "How the holes of the scales are placed; \"through other part\" is drilled through the blade", "all ways are compared", "\"through other part\"", ShopKeys.PlacingWays),
            May("scales", "hole", "length", "Diameter of the holes in the scales", "the smallest reamer or drill you own that the rod enters", "\"5 mm\""),
            May("scales", "chance", "number", "Chance you ask for that all pins go through, 0 to 1", "0.95", "0.99"),
            Must("added_mass", "name", "text", "Its name; each name stands once", "\"scales\""),
            May("added_mass", "mass", "weight", "Weight of all of it", "from `density` and `thickness`", "\"9 g\""),
            May("added_mass", "density", "density", "Density, for what lies `over` a stretch, in g/cm3 or kg/m3", "", "\"0.61 g/cm3\""),
            May("added_mass", "thickness", "length", "Thickness on one side", "", "8"),
            May("added_mass", "sides", "whole number", "On how many sides, 1 or 2", "2", "2"),
            May("added_mass", "at", "point", "Where its middle lies", "`over` must be there", "[266, 34]"),
            May("added_mass", "over", "two lengths", "From one x to another: it covers the outline between them, and its middle is that of the outline there", "`at` must be there", "[206, 330]"),
            May("heat", "temper", "temperature", "Temperature of the last temper; the heat an edge stands under the belt follows from it", "the low end of common practice is counted with, and the sheet says so", "\"200 C\""),
            May("heat", "hold", "time", "Time at heat of one temper", "2 h", "\"2 h\""),
            May("heat", "tempers", "whole number", "How often it is tempered, 1 to 4", "as the steel's file says", "2"),
            May("heat", "harden", "temperature", "Hardening temperature of the piece", "the middle of the steel's window", "\"815 C\""),
            May("heat", "soak", "time", "Time at heat, the piece at temperature, not the oven", "as the steel's file says", "\"10 min\""),
            May("heat", "quenchant", "text", "What it is quenched in, by the name of its file", "the shop's", "\"fast oil\""),
            May("heat", "sub_zero", "temperature", "Cooled on to this before the temper", "not cooled on", "\"-75 C\""),
            May("finish", "grit", "grit", "Last grit of the finish, in the series it is marked in", "P400", "\"P400\""),
            Word("sheath", "kind", false, "Leather folded along the spine, with a welt and stitched; or plastic sheet folded hot and riveted", "leather", "\"leather\"", ["leather", "sheet"]),
            May("sheath", "material_thickness", "length", "Thickness of leather or sheet", "3.4 mm of leather, 2 mm of sheet", "\"3.2 mm\""),
            May("sheath", "seam", "length", "From the blade's outline to the cut edge", "15 mm of leather; 25 mm of sheet, trimmed to 15 mm after pressing", "15"),
            May("sheath", "stitch_from_edge", "length", "From the finished edge to the line of stitches or rivets", "5 mm for stitches, 8 mm for rivets", "5"),
            May("sheath", "pitch", "length", "Stitch to stitch, or rivet to rivet; changed a little so that it comes out even", "4 mm for stitches, 25 mm for rivets", "4"),
            May("sheath", "mouth", "length", "x where the sheath ends", "10 mm past edge and plunge line, not into the grip; where the edge ends when the blade is narrower past it", "206"),
            May("sheath", "belt_loop", "length", "Width of the belt a loop is wanted for", "no loop", "38"),
            May("hole", "name", "text", "Its name; each name stands once", "H and its place among the holes", "\"L1\""),
            Must("hole", "at", "point", "Centre", "[100, 18.2]"),
            Must("hole", "diameter", "length or drill", "Its diameter", "\"#30\""),
            Word("hole", "use", false, "What it is for", "lightening", "\"pin\"", Uses),
            Word("hole", "make", false, "How it is brought to size", "drill", "\"ream\"", Makes),
            May("hole", "pin", "length", "Diameter of the rod that goes through it, as measured", "", "\"4.97 mm\""),
            Word("hole", "drilled", false, "Before or after hardening", "before", "\"before\"", ["before", "after"]),
            May("hole_row", "name", "text", "Name of the row; each name stands once", "R, or R and its place among several rows", "\"R\""),
            Must("hole_row", "along", "two points or \"midline\"", "First and last centre, or the midline of the grip", "[[124, 18], [229, 18]]"),
            May("hole_row", "from", "point", "On the midline: the first centre is its nearest point", "the grip's front end", "[124, 18]"),
            May("hole_row", "to", "point", "On the midline: the last centre is its nearest point", "the grip's rear end", "[229, 18]"),
            Must("hole_row", "count", "whole number", "How many, at least 2", "6"),
            Must("hole_row", "diameters", "length or drill, or a list", "One: all alike; two: graded evenly; as many as the count: as written", "[15, 10]"),
            Word("hole_row", "spacing", false, "Equal steel between neighbours, or equal distance from centre to centre", "equal webs", "\"equal webs\"", ["equal webs", "equal pitch"]),
            Word("hole_row", "use", false, "What they are for", "lightening", "\"lightening\"", Uses),
            Word("hole_row", "make", false, "How they are brought to size", "drill", "\"drill\"", Makes),
        ]);

    private static KeyRow Must(string table, string key, string kind, string meaning, string example) => new(table, key, kind, true, meaning, "", example, []);

    private static KeyRow May(string table, string key, string kind, string meaning, string absent, string example) => new(table, key, kind, false, meaning, absent, example, []);

    private static KeyRow Word(string table, string key, bool required, string meaning, string absent, string example, ImmutableArray<string> words)
        => new(table, key, "word", required, meaning, absent, example, words);
}
