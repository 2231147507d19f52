using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How a program is worded, the same on the sheet, on the command line and on the desk.</summary>
public static class ProgramText
{
    /// <summary>What it makes: "4 holes and the profile".</summary>
    public static string Made(MachineProgram program)
    {
        var holes = program.Wanted.Holes.Length;
        var words = holes switch { 0 => "", 1 => "1 hole", _ => $"{holes} holes" };
        return program.Wanted.Outline is null ? words : words.Length == 0 ? "the profile" : words + " and the profile";
    }

    /// <summary>How long it takes: "about 9 min, and 4 min to change 4 tools".</summary>
    public static string Time(ProgramReport report)
        => $"about {HoleStepText.Time(report.TotalMinutes * 60)} running, and {HoleStepText.Time(report.ChangeMinutes * 60)} to put in {report.Minutes.Length} {(report.Minutes.Length == 1 ? "tool" : "tools")}";

    /// <summary>Feed of a tool: "60 to 240 mm/min (2.4 to 9.4 in/min)".</summary>
    public static string Feed(ToolMinutes t, UnitsShown units)
    {
        string Band(double perUnit, int decimals)
        {
            var (low, high) = (Shown.Trimmed(t.SlowestMmPerMin / perUnit, decimals), Shown.Trimmed(t.FastestMmPerMin / perUnit, decimals));
            return low == high ? low : $"{low} to {high}";
        }

        var (mm, inch) = (Band(1, 0) + " mm/min", Band(Length.MmPerInch, 1) + " in/min");
        return units switch { UnitsShown.Mm => mm, UnitsShown.Inch => inch, _ => $"{mm} ({inch})" };
    }

    /// <summary>A tool in one line.</summary>
    public static string Tool(ToolMinutes t)
        => $"T{t.Tool.Number} {t.Tool.Name}: {Shown.Number(t.TurnsPerMin, 0)} rpm, {Feed(t, UnitsShown.Both)}, {HoleStepText.Time((t.CuttingMinutes + t.CrossingMinutes) * 60)}";

    /// <summary>Stock, clamps and pins, a line each.</summary>
    public static IEnumerable<string> SetUp(ProgramSetUp s)
    {
        yield return $"stock: {Both(s.Stock.Width)} by {Both(s.Stock.Height)} by {Both(s.ThicknessMm)}, on a spoil board at least {Both(s.SpoilMm)} thick";
        foreach (var c in s.Clamps) yield return $"{c.Name}: x {Both(c.Box.MinX)} to {Both(c.Box.MaxX)}, y {Both(c.Box.MinY)} to {Both(c.Box.MaxY)}, no higher than {Both(c.TopZMm)}";
        foreach (var p in s.Pins) yield return $"pin {Both(p.DiameterMm)} in hole {p.Name} places the piece: {(s.Clamps.Any(c => c.Box.Holds(p.At)) ? "threaded, with washer and nut" : "its end below the upper face of the stock")}";
    }

    private static string Both(double mm) => Shown.Both(Length.OfMm(mm));
}
