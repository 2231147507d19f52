using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Reference;

/// <summary>Hardness scales and the hardness of parts, against print.</summary>
public class HardnessScales
{
    /// <summary>ASTM E140 table 1, two reprints.</summary>
    [Theory]
    [InlineData(68, 940, null, null)]
    [InlineData(60, 697, 654, null)]
    [InlineData(58, 653, 615, 338.0)]
    [InlineData(50, 513, 481, 255.0)]
    [InlineData(40, 392, 371, 182.0)]
    [InlineData(20, 238, 226, 110.0)]
    public void Rows_of_the_table(double hrc, double hv, int? hb, double? ksi)
    {
        Assert.Equal(hv, RockwellTable.Hv(hrc));
        Assert.Equal(hrc, RockwellTable.HrcOfHv(hv));
        Assert.Equal(hb, (int?)RockwellTable.Hb(hrc));
        if (ksi is { } k) Assert.Equal(k * 6.894757, RockwellTable.StrengthMpa(hrc)!.Value, 1e-3);
        else Assert.Null(RockwellTable.StrengthMpa(hrc));
    }

    [Fact]
    public void Nothing_outside_the_table()
    {
        Assert.Null(RockwellTable.Hv(19.9));
        Assert.Null(RockwellTable.Hv(68.1));
        Assert.Null(RockwellTable.HrcOfHv(237));
        Assert.Null(RockwellTable.HrcOfHv(941));
        Assert.Null(RockwellTable.Hb(65.5));
        Assert.Equal(362, RockwellTable.Hb(39)!.Value, 1e-9); // straight between the rows for 38 and 40
    }

    /// <summary>A255-10 polynomial worked by hand elsewhere: 38.48 to 65.77 HRC.</summary>
    [Theory]
    [InlineData(0.1, 38.48)]
    [InlineData(0.2, 44.40)]
    [InlineData(0.3, 50.50)]
    [InlineData(0.4, 56.29)]
    [InlineData(0.5, 61.20)]
    [InlineData(0.6, 64.57)]
    [InlineData(0.69, 65.77)]
    [InlineData(0.95, 65.77)]
    public void Full_martensite(double carbon, double hrc) => Assert.Equal(hrc, InitialHardness.Hrc(carbon), 0.006);

    /// <summary>Water-quenched plain steel of 0.56, 0.74, 0.89, 0.98 and 1.15 % carbon: 63, 66.5, 67, 66.5, 64.5 HRC (Hollomon and Jaffe 1945).</summary>
    [Theory]
    [InlineData(0.56, 63)]
    [InlineData(0.74, 66.5)]
    [InlineData(0.89, 67)]
    [InlineData(0.98, 66.5)]
    [InlineData(1.15, 64.5)]
    public void Full_martensite_as_measured(double carbon, double hrc) => Assert.Equal(hrc, InitialHardness.Hrc(carbon), InitialHardness.BandHrc);

    [Theory]
    [InlineData(0.1, 26.21)]
    [InlineData(0.3, 37.48)]
    [InlineData(0.5, 46.84)]
    [InlineData(0.69, 53.04)]
    public void Half_martensite(double carbon, double hrc) => Assert.Equal(hrc, HalfMartensiteHardness.Hrc(carbon), 0.006);

    /// <summary>Li and others 1998, 4140 and 1045 at 30 and 1 °C/s.</summary>
    [Fact]
    public void Parts_by_composition_and_rate()
    {
        var a4140 = new Chemistry { CarbonPercent = 0.38, ManganesePercent = 0.81, SiliconPercent = 0.28, NickelPercent = 0.11, ChromiumPercent = 0.98, MolybdenumPercent = 0.22 };
        var a1045 = new Chemistry { CarbonPercent = 0.45, ManganesePercent = 0.75, SiliconPercent = 0.2 };
        const double Fast = 30 * 3600;
        const double Slow = 3600;
        Assert.Equal(626.4, MaynierHardness.MartensiteHv(a4140, Fast)!.Value, 0.06);
        Assert.Equal(395.3, MaynierHardness.BainiteHv(a4140, Fast), 0.06);
        Assert.Equal(243.5, MaynierHardness.PearliteHv(a4140, Fast), 0.06);
        Assert.Equal(595.3, MaynierHardness.MartensiteHv(a4140, Slow)!.Value, 0.06);
        Assert.Equal(324.5, MaynierHardness.BainiteHv(a4140, Slow), 0.06);
        Assert.Equal(224.4, MaynierHardness.PearliteHv(a4140, Slow), 0.06);
        Assert.Equal(673.4, MaynierHardness.MartensiteHv(a1045, Fast)!.Value, 0.06);
        Assert.Equal(206.7, MaynierHardness.PearliteHv(a1045, Fast), 0.06);
        Assert.Null(MaynierHardness.MartensiteHv(a1045 with { CarbonPercent = 0.7 }, Fast));
    }

    /// <summary>8670 with 6 to 10 % austenite: between 63.5 and 64.8 HRC; published for nearby L6: 64 to 65.</summary>
    [Fact]
    public void Out_of_the_quench()
    {
        var a = new Chemistry { CarbonPercent = 0.69, ManganesePercent = 0.5, SiliconPercent = 0.25, NickelPercent = 0.9, ChromiumPercent = 0.45, MolybdenumPercent = 0.1 };
        Assert.Equal(64.6, MixedHardness.Hrc(a, new SteelParts(0.941, 0.059, 0, 0), 65 * 3600)!.Value, 0.1);
        Assert.Equal(63.6, MixedHardness.Hrc(a, new SteelParts(0.896, 0.104, 0, 0), 65 * 3600)!.Value, 0.1);
        Assert.Equal(66, MixedHardness.Hrc(a with { CarbonPercent = 0.77 }, new SteelParts(1, 0, 0, 0), 65 * 3600)!.Value, 1e-9);
        Assert.Equal(0.5 * (865 + 420), MixedHardness.Hv(a with { CarbonPercent = 0.77, VanadiumPercent = 0.2 }, new SteelParts(0.5, 0, 0.5, 0), 1e6), 1e-9);
    }

    /// <summary>The depth at 58 HRC is 0.084 mm by the scale's own definition; ten times that is the least thickness. A dent of 60 HRC measures about 0.4 mm across.</summary>
    [Fact]
    public void Dents()
    {
        Assert.Equal(0.084, IndentDepth.Of(58).Mm, 1e-12);
        Assert.Equal(0.84, IndentDepth.LeastThickness(58).Mm, 1e-12);
        Assert.InRange(IndentDepth.Diameter(60).Mm, 0.35, 0.5);
        Assert.Equal(3 * IndentDepth.Diameter(60).Mm, IndentDepth.Apart(60).Mm, 1e-12);
        Assert.Equal(2.5 * IndentDepth.Diameter(60).Mm, IndentDepth.FromEdge(60).Mm, 1e-12);
    }
}

/// <summary>Where hardness is tested, and how far a hard blade is bent.</summary>
public class HardBladeCases
{
    /// <summary>A strip 4 mm thick moved 2 mm over a span of 200 mm: 6 · 4 · 2 / 200² = 0.12 %. At 58 HRC, 338 ksi, it gives way at 0.85 · 2330 MPa / 205 GPa = 0.97 %.</summary>
    [Fact]
    public void Stretch_over_a_shim()
    {
        Assert.Equal(0.0012, StraightenBend.StretchShare(TestShop.Mm(4), TestShop.Mm(2), TestShop.Mm(200)), 1e-12);
        Assert.Equal(0.00966, StraightenBend.GivesWayAtShare(58), 1e-5);
        Assert.Equal(StraightenBend.GivesWayAtShare(59), StraightenBend.GivesWayAtShare(64), 1e-12);
    }

    /// <summary>Every place found lies on flat steel of full thickness, clear of rims, holes and bevel.</summary>
    [Theory]
    [InlineData("skeleton-hatchet")]
    [InlineData("skeleton-knife")]
    [InlineData("kitchen-knife")]
    public void Places_to_test(string example)
    {
        var plan = Inputs.PlanReader.Read(Repository.Text("examples", example + ".plan.toml"), example).Value.Plan;
        var r = WorkUp.Of(plan, TestShop.Own, Rules.FindingExamples.SteelOf(plan));
        var spots = TestSpots.Of(r, 58);
        Assert.NotEmpty(spots);
        Assert.All(spots, s =>
        {
            var clear = Math.Max(2.5, IndentDepth.FromEdge(58).Mm) - 1e-9;
            Assert.True(Foundation.Nearest.Distance(plan.Outline, s.At) >= clear);
            Assert.All(r.Holes, h => Assert.True(h.At.To(s.At) - (0.5 * h.Diameter.Mm) >= clear));
            Assert.Equal(plan.Stock.Thickness.Mm, s.Thickness.Mm, 0.8);
        });
    }
}
