using System.Collections.Immutable;

namespace Tangwright.Inputs;

/// <summary>The headings and keys of a steel file.</summary>
public static class SteelKeys
{
    /// <summary>The elements a composition may name.</summary>
    public static ImmutableArray<string> Elements { get; } = ["C", "Si", "Mn", "P", "S", "Cr", "Mo", "Ni", "V", "W", "Co", "Cu", "N", "Nb", "Ti", "Al", "B"];

    private const string SourceMeaning = "Where it comes from: a key of data/sources.toml, \"from memory\" or \"common practice\"";

    /// <summary>The table that checks and documents a steel file.</summary>
    public static KeyTable Table { get; } = new(
        [
            new("", false, true, "What the grade is. These lines stand before the first heading."),
            new("density", false, false, "Density. Without it nothing is weighed."),
            new("composition", false, false, "Composition in mass per cent: two numbers, least and greatest; a third is the nominal one."),
            new("delivered_hardness", false, false, "Usual hardness as delivered."),
        ],
        [
            Must("", "tangwright", "whole number", "Version of the file's form; 1", "1"),
            Must("", "name", "text", "Standard designation, the name a plan uses", "\"80CrV2\""),
            May("", "other_names", "list of texts", "Other standard designations and numbers of the same grade", "[\"1.2235\"]"),
            May("", "description", "text", "One plain line on what it is", "\"Tough carbon steel with chromium and vanadium\""),
            May("", "cautions", "list of texts", "What to watch for, one sentence each", "[\"It rusts.\"]"),
            Must("density", "value", "density", "Density, in g/cm3 or kg/m3", "\"7.85 g/cm3\""),
            Must("density", "source", "text", SourceMeaning, "\"from memory\""),
            Must("composition", "source", "text", SourceMeaning, "\"from memory\""),
            .. Elements.Select(e => May("composition", e, "two or three numbers", $"Mass per cent of {e}", e == "C" ? "[0.75, 0.85]" : "[0.10, 0.40]")),
            Must("delivered_hardness", "value", "Brinell hardness", "Hardness", "\"240 HB\""),
            Must("delivered_hardness", "source", "text", SourceMeaning, "\"from memory\""),
        ]);

    private static KeyRow Must(string table, string key, string kind, string meaning, string example) => new(table, key, kind, true, meaning, "", example, []);

    private static KeyRow May(string table, string key, string kind, string meaning, string example) => new(table, key, kind, false, meaning, "", example, []);
}

/// <summary>The manual page of the steel file, docs/steel-file.md.</summary>
public static class SteelKeysPage
{
    /// <summary>The page as Markdown.</summary>
    public static string Markdown() => KeyPage.Markdown("The steel file", """
        <!-- generated from src/Inputs/Data/SteelKeys.cs: do not edit by hand -->

        One file for each grade, `data/steels/NAME.toml`. Every value carries its source. A property that is not known is left out, never guessed.
        A plan names the steel by its name or one of its other names; capitals do not matter.
        """, SteelKeys.Table);
}
