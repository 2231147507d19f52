using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Whether motions, as an outside reader says them, leave holes and outline as planned. Measured in its own way, without the sweep of the program.</summary>
internal static class LeftAsPlanned
{
    /// <summary>Fails the test when a hole or the profile is farther off than a tolerance.</summary>
    public static void Check(ImmutableArray<OutsideMotion> motions, ImmutableArray<ProgramTool> tools, WantedPart wanted, double thicknessMm, double toleranceMm)
    {
        var cuts = Cuts(motions);
        foreach (var hole in wanted.Holes)
        {
            // drilled: the last plunge through is the size; bored: a full circle at the bottom
            var plunges = cuts.Where(c => c.Path is null && c.To.Z <= -thicknessMm && c.To.Flat.To(hole.At) < hole.DiameterMm / 2).ToArray();
            var circles = cuts.Where(c => c.Path is Arc { IsCircle: true } a && Math.Abs(a.Sweep) > 6.28 && c.To.Z <= -thicknessMm && a.Centre.To(hole.At) < hole.DiameterMm / 2).Select(c => (Arc)c.Path!).ToArray();
            if (circles.Length > 0)
            {
                Assert.Equal(0, circles[^1].Centre.To(hole.At), toleranceMm);
                Assert.Contains(tools, t => t.Form == ToolForm.EndMill && Math.Abs((2 * circles[^1].Radius) + t.DiameterMm - hole.DiameterMm) <= 2 * toleranceMm);
                continue;
            }

            Assert.True(plunges.Length > 0, $"hole {hole.Name} is not made");
            Assert.All(plunges, p => Assert.Equal(0, p.To.Flat.To(hole.At), toleranceMm));
        }

        if (wanted.Outline is not { } outline) return;
        var mill = tools.Where(t => t.Form == ToolForm.EndMill).ToArray();
        var profile = cuts.Where(c => c.Path is not null && c.To.Z < 0 && !wanted.Holes.Any(h => c.To.Flat.To(h.At) < h.DiameterMm / 2)).ToArray();
        var worst = mill.Min(t => Worst(outline, profile, t.DiameterMm / 2));
        Assert.True(worst <= toleranceMm, $"the profile is {worst:F4} mm off");
    }

    /// <summary>How far the nearest cut of each place of the outline is from a tool's radius, mm, at most.</summary>
    private static double Worst(Foundation.Path outline, (Segment? Path, SpacePoint To)[] profile, double radius)
    {
        var worst = 0.0;
        foreach (var s in outline.Segments)
        {
            for (var i = 0; i <= 40; i++)
            {
                var p = s.At(i / 40.0);
                worst = Math.Max(worst, Math.Abs(profile.Min(c => Nearest.Distance(c.Path!, p)) - radius));
            }
        }

        return worst;
    }

    private static List<(Segment? Path, SpacePoint To)> Cuts(ImmutableArray<OutsideMotion> motions)
    {
        var cuts = new List<(Segment?, SpacePoint)>();
        var at = default(SpacePoint);
        foreach (var m in motions)
        {
            Segment? path = m.Centre is { } c ? MotionPath.ArcOf(at.Flat, m.To.Flat, c, m.IsCounterClockwise)
                : at.Flat.To(m.To.Flat) > 1e-6 ? new Line(at.Flat, m.To.Flat) : null;
            if (!m.IsRapid) cuts.Add((path, m.To));
            at = m.To;
        }

        return cuts;
    }
}
