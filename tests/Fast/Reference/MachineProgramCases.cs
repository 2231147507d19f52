using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests.Reference;

/// <summary>Examples printed in NIST IR 6556 (Kramer, Proctor, Messina: The NIST RS274NGC Interpreter, version 3, 2000), with its start points.</summary>
public class MachineProgramCases
{
    private static Motion[] Read(string text, SpacePoint start)
    {
        var reading = ProgramReader.Read("G21 G17\nF100\n" + text + "\nM2", [new ProgramTool(1, "6 mm end mill", ToolForm.EndMill, 6, 180, null)], true, start);
        Assert.Empty(reading.Troubles);
        return [.. reading.Motions];
    }

    private static void Goes(Motion[] motions, params (MotionKind Kind, double X, double Y, double Z)[] ends)
    {
        Assert.Equal(ends.Select(e => e.Kind), motions.Select(m => m.Kind));
        foreach (var (m, e) in motions.Zip(ends))
        {
            Assert.Equal(e.X, m.To.X, 9);
            Assert.Equal(e.Y, m.To.Y, 9);
            Assert.Equal(e.Z, m.To.Z, 9);
        }
    }

    // 3.5.16.2, first example
    [Fact]
    public void A_drill_cycle_with_absolute_places()
        => Goes(Read("G90 G81 G98 X4 Y5 Z1.5 R2.8", new(1, 2, 3)), (MotionKind.Rapid, 4, 5, 3), (MotionKind.Rapid, 4, 5, 2.8), (MotionKind.Feed, 4, 5, 1.5), (MotionKind.Rapid, 4, 5, 3));

    // 3.5.16.2, second example: three holes, steps from hole to hole
    [Fact]
    public void A_drill_cycle_with_steps_repeated()
        => Goes(
            Read("G91 G81 G98 X4 Y5 Z-0.6 R1.8 L3", new(1, 2, 3)),
            (MotionKind.Rapid, 1, 2, 4.8),
            (MotionKind.Rapid, 5, 7, 4.8), (MotionKind.Feed, 5, 7, 4.2), (MotionKind.Rapid, 5, 7, 4.8),
            (MotionKind.Rapid, 9, 12, 4.8), (MotionKind.Feed, 9, 12, 4.2), (MotionKind.Rapid, 9, 12, 4.8),
            (MotionKind.Rapid, 13, 17, 4.8), (MotionKind.Feed, 13, 17, 4.2), (MotionKind.Rapid, 13, 17, 4.8));

    // 3.5.3.2: centre format, a helix from (7, 7)
    [Fact]
    public void An_arc_by_its_centre()
    {
        var arc = Assert.Single(Read("G90 G17 G2 X10 Y16 I3 J4 Z9", new(7, 7, 0)));
        Assert.Equal(new Point(10, 11), arc.Centre);
        Assert.False(arc.IsCounterClockwise);
        Assert.Equal(5, ((Arc)arc.Flat()!).Radius, 9);
        Assert.Equal(new SpacePoint(10, 16, 9), arc.To);
    }

    // 3.5.3.1: radius format, "G17 G2 x 10 y 15 r 20 z 5"
    [Fact]
    public void An_arc_by_its_radius()
    {
        var arc = Assert.Single(Read("G90 G17 G2 x 10 y 15 r 20 z 5", new(0, 0, 0)));
        var flat = (Arc)arc.Flat()!;
        Assert.Equal(20, flat.Radius, 9);
        Assert.Equal(20, arc.Centre.To(arc.To.Flat), 9);
        Assert.True(Math.Abs(flat.Sweep) < Math.PI, "a positive radius is the short arc");
        Assert.True(Assert.IsType<Arc>(Assert.Single(Read("G90 G2 X10 Y15 R-20", new(0, 0, 0))).Flat()).Length > Math.PI * 20);
    }

    // what the open interpreter of Debian's linuxcnc-uspace 2.9 answers: bite 3 from 2 to -8, 0.010 in of room above the last depth
    [Fact]
    public void Pecking_goes_on_a_little_above_the_last_depth()
        => Assert.Equal(
            [-1, 2, -0.746, -4, 2, -3.746, -7, 2, -6.746, -8, 2],
            Read("G90 G99 G83 X0 Y0 Z-8 R2 Q3", new(0, 0, 2)).Select(m => Math.Round(m.To.Z, 9)));

    // the same program's answer to a lead-in at 45 degrees before an inside corner, tool of 6 mm to the right
    [Fact]
    public void Compensation_meets_the_next_side_of_an_inside_corner()
    {
        var run = Read("G90 T1 M6\nG0 X-20 Y40\nG42 D1 G1 X0 Y60\nX60\nG40 Y80", new(0, 0, 5));
        Assert.Equal(1.2426, run[1].To.X, 4);
        Assert.Equal(57, run[1].To.Y, 9);
        Assert.Equal(new SpacePoint(60, 57, 5), run[2].To);
    }

    [Fact]
    public void Inches_are_25_4_mm() => Goes(ProgramReader.Read("G20 G90\nF4 G1 X1 Y0.5 Z-0.25\nM2", [], true, default).Motions.ToArray(), (MotionKind.Feed, 25.4, 12.7, -6.35));
}
