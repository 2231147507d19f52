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
        => $"about {HoleStepText.Time(report.RunningSeconds)} running, and {HoleStepText.Time(report.ChangeSeconds)} to put in {report.Tools.Length} {(report.Tools.Length == 1 ? "tool" : "tools")}";

    /// <summary>Feed of a tool in mm/min or in/min: "60 to 240".</summary>
    public static string Feed(ToolTime t, bool inch)
    {
        string One(double mmPerMin) => inch ? Shown.Trimmed(mmPerMin / Length.MmPerInch, 1) : Shown.Trimmed(mmPerMin, 0);
        var (low, high) = (One(t.SlowestMmPerMin), One(t.FastestMmPerMin));
        return low == high ? low : $"{low} to {high}";
    }

    /// <summary>Speed of a tool, rpm: "2264", "2264 to 4244".</summary>
    public static string Speed(ToolTime t)
    {
        var (low, high) = (Shown.Number(t.SlowestTurnsPerMin, 0), Shown.Number(t.FastestTurnsPerMin, 0));
        return low == high ? low : $"{low} to {high}";
    }

    /// <summary>Time of a tool: "40 s".</summary>
    public static string Time(ToolTime t) => HoleStepText.Time(t.CuttingSeconds + t.CrossingSeconds);

    /// <summary>What is done with a program at the machine, step by step.</summary>
    public static IEnumerable<string> Steps(ProgramReport report)
    {
        if (report.Program is not { } program) yield break;
        var (s, ways) = (program.SetUp, report.Machine.ProgramWays);
        yield return $"Spoil board on the table, flat, at least {Both(s.SpoilMm)} thick: tools come through the stock.";
        yield return s.Pins.IsEmpty ? "Stock deburred, flat on the board, square to the travel of the table, the side in the drawing up." : "Two pins set into the board; the piece slips over both, flat on the board, the side in the drawing up.";
        yield return s.Clamps.Any(c => s.Pins.Any(p => c.Box.Holds(p.At))) ? "Washers and nuts on the pins, tight and no higher than written; nothing else on the board." : "Clamps as drawn and no higher than written, tight; nothing else on the board.";
        yield return $"Zero of G54: x 0, y 0 at {s.ZeroInWords.Split(';')[0]}{(s.ZeroInWords.Split(';').Length > 2 ? " and" + s.ZeroInWords.Split(';')[1] : "")}; z 0 at the upper face of the stock.";
        yield return ways.HasToolChange ? "Every tool in its place, its length measured or touched off." : "The program stops (M0) for every tool: put it in, touch its tip off at z 0, go on.";
        yield return $"{report.FileName} loaded; the control is set to {(ways.Units == LengthUnit.Inch ? "inch" : "mm")}.";
        yield return $"Run in the air: z 0 set {Both(Math.Ceiling(s.ThicknessMm + s.SpoilMm + 10))} too high, the whole program, a hand on the emergency stop. Does it go over the clamps, over the holes, round the piece?";
        yield return "z 0 set back. Run it; stop the spindle before chips are brushed away.";
        if (!program.Wanted.Holes.IsEmpty) yield return $"Before the clamps come off: hole {program.Wanted.Holes[0].Name} measured from the edges, its size tried.";
        if (!program.Tabs.IsEmpty) yield return $"Clamps off, piece out: {program.Tabs.Length} tabs sawn and filed flush. The rims are sharp.";
    }

    /// <summary>Where a hand can be hurt.</summary>
    public const string Caution = "Run it in the air first, a hand on the emergency stop. Eyes and ears covered; no gloves, sleeves or loose hair near the spindle; hands out while it turns; chips with a brush, the spindle standing. A clamp that gives way throws the piece. The machine's manual and local rules come first.";

    /// <summary>A tool in one line.</summary>
    public static string Tool(ToolTime t)
        => $"T{t.Tool.Number} {t.Tool.Name}: {Speed(t)} rpm, {Feed(t, inch: false)} mm/min ({Feed(t, inch: true)} in/min), {Time(t)}";

    /// <summary>Stock, clamps and pins, a line each.</summary>
    public static IEnumerable<string> SetUp(ProgramSetUp s)
    {
        yield return $"stock: {Both(s.Stock.Width)} by {Both(s.Stock.Height)} by {Both(s.ThicknessMm)}, on a spoil board at least {Both(s.SpoilMm)} thick";
        foreach (var c in s.Clamps) yield return $"{c.Name}: x {Both(c.Box.MinX)} to {Both(c.Box.MaxX)}, y {Both(c.Box.MinY)} to {Both(c.Box.MaxY)}, no higher than {Both(c.TopZMm)}";
        foreach (var p in s.Pins) yield return $"pin {Both(p.DiameterMm)} in hole {p.Name} places the piece: {(s.Clamps.Any(c => c.Box.Holds(p.At)) ? "threaded, with washer and nut" : "its end below the upper face of the stock")}";
    }

    private static string Both(double mm) => Shown.Both(Length.OfMm(mm));
}
