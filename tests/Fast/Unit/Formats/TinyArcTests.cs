using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.Tests;

public class TinyArcTests
{
    private static readonly ProgramTool Mill = new(1, "6 mm end mill", ToolForm.EndMill, 6, 180, null);

    // its ends, rounded as written, are one point: a controller would go a full turn
    [Theory]
    [InlineData(0.00001)]
    [InlineData(0.0004)]
    [InlineData(0.004)]
    public void An_arc_too_short_to_be_told_from_a_full_turn_is_no_arc(double mm)
    {
        var end = Point.Direction(mm / 3) * 3;
        var path = new Toolpath("x", 10, [Mill], [new ToolStep(Mill, 1000), new RapidStep(new(3, 0, 10)), new FeedStep(new(3, 0, -1), 100), new ArcStep(new(end.X, end.Y, -1), default, true, 100), new RapidStep(new(end.X, end.Y, 10))]);
        Assert.DoesNotContain("G3", Rs274Writer.Write(path, new(false, true, true, true, true), []), StringComparison.Ordinal);
    }

    [Fact]
    public void A_full_turn_stays_one()
    {
        var path = new Toolpath("x", 10, [Mill], [new ToolStep(Mill, 1000), new RapidStep(new(3, 0, 10)), new FeedStep(new(3, 0, -1), 100), new ArcStep(new(3, 0, -1), default, true, 100), new RapidStep(new(3, 0, 10))]);
        Assert.Contains("G3 X3 Y0 I-3 J0", Rs274Writer.Write(path, new(false, true, true, true, true), []), StringComparison.Ordinal);
    }

    [Fact]
    public void A_tool_that_stays_is_not_called_again()
    {
        var path = new Toolpath("x", 10, [Mill], [new ToolStep(Mill, 1000), new RapidStep(new(3, 0, 10)), new ToolStep(Mill, 2000), new RapidStep(new(5, 0, 10))]);
        var text = Rs274Writer.Write(path, new(false, true, true, true, true), []);
        Assert.Equal(text.IndexOf("T1 M6", StringComparison.Ordinal), text.LastIndexOf("T1 M6", StringComparison.Ordinal));
        Assert.Contains("S2000 M3", text, StringComparison.Ordinal);
    }
}
