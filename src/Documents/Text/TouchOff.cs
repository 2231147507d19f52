using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>How the two edges are found with an edge finder and the readout is set, in words, for the state the work is in.</summary>
public static class TouchOff
{
    /// <summary>Usual edge finders, as examples of the half that is set; common practice.</summary>
    private static readonly ImmutableArray<(string Name, Length Diameter)> Usual = [("10 mm", Length.OfMm(10)), ("0.200 in", Length.OfInches(0.2))];

    /// <summary>The steps, one sentence or two each.</summary>
    public static ImmutableArray<string> Steps(Results results, UnitsShown units)
    {
        var bench = results.Bench;
        var (right, upper) = (bench.AlongSign < 0, bench.AcrossSign < 0);
        var half = string.Join("; ", Usual.Select(u => $"one of {u.Name}: −{FigureText.Size(u.Diameter / 2, units, brief: true)}"));
        var steps = ImmutableArray.CreateBuilder<string>();
        steps.Add($"Zero x: touch the {bench.AlongFrom} from outside with the edge finder{At(results, right, along: true, units)}. The spindle then stands half the edge finder's diameter outside the edge: set x to minus that half ({half}). x grows into the work, to the {(right ? "left" : "right")}.");
        steps.Add($"Zero y: the same at the {bench.AcrossFrom}{At(results, upper, along: false, units)}; set y to minus the half. y grows {(upper ? "down" : "up")} from it, into the work.");
        steps.Add(bench.State switch
        {
            DrilledIn.Bar => "The long edge must lie along the table and the sawn end be filed square to it: run an indicator along the edge.",
            DrilledIn.Rectangle => "The two datum sides must be filed square to one another: run an indicator along the longer one.",
            _ => "The profiled piece has no long straight side to set by: after zeroing go to two holes or marks far apart and turn the work until both agree. Do not lift it between the faces.",
        });
        return steps.ToImmutable();
    }

    // a profiled end is touched where it stands out farthest
    private static string At(Results results, bool far, bool along, UnitsShown units)
    {
        if (results.Bench.State != DrilledIn.Profile) return "";
        var outline = results.Plan.Outline;
        const double Away = 1e5;
        var (box, sign) = (outline.Bounds, far ? 1 : -1);
        var from = along ? new Point(box.Centre.X + (sign * Away), box.Centre.Y) : new Point(box.Centre.X, box.Centre.Y + (sign * Away));
        var foot = results.Bench.ToBench(Nearest.On(outline, from).At);
        return $" where it stands out farthest, about {(along ? "y" : "x")} {FigureText.Size(Length.OfMm(along ? foot.Y : foot.X), units, brief: true)}";
    }
}
