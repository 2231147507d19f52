using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Reference;

/// <summary>Limits and fits against the published tables of ISO 286; reaming pairs, drilled sizes and general tolerances against theirs.</summary>
public class FitsByIso286
{
    [Theory]
    // size in each step, then lower and upper limit in µm; ISO 286-2 as transcribed in a public repository
    [InlineData(2, "H7", 0, 10)]
    [InlineData(2, "h6", -6, 0)]
    [InlineData(2, "m6", 2, 8)]
    [InlineData(2, "p6", 6, 12)]
    [InlineData(2, "F7", 6, 16)]
    [InlineData(2, "G7", 2, 12)]
    [InlineData(3, "H8", 0, 14)]
    [InlineData(5, "H7", 0, 12)]
    [InlineData(5, "h8", -18, 0)]
    [InlineData(5, "m6", 4, 12)]
    [InlineData(5, "p6", 12, 20)]
    [InlineData(5, "F7", 10, 22)]
    [InlineData(6.35, "H7", 0, 15)]
    [InlineData(6.35, "H8", 0, 22)]
    [InlineData(6.35, "h6", -9, 0)]
    [InlineData(6.35, "h8", -22, 0)]
    [InlineData(6.35, "m6", 6, 15)]
    [InlineData(6.35, "p6", 15, 24)]
    [InlineData(6.35, "F7", 13, 28)]
    [InlineData(6.35, "G7", 5, 20)]
    [InlineData(12, "H7", 0, 18)]
    [InlineData(12, "m6", 7, 18)]
    [InlineData(12, "p6", 18, 29)]
    [InlineData(18, "F7", 16, 34)]
    [InlineData(25, "H8", 0, 33)]
    [InlineData(25, "m6", 8, 21)]
    [InlineData(25, "p6", 22, 35)]
    [InlineData(25, "G7", 7, 28)]
    [InlineData(29, "H7", 0, 21)]
    [InlineData(50, "H7", 0, 25)]
    [InlineData(50, "h6", -16, 0)]
    [InlineData(50, "m6", 9, 25)]
    [InlineData(50, "p6", 26, 42)]
    [InlineData(50, "F7", 25, 50)]
    // holes with Delta and without; ISO 286-2, from memory
    [InlineData(2, "K7", -10, 0)]
    [InlineData(2, "P7", -16, -6)]
    [InlineData(5, "K7", -9, 3)]
    [InlineData(8, "K7", -10, 5)]
    [InlineData(8, "K8", -16, 6)]
    [InlineData(8, "M7", -15, 0)]
    [InlineData(8, "M8", -21, 1)]
    [InlineData(8, "N7", -19, -4)]
    [InlineData(8, "N8", -25, -3)]
    [InlineData(8, "N9", -36, 0)]
    [InlineData(8, "P7", -24, -9)]
    [InlineData(12, "K7", -12, 6)]
    [InlineData(25, "M7", -21, 0)]
    [InlineData(25, "N7", -28, -7)]
    [InlineData(25, "P7", -35, -14)]
    [InlineData(40, "K6", -13, 3)]
    [InlineData(40, "K7", -18, 7)]
    [InlineData(8, "js6", -4.5, 4.5)]
    [InlineData(8, "k6", 1, 10)]
    [InlineData(8, "n6", 10, 19)]
    [InlineData(8, "r6", 19, 28)]
    [InlineData(8, "s6", 23, 32)]
    public void Limits_are_those_of_the_standard(double mm, string text, double lowerUm, double upperUm)
    {
        var wanted = char.IsAsciiLetterUpper(text[0]) ? ToleranceClass.Hole(text).Value : ToleranceClass.Pin(text).Value;
        var limits = FundamentalDeviation.Of(Length.OfMm(mm), wanted)!.Value;
        Assert.Equal(lowerUm, limits.Lower.Mm * 1000, 9);
        Assert.Equal(upperUm, limits.Upper.Mm * 1000, 9);
    }

    [Theory]
    [InlineData(6.35, "H7", "h6", 0, 24, FitKind.Slides)]
    [InlineData(6.35, "H7", "m6", -15, 9, FitKind.SlidesOrPresses)]
    [InlineData(6.35, "H7", "p6", -24, 0, FitKind.Presses)]
    [InlineData(29, "H7", "h8", 0, 54, FitKind.Slides)]
    public void Fits_are_those_of_the_standard(double mm, string hole, string pin, double leastUm, double mostUm, FitKind kind)
    {
        var fit = FitResult.Of(FitLimits.Of(Length.OfMm(mm), ToleranceClass.Hole(hole).Value).Value, FitLimits.Of(Length.OfMm(mm), ToleranceClass.Pin(pin).Value).Value);
        Assert.Equal(leastUm, fit.LeastClearance.Mm * 1000, 9);
        Assert.Equal(mostUm, fit.MostClearance.Mm * 1000, 9);
        Assert.Equal(kind, fit.Kind);
    }

    [Fact]
    public void Widths_follow_the_tolerance_unit_of_ISO_286_1()
    {
        // i = 0.45 D^(1/3) + 0.001 D µm at the geometric mean of the step; the standard rounds oddly, by up to 12 %, in its first step by 16 %
        (double From, double To)[] steps = [(1, 3), (3, 6), (6, 10), (10, 18), (18, 30), (30, 50)];
        double[] units = [7, 10, 16, 25, 40, 64, 100, 160, 250];
        foreach (var (from, to) in steps)
        {
            var mean = Math.Sqrt(from * to);
            var unit = (0.45 * Math.Cbrt(mean)) + (0.001 * mean);
            for (var grade = 5; grade <= 13; grade++) Assert.InRange(ToleranceGrade.Width(Length.OfMm(to), grade)!.Value.Mm * 1000 / (units[grade - 5] * unit), 0.88, to == 3 ? 1.16 : 1.12);
        }
    }

    [Fact]
    public void Near_limits_follow_the_rules_the_table_was_made_by()
    {
        // over 3 mm: g = -2.5 D^0.34, f = -5.5 D^0.41, n = 5 D^0.34, m = IT7 - IT6, p = IT7 + 0 to 1, all µm
        foreach (var (from, to) in new[] { (3.0, 6.0), (6, 10), (10, 18), (18, 30), (30, 50) })
        {
            var (d, size) = (Math.Sqrt(from * to), Length.OfMm(to));
            double Near(string text) => FundamentalDeviation.Of(size, ToleranceClass.Pin(text).Value)!.Value is var l && text[0] is 'f' or 'g' ? l.Upper.Mm * 1000 : l.Lower.Mm * 1000;
            double It(int grade) => ToleranceGrade.Width(size, grade)!.Value.Mm * 1000;
            Assert.Equal(-2.5 * Math.Pow(d, 0.34), Near("g6"), 0.6);
            Assert.Equal(-5.5 * Math.Pow(d, 0.41), Near("f7"), 0.7);
            Assert.Equal(5 * Math.Pow(d, 0.34), Near("n6"), 0.8);
            Assert.Equal(It(7) - It(6), Near("m6"), 1e-9);
            Assert.InRange(Near("p6") - It(7), -1e-9, 1 + 1e-9);
        }
    }

    [Theory]
    // pairs of reamer and drill of the trade
    [InlineData(3.175, "number", "#31")]
    [InlineData(4.7625, "number", "#15")]
    [InlineData(4.7625, "metric", "4.6 mm")]
    [InlineData(6.35, "letter", "C")]
    [InlineData(6.35, "metric", "6.1 mm")]
    [InlineData(7.9375, "letter", "N")]
    [InlineData(5, "metric", "4.8 mm")]
    [InlineData(6, "metric", "5.8 mm")]
    [InlineData(8, "metric", "7.8 mm")]
    public void Drills_before_reamers(double reamerMm, string series, string drill)
        => Assert.Equal(drill, NearestDrills.Of(Length.OfMm(reamerMm)).Single(s => s.Series == series).ToReam?.Name);

    [Fact]
    public void Steel_for_the_reamer_is_that_of_the_handbook()
    {
        var quarter = ReamingStock.Handbook(Length.OfInches(0.25))!.Value;
        Assert.Equal((0.008, 0.012), (Math.Round(quarter.Least.Inches, 9), Math.Round(quarter.Most.Inches, 9)));
        Assert.Null(ReamingStock.Handbook(Length.OfInches(0.0625)));
    }

    [Theory]
    [InlineData(0.125, 0.124, 0.129)]
    [InlineData(0.25, 0.249, 0.255)]
    [InlineData(0.5, 0.499, 0.506)]
    [InlineData(1.25, 1.249, 1.262)]
    public void Drilled_holes_come_out_as_in_AND10387(double inch, double least, double most)
    {
        var band = DrilledSize.Of(Length.OfInches(inch))!.Value;
        Assert.Equal(least, band.Least.Inches, 9);
        Assert.Equal(most, band.Most.Inches, 9);
    }

    [Theory]
    [InlineData(40, 'f', 0.15)]
    [InlineData(40, 'm', 0.3)]
    [InlineData(6, 'm', 0.1)]
    [InlineData(29, 'm', 0.2)]
    [InlineData(450, 'c', 2)]
    public void General_tolerances_are_those_of_ISO_2768_1(double mm, char letter, double wanted) => Assert.Equal(wanted, GeneralTolerance.Of(Length.OfMm(mm), letter)!.Value.Mm, 9);

    [Fact]
    public void Outside_the_tables_one_fault_says_how_far_they_go()
    {
        Assert.Contains("to 50 mm", Assert.Single(FitLimits.Of(Length.OfMm(50.1), ToleranceClass.Hole("H7").Value).Faults).Message, StringComparison.Ordinal);
        Assert.False(FitLimits.Of(Length.Zero, ToleranceClass.Hole("H7").Value).IsGood);
        Assert.Null(GeneralTolerance.Of(Length.OfMm(2), 'v'));
        Assert.Null(DrilledSize.Of(Length.OfInches(2.1)));
        foreach (var text in new[] { "", "h7", "H", "H4", "H14", "Q7", "H7x", "R7", "H-7", "7" }) Assert.Single(ToleranceClass.Hole(text).Faults);
        foreach (var text in new[] { "H7", "m", "m14", "x6" }) Assert.Single(ToleranceClass.Pin(text).Faults);
    }
}
