using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Sheath and edge guard in words, the same on sheet, command line and desk.</summary>
public static class SheathWords
{
    /// <summary>What the figures stand on.</summary>
    public static string Ground(SheathKind kind) => kind switch
    {
        SheathKind.Leather => "Seam, stitches, pitch and thread are common practice; the fold is half a circle through the middle of the leather. Wet leather is pressed together inside the fold and comes out a little wider.",
        SheathKind.Sheet => "Seam, rivets and trim are common practice. The fold is geometry: half a circle through the middle of the sheet.",
        _ => "Seam, rivets and trim are common practice.",
    };

    /// <summary>Figures of a sheath.</summary>
    public static ImmutableArray<FigureLine> Figures(SheathPattern p, UnitsShown units)
    {
        string Size(Length length) => FigureText.Size(length, units, brief: true);
        var isLeather = p.Asked.Kind == SheathKind.Leather;
        var lines = ImmutableArray.CreateBuilder<FigureLine>();
        lines.Add(new(isLeather ? "Leather" : "Plastic sheet", $"{Size(p.Material)} thick{(isLeather ? $"; welt of {(p.WeltLayers == 1 ? "1 layer" : $"{p.WeltLayers} layers")}" : "")}"));
        lines.Add(new("Blank", $"{Size(p.BlankLength)} x {Size(p.BlankWidth)}, {(p.IsFolded ? "both halves" : "two of them")}"));
        lines.Add(new("Goes in", $"{Size(p.Pocket.Depth)}, {Size(p.Pocket.Widest)} wide; mouth at x {Size(p.Pocket.Mouth)}"));
        lines.Add(new("Through the mouth", $"{Size(p.Pocket.Widest)} x {Size(p.Mouth.Thick)}, {Size(2 * (p.Pocket.Widest + p.Mouth.Thick))} round"));
        if (p.IsFolded) lines.Add(new("Round the spine", Size(p.Fold)));
        lines.Add(new("Seam", $"{Size(SheathRules.Seam(p.Asked))} beyond the blade{(p.Trim is null ? "" : $", trimmed to {Size(SheathRules.Finished(p.Asked))}")}"));
        lines.Add(new(isLeather ? "Stitch holes" : "Rivets", Holes(p, units)));
        if (isLeather) lines.Add(new("Thread", $"{Metres(p.Thread)}, two needles, ends and back stitches in it"));
        if (p.Loop is { } loop) lines.Add(new("Belt loop", $"strip {Size(loop.Long)} x {Size(loop.Wide)}"));
        lines.Add(new("Material", $"{Shown.Number(p.Area.Mm2 / 10000, 1)} dm² ({Shown.Number(p.Area.Mm2 / 92903.04, 2)} ft²) without offcut"));
        return lines.ToImmutable();
    }

    /// <summary>Holes and their pitch.</summary>
    public static string Holes(SheathPattern p, UnitsShown units)
        => p.Stitches.Holes.Length switch
        {
            0 => "the seam is too short for them",
            1 => "1",
            var n => $"{n}, {FigureText.Size(p.Stitches.Pitch, units, brief: true)} apart on {FigureText.Size(p.Stitches.Length, units, brief: true)}",
        };

    /// <summary>Whether the piece goes in and out.</summary>
    public static string DrawOut(SheathPattern p, UnitsShown units)
        => p.Pocket.Caught.Mm <= SheathRules.GivesMm
            ? "The piece goes straight in and out: it is nowhere wider inside than at the mouth."
            : $"The piece goes in and out, but it is {FigureText.Size(p.Pocket.Caught, units)} wider inside than at the mouth. The pattern is that wide at the mouth too, and does not hold the blade there.";

    /// <summary>How much of the handle goes in; empty when none does.</summary>
    public static string HandleIn(SheathPattern p, UnitsShown units)
        => p.Mouth.HandleIn.Mm <= 0 ? ""
            : p.Mouth.IsHandleKnown ? $"{FigureText.Size(p.Mouth.HandleIn, units)} of the handle go in: {(p.IsFolded ? "the fold is made for it, so it is loose on the blade: form it down there" : "the sheets are pressed over it")}; the sheath can grip it there."
            : $"{FigureText.Size(p.Mouth.HandleIn, units)} of the handle go in, and the plan does not say how thick it is{(p.IsFolded ? ": the fold is made for the bare steel and will be too tight there" : "")}.";

    /// <summary>What holds the piece in.</summary>
    public static string Holds(SheathPattern p)
        => p.Asked.Kind == SheathKind.Leather
            ? "Held in by wet-forming: wet the finished sheath, press it round the oiled and wrapped piece, let it dry two days with the piece drawn out. Where the mouth ends before the handle add a strap with a snap round the handle."
            : "Held in by the shape pressed into the sheet at the front of the handle. Shake it upside down over sand: the piece must stay in. Warm the mouth again to make it tighter or looser.";

    /// <summary>What to look out for.</summary>
    public static string Caution(SheathKind kind)
        => "Tape the edge, and leave it taped while the sheath is fitted. " + (kind == SheathKind.Leather
            ? "Awl and knife go away from the hand. Dyes and glue with solvent: open window, no flame, gloves, by the maker's safety sheet."
            : "Hot sheet burns the skin and gives off fumes: heat gloves, open window, and no hotter than its maker's sheet says; most such sheet softens at about 135 to 170 °C (275 to 340 °F). That heat loosens handle glue, which softens at 50 to 60 °C (120 to 140 °F, from memory): wrap the handle, press briefly, or end the sheath before it.")
            + " Carry and keep it as local rules say.";

    /// <summary>What is done, in order.</summary>
    public static ImmutableArray<string> Steps(SheathPattern p, UnitsShown units)
        => p.Asked.Kind == SheathKind.Leather
            ?
            [
                "Measure the bars on the pattern sheets, then cut the pattern out and fold it round the taped piece: it must reach round with the seam even.",
                "Lay the pattern on the leather, grain side out, and mark the cut line, the fold and the holes of one half.",
                $"Cut leather and welt. Thin the end of the welt where it meets the fold. Glue the welt to one half along the cut line{(p.WeltLayers > 1 ? $", {p.WeltLayers} layers" : "")}.",
                "Wet the fold, fold it over the spine, glue the seam, clamp until it is dry. Sand the edge even.",
                "Punch or drill the marked holes square through all layers; sew from the mouth, two stitches back at both ends.",
            ]
            :
            [
                "Measure the bars on the pattern sheets, then cut the pattern out and hold it to the taped piece: the seam must be even.",
                $"Cut the sheet on the outer line. Put tape or a strip of {FigureText.Size(Length.OfMm(0.5), units, brief: true)} on the edge, for room.",
                p.IsFolded
                    ? "Heat it evenly, fold it over the spine along the fold, press at once and leave it in the press until it is cold."
                    : "Heat both evenly, lay the piece between them, press at once and leave them in the press until they are cold.",
                "Mark the rivets from the pattern or from the press's own template, drill, set them from the mouth on.",
                "Trim to the dashed line, round all corners, sand and polish the mouth; blow the chips out.",
            ];

    /// <summary>The edge guard.</summary>
    public static string Guard(EdgeGuard g, UnitsShown units)
        => $"Strip {FigureText.Size(g.Long, units, brief: true)} x {FigureText.Size(g.Wide, units, brief: true)} of {FigureText.Size(g.Material, units, brief: true)} sheet, folded over the taped edge, a strip glued in the fold as stop";

    /// <summary>All lines of a sheath for the command line.</summary>
    public static ImmutableArray<string> Lines(SheathPattern p, UnitsShown units)
        => [.. Figures(p, units).Select(l => $"{l.Name}: {l.Value}"), DrawOut(p, units), .. HandleIn(p, units) is { Length: > 0 } handle ? [handle] : Array.Empty<string>(), Holds(p)];

    private static string Metres(Length length) => $"{Shown.Number(Math.Ceiling(length.Mm / 100) / 10, 1)} m ({Shown.Number(Math.Ceiling(length.Inches / 12 * 2) / 2, 1)} ft)";
}
