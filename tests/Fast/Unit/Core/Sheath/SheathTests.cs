using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>Sheath and edge guard of pieces whose figures are worked out by hand.</summary>
public class SheathTests
{
    // a blade 100 long and 20 wide, handle at the right, edge below
    private const string Blade = """
        tangwright = 1
        name = "Blade"
        units = "mm"
        [stock]
        steel = "80CrV2"
        thickness = 4
        [outline]
        path = "M 0 0 L 100 0 L 200 0 L 200 20 L 0 20 Z"
        [edge]
        from = [0, 0]
        to = [100, 0]
        [grip]
        from = [104, 10]
        to = [200, 10]
        [sheath]
        kind = "leather"
        material_thickness = 3

        """;

    private static Results Work(string text)
    {
        var read = PlanReader.Read(text, "x");
        Assert.True(read.IsGood, string.Join("\n", read.Faults));
        return WorkUp.Of(read.Value.Plan, TestShop.Own, null);
    }

    private static SheathPattern Pattern(string text)
    {
        var r = Work(text);
        var pattern = SheathPattern.Of(r.Plan, r.Piece, out var why);
        Assert.True(pattern is not null, why);
        return pattern;
    }

    /// <summary>Half a circle of radius 3.5 through the middle of leather of 3 mm about a spine of 4 mm: 10.9956 mm.</summary>
    [Fact]
    public void Fold_allowance_is_half_a_circle() => Assert.Equal(10.9956, FoldAllowance.Of(Length.OfMm(4), Length.OfMm(3)).Mm, 4);

    [Fact]
    public void A_plain_blade_has_the_sheath_worked_out_by_hand()
    {
        // mouth 4 past the edge, at the grip: 104 deep, 20 wide; welt 15 beyond
        var p = Pattern(Blade);
        Assert.Equal(104, p.Pocket.Mouth.Mm, 9);
        Assert.Equal((104.0, 20.0), (p.Pocket.Depth.Mm, p.Pocket.Widest.Mm));
        Assert.Equal(119, p.BlankLength.Mm, 9);
        Assert.Equal((2 * 35) + (3.5 * Math.PI), p.BlankWidth.Mm, 9);

        // stitches 10 from the blade: along the edge, a quarter circle, up the end; 5 mm left free at mouth and fold
        Assert.Equal(104 + (5 * Math.PI) + 20 - 10, p.Stitches.Length.Mm, 9);
        Assert.Equal(33, p.Stitches.Holes.Length);
        Assert.Equal((114 + 15.707963) / 32, p.Stitches.Pitch.Mm, 6);
        // two needles: through all layers and along the face at every stitch, and half a metre for the ends
        Assert.Equal(500 + (2 * (114 + 15.707963) * (1 + ((2 + p.WeltLayers) * p.Material.Mm / p.Stitches.Pitch.Mm))), p.Thread.Mm, 4);
        Assert.Equal(2, p.WeltLayers);

        // each half: 104 × 35 and 15 × 20 and a quarter disc of 15; the strip round the spine; two welts of 14 about the room
        var half = (104 * 35) + (15 * 20) + (225 * Math.PI / 4);
        var welt = half - ((104 * 21) + 20 + (Math.PI / 4));
        Assert.Equal((2 * half) + (119 * 3.5 * Math.PI) + (2 * welt), p.Area.Mm2, 6);
    }

    [Fact]
    public void Sheet_is_trimmed_and_riveted()
    {
        var p = Pattern(Blade.Replace("leather", "sheet", StringComparison.Ordinal).Replace("thickness = 3", "thickness = 2", StringComparison.Ordinal) + "belt_loop = 40\n");
        Assert.Equal(104 + 25, p.Cut.Bounds.Width, 9);
        Assert.Equal(104 + 15, p.Trim!.Bounds.Width, 9);
        Assert.Null(p.Welt);
        Assert.Equal(3 * Math.PI, p.Fold.Mm, 9);
        Assert.All(p.Stitches.Holes.Take(3), h => Assert.Equal(-27 - (1.5 * Math.PI), h.Y, 9));
        Assert.Equal((130.0, 30.0), (p.Loop!.Value.Long.Mm, p.Loop.Value.Wide.Mm));
    }

    [Fact]
    public void Two_sheets_have_a_seam_all_round_to_the_mouth()
    {
        var p = Pattern(Blade.Replace("\"leather\"", "\"two sheets\"", StringComparison.Ordinal).Replace("thickness = 3", "thickness = 2", StringComparison.Ordinal));
        Assert.Equal((129.0, 70.0, 0.0), (p.BlankLength.Mm, p.BlankWidth.Mm, p.Fold.Mm));
        Assert.Equal((2 * 104) + 20 + (7 * Math.PI) - 16, p.Stitches.Length.Mm, 9);
        Assert.Equal((2 * ((104 * 70) + (25 * 20) + (625 * Math.PI / 2))), p.Area.Mm2, 6);
        Assert.Equal(-20, p.Stitches.Holes[0].Y + p.Stitches.Holes[^1].Y, 9);
    }

    [Fact]
    public void Over_the_handle_the_fold_is_made_for_its_thickness()
    {
        var over = Blade + "mouth = 120\n";
        Assert.False(Pattern(over).Mouth.IsHandleKnown);
        var p = Pattern(over + "[[added_mass]]\nname = \"scales\"\nmass = \"20 g\"\nthickness = 6\nover = [104, 200]\n");
        Assert.Equal((16.0, 16.0, true), (p.Mouth.HandleIn.Mm, p.Mouth.Thick.Mm, p.Mouth.IsHandleKnown));
        Assert.Equal(Math.PI / 2 * 19, p.Fold.Mm, 9);
        Assert.Equal(0, Pattern(Blade).Mouth.HandleIn.Mm);
    }

    [Fact]
    public void It_is_made_before_the_last_sharpening()
    {
        var order = Work(Blade).Order;
        Assert.Equal(("sheath", true), (order[^2].SheetKind, order[^1].What.StartsWith("Sharpen", StringComparison.Ordinal)));
        Assert.DoesNotContain(Work(Blade[..Blade.IndexOf("[sheath]", StringComparison.Ordinal)]).Order, s => s.SheetKind == "sheath");
    }

    [Fact]
    public void Turned_end_for_end_and_read_in_inches_it_stays_the_same()
    {
        var file = PlanReader.Read(Blade + "mouth = 102\n", "x").Value;
        var mirrored = WholePiece.Mirror(file, upsideDown: false).Value;
        Assert.Equal(98, mirrored.Plan.Sheath!.Mouth!.Value.Mm, 9);
        Assert.Equal(Pattern(file.Text).Area.Mm2, Pattern(mirrored.Text).Area.Mm2, 6);
        var inches = ValueEdit.Set(file, "", "", "units", "in").Value;
        Assert.Equal(file.Plan.Sheath, inches.Plan.Sheath);
    }

    [Theory]
    [InlineData("M 0 0 L 100 0 L 200 0 L 200 20 L 0 20 Z", 0, 0, 100, 0, 104, 200, 104)]
    [InlineData("M 200 20 L 100 20 L 0 20 L 0 0 L 200 0 Z", 200, 20, 100, 20, 96, 0, 96)]
    [InlineData("M 0 20 L 100 20 L 200 20 L 200 0 L 0 0 Z", 0, 20, 100, 20, 104, 200, 104)]
    [InlineData("M 200 0 L 100 0 L 0 0 L 0 20 L 200 20 Z", 200, 0, 100, 0, 96, 0, 96)]
    public void Every_way_the_blade_may_lie_gives_the_same_sheath(string path, int x0, int y0, int x1, int y1, int grip0, int grip1, int mouth)
    {
        var text = Blade.Replace("M 0 0 L 100 0 L 200 0 L 200 20 L 0 20 Z", path, StringComparison.Ordinal)
            .Replace("[0, 0]", $"[{x0}, {y0}]", StringComparison.Ordinal).Replace("[100, 0]", $"[{x1}, {y1}]", StringComparison.Ordinal)
            .Replace("[104, 10]", $"[{grip0}, 10]", StringComparison.Ordinal).Replace("[200, 10]", $"[{grip1}, 10]", StringComparison.Ordinal);
        var p = Pattern(text);
        Assert.Equal(mouth, p.Pocket.Mouth.Mm, 9);
        Assert.Equal((119.0, 104.0, 20.0), (p.BlankLength.Mm, p.Pocket.Depth.Mm, p.Pocket.Widest.Mm));
        Assert.Equal(Pattern(Blade).Area.Mm2, p.Area.Mm2, 6);
    }

    [Fact]
    public void The_mouth_stays_at_the_heel_when_the_blade_is_narrower_past_it()
    {
        var text = Blade.Replace("L 100 0 L 200 0", "L 100 0 L 100 6 L 200 6", StringComparison.Ordinal);
        Assert.Equal(100, Pattern(text).Pocket.Mouth.Mm, 9);
        Assert.DoesNotContain(Work(text).Findings, f => f.Code == FindingCodes.SheathMouth);
        var caught = Work(text + "mouth = 103\n").Findings.Single(f => f.Code == FindingCodes.SheathMouth);
        Assert.Contains("6.00 mm (0.236 in) wider inside", caught.Message, StringComparison.Ordinal);
        var bare = Work(text + "mouth = 90\n").Findings.Single(f => f.Code == FindingCodes.SheathMouth);
        Assert.StartsWith("10.00 mm (0.394 in) of the edge", bare.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_edge_guard_needs_no_sheath()
    {
        // a bow of 3 mm: the arc's sagitta over a chord of 60
        var text = Blade[..Blade.IndexOf("[sheath]", StringComparison.Ordinal)].Replace("M 0 0 L 100 0 L 200 0", "M 0 0 A 151.5 151.5 0 0 1 60 0 L 200 0", StringComparison.Ordinal).Replace("[100, 0]", "[60, 0]", StringComparison.Ordinal);
        var r = Work(text);
        var g = EdgeGuard.Of(r.Plan, r.Piece)!;
        Assert.Equal(80, g.Long.Mm, 9);
        Assert.Equal(3, g.Bow.Mm, 2);
        Assert.Equal((2 * 18) + (Math.PI / 2 * 6), g.Wide.Mm, 2);
        Assert.Null(SheathPattern.Of(r.Plan, r.Piece, out _));
        Assert.Null(EdgeGuard.Of(r.Plan with { Edge = null }, r.Piece));
    }

    [Fact]
    public void Holes_come_out_even_whatever_the_pitch()
    {
        var line = new Path([new Line(new(0, 0), new(30, 0)), Arc.OfCircle(new(30, 10), 10, -Math.PI / 2, Math.PI / 2), new Line(new(40, 10), new(40, 20))], closed: false);
        var s = EvenStitches.Along(line, Length.OfMm(4), Length.OfMm(5));
        Assert.Equal(40 + (5 * Math.PI) - 10, s.Length.Mm, 9);
        Assert.Equal((new Point(5, 0), new Point(40, 15)), (s.Holes[0], s.Holes[^1]));
        Assert.Equal(s.Length.Mm, s.Pitch.Mm * (s.Holes.Length - 1), 9);
        Assert.Empty(EvenStitches.Along(line, Length.OfMm(4), Length.OfMm(50)).Holes);
    }
}
