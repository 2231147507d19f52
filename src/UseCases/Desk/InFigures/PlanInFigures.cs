using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>The values under one heading of a plan.</summary>
/// <param name="Heading">Heading; empty for the top.</param>
/// <param name="Title">What stands above them.</param>
/// <param name="Meaning">What they are, in a sentence.</param>
/// <param name="IsThere">Whether the plan has the heading.</param>
/// <param name="MustBe">Whether it cannot be taken out.</param>
/// <param name="ToBegin">What must be written to begin it; none when any one value begins it.</param>
/// <param name="Fields">The values.</param>
public sealed record PlanGroup(string Heading, string Title, string Meaning, bool IsThere, bool MustBe, ImmutableArray<PlanField> Fields, ImmutableArray<PlanField> ToBegin);

/// <summary>A hole or a row with its values.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Says">More of it, in a sentence; empty when nothing.</param>
/// <param name="OnMidline">Whether a row lies along the midline.</param>
/// <param name="Fields">The values.</param>
public sealed record HoleInFigures(string Name, string Says, bool OnMidline, ImmutableArray<PlanField> Fields);

/// <summary>A whole plan as forms show it: its values by heading, its holes and its rows.</summary>
/// <param name="Groups">Values by heading.</param>
/// <param name="Holes">Single holes.</param>
/// <param name="Rows">Rows.</param>
public sealed record PlanInFigures(ImmutableArray<PlanGroup> Groups, ImmutableArray<HoleInFigures> Holes, ImmutableArray<HoleInFigures> Rows)
{
    /// <summary>Most holes that are shown as fields.</summary>
    public const int MostHoles = 200;

    /// <summary>That of an open plan.</summary>
    public static PlanInFigures Of(PlanOnDesk desk)
    {
        var (file, results) = (desk.File, desk.Results);
        return new(
            [.. PlanKeys.Table.Headings.Where(h => !h.Repeats).Select(h => Group(file, h))],
            [.. file.Plan.Holes.OfType<Hole>().Take(MostHoles).Select(h => new HoleInFigures(h.Name, "", false, Fields(file, "hole", h.Name)))],
            [.. file.Plan.Holes.OfType<HoleRow>().Take(MostHoles).Select(r => new HoleInFigures(r.Name, Placed(results, r), r.OnMidline, Fields(file, "hole_row", r.Name)))]);
    }

    /// <summary>What a new hole or row is asked for, all empty.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="heading">hole or hole_row.</param>
    public static ImmutableArray<PlanField> Empty(PlanOnDesk desk, string heading) => Fields(desk.File, heading, "");

    /// <summary>Names of the steels that can be chosen.</summary>
    public static ImmutableArray<string> Steels(PlanOnDesk desk) => OpenWork.SteelsKnown(desk.Path);

    /// <summary>Names of the drills owned.</summary>
    public static ImmutableArray<string> Drills(PlanOnDesk desk) => [.. desk.Results.Shop.Drills.Select(d => d.Name)];

    private static PlanGroup Group(PlanFile file, HeadingRow h)
    {
        var fields = Fields(file, h.Name, "");
        var needed = PlanKeys.Table.Under(h.Name).Where(k => k.Required).Select(k => k.Key).ToHashSet(StringComparer.Ordinal);
        var isThere = ValueEdit.Has(file, h.Name);
        return new(h.Name, Title(h.Name), Plain(h.Meaning), isThere, h.Required, fields, isThere ? [] : [.. fields.Where(f => needed.Contains(f.Key))]);
    }

    private static ImmutableArray<PlanField> Fields(PlanFile file, string heading, string item)
        => [.. PlanKeys.Table.Under(heading).Where(k => k is not { Table: "", Key: "tangwright" }).Select(k => PlanField.Of(file, k, item)).SelectMany(f => f is { Heading: PlanField.Hole, Key: "at" } ? f.Apart(file.Plan.Units) : [f])];

    private static string Title(string heading) => heading switch
    {
        "" => "The plan",
        "target" => "What you want",
        "edge" => "The sharpened part",
        _ => char.ToUpperInvariant(heading[0]) + heading[1..].Replace('_', ' '),
    };

    private static string Plain(string meaning) => meaning.Replace("`[edge]`", "the sharpened part", StringComparison.Ordinal).Replace(" These lines stand before the first heading.", "", StringComparison.Ordinal);

    /// <summary>The holes a row makes: names and sizes from first to last.</summary>
    private static string Placed(Results results, HoleRow row)
    {
        var holes = results.Holes.Where(h => h.Row == row.Name).ToArray();
        if (holes.Length == 0) return "It has no place yet.";
        var sizes = holes.Select(h => DeskFigures.Size(h.Diameter, results.Plan.Units)).ToArray();
        return $"Makes {holes[0].Name} to {holes[^1].Name}, {(sizes.Distinct(StringComparer.Ordinal).Count() == 1 ? "each " + sizes[0] : string.Join(", ", sizes.Take(12)) + (sizes.Length > 12 ? ", ..." : ""))} {(results.Plan.Units == LengthUnit.Inch ? "in" : "mm")}.";
    }
}
