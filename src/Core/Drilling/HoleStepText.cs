using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How the steps of a hole are worded, the same on the card, on the command line and on the desk.</summary>
public static class HoleStepText
{
    /// <summary>A step: "spot", "pilot", "drill".</summary>
    public static string Of(HoleStep step) => step switch
    {
        HoleStep.Spot => "spot",
        HoleStep.Pilot => "pilot",
        HoleStep.Drill => "drill",
        HoleStep.Ream => "ream",
        HoleStep.Bore => "bore",
        _ => "chamfer",
    };

    /// <summary>What to set: "600"; "by hand" where no spindle turns.</summary>
    public static string Set(HoleOperation step) => step.Speed is { } s ? Shown.Number(s.SetRpm, 0) : "by hand";

    /// <summary>The band: "606 to 728 rpm"; empty where no spindle turns.</summary>
    public static string Band(HoleOperation step) => step.Speed is { } s ? $"{Shown.Number(s.LowRpm, 0)} to {Shown.Number(s.HighRpm, 0)} rpm" : "";

    /// <summary>Feed a turn: "0.14 mm (0.0055 in)"; "by feel" where it is not reckoned.</summary>
    public static string Feed(HoleOperation step, UnitsShown units) => step.FeedMmPerTurn <= 0 ? "by feel" : Sized(step.FeedMmPerTurn, units, 2, 4);

    /// <summary>Depth of the tip: "9.9 mm (0.390 in)".</summary>
    public static string Depth(HoleOperation step, UnitsShown units) => Sized(step.DepthMm, units, 1, 3);

    /// <summary>In one go, or how deep a bite: "one go", "every 3 mm (0.118 in)".</summary>
    public static string Peck(HoleOperation step, UnitsShown units) => step.PeckMm is { } p ? "every " + Sized(p, units, 1, 3) : "one go";

    /// <summary>Push as a band: "630 to 890 N (142 to 200 lbf)"; empty where it does not matter.</summary>
    public static string Thrust(HoleOperation step, UnitsShown units)
    {
        if (step.Thrust is not { } t) return "";
        var (n, lb) = ($"{Shown.Number(t.Low.Newtons, 0)} to {Shown.Number(t.High.Newtons, 0)} N", $"{Shown.Number(t.Low.Pounds, 0)} to {Shown.Number(t.High.Pounds, 0)} lbf");
        return units switch { UnitsShown.Mm => n, UnitsShown.Inch => lb, _ => $"{n} ({lb})" };
    }

    /// <summary>Power at the spindle as a band: "110 to 190 W"; empty where it does not matter.</summary>
    public static string Power(HoleOperation step) => step.Power is { } p ? $"{Shown.Number(p.Low.Watts, 0)} to {Shown.Number(p.High.Watts, 0)} W" : "";

    /// <summary>A time: "40 s", "6 min".</summary>
    public static string Time(double seconds) => seconds < 90 ? $"{Shown.Number(seconds, 0)} s" : $"{Shown.Number(seconds / 60, 0)} min";

    /// <summary>A time as a band: "about 9 min (7 to 13 min)".</summary>
    public static string Time(Estimate<double> seconds) => $"about {Time(seconds.Value)} ({Time(seconds.Low)} to {Time(seconds.High)})";

    /// <summary>Push and torque in one line: which push and power, from two published models.</summary>
    public static string Effort(HoleOperation step, UnitsShown units) => step.Thrust is null ? "" : $"push {Thrust(step, units)}, {Power(step)} at the spindle";

    private static string Sized(double mm, UnitsShown units, int decimals, int inchDecimals)
    {
        var (m, i) = (Shown.Trimmed(mm, decimals) + " mm", Shown.Number(mm / Length.MmPerInch, inchDecimals) + " in");
        return units switch { UnitsShown.Mm => m, UnitsShown.Inch => i, _ => $"{m} ({i})" };
    }
}
