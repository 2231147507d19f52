using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>How rough cuts are worded, the same on sheets, command line and desk.</summary>
public static class RoughCutWords
{
    /// <summary>Cautions of the card for a saw.</summary>
    public static string Caution(SawKind kind) => Always + (kind switch
    {
        SawKind.Band => " Band saw: guard down to the work, push with a stick, fingers beside the line.",
        SawKind.PortableBand or SawKind.Hacksaw => "",
        SawKind.Plasma => " Plasma: the arc burns eyes and skin and the fume is poison: shade, leather, air drawn off; nothing under the cut that burns.",
        _ => "",
    }) + " Offcuts and sawn rims are hot and sharp. Local rules and the machine's manual come first.";

    /// <summary>Cautions of a plan of cuts; without a cut those of the grinder, which then does all.</summary>
    public static string Caution(RoughCutPlan p) => p.Cuts.IsEmpty ? BevelWords.Caution : Caution(p.Saw.Kind);

    private const string Always = "Eyes, ears and breath covered: glasses and face shield, ear muffs, mask against dust and fume. Work clamped on both sides of the cut, never held in the hand alone. Cut-off and chop discs: rated for at least the spindle's speed, undamaged, guard on, never pressed from the side; a pinched disc kicks back or bursts: stand beside its plane. Angle grinder in both hands. Sparks start fires: clear what burns 11 m (35 ft) round, extinguisher at hand, look again half an hour later.";

    /// <summary>"13.4 min".</summary>
    public static string Minutes(double minutes) => Shown.Number(minutes, minutes < 9.95 ? 1 : 0) + " min";

    /// <summary>"from 9 to 19 min".</summary>
    public static string Band(double low, double high) => high - low < 0.05 ? Minutes(high) : $"{Shown.Number(low, high < 9.95 ? 1 : 0)} to {Minutes(high)}";

    /// <summary>"upper edge, 84.2 mm from the left end".</summary>
    public static string Mark(RimMark m, UnitsShown units) => $"{m.On} {Fine(m.Distance, units)} from the {m.Measured}";

    /// <summary>"1a": a mark of a cut, as on the drawing.</summary>
    public static string MarkName(SawCut cut, int mark) => cut.Number.ToString(System.Globalization.CultureInfo.InvariantCulture) + (mark == 0 ? "a" : "b");

    /// <summary>A length to be laid off with a rule: a tenth of a millimetre, two decimals of an inch.</summary>
    public static string Fine(Length l, UnitsShown units) => units switch
    {
        UnitsShown.Mm => Shown.Number(l.Mm, 1) + " mm",
        UnitsShown.Inch => Shown.Number(l.Inches, 2) + " in",
        _ => $"{Shown.Number(l.Mm, 1)} mm ({Shown.Number(l.Inches, 2)} in)",
    };

    /// <summary>How a cut runs, and what falls off.</summary>
    public static string Run(SawCut c, UnitsShown units)
        => $"{Shown.Number(c.AngleToEdge.Degrees, 1)}° to the long edge, {Fine(c.Chord, units)} long{(c.FromBothEnds ? ", in from both ends" : "")}";

    /// <summary>What falls off.</summary>
    public static string Offcut(SawCut c, UnitsShown units)
        => c.Waste.IsEmpty ? "nothing falls off yet" : c.Offcut.IsEmpty ? "all of it is kerf" : $"offcut {Rough(c, units)}";

    private static string Rough(SawCut c, UnitsShown units)
    {
        string Two(double a, double b, int decimals) => $"{Shown.Number(a, decimals)} × {Shown.Number(b, decimals)}";
        var (mm, inch) = (Two(c.OffcutLength.Mm, c.OffcutWidth.Mm, 0) + " mm", Two(c.OffcutLength.Inches, c.OffcutWidth.Inches, 1) + " in");
        return units switch { UnitsShown.Mm => mm, UnitsShown.Inch => inch, _ => $"{mm} ({inch})" };
    }

    /// <summary>What is left to grind: "34 g (1.2 oz), 4.3 cm³".</summary>
    public static string Left(GrindingWork g, UnitsShown units)
        => $"{(g.Mass is { } m ? FigureText.Weight(m, units) + ", " : "")}{Shown.Number(g.Volume.Mm3 / 1000, 1)} cm³";

    /// <summary>"0.4 belt".</summary>
    public static string Belts(GrindingWork g) => $"{Shown.Number(g.Belts, 2)} {(g.Belts <= 1 ? "belt" : "belts")}";

    /// <summary>Both ways in one line each.</summary>
    public static (string Sawn, string GrindOnly) Both(RoughCutPlan p, UnitsShown units) => (
        $"Saw then grind: {Minutes(p.Minutes)} ({Band(p.LowSawMinutes + p.Sawn.LowMinutes, p.HighSawMinutes + p.Sawn.HighMinutes)}): {Minutes(p.SawMinutes)} of sawing, {Left(p.Sawn, units)} left to grind in {Minutes(p.Sawn.Minutes)}, {Belts(p.Sawn)}",
        $"Grind only: {Minutes(p.GrindOnly.Minutes)} ({Band(p.GrindOnly.LowMinutes, p.GrindOnly.HighMinutes)}): {Left(p.GrindOnly, units)} to grind, {Belts(p.GrindOnly)}");

    /// <summary>What else a hollow could be done with.</summary>
    public static string Hollow(HollowLeft h, UnitsShown units)
    {
        var ways = new List<string> { $"grinding {Minutes(h.GrindMinutes)}" };
        if (h.Chain is { } c) ways.Add($"a chain of {c.Holes} holes {c.Drill.Name} at {Fine(c.Pitch, units)} pitch, {Minutes(c.Minutes)}");
        if (h.ReliefCuts > 0) ways.Add($"{h.ReliefCuts} relief {(h.ReliefCuts == 1 ? "cut" : "cuts")} down to the allowance, {Minutes(h.ReliefMinutes)}, then grinding the steps");
        return $"{FigureText.Surface(h.Left, units)}, {FigureText.Size(Length.OfMm(h.Pocket.DepthMm), units, brief: true)} deep: {string.Join("; ", ways)}";
    }
}
