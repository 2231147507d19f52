using System.Collections.Immutable;

namespace Tangwright.Inputs;

/// <summary>The headings and keys of a shop file.</summary>
public static class ShopKeys
{
    /// <summary>The table that checks and documents a shop file.</summary>
    public static KeyTable Table { get; } = new(
        [
            new("", false, false, "What the file is. These lines stand before the first heading."),
            new("tooling", false, false, "Drills and reamers you own. A list is yours as a whole: what is not in it you do not have."),
            new("machine", true, false, "A machine that makes holes. Write the heading once for each."),
            new("saw", true, false, "A saw. Write the heading once for each."),
            new("wheel", true, false, "A contact or small wheel of the belt grinder. Write the heading once for each."),
            new("oven", false, false, "The hardening oven."),
            new("temper_oven", false, false, "The tempering oven, when it is another one."),
            new("quenchant", false, false, "What you quench in."),
            new("printer", true, false, "A printer for templates. Write the heading once for each; the first is used unless another is asked for."),
            new("allowances", false, false, "Steel you leave for later."),
        ],
        [
            Must("", "tangwright", "whole number", "Version of the file's form; 1", "1"),
            May("", "name", "text", "Name of the shop", "own shop", "\"Shed\""),
            Word("", "units", false, "Unit of bare numbers", "mm", "\"mm\"", ["mm", "in"]),
            Word("", "show", false, "Units that sheets show", "both", "\"both\"", ["mm", "in", "both"]),
            May("tooling", "drills", "list of sizes", "Single sizes; number or letter drills from one to another; fractions and mm from one to another by a step", "the built-in shop's", "[\"#1 to #60\", \"1 mm to 13 mm by 0.5 mm\", \"1/4 in\"]"),
            May("tooling", "reamers", "list of sizes", "As drills", "the built-in shop's", "[\"5 mm\", \"1/4 in\"]"),
            Must("machine", "name", "text", "What you call it", "\"bench press\""),
            Word("machine", "kind", true, "Drill press; drilling vise: a press with a vise, a stop and a finished piece as guide; mill-drill: by hand; cnc mill", "", "\"drill press\"", ["drill press", "drilling vise", "mill-drill", "cnc mill"]),
            Must("machine", "speeds_rpm", "list of numbers, or a text \"100 to 3000\"", "Spindle speeds in turns a minute: each step of the pulley, or from and to when any speed between can be set", "[500, 900, 1500, 2500]"),
            May("machine", "chuck", "length", "Largest drill it holds", "", "\"13 mm\""),
            May("machine", "throat", "length", "Spindle to column", "", "104"),
            May("machine", "travel", "two lengths", "Travel of the table, along and across", "", "[300, 200]"),
            May("machine", "power_w", "number", "Motor power in watts", "", "350"),
            May("machine", "readout", "true or false", "Whether the table has a digital readout", "false", "true"),
            Must("saw", "name", "text", "What you call it", "\"portable band saw\""),
            Must("saw", "kerf", "length", "Width it removes", "1.1"),
            May("saw", "throat", "length", "Depth of its throat", "", "120"),
            Must("wheel", "name", "text", "What you call it", "\"contact wheel\""),
            Must("wheel", "diameter", "length", "Diameter over the belt", "250"),
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
