using System.Collections.Immutable;

namespace Tangwright.Inputs;

/// <summary>The headings and keys of a quenchant file.</summary>
public static class QuenchKeys
{
    private const string SourceMeaning = "Where it comes from: a key of data/sources.toml, \"from memory\" or \"common practice\"";

    /// <summary>The table that checks and documents a quenchant file.</summary>
    public static KeyTable Table { get; } = new(
        [
            new("", false, true, "What it is. These lines stand before the first heading."),
            new("heat_transfer", false, false, "Heat it takes from a hot face. Left out only for still air, which is worked out."),
            new("severity", false, false, "Grossmann's severity of quench H, moved by hand."),
            new("bath", false, false, "Window of the bath's temperature."),
        ],
        [
            Must("", "tangwright", "whole number", "Version of the file's form; 1", "1"),
            Must("", "name", "text", "Name in trade words, the one a shop or plan uses", "\"fast oil\""),
            May("", "other_names", "list of texts", "Other names", "[\"oil\"]"),
            new("", "kind", "word", true, "What it is", "", "\"oil\"", ["oil", "water", "plates", "air"]),
            May("", "description", "text", "One plain line on what it is", "\"Quench oil of 7 to 11 s\""),
            May("", "cautions", "list of texts", "What to watch for, one sentence each", "[\"Oil can catch fire.\"]"),
            Must("heat_transfer", "curve", "pairs of numbers", "Temperature of the face in C and heat taken in W/m2K, coldest first", "[[20, 300], [500, 5000]]"),
            Must("heat_transfer", "source", "text", SourceMeaning, "\"from memory\""),
            Must("severity", "range", "two numbers", "Least and greatest, 1/in", "[0.5, 0.7]"),
            Must("severity", "source", "text", SourceMeaning, "\"from memory\""),
            Must("bath", "window", "two temperatures", "Least and greatest", "[\"40 C\", \"60 C\"]"),
            Must("bath", "source", "text", SourceMeaning, "\"from memory\""),
        ]);

    private static KeyRow Must(string table, string key, string kind, string meaning, string example) => new(table, key, kind, true, meaning, "", example, []);

    private static KeyRow May(string table, string key, string kind, string meaning, string example) => new(table, key, kind, false, meaning, "", example, []);
}

/// <summary>The manual page of the quenchant file, docs/quenchant-file.md.</summary>
public static class QuenchKeysPage
{
    /// <summary>The page as Markdown.</summary>
    public static string Markdown() => KeyPage.Markdown("The quenchant file", """
        <!-- generated from src/Inputs/Data/QuenchKeys.cs: do not edit by hand -->

        One file for each quenchant, `data/quenchants/NAME.toml`; your own in a folder `quenchants` beside the shop file or the plan. Every value carries its source.
        A shop names the quenchant by its name or one of its other names; capitals do not matter.
        """, QuenchKeys.Table);
}
