using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>One field of the shop's form.</summary>
/// <param name="Key">Key in the file.</param>
/// <param name="Label">What it is called on the page.</param>
/// <param name="Says">What it is, what holds without it and an example, in a sentence or two.</param>
/// <param name="Written">What stands in the file; null when nothing does.</param>
/// <param name="Words">Words to choose from; none when it is typed.</param>
/// <param name="IsRequired">Whether it must be filled in.</param>
/// <param name="Unit">Unit of a bare number; empty where none is meant.</param>
public sealed record ShopField(string Key, string Label, string Says, string? Written, ImmutableArray<string> Words, bool IsRequired, string Unit)
{
    /// <summary>Unit to show beside what is written: only a bare number needs it.</summary>
    public string UnitShown => Written is { Length: > 0 } w && w.All(c => char.IsAsciiDigit(c) || c is '.' or ',' or ' ') ? Unit : "";
}

/// <summary>One machine, wheel, oven; its fields.</summary>
/// <param name="Index">Which one, from 0.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Fields">Its fields.</param>
public sealed record ShopEntry(int Index, string Name, ImmutableArray<ShopField> Fields);

/// <summary>One heading of the shop file as a part of the form.</summary>
/// <param name="Heading">Heading in the file.</param>
/// <param name="Title">Title on the page.</param>
/// <param name="Says">What it is for, in a sentence.</param>
/// <param name="One">What one of them is called: "machine".</param>
/// <param name="Repeats">Whether there may be several.</param>
/// <param name="IsInFile">Whether the file says anything about it.</param>
/// <param name="Entries">Those in the file.</param>
/// <param name="Assumed">What is assumed while the file says nothing, a line each.</param>
/// <param name="Blank">Empty fields, for one more.</param>
public sealed record ShopPart(string Heading, string Title, string Says, string One, bool Repeats, bool IsInFile, ImmutableArray<ShopEntry> Entries, ImmutableArray<string> Assumed, ImmutableArray<ShopField> Blank);

/// <summary>A shop file as a form: every heading and key of the key table, in trade words.</summary>
public static class ShopForm
{
    /// <summary>The form.</summary>
    public static ImmutableArray<ShopPart> Of(ShopOnDesk shop) => Of(shop.File);

    /// <summary>The same to look at only, of a shop file that lies elsewhere.</summary>
    public static ImmutableArray<ShopPart> Of(ShopInUse elsewhere) => ShopReader.ReadFile(elsewhere.Elsewhere, OpenWork.ShopName) is { IsGood: true, Value: var file } ? Of(file) : [];

    /// <summary>A line for each thing of a kind, as it is read aloud: "bench press: drill press, 500, 900 rpm".</summary>
    public static ImmutableArray<string> Lines(ShopPart part)
        => part.IsInFile ? [.. part.Entries.Select(e => Line(e.Fields))] : part.Assumed;

    private static ImmutableArray<ShopPart> Of(ShopFile file)
        => [.. ShopKeys.Table.Headings.Select(h => new ShopPart(
            h.Name,
            Title(h.Name),
            About(h),
            One(h.Name),
            h.Repeats,
            file.Has(h.Name),
            Entries(file, h.Name),
            file.Has(h.Name) || h.Name == "temper_oven" ? [] : [.. Entries(ShopStart.BuiltIn, h.Name).Select(e => Line(e.Fields))],
            Fields(file, h.Name, _ => null)))];

    private static ImmutableArray<ShopEntry> Entries(ShopFile file, string heading)
        => [.. Enumerable.Range(0, file.Count(heading)).Select(i => new ShopEntry(i, file.Written(heading, i, "name") ?? One(heading), Fields(file, heading, k => file.Written(heading, i, k))))];

    private static ImmutableArray<ShopField> Fields(ShopFile file, string heading, Func<string, string?> written)
        => [.. ShopKeys.Table.Under(heading).Where(k => k.Key != "tangwright").Select(k => new ShopField(k.Key, Label(k.Key), Says(k), written(k.Key), k.Kind == "true or false" ? ["true", "false"] : k.Words, k.Required, k.Kind is "length" or "two lengths" ? file.Units == LengthUnit.Inch ? "in" : "mm" : ""))];

    private static string About(HeadingRow heading) => heading.Name switch
    {
        "" => "Name and units. Another unit of bare numbers changes no size: those written so far get their old unit.",
        "machine" or "saw" or "wheel" or "oven" or "end_mill" => "",
        "printer" => "The first is used unless another is asked for. Print a template, measure its two bars and write here what they measured.",
        _ => heading.Meaning,
    };

    private static string Says(KeyRow row)
    {
        var meaning = row.Meaning.TrimEnd('.') + ".";
        if (row.Kind is "list of sizes" or "list of grits") return $"{meaning} An empty list says that you have none. For instance {row.Example.Replace("\"", "", StringComparison.Ordinal).Trim('[', ']')}.";
        var absent = row.Default.Length == 0 || row.Kind == "true or false" ? "" : $" Left empty: {row.Default}.";
        var example = row.Words.Length > 0 || row.Kind == "true or false" ? "" : $" For instance {row.Example.Replace("\"", "", StringComparison.Ordinal).Trim('[', ']')}.";
        return meaning + absent + example;
    }

    private static string Line(ImmutableArray<ShopField> fields)
    {
        var said = fields.Where(f => f.Written is { Length: > 0 }).ToArray();
        var name = said.FirstOrDefault(f => f.Key == "name")?.Written;
        var rest = string.Join("; ", said.Where(f => f.Key != "name").Select(f => $"{char.ToLowerInvariant(f.Label[0])}{f.Label[1..]} {f.Written} {f.UnitShown}".TrimEnd()));
        return name is null ? rest : rest.Length == 0 ? name : $"{name}: {rest}";
    }

    private static string Title(string heading) => heading switch
    {
        "" => "The shop",
        "tooling" => "Drills and reamers",
        "machine" => "Machines that make holes",
        "spot_drill" => "Spot drills",
        "countersink" => "Countersinks",
        "end_mill" => "End mills",
        "clamp" => "Clamps of the mill",
        "placing" => "How well holes are placed",
        "saw" => "Saws",
        "wheel" => "Wheels of the belt grinder",
        "belt" => "Belts of the grinder",
        "grinder" => "Belt grinder",
        "papers" => "Papers and stones",
        "oven" => "Hardening oven",
        "temper_oven" => "Tempering oven",
        "quenchant" => "Quenchant",
        "hardness_tester" => "Hardness tester",
        "gluing" => "Gluing",
        "air" => "Air of the shop",
        "printer" => "Printers",
        "rack" => "Bars in the rack",
        "bar" => "Bars that can be bought",
        "starts" => "How many to start",
        _ => "Allowances",
    };

    private static string One(string heading) => heading switch { "tooling" or "papers" => "list", "temper_oven" or "oven" => "oven", "allowances" => "allowance", "spot_drill" => "spot drill", "end_mill" => "end mill", "placing" => "way", "rack" => "bar", "hardness_tester" => "tester", _ => heading };

    private static string Label(string key) => key switch
    {
        "units" => "Unit of bare numbers",
        "show" => "Units on sheets",
        "speeds_rpm" => "Spindle speeds, turns a minute",
        "chuck" => "Largest drill",
        "power_w" => "Motor power, W",
        "readout" => "Digital readout",
        "belt_width" => "Width of the belts",
        "belt_speed" => "Belt speed, or slowest to fastest",
        "grits" => "Grits, each with its series",
        "reads_high_by" => "Reads too high by",
        "swing" => "Swings to either side by",
        "guard" => "Keeps air from the steel",
        "temperature" => "Temperature it is at",
        "pot_life" => "Pot life of the glue",
        "minutes_per_piece" => "Minutes to glue one piece",
        "clamps" => "Clamps you own",
        "clamps_per_piece" => "Clamps a piece takes",
        "line" => "Glue left between the parts",
        "cure" => "Cures until it may be shaped",
        "humidity" => "Relative humidity, %",
        "moisture" => "Moisture of the wood there, %",
        "warmest" => "Warmest it gets",
        "flash_point" => "Flash point",
        "roll_width" => "Width of the roll",
        "margin" => "Margin it cannot print",
        "bar_across" => "100 mm bar across measured",
        "bar_along" => "100 mm bar along the feed measured",
        "end" => "At a sawn end",
        "longest_cut" => "Longest cut",
        "most_angle" => "Greatest angle off square",
        "wander" => "Cut strays by",
        "rate_cm2_per_min" => "Steel parted, cm² a minute",
        "set_up_min" => "Minutes to start a cut",
        "teeth_per_inch" => "Teeth per inch of the blades owned",
        "disc_diameter" => "Diameter of the disc",
        "grit" => "P grade",
        "grams_per_min" => "Takes off, g a minute",
        "grams_per_belt" => "Takes off in its life, g",
        "rough" => "Outside the line of a rough cut",
        "profile" => "Profiled width may be off by",
        "edge" => "Beside the piece",
        "drill_metal" => "Drills are made of",
        "drill_point" => "Point angle, both sides together",
        "split_point" => "Split points",
        "drill_reach" => "How long they are",
        "vise_opens" => "Vise opens",
        "travel_z" => "Travel of the spindle",
        "most_thrust" => "Push it bears",
        "tool_change_s" => "Time to change a tool, s",
        "rapid_mm_per_min" => "Speed without cutting, mm a minute",
        "program_units" => "Unit of its program",
        "drill_cycles" => "Drill cycles G81 G82 G83",
        "arcs" => "Arcs G2 G3",
        "helix" => "Arcs that go down",
        "tool_change" => "Tool change M6",
        "point" => "Angle, both sides together",
        "cutting_length" => "Length that cuts",
        "carbide" => "Solid carbide",
        "feed_per_tooth" => "Feed of one tooth",
        "zone" => "99 of 100 centres fall in a circle of",
        "measured_sigma" => "Scatter measured",
        "measured_holes" => "Measured on so many holes",
        _ => char.ToUpperInvariant(key[0]) + key[1..],
    };
}
