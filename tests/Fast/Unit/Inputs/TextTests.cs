using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>Lengths and other quantities as a maker writes them. 1 in = 25.4 mm and 1 lb = 453.59237 g exactly (1959).</summary>
public class TextTests
{
    [Theory]
    [InlineData("6.35 mm", 6.35, LengthWriting.Metric)]
    [InlineData("1/4 in", 6.35, LengthWriting.InchFraction)]
    [InlineData("1 1/8 in", 28.575, LengthWriting.InchFraction)]
    [InlineData("1 1/8\"", 28.575, LengthWriting.InchFraction)]
    [InlineData("3/8\"", 9.525, LengthWriting.InchFraction)]
    [InlineData("3/8''", 9.525, LengthWriting.InchFraction)]
    [InlineData("0.25in", 6.35, LengthWriting.InchDecimal)]
    [InlineData(" -2 cm ", -20, LengthWriting.Metric)]
    [InlineData("12.5", 12.5, LengthWriting.Bare)]
    [InlineData("+3 INCH", 76.2, LengthWriting.InchDecimal)]
    [InlineData("#30", 3.2639, LengthWriting.Drill)]
    [InlineData("F", 6.5278, LengthWriting.Drill)]
    public void Lengths(string text, double mm, LengthWriting writing)
    {
        var read = LengthText.Read(text, 1, drills: true);
        Assert.True(read.IsGood, read.Message);
        Assert.Equal(mm, read.Value.Length.Mm, 9);
        Assert.Equal(writing, read.Value.Writing);
    }

    [Theory]
    [InlineData("6,35 mm", "write 6.35 mm")]
    [InlineData("6,35", "write 6.35")]
    [InlineData("1-1/8 in", "write 1 1/8 in")]
    [InlineData("1-1/8\"", "write 1 1/8\"")]
    [InlineData("3/16", "write 3/16 in")]
    [InlineData("1 3/16", "write 1 3/16 in")]
    [InlineData("3/16 mm", "fractions are of an inch; write decimals with mm")]
    [InlineData("inf", "write a number as 6.35 mm")]
    [InlineData("nan", "write a number as 6.35 mm")]
    [InlineData("", "write a length as 6.35 mm or 1/4 in")]
    [InlineData("3 feet", "write mm or in, as 6.35 mm")]
    [InlineData("1/0 in", "write a fraction as 3/16")]
    [InlineData("1 9/8 in", "write the whole inches first, as 1 1/8")]
    [InlineData("1 2 3/8 in", "write a number as 6.35 or a fraction as 1 1/8")]
    [InlineData("1 2 mm", "write one number with its unit")]
    [InlineData("200 m", "check the number and the unit")]
    [InlineData("#81", "drill numbers run from #80 to #1, letters from A to Z")]
    [InlineData("1e400 mm", "write mm or in, as 6.35 mm")]
    [InlineData("99999999999999999999999999999999 mm", "write a number as 6.35 or a fraction as 1 1/8")]
    public void Refused_lengths_say_what_to_write(string text, string remedy)
    {
        var read = LengthText.Read(text, 1, drills: true);
        Assert.False(read.IsGood);
        Assert.Equal(remedy, read.Remedy);
        Assert.NotEmpty(read.Message);
    }

    [Fact]
    public void A_bare_number_is_in_the_units_of_the_file()
        => Assert.Equal(50.8, LengthText.Read("2", 25.4).Value.Length.Mm, 12);

    [Theory]
    [InlineData("450 g +/- 15", 450, 15.0)]
    [InlineData("1 lb", 453.59237, null)]
    [InlineData("16 oz ± 1/2", 453.59237, 14.1747615625)]
    [InlineData("0.45 kg +- 10 g", 450, 10.0)]
    public void Weights(string text, double grams, double? tolerance)
    {
        var v = QuantityText.MassAndTolerance(text).Value;
        Assert.Equal(grams, v.Value.Grams, 9);
        Assert.Equal(tolerance is null, v.PlusMinus is null);
        if (tolerance is { } t) Assert.Equal(t, v.PlusMinus!.Value.Grams, 9);
    }

    [Theory]
    [InlineData("110 +/- 5", 110, 5)]
    [InlineData("4 1/4 in +/- 1/8", 107.95, 3.175)]
    [InlineData("110 mm +/- 1/4 in", 110, 6.35)]
    public void Lengths_with_tolerance(string text, double mm, double tolerance)
    {
        var v = QuantityText.LengthAndTolerance(text, 1).Value;
        Assert.Equal(mm, v.Value.Mm, 9);
        Assert.Equal(tolerance, v.PlusMinus!.Value.Mm, 9);
    }

    [Theory]
    [InlineData("57 HRC +/- 1", 56, 58)]
    [InlineData("55 to 57 HRC", 55, 57)]
    [InlineData("60 hrc", 60, 60)]
    public void Hardness(string text, double low, double high) => Assert.Equal(new HardnessBand(low, high), QuantityText.Hardness(text).Value);

    [Theory]
    [InlineData("450")]
    [InlineData("450 g +/-")]
    [InlineData("450 g +/- -3")]
    [InlineData("450 stone")]
    [InlineData("0 g")]
    [InlineData("")]
    public void Refused_weights(string text) => Assert.False(QuantityText.MassAndTolerance(text).IsGood);

    [Theory]
    [InlineData("57")]
    [InlineData("57 HRB")]
    [InlineData("57 to 55 HRC")]
    [InlineData("200 HRC")]
    public void Refused_hardness(string text) => Assert.NotEmpty(QuantityText.Hardness(text).Remedy);

    [Theory]
    [InlineData("815 C", 815)]
    [InlineData("1500 F", 815.5555555556)]
    [InlineData("815 °C", 815)]
    public void Temperatures(string text, double celsius) => Assert.Equal(celsius, QuantityText.Temperature(text).Value.Celsius, 9);

    [Theory]
    [InlineData("815")]
    [InlineData("815 K")]
    [InlineData("-500 C")]
    public void Refused_temperatures(string text) => Assert.False(QuantityText.Temperature(text).IsGood);

    [Theory]
    [InlineData("16", 16)]
    [InlineData("16.5 deg", 16.5)]
    [InlineData("16°", 16)]
    public void Angles(string text, double degrees) => Assert.Equal(degrees, QuantityText.Degrees(text).Value.Degrees, 9);

    [Theory]
    [InlineData(6.35, LengthWriting.InchFraction, "3/8\"", "1/4\"")]
    [InlineData(6, LengthWriting.InchFraction, "1/4 in", "0.236220472441 in")]
    [InlineData(28.575, LengthWriting.InchFraction, "1/4 in", "1 1/8 in")]
    [InlineData(12.7, LengthWriting.InchDecimal, "0.25 in", "0.5 in")]
    [InlineData(3.2639, LengthWriting.Drill, "F", "#30")]
    [InlineData(6, LengthWriting.Drill, "F", "0.236220472441 in")]
    [InlineData(25, LengthWriting.Metric, "2 cm", "2.5 cm")]
    [InlineData(50.8, LengthWriting.Bare, null, "2")]
    public void A_length_is_written_the_way_the_old_one_was(double mm, LengthWriting like, string? old, string expected)
    {
        var text = LengthText.Write(Length.OfMm(mm), like, 25.4, old);
        Assert.Equal(expected, text);
        Assert.Equal(mm, LengthText.Read(text, 25.4, drills: true).Value.Length.Mm, 9);
    }
}
