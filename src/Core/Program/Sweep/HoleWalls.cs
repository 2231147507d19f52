using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The wall that the tools leave in each hole, measured in 360 directions from where its centre should be.</summary>
internal static class HoleWalls
{
    private const int Directions = 360;
    private const double StepMm = 0.05;
    private const double SoughtMm = 1;
    private const double CoreMm = 0.25;

    public static IEnumerable<ProgramTrouble> Of(IReadOnlyList<Motion> motions, ImmutableArray<ProgramTool> tools, ProgramSetUp setUp, WantedPart wanted)
    {
        foreach (var hole in wanted.Holes)
        {
            var through = Through(motions, tools, setUp, hole);
            if (through.Count == 0)
            {
                var shallow = motions.LastOrDefault(m => m.Kind != MotionKind.Rapid && m.To.Z < 0 && m.To.Flat.To(hole.At) < hole.DiameterMm / 2);
                yield return shallow is null
                    ? new("hole missing", 0, $"hole {hole.Name} at {Place(hole.At)} is not made", "add it to the program")
                    : new("hole depth", shallow.Line, $"hole {hole.Name} does not go through at full size", "go deeper: thickness, length of the point and a little more");
                continue;
            }

            var ways = Enumerable.Range(0, Directions).Select(i => Point.Direction(i * 2 * Math.PI / Directions)).ToArray();
            var walls = Array.ConvertAll(ways, w => through.Max(d => Reach(hole.At, w, d.At, d.Radius)));
            var mean = walls.Average();
            var shift = ways.Zip(walls).Aggregate(default(Point), (sum, w) => sum + (w.First * (2 * w.Second / Directions)));
            var outOfRound = ways.Zip(walls).Max(w => Math.Abs(w.Second - mean - shift.Dot(w.First)));
            var line = through[^1].Line;
            if (HasCore(hole, through)) yield return new("hole core", line, $"a core is left in hole {hole.Name}: it comes loose under the tool", "drill it away first, or use a larger end mill");
            if (outOfRound > wanted.ToleranceMm) yield return new("hole shape", line, $"the wall of hole {hole.Name} is out of round by {Mm(outOfRound)}", "finish it with a full circle at its bottom");
            if (shift.Length > wanted.ToleranceMm) yield return new("hole place", line, $"hole {hole.Name} is {Mm(shift.Length)} from its place", $"make it at {Place(hole.At)}");
            if (Math.Abs((2 * mean) - hole.DiameterMm) > wanted.ToleranceMm) yield return new("hole size", line, $"hole {hole.Name} comes out {Mm(2 * mean)} instead of {Mm(hole.DiameterMm)}", "use the tool or the path of its size");
        }
    }

    /// <summary>Whether something inside the hole is never cut.</summary>
    private static bool HasCore(WantedHole hole, List<(Point At, double Radius, int Line)> through)
    {
        for (var from = 0.0; from < (hole.DiameterMm / 2) - CoreMm; from += CoreMm)
        {
            for (var i = 0; i < Directions; i += 15)
            {
                var p = hole.At + (Point.Direction(i * 2 * Math.PI / Directions) * from);
                if (!through.Exists(d => d.At.To(p) <= d.Radius)) return true;
            }
        }

        return false;
    }

    /// <summary>Discs that the tools cut through the whole thickness in or near a hole.</summary>
    private static List<(Point At, double Radius, int Line)> Through(IReadOnlyList<Motion> motions, ImmutableArray<ProgramTool> tools, ProgramSetUp setUp, WantedHole hole)
    {
        var discs = new List<(Point, double, int)>();
        var near = (hole.DiameterMm / 2) + SoughtMm;
        foreach (var m in motions)
        {
            if (m.Kind == MotionKind.Rapid) continue;
            var tool = SweptTool.Of(tools, m.Tool);
            var low = -setUp.ThicknessMm - tool.Point;
            if (Math.Min(m.From.Z, m.To.Z) > low + 1e-6 || tool.Tool is null) continue;
            if (!(m.Flat()?.Bounds ?? Box.Around(m.To.Flat)).Grown(near).Holds(hole.At)) continue;
            foreach (var at in MotionSteps.Of(m, StepMm, 1e-4))
            {
                if (at.Z <= low + 1e-6 && at.Flat.To(hole.At) <= near) discs.Add((at.Flat, tool.Radius, m.Line));
            }

            if (m.To.Z <= low + 1e-6 && m.To.Flat.To(hole.At) <= near) discs.Add((m.To.Flat, tool.Radius, m.Line));
        }

        return discs;
    }

    /// <summary>How far a ray runs until it leaves a disc for good, mm; 0 when it misses it.</summary>
    private static double Reach(Point from, Point way, Point centre, double radius)
    {
        var to = centre - from;
        var (along, aside) = (to.Dot(way), to.Cross(way));
        var half2 = (radius * radius) - (aside * aside);
        return half2 < 0 ? 0 : Math.Max(0, along + Math.Sqrt(half2));
    }

    private static string Place(Point p) => $"x {Mm(p.X)}, y {Mm(p.Y)}";

    private static string Mm(double mm) => Shown.Mm(Length.OfMm(mm), 3);
}
