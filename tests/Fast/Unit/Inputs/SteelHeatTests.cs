using Tangwright.Core;
using Tangwright.Inputs;

namespace Tangwright.Tests.Steels;

/// <summary>The steels that come with the program, and what a steel file may say of heat.</summary>
public class SteelHeatTests
{
    private const string Head = "tangwright = 1\nname = \"X\"\n";

    private const string Hardening = "[hardening]\nwindow = [\"815 C\", \"845 C\"]\nsoak = [\"5 min\", \"0.25 h\"]\ncooled_in = \"oil\"\nquench = [\"fast oil\"]\nwithout_oven = \"no\"\nsource = \"from memory\"\n";

    /// <summary>Common practice of the trade, told by standard designation.</summary>
    [Theory]
    [InlineData("1045")]
    [InlineData("1075")]
    [InlineData("1084")]
    [InlineData("1095")]
    [InlineData("5160")]
    [InlineData("52100")]
    [InlineData("1.2235")]
    [InlineData("8670")]
    [InlineData("1.5634")]
    [InlineData("O1")]
    [InlineData("W2")]
    [InlineData("L6")]
    [InlineData("A2")]
    [InlineData("D2")]
    [InlineData("S7")]
    [InlineData("4140")]
    [InlineData("4340")]
    [InlineData("440C")]
    [InlineData("X46Cr13")]
    [InlineData("X50CrMoV15")]
    [InlineData("X65Cr13")]
    [InlineData("0.65C-13.5Cr strip")]
    public void Every_grade_of_the_trade_has_its_cycle(string name)
    {
        var steel = SteelList.BuiltIn.Find(name)!;
        var heat = steel.Heat.Hardening!;
        Assert.NotNull(steel.Density);
        Assert.InRange(steel.Chemistry!.Value.CarbonPercent, 0.4, 1.6);
        Assert.True(heat.From.Celsius > 700 && heat.To.Celsius < 1100 && heat.SoakToMinutes <= 60);
        Assert.NotEmpty(heat.Quench);
        Assert.Equal(!steel.Chemistry.Value.IsLowAlloy, heat.CooledIn == CooledIn.Air);
        Assert.All(steel.Heat.TemperTable, t => Assert.InRange(t.HardnessHrc, 15, 67));
    }

    [Fact]
    public void A_cycle_is_read()
    {
        var heat = SteelReader.Read(Head + Hardening, "x.toml").Value.Heat.Hardening!;
        Assert.Equal((830, 5, 15), (heat.Middle.Celsius, heat.SoakFromMinutes, heat.SoakToMinutes));
    }

    [Theory]
    [InlineData("\"815 C\", \"845 C\"", "\"845 C\", \"815 C\"", "lesser first")]
    [InlineData("\"815 C\", \"845 C\"", "\"815\", \"845\"", "lesser first")]
    [InlineData("\"815 C\", \"845 C\"", "\"15 C\", \"45 C\"", "outside 600")]
    [InlineData("\"oil\"", "\"spit\"", "not known")]
    [InlineData("source = \"from memory\"", "source = \"a friend\"", "no known source")]
    public void A_wrong_one_is_refused_with_the_reason(string was, string becomes, string says)
    {
        var read = SteelReader.Read(Head + Hardening.Replace(was, becomes, StringComparison.Ordinal), "x.toml");
        Assert.Contains(read.Faults, f => f.Message.Contains(says, StringComparison.Ordinal));
    }
}
