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
            new("conductivity", false, false, "Heat conductivity near room temperature."),
            new("critical", false, false, "Published temperatures of the change to austenite on heating."),
            new("hardening", false, false, "How it is hardened."),
            new("as_quenched", false, false, "Hardness out of the quench."),
            new("normalise", false, false, "Where it is normalised. Left out for a grade that is not to be."),
            new("anneal", false, false, "How it is made soft."),
            new("tempers", false, false, "How often it is tempered."),
            new("temper", true, false, "One published point: hardness after a temper."),
            new("avoid", true, false, "Temperatures at which it is not tempered."),
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
            Must("conductivity", "value", "conductivity", "W/mK", "\"26 W/mK\""),
            Must("conductivity", "source", "text", SourceMeaning, "\"from memory\""),
            Must("critical", "ac1", "temperature", "Where the change begins", "\"730 C\""),
            May("critical", "ac3", "temperature", "Where it ends", "\"845 C\""),
            Must("critical", "source", "text", SourceMeaning, "\"from memory\""),
            Must("hardening", "window", "two temperatures", "Least and greatest hardening temperature", "[\"815 C\", \"845 C\"]"),
            Must("hardening", "soak", "two times", "Shortest and longest time at heat, the piece at temperature, not the oven", "[\"5 min\", \"10 min\"]"),
            new("hardening", "cooled_in", "word", true, "What hardens it", "", "\"oil\"", ["water", "oil", "air"]),
            Must("hardening", "quench", "list of texts", "Quenchants in the order of choice, by the names of their files", "[\"fast oil\", \"medium oil\"]"),
            May("hardening", "dissolved_carbon", "number", "Carbon in solution at heat, mass per cent; left out: all of it, up to 0.77", "0.60"),
            May("hardening", "dissolved_chromium", "number", "Chromium in solution at heat, mass per cent; left out: all of it", "1.1"),
            new("hardening", "without_oven", "word", true, "In a forge or with a torch, where a soak cannot be held", "", "\"with care\"", ["usual", "with care", "no"]),
            Must("hardening", "source", "text", SourceMeaning, "\"from memory\""),
            Must("as_quenched", "value", "hardness", "Hardness or band", "\"64 to 65 HRC\""),
            Must("as_quenched", "source", "text", SourceMeaning, "\"from memory\""),
            Must("normalise", "at", "temperature", "Temperature, then still air", "\"870 C\""),
            Must("normalise", "source", "text", SourceMeaning, "\"from memory\""),
            Must("anneal", "how", "text", "In words", "\"790 C, then 28 C an hour to 540 C\""),
            Must("anneal", "source", "text", SourceMeaning, "\"from memory\""),
            Must("tempers", "count", "whole number", "1, 2 or 3", "2"),
            Must("tempers", "source", "text", SourceMeaning, "\"common practice\""),
            Must("temper", "at", "temperature", "Temperature", "\"204 C\""),
            Must("temper", "hardness", "hardness", "Hardness", "\"61 HRC\""),
            Must("temper", "hold", "time", "Time at heat in all", "\"2 h\""),
            Must("temper", "source", "text", SourceMeaning, "\"from memory\""),
            Must("avoid", "from", "temperature", "From", "\"260 C\""),
            Must("avoid", "to", "temperature", "To", "\"370 C\""),
            Must("avoid", "why", "text", "What happens there", "\"it turns brittle\""),
            Must("avoid", "source", "text", SourceMeaning, "\"from memory\""),
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
