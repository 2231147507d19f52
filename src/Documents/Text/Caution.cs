using System.Collections.Immutable;
using Tangwright.Core;

namespace Tangwright.Documents;

/// <summary>One card of the caution page.</summary>
/// <param name="Title">What it is about.</param>
/// <param name="Lines">Short sentences.</param>
/// <param name="Sources">Published sources, or common practice.</param>
public sealed record Caution(string Title, ImmutableArray<string> Lines, string Sources)
{
    /// <summary>The cards that this plan's steps in this shop ask for.</summary>
    public static ImmutableArray<Caution> For(Results results)
    {
        var cards = ImmutableArray.CreateBuilder<Caution>();
        cards.Add(Always);
        if (results.Holes.Length > 0) cards.Add(Drilling);
        if (!results.Shop.Saws.IsDefaultOrEmpty) cards.Add(Sawing);
        cards.Add(BeltGrinding);
        cards.Add(Wheels);
        cards.Add(Dust(results));
        cards.Add(Fire);
        if (results.Plan.Target.Hardness is not null || results.Shop.Oven is not null || results.Shop.Quenchant is not null) cards.Add(Heat(results));
        if (results.Holes.Any(h => h.Use is HoleUse.Glue or HoleUse.Pin)) cards.Add(Handle);
        if (results.Plan.Sheath is { } sheath) cards.Add(new("Sheath", [SheathWords.Caution(sheath.Kind)], "Common practice; safety sheets of glue, dye and sheet."));
        cards.Add(SharpEdges);
        if (results.Steel is { } steel && !steel.Cautions.IsDefaultOrEmpty) cards.Add(new("This steel", [.. steel.Cautions.Take(8)], "Common practice, from the file of " + steel.Name + "."));
        cards.Add(Law);
        return cards.ToImmutable();
    }

    private static Caution Always { get; } = new(
        "Every job",
        [
            "Safety glasses, and a face shield over them at the grinder. Ears covered at saw, grinder and hammer: at 95 dBA the allowed time is 4 h a day by one rule and 48 min by the stricter advice.",
            "Hair, sleeves and strings tied back. Stop when tired.",
        ],
        "ANSI Z87.1, EN 166 (ISO 16321); noise: 29 CFR 1910.95 and NIOSH criteria, from memory.");

    private static Caution Drilling { get; } = new(
        "Drilling",
        [
            "Clamp the work or stop it against a post; never hold a blank by hand. No gloves at a turning spindle. Chuck key out before the switch.",
            "Break the sharp edges of the blank first. Scrap underneath. Ease the feed as the drill breaks through: that is when thin plate is snatched up.",
            "Stop the spindle to clear chips, with a brush.",
        ],
        "US Navy training course 14345 (drill press, breakthrough); the rest common practice.");

    private static Caution Sawing { get; } = new(
        "Sawing",
        [
            "Guard down to just above the work. At least three teeth in the steel. Clamp short and thin pieces, push with a stick, and let the saw cut.",
            "A sawn end is sharp and hot: deburr it before it is handled.",
        ],
        "Common practice.");

    private static Caution BeltGrinding { get; } = new(
        "Belt grinding",
        [
            "Point and edge trail down the belt, never up into it. Rest close to the belt. No gloves or rags that the belt can take in.",
            "Look at the splice and the tracking before every start; stand out of the line of the belt for the first seconds.",
        ],
        "Common practice; guards of stationary grinders: ISO 16089.");

    private static Caution Wheels { get; } = new(
        "Wheels",
        [
            "Bench grinder: work rest no more than 1/8 in (3 mm) from the wheel, tongue guard no more than 1/4 in (6 mm).",
            "Ring-test a new wheel; its marked speed is at least that of the spindle. A cut-off disc is never pressed from the side.",
        ],
        "29 CFR 1910.215(a)(4) and (b)(9); 29 CFR 1910.215(c) and (d) (from memory).");

    private static Caution Fire { get; } = new(
        "Sparks and fire",
        [
            "Clear what can burn for 35 ft (11 m), or cover it. Stay and look for 30 min after the last spark; the newer advice is 60 min.",
            "Empty the dust box before grinding and never let sparks into wood dust. Titanium, magnesium and aluminium dust never meets steel sparks.",
            "Extinguisher for oil and solids within reach.",
        ],
        "29 CFR 1910.252 (hot work) and NFPA 51B-2019 (fire watch), both from memory.");

    private static Caution Handle { get; } = new(
        "Scales and glue",
        [
            "Uncured resin and hardener can make the skin allergic for life: nitrile gloves, open window, no solvent on the skin, no sanding before full cure.",
            "Dust of resin laminates, horn, shell and many hardwoods harms the lungs: P100 or P3 mask, sand wet where it can be wet.",
        ],
        "Hazard statement H317 (GHS, from memory); wood dust: NIOSH Pocket Guide; the rest common practice.");

    private static Caution SharpEdges { get; } = new(
        "Sharp edges",
        [
            "A profiled blank cuts before it is sharpened. Tape the edge between steps; dull it again after a test cut.",
            "Lay a blade down, never hand it over point first. Bevels and holes leave wire edges: break them.",
        ],
        "Common practice.");

    private static Caution Law { get; } = new(
        "Law and use",
        [
            "Rules on length, carrying, selling and posting blades differ by country, state and town: look them up where you are.",
            "Nothing in this packet says that a piece is strong enough. Make one, test it away from people, then make the rest.",
        ],
        "Reminder, not legal advice.");

    private static Caution Dust(Results results)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        lines.Add("P100 or P3 mask at grinder and sander, and extraction at the machine. A beard breaks the seal of a mask.");
        if (Alloyed(results, 1.0) is { Length: > 0 } elements) lines.Add($"This steel holds {elements}: its dust and fume are harmful beyond plain iron. Vacuum, do not blow; wash before eating.");
        else lines.Add("Vacuum, do not blow; wash before eating.");
        lines.Add("Day limits in the air, mg/m³: nickel 1, cobalt 0.1, chromium VI 0.005; the advised ones are lower.");
        return new("Dust", lines.ToImmutable(), "29 CFR 1910.1000 and 1910.1026 (limits); 29 CFR 1910.134 (masks, from memory).");
    }

    private static string Alloyed(Results results, double leastPercent)
        => results.Steel?.Composition is { } c
            ? string.Join(", ", c.Value.Where(e => e.Element is "Cr" or "Ni" or "Co" or "V" or "Mo" or "W" && e.HighPercent >= leastPercent).Select(e => e.Element))
            : "";

    private static Caution Heat(Results results)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        lines.Add("Oven, tongs and steel burn long after the colour has gone. Face shield, leather or heat gloves, natural cloth, closed shoes. Clear the way from oven to quench first.");
        var name = (results.Plan.Heat?.Quenchant ?? results.Shop.Quenchant)?.Name ?? "";
        var oil = name.Length == 0 || name.Contains("oil", StringComparison.OrdinalIgnoreCase);
        if (oil)
        {
            lines.Add("Oil: metal tank with a lid that fits, far from the oven and off anything that burns. Bath at least 28 °C (50 °F) below its flash point. Not a drop of water in it or on the tongs: it foams over.");
            lines.Add("Put the blade under at once and wholly, and keep it under: half in, it flames. Lid on to put out a fire; dry powder or CO2 to hand, never water.");
        }

        lines.Add("Open the window; with a gas forge also a carbon monoxide alarm. Just-quenched steel can break like glass: no blows, temper within the hour.");
        return new("Hardening", lines.ToImmutable(), oil ? "Oil: Washington Administrative Code 296-835-13005; 29 CFR 1910.123-126 and NFPA 86 (from memory); margin below the flash point and the rest: common practice." : "Common practice.");
    }
}
