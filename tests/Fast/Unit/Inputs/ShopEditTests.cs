using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

public class ShopEditTests
{
    private const string Text = """
        # my shop
        tangwright = 1
        name = "Shed"   # out back
        units = "mm"

        [tooling]
        drills = [
          "#1 to #60",   # the index
          "16 mm",       # bought for the hatchet
          "1/4 in",
        ]

        # the old press
        [[machine]]
        name = "bench press"
        kind = "drill press"
        speeds_rpm = [500, 900]   # belt on the left
        chuck = "1/2 in"

        # wheels
        [[wheel]]
        name = "big"
        diameter = 250

        [[wheel]]
        name = "small"
        diameter = 19
        # the end
        """;

    public static TheoryData<string, string> Keys() => [.. ShopKeys.Table.Keys.Select(k => (k.Table, k.Key))];

    private static ShopFile File(string text = Text)
    {
        var read = ShopReader.ReadFile(text, "shop.toml");
        Assert.True(read.IsGood, string.Join("\n", read.Faults));
        return read.Value;
    }

    private static ShopFile Good(Checked<ShopFile> edit)
    {
        Assert.True(edit.IsGood, string.Join("\n", edit.Faults));
        return edit.Value;
    }

    private static void Gives(Checked<ShopFile> edit, string old, string now) => Assert.Equal(Text.Replace(old, now, StringComparison.Ordinal), Good(edit).Text);

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_key_is_set_read_back_and_taken_out(string heading, string key)
    {
        // a file that has each heading with what it must have, a remark on every line
        var rows = ShopKeys.Table;
        var text = string.Concat(rows.Headings.Select(h => (h.Name.Length == 0 ? "" : h.Repeats ? $"\n# {h.Name}\n[[{h.Name}]]\n" : $"\n# {h.Name}\n[{h.Name}]\n") + string.Concat(rows.Under(h.Name).Where(k => k.Required).Select(k => $"{k.Key} = {k.Example}   # {k.Key}\n"))));
        var file = File(text);
        var row = rows.Find(heading, key)!;

        // what one would type is the example without its quotes and brackets
        var typed = row.Example.Replace("\"", "", StringComparison.Ordinal).Trim('[', ']');
        var set = Good(ShopEdit.Set(file, heading, 0, key, typed));
        Assert.Equal(typed, set.Written(heading, 0, key));
        Assert.Contains($"{key} = {row.Example}", set.Text, StringComparison.Ordinal);
        Assert.Empty(text.Split('\n').Except(set.Text.Split('\n')));

        var without = ShopEdit.TakeOut(set, heading, 0, key);
        if (row.Required)
        {
            Assert.Contains(key, without.Faults[0].Message, StringComparison.Ordinal);
            return;
        }

        Assert.Equal(text, Good(without).Text);
        Assert.Null(without.Value.Written(heading, 0, key));
    }

    [Fact]
    public void A_value_changes_at_its_place_and_its_remark_stays()
    {
        Gives(ShopEdit.Set(File(), "", 0, "name", "Barn"), "\"Shed\"   # out back", "\"Barn\"   # out back");
        Gives(ShopEdit.Set(File(), "machine", 0, "chuck", "13 mm"), "chuck = \"1/2 in\"", "chuck = \"13 mm\"");
        Gives(ShopEdit.Set(File(), "machine", 0, "speeds_rpm", "100 to 3000"), "[500, 900]   # belt", "\"100 to 3000\"   # belt");
        Gives(ShopEdit.Set(File(), "wheel", 1, "diameter", "3/4 in"), "diameter = 19", "diameter = \"3/4 in\"");
        Gives(ShopEdit.Set(File(), "machine", 0, "throat", "104"), "chuck = \"1/2 in\"\n", "chuck = \"1/2 in\"\nthroat = 104\n");
        Gives(ShopEdit.Set(File(), "", 0, "show", "in"), "units = \"mm\"\n", "units = \"mm\"\nshow = \"in\"\n");
        Assert.EndsWith("# the end\n\n[oven]\nname = \"kiln\"\n", Good(ShopEdit.Set(File(), "oven", 0, "name", "kiln")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Drills_come_and_go_one_by_one()
    {
        Gives(ShopEdit.Set(File(), "tooling", 0, "drills", "#1 to #60\n16 mm\n1/4 in\nF"), "  \"1/4 in\",\n", "  \"1/4 in\",\n  \"F\",\n");
        Gives(ShopEdit.Set(File(), "tooling", 0, "drills", "#1 to #60, 1/4 in"), "  \"16 mm\",       # bought for the hatchet\n", "");
        Assert.Empty(Good(ShopEdit.Set(File(), "tooling", 0, "drills", "")).Shop.Drills);
        Gives(ShopLists.Tick(File(), "drills", DrillSeries.OfMm(12), isOwned: true), "  \"1/4 in\",\n", "  \"1/4 in\",\n  \"12 mm\",\n");
        Gives(ShopLists.Tick(File(), "drills", DrillSeries.Fraction(16), isOwned: false), "  \"1/4 in\",\n", "");
    }

    [Fact]
    public void A_size_taken_out_of_a_range_leaves_all_the_others()
    {
        var file = File();
        foreach (var (range, size) in new[] { ("#1 to #60", "#30"), ("1 mm to 13 mm by 0.5 mm", "8 mm"), ("1/16 in to 1/2 in by 1/64 in", "1/4 in"), ("A to Z", "A") })
        {
            var with = Good(ShopEdit.Set(file, "tooling", 0, "drills", range));
            var gone = with.Shop.Drills.Single(d => d.Name == size);
            var without = Good(ShopLists.Tick(with, "drills", gone, isOwned: false));
            Assert.Equal(with.Shop.Drills.Remove(gone), without.Shop.Drills);
            Assert.Equal(with.Shop.Drills, Good(ShopLists.Tick(without, "drills", gone, isOwned: true)).Shop.Drills);
        }
    }

    [Fact]
    public void A_first_tick_keeps_the_drills_that_were_assumed()
    {
        var file = File("tangwright = 1\n");
        var with = Good(ShopLists.Tick(file, "drills", DrillSeries.OfMm(16), isOwned: true));
        Assert.Equal([.. file.Shop.Drills, DrillSeries.OfMm(16)], with.Shop.Drills);
    }

    [Fact]
    public void Machines_come_and_go_and_the_last_one_says_that_there_is_none()
    {
        var added = Good(ShopEdit.Add(File(), "wheel", [("name", "middle"), ("diameter", "2 in")]));
        Assert.Equal(Text.Replace("diameter = 19\n", "diameter = 19\n\n[[wheel]]\nname = \"middle\"\ndiameter = \"2 in\"\n", StringComparison.Ordinal), added.Text);
        Assert.Equal(Text, Good(ShopEdit.Remove(added, "wheel", 2)).Text.Replace("diameter = 19\n\n#", "diameter = 19\n#", StringComparison.Ordinal));
        var none = Good(ShopEdit.Remove(File(), "machine", 0));
        Assert.Empty(none.Shop.Machines);
        Assert.Contains("# the old press", none.Text, StringComparison.Ordinal);
        Assert.Contains("\nmachine = []\n", none.Text, StringComparison.Ordinal);
        var again = Good(ShopEdit.Add(none, "machine", [("name", "mill"), ("kind", "mill-drill"), ("speeds_rpm", "100 to 2000")]));
        Assert.DoesNotContain("machine = []", again.Text, StringComparison.Ordinal);
        Assert.Equal(MachineKind.MillDrill, Assert.Single(again.Shop.Machines).Kind);
        Assert.Empty(Good(ShopEdit.HaveNone(File(), "saw")).Shop.Saws);
        Assert.Null(Good(ShopEdit.HaveNone(File(), "oven")).Shop.Oven);
    }

    [Fact]
    public void Another_unit_changes_no_size()
    {
        var inches = Good(ShopEdit.Set(File(), "", 0, "units", "in"));
        Assert.Contains("diameter = \"250 mm\"", inches.Text, StringComparison.Ordinal);
        Assert.Equal([.. File().Shop.Wheels], [.. inches.Shop.Wheels]);
        Assert.Equal(25.4, Good(ShopEdit.Set(inches, "wheel", 1, "diameter", "1")).Shop.Wheels[0].Diameter.Mm, 9);
    }

    [Theory]
    [InlineData("wheel", "diameter", "3/16")]
    [InlineData("wheel", "diameter", "-4")]
    [InlineData("wheel", "diameter", "")]
    [InlineData("machine", "kind", "lathe")]
    [InlineData("machine", "speeds_rpm", "fast")]
    [InlineData("machine", "chuck", "\"; x = 1 #")]
    [InlineData("machine", "readout", "maybe")]
    [InlineData("tooling", "drills", "#99")]
    [InlineData("", "units", "ells")]
    [InlineData("", "tangwright", "2")]
    public void What_the_reader_refuses_is_refused_in_its_words(string heading, string key, string typed)
    {
        var edit = ShopEdit.Set(File(), heading, 0, key, typed);
        Assert.False(edit.IsGood);
        Assert.NotEmpty(edit.Faults[0].Remedy);
    }

    [Fact]
    public void Line_ends_and_the_mark_at_the_start_stay()
    {
        var text = "\uFEFF" + Text.ReplaceLineEndings("\r\n");
        var edit = Good(ShopEdit.Set(Good(ShopEdit.Set(File(text), "wheel", 0, "diameter", "200")), "machine", 0, "power_w", "350"));
        Assert.Equal(text.Replace("= 250", "= 200", StringComparison.Ordinal).Replace("chuck = \"1/2 in\"\r\n", "chuck = \"1/2 in\"\r\npower_w = 350\r\n", StringComparison.Ordinal), edit.Text);
    }
}
