using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>How the numbers of a bevel are worded, the same on sheets, command line and desk.</summary>
public static class BevelWords
{
    /// <summary>Cautions.</summary>
    public const string Caution = "Belt grinder: guard on and work rest set close to the belt; glasses and face shield, ears covered, mask against dust. No gloves near the belt nip or a spindle, no sleeves or long hair loose. Edge never against the run of the belt: it catches and throws the blade. Stop the belt to measure; the edge is hot and sharp. Local rules and the machine's manual come first.";

    /// <summary>Cautions for sharpening.</summary>
    public const string SharpCaution = "A sharpened edge cuts before it is felt: fingers behind the spine, blade away from you, a cut-proof rest under it; never strop or buff toward the edge, a buffing wheel throws the blade. Eyes covered at the belt. Sheath it at once. Local rules and the machine's manual come first.";

    /// <summary>"5.87° per side, 11.74° both together"; the one face of a bevel on one face only.</summary>
    public static string Angle(Angle perSide, bool oneSided) => oneSided ? $"{Degrees(perSide)} on the one face, the whole angle" : $"{Degrees(perSide)} per side, {Degrees(Foundation.Angle.OfDegrees(2 * perSide.Degrees))} inclusive";

    /// <summary>"5.87°".</summary>
    public static string Degrees(Angle a) => Shown.Number(a.Degrees, 2) + "°";

    /// <summary>A thickness to gauge: hundredths of a millimetre, thousandths of an inch.</summary>
    public static string Fine(Length l, UnitsShown units) => units switch
    {
        UnitsShown.Mm => Shown.Number(l.Mm, 2) + " mm",
        UnitsShown.Inch => Shown.Number(l.Inches, 3) + " in",
        _ => $"{Shown.Number(l.Mm, 2)} mm ({Shown.Number(l.Inches, 3)} in)",
    };

    /// <summary>A height gauge setting: to 0.005 mm.</summary>
    public static string Gauge(Length l, UnitsShown units) => units switch
    {
        UnitsShown.Mm => Shown.Number(l.Mm, 3) + " mm",
        UnitsShown.Inch => Shown.Number(l.Inches, 4) + " in",
        _ => $"{Shown.Number(l.Mm, 3)} mm ({Shown.Number(l.Inches, 4)} in)",
    };

    /// <summary>The setting from each face for lines of a station.</summary>
    public static string GaugeOf(ScribeLines s, UnitsShown units) => s.FromFace.Mm > 0 ? Gauge(s.FromFace, units) : "no thicker than the edge";

    /// <summary>What a wheel does.</summary>
    public static string Verdict(WheelVerdict v, Length edge, UnitsShown units)
    {
        var thin = v.Thinnest is { } t ? $"{Fine(t, units)} thick {Fine(v.ThinnestUp, units)} behind the edge, {Shown.Number(100 * t.Mm / edge.Mm, 0)} % of it" : "";
        var lower = $"no higher than {Fine(v.MostHeight, units)} with this wheel";
        return v.Answer switch
        {
            WheelAnswer.Good => $"good: nothing behind the edge is thinner than it; hollow {Fine(v.Depth, units)} deep",
            WheelAnswer.GoodWithNote when v.IsByAHair(edge) => $"good: misses the rule by a hair, under 0.001 mm thinner behind the edge; hollow {Fine(v.Depth, units)} deep",
            WheelAnswer.GoodWithNote => $"good: {thin}; hollow {Fine(v.Depth, units)} deep",
            WheelAnswer.Thin => $"thin: {thin}; {lower}",
            WheelAnswer.TooThin => $"refused: {thin}; {lower}",
            _ => $"refused: it cuts through behind the edge; {lower}",
        };
    }

    /// <summary>The smallest changes that let all of the wheels pass, or one of them; empty when one is good.</summary>
    public static string Change(BevelNumbers n, UnitsShown units)
    {
        if (n.LeastWheel is not { } least || n.Wheels.IsEmpty) return "";
        var largest = n.Wheels.MaxBy(w => w.Diameter.Mm)!;
        var text = $"A bevel {Fine(n.Table.Highest, units)} high wants a wheel {Fine(least, units)} across or more.";
        if (n.Wheels.Any(w => w.Answer is WheelAnswer.Good or WheelAnswer.GoodWithNote)) return text;
        var thicker = largest.LeastStock is { } t ? $", or stock {Fine(Length.OfMm(Math.Ceiling(t.Mm * 20) / 20), units)} thick" : "";
        return $"{text} No wheel here does it: with {largest.Name} a bevel {Fine(Length.OfMm(Math.Floor(largest.MostHeight.Mm * 10) / 10), units)} high{thicker}.";
    }

    /// <summary>How thick to leave the edge.</summary>
    public static string Advice(EdgeAdvice a, UnitsShown units)
        => (a.Leave is { } leave ? $"Leave the edge {Fine(leave, units)} for hardening: " : "Grind it after hardening: ") + a.Why + $". Advice in the trade, whatever the steel, runs from {Fine(EdgeAdvice.Spread.Low, units)} to {Fine(EdgeAdvice.Spread.High, units)}.";

    /// <summary>The sharpened facet.</summary>
    public static string Facet(EdgeFacet f, UnitsShown units) => $"facet {Fine(Length.OfMm(f.HeightMm), units)} high, {Fine(Length.OfMm(f.FaceMm), units)} along its face, {Fine(Length.OfMm(f.ShoulderMm), units)} thick at its shoulder";

    /// <summary>What thickness behind the edge is usual, by common practice.</summary>
    public const string BehindTheEdge = "Usual behind the edge, finished (common practice): kitchen 0.10 to 0.25 mm, slicer and hunter 0.25 to 0.40, camp 0.4 to 0.6, chopper and hatchet 0.6 to 1.2.";

    /// <summary>Grams per side; empty when not known.</summary>
    public static ImmutableArray<string> Grams(BevelNumbers n, UnitsShown units, bool oneSided)
    {
        string Line(double g, string when) => $"{FigureText.Weight(Mass.OfGrams(g), units)} off {(oneSided ? "the face" : "each face")} {when}";
        return [.. new[] { n.SoftPerSideGrams is { } a ? Line(a, "before hardening") : "", n.HardPerSideGrams is { } b ? Line(b, n.SoftPerSideGrams is null ? "after hardening" : "after hardening, sharpening included") : "" }.Where(t => t.Length > 0)];
    }
}
