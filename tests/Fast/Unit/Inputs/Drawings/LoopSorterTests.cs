using System.Collections.Immutable;
using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>What the sorting of loops takes and leaves, on drawings small enough to check by hand.</summary>
public class LoopSorterTests
{
    private static string Line(double x1, double y1, double x2, double y2, string layer = "0") => $"0\nLINE\n8\n{layer}\n10\n{x1}\n20\n{y1}\n11\n{x2}\n21\n{y2}\n";

    private static string Circle(double x, double y, double r) => $"0\nCIRCLE\n8\n0\n10\n{x}\n20\n{y}\n40\n{r}\n";

    private static string Box(double x1, double y1, double x2, double y2) => Line(x1, y1, x2, y1) + Line(x2, y2, x2, y1) + Line(x2, y2, x1, y2) + Line(x1, y1, x1, y2);

    private static Checked<ImportedPiece> Read(string entities, ImportChoice? choice = null)
        => DrawingReader.Read(Encoding.ASCII.GetBytes($"0\nSECTION\n2\nENTITIES\n{entities}0\nENDSEC\n0\nEOF\n"), "f.dxf", choice ?? new ImportChoice(LengthUnit.Mm, []));

    private static double Area(Checked<ImportedPiece> r) => Moments.Of(r.Value.Outline).AreaMm2;

    [Fact]
    public void A_bar_with_round_holes_is_a_piece_not_a_frame()
    {
        var r = Read(Box(0, 0, 100, 20) + Circle(10, 10, 3) + Circle(90, 10, 3));
        Assert.Equal(2000, Area(r), 9);
        Assert.Equal(2, r.Value.Holes.Length);
        Assert.Empty(r.Value.LeftOut);
    }

    [Fact]
    public void A_round_blade_is_the_largest_circle()
    {
        var r = Read(Circle(0, 0, 50) + Circle(0, 0, 5) + Circle(20, 0, 3) + Line(-3, 0, 3, 0));
        Assert.Equal(Math.PI * 2500, Area(r), 6);
        Assert.Equal([5.0, 3.0], r.Value.Holes.Select(h => h.DiameterMm / 2));
    }

    [Fact]
    public void Two_loops_joined_by_a_line_are_two_loops()
    {
        var r = Read(Box(0, 0, 100, 20) + Line(100, 20, 130, 20) + Box(130, 20, 150, 30));
        Assert.Equal(2000, Area(r), 9);
        Assert.Contains(r.Value.LeftOut, l => l.Contains("--loop 2", StringComparison.Ordinal) && l.Contains("20 x 10 mm", StringComparison.Ordinal));
        Assert.Equal(200, Area(Read(Box(0, 0, 100, 20) + Line(100, 20, 130, 20) + Box(130, 20, 150, 30), new ImportChoice(LengthUnit.Mm, [], 2))), 9);
    }

    [Fact]
    public void Lines_inside_that_touch_the_outline_do_not_divide_it()
    {
        // a crossing pair of construction lines from corner to corner, a spur outside that carries one of them on
        var r = Read(Box(0, 0, 100, 20) + Line(0, 0, 100, 20) + Line(100, 0, 0, 20) + Line(100, 20, 120, 40));
        Assert.Equal(2000, Area(r), 9);
        Assert.Contains(r.Value.LeftOut, l => l.Contains("2 loose lines", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0.05, 0.04, true)]
    [InlineData(0.05, 0.06, false)]
    [InlineData(0.5, 0.4, true)]
    [InlineData(0, 0.001, false)]
    public void Ends_are_joined_within_the_tolerance_and_not_beyond(double tolerance, double gap, bool joined)
    {
        var r = Read(Line(0, 0, 100, 0) + Line(100, gap, 100, 30) + Line(100, 30, 0, 30) + Line(0, 30, 0, 0), new ImportChoice(LengthUnit.Mm, [], null, tolerance));
        Assert.Equal(joined, r.IsGood);
        if (joined) Assert.Equal(3000, Area(r), gap * 100);
        else Assert.Contains($"{gap:F3} mm", Assert.Single(r.Faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Fine_segments_shorter_than_the_tolerance_do_not_melt_together()
    {
        // a disc of 5 mm drawn as chords of 0.0157 mm, under the join tolerance of 0.05 mm
        var s = new StringBuilder();
        const int n = 2000;
        Point P(int i) => Point.Direction(2 * Math.PI * (i % n) / n) * 5;
        for (var i = 0; i < n; i++) s.Append(Line(Math.Round(P(i).X, 6), Math.Round(P(i).Y, 6) * 2, Math.Round(P(i + 1).X, 6), Math.Round(P(i + 1).Y, 6) * 2));
        var r = Read(s.ToString());
        Assert.Equal(Math.PI * 50, Area(r), 1e-3);
        Assert.Equal(n, r.Value.Outline.Segments.Length);
    }

    [Fact]
    public void The_outline_runs_counter_clockwise_and_wrong_choices_are_named()
    {
        Assert.True(Area(Read(Line(0, 0, 0, 10) + Line(0, 10, 10, 10) + Line(10, 10, 10, 0) + Line(10, 0, 0, 0))) > 0);
        Assert.Contains("no loop 7", Assert.Single(Read(Box(0, 0, 9, 9), new ImportChoice(LengthUnit.Mm, [], 7)).Faults).Message, StringComparison.Ordinal);
        Assert.Contains("tolerance", Assert.Single(Read(Box(0, 0, 9, 9), new ImportChoice(LengthUnit.Mm, [], null, double.NaN)).Faults).Message, StringComparison.Ordinal);
        Assert.Contains("gap", Assert.Single(Read(Line(0, 0, 100, 0) + Line(100, 0, 100, 20) + Line(100, 20, 3, 20)).Faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Carriage_returns_byte_order_marks_and_UTF16_are_read()
    {
        const string plate = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" height=\"50mm\" viewBox=\"0 0 100 50\"><path d=\"M0 0H90V40H0Z\"/></svg>";
        ImmutableArray<byte[]> files =
        [
            Encoding.ASCII.GetBytes(("999\nx\n0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n 70\n     4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n" + Box(0, 0, 90, 40) + "0\nENDSEC\n0\nEOF\n").Replace("\n", "\r\n", StringComparison.Ordinal)),
            [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(plate)],
            [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(plate)],
        ];
        foreach (var f in files) Assert.Equal(3600, Area(DrawingReader.Read(f, "f", ImportChoice.None)), 9);
    }
}
