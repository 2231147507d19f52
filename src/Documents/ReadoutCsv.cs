using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The readout list as rows of a table: every stop of every machine with a readout in order, front face and back. Distances are from the two edges measured from; <c>first_…</c> is where to go past to before, empty where that is not needed.</summary>
public static class ReadoutCsv
{
    /// <summary>The rows, the heading first.</summary>
    public static ImmutableArray<ImmutableArray<string>> Rows(Results results)
    {
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        rows.Add(["machine", "face", "clamping", "tool", "step", "rpm", "order", "hole", "x_mm", "y_mm", "first_x_mm", "first_y_mm", "x_in", "y_in", "depth_mm"]);
        foreach (var group in results.Drilling.ByMachine.Where(g => g.Machine is { HasReadout: true }))
        {
            var way = MachineWay.Of(group, results.Bench)!;
            for (var c = 0; c < way.Clampings.Length; c++)
            {
                foreach (var tool in way.Clampings[c].Tools)
                {
                    var work = tool.Round.Work;
                    for (var i = 0; i < tool.Stops.Length; i++) rows.Add(Row(way, "front", Count(c + 1), tool.Round.Tool, HoleStepText.Of(work.Step), work.Speed is { } s ? Shown.Trimmed(s.SetRpm, 0) : "", i, tool.Stops[i], Shown.Trimmed(Depth(group, tool, tool.Stops[i]), 2)));
                }
            }

            var back = way.Back(results.Bench);
            for (var i = 0; i < back.Length; i++) rows.Add(Row(way, "back", "", "", "", "", i, back[i], ""));
        }

        return rows.ToImmutable();
    }

    private static double Depth(HoleGroup group, ToolWay tool, WayStop stop)
        => group.Holes.First(h => h.Hole.Name == stop.Hole.Name).Operations.First(o => o.Tool == tool.Round.Tool).DepthMm;

    private static ImmutableArray<string> Row(MachineWay way, string face, string clamping, string tool, string step, string rpm, int i, WayStop stop, string depth)
        => [way.Machine.Name, face, clamping, tool, step, rpm, Count(i + 1), stop.Hole.Name, Mm(stop.At.X), Mm(stop.At.Y), stop.PastXMm is { } x ? Mm(x) : "", stop.PastYMm is { } y ? Mm(y) : "", Inch(stop.At.X), Inch(stop.At.Y), depth];

    private static string Mm(double mm) => Shown.Trimmed(mm, 4);

    private static string Inch(double mm) => Shown.Trimmed(mm / Length.MmPerInch, 5);

    private static string Count(int n) => n.ToString(CultureInfo.InvariantCulture);
}
