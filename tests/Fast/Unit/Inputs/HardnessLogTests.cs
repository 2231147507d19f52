using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>The hardness log and the keys of tester and temper oven.</summary>
public class HardnessLogTests
{
    [Fact]
    public void A_line_comes_back_as_written()
    {
        var e = new HardnessEntry(new DateOnly(2026, 11, 3), "autumn, second", "80CrV2", "kitchen oven", Temperature.OfCelsius(205), 2, 2, 57.5, -0.8, "3", "2", "flat at hole T1", Temperature.OfCelsius(71)) { Wanted = new HardnessBand(57, 59) };
        var read = HardnessLogReader.Read(HardnessLogReader.Heading + "\n" + HardnessLogReader.Line(e), "hardness.csv");
        Assert.Equal(e, Assert.Single(read.Value.Entries));
        Assert.Equal(58.3, e.TrueHrc(null), 1e-9);
    }

    [Fact]
    public void What_is_left_out_is_taken_as_usual()
    {
        var read = HardnessLogReader.Read(HardnessLogReader.Heading + "\n,autumn,80CrV2,,400 F,,,57,,1,,,,\n,,O1,,,,,64,,,,,,\n", "hardness.csv").Value.Entries;
        Assert.True(read[0].IsTempered);
        Assert.Equal(204.44, read[0].TemperedAt!.Value.Celsius, 0.01);
        Assert.Equal((2, 1), (read[0].HoldHours, read[0].Tempers));
        Assert.False(read[1].IsTempered);
    }

    [Theory]
    [InlineData("x", "does not name the columns")]
    [InlineData(HardnessLogReader.Heading + "\n1,2", "2 values")]
    [InlineData(HardnessLogReader.Heading + "\n,b,,,205 C,2,2,57,,1,,,,", "no steel")]
    [InlineData(HardnessLogReader.Heading + "\n,b,O1,,205,2,2,57,,1,,,,", "without its unit")]
    [InlineData(HardnessLogReader.Heading + "\n,b,O1,,205 C,2,2,,,1,,,,", "nothing is written")]
    [InlineData(HardnessLogReader.Heading + "\n,b,O1,,205 C,2,2,570,,1,,,,", "cannot be")]
    [InlineData(HardnessLogReader.Heading + "\n,b,O1,,205 C,2,1.5,57,,1,,,,", "whole number")]
    public void What_cannot_be_is_said(string text, string says) => Assert.Contains(HardnessLogReader.Read(text, "hardness.csv").Faults, f => f.Message.Contains(says, StringComparison.Ordinal) && f.Remedy.Length > 0);

    [Fact]
    public void Tester_and_swing()
    {
        var shop = ShopReader.Read("tangwright = 1\n[temper_oven]\nname = \"kiln\"\nswing = \"8 C\"\n[hardness_tester]\nname = \"bench\"\nreads_high_by = \"-0.8 HRC\"\n", "shop.toml").Value;
        Assert.Equal(8, shop.TemperOven!.SwingC);
        Assert.Equal(new HardnessTester("bench", -0.8), shop.HardnessTester);
        Assert.Null(ShopReader.Read("tangwright = 1\n[hardness_tester]\nname = \"none\"\n", "shop.toml").Value.HardnessTester);
    }
}
