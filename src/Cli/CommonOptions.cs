using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Tangwright.UseCases;

namespace Tangwright.Cli;

/// <summary>Arguments and options that several verbs share.</summary>
internal static class CommonOptions
{
    /// <summary>The plan.</summary>
    public static Argument<string> Plan() => new("PLAN") { Description = "the plan file, NAME.plan.toml" };

    /// <summary>The shop.</summary>
    public static Option<string?> Shop() => new("--shop") { Description = "shop file; else NAME.shop.toml or shop.toml beside the plan, else your own, else the built-in one", HelpName = "FILE" };

    /// <summary>Where to.</summary>
    public static Option<string?> Out(string description) => new("--out") { Description = description, HelpName = "DIR" };

    /// <summary>Replace existing files.</summary>
    public static Option<bool> Overwrite() => new("--overwrite") { Description = "replace files that exist; without it they are left alone and the exit code is 2" };

    /// <summary>JSON instead of text.</summary>
    public static Option<bool> Json() => new("--json") { Description = "the same numbers as JSON on standard output (docs/json.md)" };

    /// <summary>Units shown.</summary>
    public static Option<string?> Units()
    {
        var o = new Option<string?>("--units") { Description = "units to show: mm, in or both; else as the shop file says", HelpName = "mm|in|both" };
        o.AcceptOnlyFromAmong("mm", "in", "both");
        return o;
    }

    /// <summary>Paper.</summary>
    public static Option<string?> Paper()
    {
        var o = new Option<string?>("--paper") { Description = "paper; else that of the shop's first printer", HelpName = "a4|letter|a3|roll" };
        o.AcceptOnlyFromAmong("a4", "letter", "a3", "roll");
        return o;
    }

    /// <summary>Measured check bars.</summary>
    public static Option<string?> Measured() => new("--measured")
    {
        Description = "what the two 100 mm bars of the last print measured, across the sheet first: 97.2x97.0; the new print is stretched to come out true",
        HelpName = "AxB",
    };

    /// <summary>Mirrored.</summary>
    public static Option<bool> Mirror() => new("--mirror") { Description = "mirror the template, for the back face" };

    /// <summary>The date printed.</summary>
    public static Option<DateOnly?> Date() => new("--date")
    {
        Description = "date on the sheets; else today",
        HelpName = "YYYY-MM-DD",
        CustomParser = ReadDate,
    };

    /// <summary>The seed of the search for places on a sheet; trials always start from the same number.</summary>
    public static Option<int> Seed() => new("--seed") { Description = "seed of the search for places on a sheet; the same seed gives the same places", HelpName = "N", DefaultValueFactory = _ => 1 };

    /// <summary>The date given, else today.</summary>
    public static DateOnly DateOf(ParseResult parsed, Option<DateOnly?> date) => parsed.GetValue(date) ?? DateOnly.FromDateTime(DateTime.Now);

    private static DateOnly? ReadDate(ArgumentResult result)
    {
        var text = result.Tokens is [var t] ? t.Value : "";
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)) return date;
        result.AddError($"--date \"{text}\" is not a date: write it as 2026-03-31");
        return null;
    }
}
