using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests.Unit.Inputs;

public class RemedyEditTests
{
    private const string Head = """
        tangwright = 1
        name = "plate"
        units = "mm"
        [stock]
        steel = "80CrV2"
        thickness = 5
        [outline]
        path = "M 0 0 L 200 0 L 200 60 L 0 60 Z"

        """;

    /// <summary>4 holes of 20 on 72 mm: 60 mm of holes between the centres leave 12 for 3 webs, 4 mm each; 5 mm need holes of (72 - 15) / 3 = 19.</summary>
    [Theory]
    [InlineData("[20]", "[19]")]
    [InlineData("20", "19")]
    [InlineData("\"20 mm\" # as drilled", "\"19 mm\" # as drilled")]
    [InlineData("[20, 20, '20 mm', 20]", "[19]")]
    public void A_whole_row_in_smaller_holes(string before, string after)
    {
        var file = Read(Head + $"[[hole_row]]\nname = \"R\"\nalong = [[60, 30], [132, 30]]\ncount = 4\ndiameters = {before}\n");
        var findings = Found(file).Where(f => f.Code == FindingCodes.WebToHole).ToArray();
        Assert.Equal(3, findings.Length);
        var made = RemedyEdit.Make(file, findings[1].Ways.Single()).Value;
        Assert.Contains($"diameters = {after}\n", made.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(Found(made), f => f.Code == FindingCodes.WebToHole);
    }

    [Theory]
    [InlineData("equal webs", "[31, 11]", 80 / 84.0)] // 84 of holes and 4 webs of 5 on 100
    [InlineData("equal pitch", "[22, 12]", 20 / 20.75)] // pitch 25, the two largest 22 and 19.5
    public void A_graded_row_keeps_its_proportion(string spacing, string diameters, double share)
    {
        var file = Read(Head + $"[[hole_row]]\nname = \"R\"\nalong = [[60, 30], [160, 30]]\ncount = 5\ndiameters = {diameters}\nspacing = \"{spacing}\"\n");
        var way = Found(file).First(f => f.Code == FindingCodes.WebToHole).Ways.Single();
        var made = RemedyEdit.Make(file, way).Value;
        Assert.DoesNotContain(Found(made), f => f.Code == FindingCodes.WebToHole);
        foreach (var (now, then) in HolePlacement.Of(made.Plan).Zip(HolePlacement.Of(file.Plan))) Assert.InRange((share * then.Diameter.Mm) - now.Diameter.Mm, -1e-9, 0.1);
    }

    [Fact]
    public void A_hole_of_a_row_near_the_outline_in_a_smaller_size()
    {
        var file = Read(Head + "[[hole_row]]\nname = \"R\"\nalong = [[60, 12], [160, 30]]\ncount = 3\ndiameters = [16, 12, 12]\n");
        var finding = Found(file).Single(f => f.Code == FindingCodes.WebToOutline);
        var made = RemedyEdit.Make(file, finding.Ways.Single()).Value;
        Assert.DoesNotContain(Found(made), f => f.Code == FindingCodes.WebToOutline);
        Assert.Contains("diameters = [14, 12, 12]", made.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_in_two_points_keeps_how_it_was_written()
    {
        var file = Read(Head + "[edge]\nfrom = [10, 0]\nto = [120, 0]\n[bevel]\nheight = 20\nedge_finished = 0.4\nplunge = [ [\"130 mm\", 0], [140, 60] ] # as filed\n");
        var way = Found(file).Single(f => f.Code == FindingCodes.EdgeShortOfPlunge).Ways[0];
        var made = RemedyEdit.Make(file, way).Value;
        Assert.DoesNotContain(Found(made), f => f.Code == FindingCodes.EdgeShortOfPlunge);
        Assert.Matches(@"plunge = \[ \[""1[0-9.]+ mm"", [0-9.]+\], \[1[0-9.]+, [0-9.]+\] \] # as filed", made.Text);
    }

    private static PlanFile Read(string text) => PlanReader.Read(text, "plate.plan.toml").Value;

    private static IEnumerable<Finding> Found(PlanFile file) => WorkUp.Of(file.Plan, ShopReader.BuiltIn, null).Findings;
}
