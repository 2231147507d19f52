using System.Collections.Immutable;

namespace Tangwright.Inputs;

/// <summary>The headings and keys of a handle material's file.</summary>
public static class HandleKeys
{
    private const string SourceMeaning = "Where it comes from: a key of data/sources.toml, \"from memory\" or \"common practice\"";

    /// <summary>The table that checks and documents the file.</summary>
    public static KeyTable Table { get; } = new(
        [
            new("", false, true, "What it is. These lines stand before the first heading."),
            new("density", false, false, "Density as used; wood at 12 % of moisture."),
            new("specific_gravity", false, false, "Wood: dry mass in the volume of 12 % of moisture, against water."),
            new("stiffness", false, false, "Stiffness in bending, along the grain or sheet and across it."),
            new("expansion", false, false, "Growth with heat, in the plane of a sheet."),
            new("tangential", false, false, "Wood: change of width for each per cent of moisture along the rings, that of a flat-sawn piece; 6 to 14 %."),
            new("radial", false, false, "Wood: change of width for each per cent of moisture across the rings, that of a quarter-sawn piece; 6 to 14 %."),
            new("shear", false, false, "Shear strength, least (yield) and greatest (ultimate)."),
            new("water", false, false, "Water a sheet takes up in 24 h."),
            new("drilling", false, false, "Surface speed of a drill."),
            new("diameter", false, false, "Cord: its thickness as laid."),
            new("mass_per_m", false, false, "Cord: mass of a metre."),
        ],
        [
            new("", "tangwright", "whole number", true, "Version of the file's form; 1", "", "1", []),
            new("", "name", "text", true, "Name in trade words, the one a plan uses", "", "\"black walnut\"", []),
            May("", "other_names", "list of texts", "Other names and standard designations", "[\"walnut\"]"),
            new("", "kind", "word", true, "What it is", "", "\"wood\"", ["wood", "laminate", "resin", "metal", "horn", "bone", "fibre", "cord"]),
            May("", "description", "text", "One plain line on what it is", "\"Brown, even, cuts and glues well\""),
            May("", "cautions", "list of texts", "What to watch for, one sentence each", "[\"Wear a mask.\"]"),
            May("", "dust", "list of texts", "Limits its dust comes under: keys of data/handles/exposure-limits.csv", "[\"wood\"]"),
            .. Valued("density", "density", "Density", "\"616 kg/m3\""),
            new("density", "band", "per cent", false, "How far a piece may be from it", "3 for metals and laminates, 8 for others", "10", []),
            .. Valued("specific_gravity", "number", "Dry mass in the volume of 12 % of moisture, against water", "0.55"),
            Must("stiffness", "lengthwise", "GPa", "Along the grain or the length of the sheet", "\"11.6 GPa\""),
            May("stiffness", "crosswise", "GPa", "Across", "\"1 GPa\""),
            Must("stiffness", "source", "text", SourceMeaning, "\"from memory\""),
            .. Valued("expansion", "number", "Millionths of the length for each K", "20"),
            .. Valued("tangential", "number", "Share of the width for each per cent of moisture", "0.00274"),
            .. Valued("radial", "number", "Share of the width for each per cent of moisture", "0.00190"),
            Must("shear", "range", "two strengths", "Least and greatest; twice the same when only one is known", "[\"180 MPa\", \"235 MPa\"]"),
            Must("shear", "source", "text", SourceMeaning, "\"from memory\""),
            .. Valued("water", "per cent", "Mass taken up in 24 h", "1.9"),
            Must("drilling", "range", "two speeds", "Slowest and fastest, at the rim of the drill", "[\"200 ft/min\", \"300 ft/min\"]"),
            Must("drilling", "source", "text", SourceMeaning, "\"common practice\""),
            .. Valued("diameter", "length", "Thickness as laid", "\"4 mm\""),
            .. Valued("mass_per_m", "number", "Grams a metre", "7"),
        ]);

    private static KeyRow[] Valued(string table, string kind, string meaning, string example)
        => [Must(table, "value", kind, meaning, example), Must(table, "source", "text", SourceMeaning, "\"from memory\"")];

    private static KeyRow Must(string table, string key, string kind, string meaning, string example) => new(table, key, kind, true, meaning, "", example, []);

    private static KeyRow May(string table, string key, string kind, string meaning, string example) => new(table, key, kind, false, meaning, "", example, []);
}

/// <summary>The manual page of a handle material's file, docs/handle-material-file.md.</summary>
public static class HandleKeysPage
{
    /// <summary>The page as Markdown.</summary>
    public static string Markdown() => KeyPage.Markdown("The handle material's file", """
        <!-- generated from src/Inputs/Data/HandleKeys.cs: do not edit by hand -->

        One file for each wood, laminate, resin, metal, horn, bone, fibre or cord, `data/handles/NAME.toml`; your own in a folder `handles` beside the shop file or the plan. Every value carries its source.
        A plan names the material by its name or one of its other names; capitals do not matter.
        """, HandleKeys.Table);
}
