using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>Every value of a plan set and taken out as it is typed; only its own line changes.</summary>
public class ValueEditTests
{
    /// <summary>Every key of the table once, with a remark on every line.</summary>
    private const string Full = Lines + "\n";

    private const string Lines = """
        # all of it
        tangwright = 1   # form
        name = 'Full'   # r
        revision = "A"   # r
        units = "mm"   # r
        [target]
        weight = "450 g +/- 15"   # r
        balance_from_datum = "110 +/- 5"   # r
        hardness = "57 HRC +/- 1"   # r
        [stock]
        steel = "80CrV2"   # r
        thickness = "1/4 in"   # r
        width = 76   # r
        length = "48 in"   # r
        condition = "annealed"   # r
        [outline]
        path = "M 0 0h100v30 L 50 35 A 60 60 0 0 1 0 30z"   # r
        [datum]
        x = "left"   # r
        y = 0   # r
        name = "heel"   # r
        [edge]
        from = [0, 0]   # r
        to = [60, 0]   # r
        [bevel]
        grind = "flat"   # r
        one_sided = false   # r
        height = "full"   # r
        ground = "before"   # r
        edge_before_hardening = 1.0   # r
        edge_finished = 0.5   # r
        sharpen_per_side = 16   # r
        plunge = 62   # r
        [distal_taper]
        starts = 50   # r
        ends = 10   # r
        thickness = 4   # r
        [tang_taper]
        starts = 70   # r
        ends = 95   # r
        thickness = "3 mm"   # r
        [grip]
        from = [65, 15]   # r
        to = [95, "15 mm"]   # r
        [broken_edges]
        rims = 0.5   # r
        outline = "1/64 in"   # r
        form = "chamfer"   # r
        [layout]
        drilled_in = "bar"   # r
        end_allowance = 3   # r
        edge_margin = 1   # r
        [scales]
        holes = "punch"   # r
        hole = "5 mm"   # r
        chance = 0.95   # r
        material = "black walnut"   # r
        back_material = "cherry"   # r
        thickness = 8   # r
        thickness_at = [[66, 7], [80, 8], [95, 7]]   # r
        board = "3/8 in"   # r
        front = 66   # r
        front_bulge = 2   # r
        rear = 98   # r
        section = "slab"   # r
        round = 3   # r
        side = 2   # r
        liner = "vulcanised fibre"   # r
        liner_thickness = 0.8   # r
        rod = "brass"   # r
        grain = "flat"   # r
        moisture = 8   # r
        [hand]
        length = 190   # r
        breadth = 86   # r
        glove = true   # r
        [user_air]
        temperature = "21 C"   # r
        humidity = 40   # r
        [heat]
        temper = "200 C"   # r
        hold = "2 h"   # r
        tempers = 2   # r
        harden = "815 C"   # r
        soak = "10 min"   # r
        quenchant = "fast oil"   # r
        sub_zero = "-75 C"   # r
        [finish]
        grit = "P400"   # r
        [sheath]
        kind = "leather"   # r
        material_thickness = 3.2   # r
        seam = "15 mm"   # r
        stitch_from_edge = 5   # r
        pitch = 4   # r
        mouth = 64   # r
        belt_loop = 38   # r
        [[added_mass]]
        name = "bolster"   # r
        mass = "12 g"   # r
        thickness = 6   # r
        sides = 2   # r
        at = [80, 15]   # r
        [[hole]]
        name = "L1"   # r
        at = [40, 15]   # r
        diameter = "#30"   # r
        use = "pin"   # r
        make = "drill"   # r
        pin = 3.2   # r
        tube = 2   # r
        drilled = "before"   # r
        [[hole_row]]
        name = "R"   # r
        along = "midline"   # r
        from = [70, 15]   # r
        to = [90, 15]   # r
        count = 3   # r
        diameters = [3, 4]   # r
        spacing = "equal webs"   # r
        use = "pin"   # r
        make = "drill"   # r
        """;

    private static readonly Dictionary<string, string> Others = new(StringComparer.Ordinal)
    {
        ["tangwright"] = "1",
        ["name"] = "It's \"new\"",
        ["revision"] = "B",
        ["units"] = "mm",
        ["weight"] = "1 lb",
        ["balance_from_datum"] = "4 1/4 in +/- 1/8",
        ["hardness"] = "55 to 57 HRC",
        ["steel"] = "52100",
        ["thickness"] = "5",
        ["width"] = "3 in",
        ["length"] = "1000",
        ["condition"] = "ground",
        ["path"] = "M 0 0 L 100 0\nL 100 30 L 0 30 Z",
        ["x"] = "12.5",
        ["y"] = "top",
        ["from"] = "2, 0",
        ["to"] = "59, 0",
        ["grind"] = "hollow",
        ["one_sided"] = "true",
        ["height"] = "20 mm",
        ["angle_per_side"] = "6.5",
        ["wheel"] = "10 in",
        ["radius"] = "150",
        ["starts"] = "72",
        ["ends"] = "99",
        ["mass"] = "0.5 oz",
        ["density"] = "700 kg/m3",
        ["sides"] = "1",
        ["over"] = "60, 90 mm",
        ["ground"] = "before",
        ["edge_before_hardening"] = "0.8",
        ["edge_finished"] = "0.4",
        ["material"] = "cherry",
        ["back_material"] = "black walnut",
        ["thickness_at"] = "66, 6 to 95, 7",
        ["board"] = "12",
        ["front"] = "67",
        ["front_bulge"] = "-1.5",
        ["rear"] = "97",
        ["section"] = "oval",
        ["round"] = "4",
        ["side"] = "2.5",
        ["liner"] = "cherry",
        ["liner_thickness"] = "1",
        ["rod"] = "copper",
        ["grain"] = "quarter",
        ["moisture"] = "9",
        ["gap"] = "0.5",
        ["tails"] = "600",
        ["breadth"] = "90",
        ["glove"] = "false",
        ["temperature"] = "65 F",
        ["humidity"] = "55",
        ["tube"] = "1.5",
        ["hold"] = "90 min",
        ["tempers"] = "3",
        ["harden"] = "1525 F",
        ["soak"] = "12 min",
        ["quenchant"] = "medium oil",
        ["sub_zero"] = "-20 C",
        ["sharpen_per_side"] = "17.5",
        ["plunge"] = "61, 0 to 63, 30",
        ["temper"] = "400 F",
        ["grit"] = "JIS 600",
        ["rims"] = "1",
        ["outline"] = "0.3",
        ["form"] = "round",
        ["drilled_in"] = "profile",
        ["end_allowance"] = "1/8 in",
        ["edge_margin"] = "2",
        ["at"] = "41, 1/2 in",
        ["diameter"] = "1/4 in",
        ["use"] = "glue",
        ["make"] = "ream",
        ["along"] = "70, 15 to 91, 16",
        ["count"] = "5",
        ["diameters"] = "3, 4, #30",
        ["spacing"] = "equal pitch",
        ["holes"] = "through other part",
        ["hole"] = "3/16 in",
        ["chance"] = "0.99",
        ["pin"] = "4.97 mm",
        ["drilled"] = "after",
        ["kind"] = "sheet",
        ["material_thickness"] = "1/8 in",
        ["seam"] = "16",
        ["stitch_from_edge"] = "6",
        ["pitch"] = "5 mm",
        ["mouth"] = "63",
        ["belt_loop"] = "1 1/2 in",
    };

    public static TheoryData<string, string> Keys => [.. PlanKeys.Table.Keys.Select(k => new TheoryDataRow<string, string>(k.Table, k.Key))];

    private static PlanFile File(string text = Full)
    {
        var read = PlanReader.Read(text, "x");
        Assert.True(read.IsGood, string.Join("\n", read.Faults));
        return read.Value;
    }

    private static string Item(string heading) => heading switch { "hole" => "L1", "hole_row" => "R", "added_mass" => "bolster", _ => "" };

    // keys that exclude one another stand in files of their own
    private static PlanFile FileWith(string heading, string key) => (heading, key) switch
    {
        ("bevel", "angle_per_side") => File(Full.Replace("height = \"full\"", "angle_per_side = 5.9", StringComparison.Ordinal)),
        ("bevel", "wheel") => File(Full.Replace("grind = \"flat\"   # r", "grind = \"hollow\"   # r\nwheel = 250   # r", StringComparison.Ordinal)),
        ("bevel", "radius") => File(Full.Replace("grind = \"flat\"   # r", "grind = \"convex\"   # r\nradius = 200   # r", StringComparison.Ordinal)),
        ("cord", _) => File(Full.Replace("material = \"black walnut\"   # r\nback_material = \"cherry\"   # r\nthickness = 8   # r\n", "", StringComparison.Ordinal).Replace("thickness_at = [[66, 7], [80, 8], [95, 7]]   # r\n", "", StringComparison.Ordinal).Replace("liner = \"vulcanised fibre\"   # r\nliner_thickness = 0.8   # r\n", "", StringComparison.Ordinal).Replace("[hand]", "[cord]\nmaterial = \"nylon cord\"   # r\ndiameter = 4   # r\nfrom = [66, 15]   # r\nto = [94, 15]   # r\ngap = 0.4   # r\ntails = \"500 mm\"   # r\n[hand]", StringComparison.Ordinal)),
        ("user_air", "moisture") => File(Full.Replace("humidity = 40", "moisture = 7", StringComparison.Ordinal)),
        ("added_mass", "density" or "over") => File(Full.Replace("mass = \"12 g\"", "density = \"0.61 g/cm3\"", StringComparison.Ordinal).Replace("at = [80, 15]", "over = [65, 95]", StringComparison.Ordinal)),
        _ => File(),
    };

    /// <summary>The number of lines that differ: those of one text that the other has not.</summary>
    private static int Touched(string a, string b)
    {
        var left = b.Split('\n').ToList();
        return a.Split('\n').Count(line => !left.Remove(line));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_key_is_set_where_it_stands(string heading, string key)
    {
        var file = FileWith(heading, key);
        if (heading == "hole_row" && key == "along") file = File(Full.Replace("from = [70, 15]   # r\nto = [90, 15]   # r\n", "", StringComparison.Ordinal));
        if (heading == "hole_row" && key == "diameters") Assert.Equal("3, 4", ValueEdit.Written(file, heading, "R", key));
        var typed = heading == "grip" && key == "from" ? "66, 15" : heading == "grip" && key == "to" ? "94, 15 mm" : heading == "hole_row" && key is "from" ? "71, 15" : heading == "hole_row" && key == "to" ? "89, 15" : heading == "distal_taper" && key == "starts" ? "55" : heading == "distal_taper" && key == "ends" ? "1 in" : heading == "hand" && key == "length" ? "185" : heading == "cord" && key == "from" ? "67, 15" : heading == "cord" && key == "to" ? "93, 15" : heading == "added_mass" && key == "at" ? "81, 1/2 in" : Others[key];
        var set = ValueEdit.Set(file, heading, Item(heading), key, typed);
        Assert.True(set.IsGood, string.Join("\n", set.Faults));
        var name = key == "name" && heading is "hole" or "hole_row" or "added_mass" ? typed : Item(heading);
        Assert.Equal(typed, ValueEdit.Written(set.Value, heading, key == "name" ? name : Item(heading), key));
        Assert.Equal(key is "tangwright" or "units" || typed == ValueEdit.Written(file, heading, Item(heading), key) ? 0 : 1, Touched(file.Text, set.Value.Text));
        Assert.Equal(file.Text.Split("# r").Length, set.Value.Text.Split("# r").Length);

        // typing in what stands there changes nothing, byte for byte
        var same = ValueEdit.Set(file, heading, Item(heading), key, ValueEdit.Written(file, heading, Item(heading), key)!);
        Assert.Equal(file.Text, same.Value.Text);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_key_is_taken_out_or_said_to_be_needed(string heading, string key)
    {
        var file = FileWith(heading, key);
        var row = PlanKeys.Table.Find(heading, key)!;
        var gone = ValueEdit.Set(file, heading, Item(heading), key, " ");
        if (row.Required || key is "angle_per_side" or "height" or "mass" or "density" || heading == "added_mass" && key is "at" or "over" || heading == "scales" && key is "material" or "liner" or "liner_thickness" || heading == "hole" && key == "pin")
        {
            Assert.Contains(key, gone.Faults[0].Message + gone.Faults[0].Remedy, StringComparison.Ordinal);
            return;
        }

        Assert.True(gone.IsGood, string.Join("\n", gone.Faults));
        Assert.Equal(file.Text.Split('\n').Length - 1, gone.Value.Text.Split('\n').Length);
        Assert.Equal(1, Touched(file.Text, gone.Value.Text));
        Assert.Equal(0, Touched(gone.Value.Text, file.Text));
        var item = key == "name" && heading == "hole" ? "H1" : Item(heading);
        Assert.Null(ValueEdit.Written(gone.Value, heading, item, key));

        // and written again, at the end of its heading
        var back = ValueEdit.Set(gone.Value, heading, item, key, ValueEdit.Written(file, heading, Item(heading), key)!);
        Assert.True(back.IsGood, string.Join("\n", back.Faults));
        Assert.Equal(ValueEdit.Written(file, heading, Item(heading), key), ValueEdit.Written(back.Value, heading, Item(heading), key));
        Assert.Equal(file.Plan.Bevel, back.Value.Plan.Bevel);
        Assert.Equal(file.Plan.Target, back.Value.Plan.Target);
    }

    [Theory]
    [InlineData("stock", "thickness", "1/4", "a fraction without its unit")]
    [InlineData("stock", "thickness", "6,35", "a decimal comma")]
    [InlineData("bevel", "grind", "flatt", "which is not known")]
    [InlineData("bevel", "one_sided", "perhaps", "true or false")]
    [InlineData("bevel", "sharpen_per_side", "70", "between 0 and 60")]
    [InlineData("edge", "from", "0, 5.2, 3", "is not a point")]
    [InlineData("edge", "from", "50, 5", "off the outline")]
    [InlineData("hole", "diameter", "#99", "is no length")]
    [InlineData("hole_row", "count", "2.5", "not a whole number")]
    [InlineData("hole", "name", "R2", "two holes are named R2")]
    [InlineData("", "units", "feet", "which is not known")]
    [InlineData("", "tangwright", "2", "of another form")]
    public void A_refusal_has_the_readers_words(string heading, string key, string typed, string says)
        => Assert.Contains(says, ValueEdit.Set(File(), heading, Item(heading), key, typed).Faults[0].Message, StringComparison.Ordinal);

    [Fact]
    public void Another_unit_changes_no_size()
    {
        var inch = ValueEdit.Set(File(), "", "", "units", "in").Value;
        Assert.Contains("width = \"76 mm\"   # r", inch.Text, StringComparison.Ordinal);
        Assert.Contains("\"110 mm +/- 5\"", inch.Text, StringComparison.Ordinal);
        Assert.Equal(76, inch.Plan.Stock.Width!.Value.Mm, 9);
        Assert.Equal(File().Plan.Outline.Bounds.MaxY, inch.Plan.Outline.Bounds.MaxY, 9);
        Assert.Equal(LengthUnit.Inch, inch.Plan.Units);
        Assert.Equal(100, ValueEdit.Set(inch, "", "", "units", "mm").Value.Plan.Outline.Bounds.MaxX, 9);
    }

    [Fact]
    public void Headings_are_begun_and_taken_out()
    {
        var bare = ValueEdit.TakeOutHeading(File(), "bevel").Value;
        Assert.Null(bare.Plan.Bevel);
        Assert.Equal(0, Touched(bare.Text, Full));
        Assert.Contains("[bevel] without [edge]", ValueEdit.TakeOutHeading(File(), "edge").Faults[0].Message, StringComparison.Ordinal);
        Assert.Contains("has no edge_finished", ValueEdit.Begin(bare, "bevel", [("height", "12")]).Faults[0].Message, StringComparison.Ordinal);
        var begun = ValueEdit.Begin(bare, "bevel", [("height", "12"), ("edge_finished", "0.3 mm"), ("plunge", "")]).Value;
        Assert.EndsWith("\n\n[bevel]\nheight = 12\nedge_finished = \"0.3 mm\"\n", begun.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_are_added_removed_and_taken_apart()
    {
        var more = RowEdit.Add(File(), [("name", "Q"), ("along", "10, 8 to 50, 8"), ("count", "4"), ("diameters", "4, 6"), ("spacing", "")]).Value;
        Assert.EndsWith("\n\n[[hole_row]]\nname = \"Q\"\nalong = [[10, 8], [50, 8]]\ncount = 4\ndiameters = [4, 6]\n", more.Text, StringComparison.Ordinal);
        Assert.Equal(Full, RowEdit.Remove(more, "Q").Value.Text.TrimEnd('\n') + "\n");

        var apart = RowEdit.AsHoles(more, "Q").Value;
        Assert.EndsWith("[[hole]]\nname = \"Q4\"\nat = [50, 8]\ndiameter = 6\nuse = \"lightening\"\n", apart.Text, StringComparison.Ordinal);
        var (before, after) = (HolePlacement.Of(more.Plan), HolePlacement.Of(apart.Plan));
        Assert.Equal(before.Select(h => h.Name), after.Select(h => h.Name));
        Assert.All(before.Zip(after), p => Assert.InRange(p.First.At.To(p.Second.At) + Math.Abs(p.First.Diameter.Mm - p.Second.Diameter.Mm), 0, 0.002));
        Assert.Equal(0, Touched(Full, apart.Text));

        var line = RowEdit.AsLine(File(), "R").Value;
        var row = Assert.Single(line.Plan.Holes.OfType<HoleRow>());
        Assert.False(row.OnMidline);
        Assert.InRange(row.From!.Value.To(HolePlacement.Of(File().Plan).First(h => h.Row == "R").At), 0, 0.001);
        Assert.Contains("no row", RowEdit.Remove(File(), "Z").Faults[0].Message, StringComparison.Ordinal);
    }
}
