using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Chances and holes in words.</summary>
public static class AssemblyText
{
    /// <summary>What the chances rest on and what is left out of them.</summary>
    public const string LeftOut = "Counted: holes out of place, each apart from the others. Not counted: rods bent or too thick, holes askew or too small, scales that are not flat, wood and steel moving by heat and damp. Open a hole rather than hammer a rod in.";

    /// <summary>What the ways that go through the tang ask for.</summary>
    public const string ThroughTang = "Through the tang: drill the scales while the tang's holes have the scales' size, and open the tang's holes to their own size afterwards; a drill that is smaller than the hole that guides it wanders.";

    /// <summary>The caution of drilling scales.</summary>
    public const string Caution = "Clamp tang and scales on a board, never hold them by hand; the drill grabs as it breaks through. Ground edges and points taped. Local rules and the machine's manual come first.";

    /// <summary>A chance as so many in a hundred: "58", "99.7", "under 0.1", "over 99.9".</summary>
    public static string InHundred(double share) => share switch
    {
        < 0.0005 => "under 0.1",
        > 0.9995 => "over 99.9",
        < 0.095 or > 0.985 => Shown.Trimmed(100 * share, 1),
        _ => Shown.Number(100 * share, 0),
    };

    /// <summary>Two chances, or one when they are written alike: "38 to 91".</summary>
    public static string Range(double lowShare, double highShare)
        => InHundred(lowShare) is var low && InHundred(highShare) is var high && low == high ? low : $"{low} to {high}";

    /// <summary>How well the trials know the chance: "99.1 to 99.4".</summary>
    public static string Known(PinChance chance) => Range(chance.Interval.LowShare, chance.Interval.HighShare);

    /// <summary>Where a chance may lie for all that is known of the way: "38 to 91, by common practice".</summary>
    public static string MayBe(WayChance way)
        => way.Capability.MeasuredSigma is not null ? $"as measured on {way.Capability.MeasuredHoles} holes" : Range(way.LowShare, way.HighShare);

    /// <summary>A hole size with the nearest drill or reamer owned that is not under it: "5.37 mm (0.211 in), nearest tool owned 5.4 mm (0.213 in)".</summary>
    public static string Hole(Shop shop, Length size)
        => Shown.Both(size) + (GoTogether.Tool(shop, size) is { } tool ? $", nearest tool owned {Named(tool)}" : ", no tool owned that is so large");

    /// <summary>A tool by its name, with its size when the name does not say it.</summary>
    public static string Named(DrillSize tool) => tool.Name.EndsWith(" mm", StringComparison.Ordinal) ? $"{tool.Name} ({Shown.Inch(tool.Diameter)})" : $"{tool.Name} ({Shown.Mm(tool.Diameter)})";

    /// <summary>The way on the sheet and the page, with what must be said of it.</summary>
    public static string Says(GoTogether all, WayChance way)
        => way.Making.Says + (way.Making.Way == all.Said ? ", as the plan says" : way.IsInShop ? "" : ", not in this shop");

    /// <summary>What the plan asks, in a sentence.</summary>
    public static string Asked(GoTogether all)
    {
        var (tang, scales, rods) = (all.Pins.Select(p => p.Diameter).Distinct().Order().ToArray(), all.ScaleHoles.Distinct().Order().ToArray(), all.Pins.Select(p => p.Pin!.Value).Distinct().Order().ToArray());
        var pins = all.Pins.Length == 1 ? "One pin" : $"{all.Pins.Length} pins";
        return $"{pins} through tang and two scales: rod {Sizes(rods)}, holes of the tang {Sizes(tang)}, of the scales {Sizes(scales)}. Asked: in {InHundred(all.WantedShare)} of 100.";
    }

    /// <summary>How straight a row looks: "seen by a sharp eye".</summary>
    public static string Looks(RowStraightness row)
        => row.WorstUsual >= RowStraightness.Plain ? "plainly crooked in most pieces"
            : row.WorstSeldom >= RowStraightness.Plain ? "plainly crooked in some pieces"
            : row.WorstUsual >= RowStraightness.Seen ? "a sharp eye sees it in most pieces"
            : row.WorstSeldom >= RowStraightness.Seen ? "a sharp eye sees it in some pieces"
            : "looks straight";

    private static string Sizes(Length[] sizes) => string.Join(", ", sizes.Select(s => Shown.Both(s)));
}
