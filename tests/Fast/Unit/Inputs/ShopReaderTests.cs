using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

public class ShopReaderTests
{
    [Fact]
    public void The_built_in_shop_is_whole_and_says_that_it_is_assumed()
    {
        var s = ShopReader.BuiltIn;
        Assert.True(s.IsAssumed);
        Assert.NotEmpty(s.Machines);
        Assert.NotEmpty(s.Printers);
        Assert.Contains(s.Drills, d => d.Name == "1/4 in");
        Assert.Contains(s.Drills, d => d.Name == "6.5 mm");
        Assert.Equal([9.5, 100.0], s.Wheels.Select(w => w.Diameter.Mm / 2));
        for (var i = 1; i < s.Drills.Length; i++) Assert.True(s.Drills[i].Diameter >= s.Drills[i - 1].Diameter);
    }

    [Theory]
    [InlineData("skeleton-hatchet", 3, 19)]
    [InlineData("kitchen-knife", 1, 13)]
    [InlineData("paring-knife", 1, 101.6)]
    public void The_example_shops_read(string name, int machines, double wheel)
    {
        var read = ShopReader.Read(Repository.Text("examples", name + ".shop.toml"), name);
        Assert.True(read.IsGood, string.Join("\n", read.Faults));
        Assert.False(read.Value.IsAssumed);
        Assert.Equal(machines, read.Value.Machines.Length);
        Assert.Equal(wheel, read.Value.Wheels[0].Diameter.Mm, 9);
    }

    [Fact]
    public void The_hatchet_shop_has_its_numbers()
    {
        var s = ShopReader.Read(Repository.Text("examples", "skeleton-hatchet.shop.toml"), "x").Value;
        Assert.Equal(500, s.Machines[0].SpeedsRpm[0]);
        Assert.Equal(13, s.Machines[0].Chuck!.Value.Mm);
        Assert.True(s.Machines[2].HasReadout);
        Assert.Equal(14, s.TemperOven!.ReadsHighByC);
        Assert.Equal(15, s.Quenchant!.Litres);
        Assert.Contains(s.Drills, d => d.Name == "16 mm");
        Assert.DoesNotContain(s.Drills, d => d.Name == "#30");
    }

    [Fact]
    public void What_is_absent_comes_from_the_built_in_shop_and_lists_count_as_a_whole()
    {
        var s = ShopReader.Read("""
            tangwright = 1
            saw = []
            [[wheel]]
            name = "big"
            diameter = "14 in"
            [quenchant]
            name = "none"
            [tooling]
            drills = []
            """, "x").Value;
        Assert.Equal(355.6, Assert.Single(s.Wheels).Diameter.Mm, 9);
        Assert.Empty(s.Saws);
        Assert.Empty(s.Drills);
        Assert.Null(s.Quenchant);
        Assert.Equal(ShopReader.BuiltIn.Machines, s.Machines);
        Assert.Equal(ShopReader.BuiltIn.Oven, s.Oven);
        Assert.Equal("own shop", s.Name);
    }

    [Theory]
    [InlineData("#1 to #60", 60, "#60", "#1")]
    [InlineData("A to Z", 26, "A", "Z")]
    [InlineData("1 mm to 13 mm by 0.5 mm", 25, "1 mm", "13 mm")]
    [InlineData("1/16 in to 1/2 in by 1/64 in", 29, "1/16 in", "1/2 in")]
    [InlineData("16 mm", 1, "16 mm", "16 mm")]
    [InlineData("f", 1, "F", "F")]
    [InlineData("0.25 in", 1, "1/4 in", "1/4 in")]
    public void Lists_of_drills(string item, int count, string first, string last)
    {
        var sizes = DrillList.Read(item, 1).Value;
        Assert.Equal(count, sizes.Length);
        Assert.Equal((first, last), (sizes.MinBy(d => d.Diameter.Mm)!.Name, sizes.MaxBy(d => d.Diameter.Mm)!.Name));
    }

    [Theory]
    [InlineData("#0", "no length")]
    [InlineData("1 mm to 13 mm", "without its step")]
    [InlineData("1 mm to 13 mm by 0 mm", "not above 0")]
    [InlineData("1 mm to 100 mm by 0.001 mm", "more than 2000")]
    [InlineData("1 mm to 2 mm to 3 mm", "more than one")]
    [InlineData("#1 to #60 by 2 mm", "a step between")]
    [InlineData("-3 mm", "not above 0")]
    public void Wrong_lists_of_drills(string item, string part) => Assert.Contains(part, DrillList.Read(item, 1).Message, StringComparison.Ordinal);

    [Fact]
    public void Steels_are_found_by_any_name_and_every_value_has_a_source()
    {
        var list = SteelList.BuiltIn;
        Assert.Equal("80CrV2", list.Find("80crv2")!.Name);
        Assert.Equal("X65Cr13", list.Find("1.4037")!.Name);
        Assert.Equal(7.85, list.Find("1.2235")!.Density!.Value.GramsPerCm3, 12);
        Assert.Equal(7.70, list.Find("X50CrMoV15")!.Density!.Value.GramsPerCm3, 12);
        Assert.Null(list.Find("80CrV3"));
        Assert.Equal("80CrV2", list.Nearest("80CrV3"));
        Assert.All(list.All, s =>
        {
            Assert.NotEmpty(s.Density!.SourceKey);
            var c = s.Composition!.Value;
            Assert.True(c.Sum(e => e.LowPercent) < 50);
            Assert.All(c, e => Assert.True(e.LowPercent <= e.HighPercent));
        });
    }

    [Fact]
    public void A_steel_with_an_unknown_source_is_refused()
    {
        var read = SteelReader.Read("tangwright = 1\nname = \"x\"\n[density]\nvalue = \"7.8 g/cm3\"\nsource = \"hearsay\"\n", "x");
        Assert.Contains("no known source", Assert.Single(read.Faults).Message, StringComparison.Ordinal);
        Assert.Null(SteelReader.Read("tangwright = 1\nname = \"x\"\n", "x").Value.Density);
    }

    [Theory]
    [InlineData("[gluing]\npot_life = \"banana\"", "pot_life")]
    [InlineData("[gluing]\nclamps = 0", "clamps")]
    [InlineData("[gluing]\ncure = \"0 h\"", "cure")]
    [InlineData("[air]\nhumidity = 500", "humidity")]
    [InlineData("[air]\ntemperature = \"300 C\"", "temperature")]
    public void Gluing_and_air_refuse_what_makes_no_sense(string lines, string key)
    {
        var read = ShopReader.Read("tangwright = 1\nname = \"x\"\nunits = \"mm\"\n" + lines + "\n", "x");
        Assert.Contains(key, Assert.Single(read.Faults).LineText + read.Faults[0].Message, StringComparison.Ordinal);
    }
}
