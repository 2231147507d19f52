using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Whether motions, as an outside reader says them, leave holes and outline as planned. Measured in its own way, without the sweep of the program.</summary>
internal static class LeftAsPlanned
{
    private const int Directions = 72;

    /// <summary>Fails the test when a hole or the profile is farther off than a tolerance.</summary>
    public static void Check(ImmutableArray<OutsideMotion> motions, ImmutableArray<ProgramTool> tools, WantedPart wanted, double thicknessMm, double toleranceMm)
    {
        var cuts = Cuts(motions, tools);
        foreach (var hole in wanted.Holes)
        {
            // what goes through at full size, as far as it reaches to each side
            var through = cuts.Where(c => c.To.Z <= 1e-6 - thicknessMm - PointMm(c.Tool) && c.To.Flat.To(hole.At) < hole.DiameterMm / 2).ToArray();
            Assert.True(through.Length > 0, $"hole {hole.Name} is not made");
            for (var i = 0; i < Directions; i++)
            {
                var way = Point.Direction(i * 2 * Math.PI / Directions);
                var reach = through.Max(c => Farthest(c, way, hole.At) + (c.Tool.DiameterMm / 2));
                Assert.True(Math.Abs(reach - (hole.DiameterMm / 2)) <= toleranceMm, $"hole {hole.Name} reaches {reach:F4} mm at {i * 360 / Directions} degrees instead of {hole.DiameterMm / 2:F4} mm");
            }
        }

        if (wanted.Outline is not { } outline) return;
        var profile = cuts.Where(c => c.Tool.Form == ToolForm.EndMill && c.Path is not null && c.To.Z < 0 && !wanted.Holes.Any(h => c.To.Flat.To(h.At) < h.DiameterMm / 2)).ToArray();
        Assert.NotEmpty(profile);
        foreach (var s in outline.Segments)
        {
            for (var i = 0; i <= 40; i++)
            {
                var off = Off(s.At(i / 40.0), profile);
                Assert.True(Math.Abs(off) <= toleranceMm, $"the profile is {off:F4} mm off at {s.At(i / 40.0)}");
            }
        }
    }

    private static double PointMm(ProgramTool t) => t.PointDegrees < 180 ? t.DiameterMm / 2 / Math.Tan(t.PointDegrees * Math.PI / 360) : 0;

    /// <summary>How far the centre of a tool gets to one side of a place, mm.</summary>
    private static double Farthest(Cut cut, Point way, Point from)
    {
        if (cut.Path is not { } path) return (cut.To.Flat - from).Dot(way);
        var far = double.NegativeInfinity;
        for (var k = 0; k <= 360; k++)
        {
            // a helix or ramp counts from where it is through
            if (cut.FromZ <= cut.To.Z + 1e-6 || k == 360) far = Math.Max(far, (path.At(k / 360.0) - from).Dot(way));
        }

        return far;
    }

    /// <summary>How far the nearest cut is from where its tool just touches a place, mm.</summary>
    private static double Off(Point p, Cut[] profile)
    {
        var least = double.PositiveInfinity;
        foreach (var c in profile)
        {
            if (c.Path!.Bounds.DistanceTo(p) - (c.Tool.DiameterMm / 2) < least) least = Math.Min(least, Nearest.Distance(c.Path, p) - (c.Tool.DiameterMm / 2));
        }

        return least;
    }

    private static List<Cut> Cuts(ImmutableArray<OutsideMotion> motions, ImmutableArray<ProgramTool> tools)
    {
        var cuts = new List<Cut>();
        var at = default(SpacePoint);
        foreach (var m in motions)
        {
            Segment? path = m.Centre is { } c ? MotionPath.ArcOf(at.Flat, m.To.Flat, c, m.IsCounterClockwise)
                : at.Flat.To(m.To.Flat) > 1e-6 ? new Line(at.Flat, m.To.Flat) : null;
            if (!m.IsRapid) cuts.Add(new Cut(path, at.Z, m.To, tools.Single(t => t.Number == m.Tool)));
            at = m.To;
        }

        return cuts;
    }

    private sealed record Cut(Segment? Path, double FromZ, SpacePoint To, ProgramTool Tool);
}
