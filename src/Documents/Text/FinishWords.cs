using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>How the finish is worded, the same on sheets, command line and desk.</summary>
public static class FinishWords
{
    /// <summary>Cautions.</summary>
    public const string Caution = "Belt grinder: guard and work rest set close to the belt, edge trailing on a thin blade, glasses and face shield, ears covered, mask against dust: that of stainless steel and of scales harms the lungs. No gloves, sleeves or long hair near the belt nip or a spindle. Wet or dipped steel: keep water off the switch. Sparks start fires: no oil, no wood dust beside them. Sandpaper on a block over a clamped blade with its edge on a board, strokes away from the fingers. Local rules and the machine's manual come first.";

    /// <summary>How one knows that a step is done.</summary>
    public const string DoneWhen = "A step is done when, under a low light from the side, no line of the grit before shows: lay each grit's lines across those of the one before. Wipe every grain off before the next.";

    /// <summary>Where the figures come from, and how far they go.</summary>
    public const string Sources = "Grain sizes by FEPA P (ISO 6344), CAMI and JIS lists, some 5 % between lists. Lines a tenth to three tenths of the grain deep (common practice). Belt speeds by Machinery's Handbook, on hardened steel common practice. Roughness as printed in charts that differ two to three times.";

    /// <summary>A grit in its own series with its size, and beside it the nearest of the two other series: "P400, 35 µm; CAMI 320, JIS 400".</summary>
    public static string Grain(FinishTool tool)
    {
        var others = new[] { GritSeries.FepaP, GritSeries.Cami, GritSeries.Jis }.Where(s => s != tool.Grain.Series).Select(s => GritScale.Nearest(s, tool.Micron)?.Words).OfType<string>();
        var size = tool.Grain.Series == GritSeries.Micron ? "" : $", {Micron(tool.Micron)}";
        return $"{tool.Grain.Words}{size}{string.Concat(others.Select((o, i) => (i == 0 ? "; near " : ", ") + o))}";
    }

    /// <summary>"54 µm".</summary>
    public static string Micron(double um) => Shown.Number(um, um < 9.95 ? 1 : 0) + " µm";

    /// <summary>A depth with its band: "20 µm (10 to 30), 0.0008 in".</summary>
    public static string Depth((double Low, double Usual, double High) d, UnitsShown units)
    {
        string Um(double v) => Shown.Number(v, d.High < 9.95 ? 1 : 0);
        var inch = Shown.Number(d.Usual / 25400, 4) + " in";
        return units switch
        {
            UnitsShown.Inch => $"{inch} ({Shown.Number(d.Low / 25400, 4)} to {Shown.Number(d.High / 25400, 4)})",
            UnitsShown.Mm => $"{Um(d.Usual)} µm ({Um(d.Low)} to {Um(d.High)})",
            _ => $"{Um(d.Usual)} µm ({Um(d.Low)} to {Um(d.High)}), {inch}",
        };
    }

    /// <summary>What a step does.</summary>
    public static string Does(FinishStep s, UnitsShown units)
        => s.IsBevel
            ? s.Grams is { } g ? $"grind the bevels down, {Weight(g, units)}" : "grind the bevels down"
            : $"take the lines of {s.Before!.Name} out: {Depth(s.PerFaceUm!.Value, units)} a face{(s.Grams is { } m ? $", {Weight(m, units)} in all" : "")}";

    /// <summary>Time and belts of a step.</summary>
    public static string Time(FinishStep s)
        => s.Minutes is not { } m ? s.TimeSays : $"{Minutes(m, s.LowMinutes!.Value, s.HighMinutes!.Value)}{(s.Belts is { } b ? $", {Belts(b)}" : "")}";

    /// <summary>"3.2 min (2.1 to 4.4)".</summary>
    public static string Minutes(double usual, double low, double high) => $"{Shown.Number(usual, usual < 9.95 ? 1 : 0)} min ({Shown.Number(low, high < 9.95 ? 1 : 0)} to {Shown.Number(high, high < 9.95 ? 1 : 0)})";

    /// <summary>"0.03 belt".</summary>
    public static string Belts(double belts) => belts < 0.005 ? "under 0.01 belt" : $"{Shown.Number(belts, 2)} {(belts <= 1 ? "belt" : "belts")}";

    /// <summary>"20 to 33 m/s (4000 to 6500 ft/min)".</summary>
    public static string Speed(BeltSpeed s, UnitsShown units)
    {
        var metric = $"{Shown.Number(s.Low.MetresPerMin / 60, 0)} to {Shown.Number(s.High.MetresPerMin / 60, 0)} m/s";
        var feet = $"{Shown.Number(s.Low.FeetPerMin, 0)} to {Shown.Number(s.High.FeetPerMin, 0)} ft/min";
        return units switch { UnitsShown.Mm => metric, UnitsShown.Inch => feet, _ => $"{metric} ({feet})" };
    }

    /// <summary>Whether the grinder can run a step's speed; empty when it can or nobody said.</summary>
    public static string SpeedTrouble(FinishStep s, Shop shop)
        => s.Speed is not { } speed || shop.BeltSpeeds is not { } own ? ""
            : own.Low.MetresPerMin > speed.High.MetresPerMin ? "your grinder runs faster than that: short touches, dip often, or by hand"
            : own.High.MetresPerMin < speed.Low.MetresPerMin ? "your grinder runs slower than that: it takes longer" : "";

    /// <summary>Roughness: "Ra 0.4 to 0.8 µm (16 to 31 µin)"; empty when not listed.</summary>
    public static string Roughness(FinishStep s) => s.Ra is not { } ra ? "" : ra.LowUm == 0 ? $"Ra up to {Shown.Trimmed(ra.HighUm, 2)} µm ({Shown.Number(ra.HighUm * 39.37, 0)} µin)" : $"Ra {Shown.Trimmed(ra.LowUm, 2)} to {Shown.Trimmed(ra.HighUm, 2)} µm ({Shown.Number(ra.LowUm * 39.37, 0)} to {Shown.Number(ra.HighUm * 39.37, 0)} µin)";

    /// <summary>The edge when a step is done.</summary>
    public static string Edge(FinishStep s, UnitsShown units) => s.Edge is { } e ? $"edge {FigureText.Size(e, units)} when done" : "";

    /// <summary>Room for heat in words.</summary>
    public static string Heat(EdgeHeatRow h, UnitsShown units)
        => $"{h.Where}, {FigureText.Size(h.Thickness, units)}: {Depth((h.Room.LowUm, h.Room.UsualUm, h.Room.HighUm), units)} a face{(h.Seconds is { } s ? $", {(s < 1 ? "" : "about ")}{Seconds(s)} on one spot ({Seconds(h.LowSeconds!.Value)} to {Seconds(h.HighSeconds!.Value)})" : "")}";

    /// <summary>What the heat rows are about.</summary>
    public static string HeatHead(FinishPlan f)
        => $"Hard steel must stay under its tempering temperature, {Temper(f)}. With {f.HeatTool!.Name}, started cold from the dip, so much may come off one face before the next dip; any colour on the steel is too late.";

    /// <summary>The tempering temperature counted with.</summary>
    public static string Temper(FinishPlan f) => $"{Shown.Number(f.Tempered.Celsius, 0)} °C ({Shown.Number(f.Tempered.Fahrenheit, 0)} °F){(f.IsTemperAssumed ? ", assumed: the low end of common practice" : "")}";

    /// <summary>When to stop the coarse belt on hard steel; empty when that is all the same.</summary>
    public static string StopCoarse(FinishPlan f, UnitsShown units)
        => f.AfterCoarse is { } stop && f.LadderTakes is { } takes && f.Steps.FirstOrDefault(s => s.Stage == FinishStage.Hard) is { } first
            ? $"Stop {first.Tool.Name} on hard steel at an edge of {FigureText.Size(stop, units)}: the grits after it take {FigureText.Size(takes, units)} more off it, both faces." : "";

    /// <summary>Time of all steps.</summary>
    public static string All(FinishPlan f) => $"In all {Minutes(f.Minutes, f.LowMinutes, f.HighMinutes)} a piece at the belt{(f.HasUntimed ? ", and the steps whose time nobody has logged yet" : "")}.{(f.SavedMinutes is > 0.5 and var saves ? $" Before that, sawing first saves {Shown.Number(saves, 0)} min of profiling: see the rough-cut card." : "")}";

    private static string Seconds(double s) => s < 1 ? "under 1 s" : s > 600 ? "over 10 min" : $"{Shown.Number(s, 0)} s";

    private static string Weight(double grams, UnitsShown units) => FigureText.Weight(Mass.OfGrams(grams), units);
}
