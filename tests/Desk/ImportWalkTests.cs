using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>A drawing on its way to a plan.</summary>
public sealed class ImportWalkTests : IDisposable
{
    private readonly Scratch _scratch = new();
    private readonly DeskFolder _folder;

    public ImportWalkTests() => _folder = DeskFolder.Of(_scratch.Folder).Value;

    public void Dispose()
    {
        _folder.Dispose();
        _scratch.Dispose();
    }

    private ImportWalk Walk(string file)
    {
        var begun = ImportWalk.Begin(_folder, file, System.IO.File.ReadAllBytes(Repository.Path("tests", "fixtures", "drawings", file)), "");
        Assert.True(begun.IsGood, string.Join("\n", begun.Faults));
        return begun.Value;
    }

    [Fact]
    public void Five_answers_make_a_plan()
    {
        var walk = Walk("ezdxf-r2010-sheet.dxf");
        Assert.Equal(4, walk.Loop);
        Assert.Equal(6, walk.LoopCount);
        walk.TakeHole(1, taken: false);
        Assert.Empty(walk.GoTo(2));
        walk.PointAtEdge(new Point(0.2, 40.1));
        Assert.NotEmpty(walk.GoTo(3));
        walk.PointAtEdge(new Point(-0.1, 0.1));
        Assert.Empty(walk.GoTo(3));
        walk.SayBevel(BevelTold.AtPlunge);
        walk.Plunge = "1000";
        Assert.Contains("beside the piece", walk.GoTo(4)[0].Message, StringComparison.Ordinal);
        walk.Plunge = "1 in";
        Assert.Empty(walk.GoTo(4));
        walk.SayGrip(true);
        (walk.GripFrom, walk.GripTo) = ("60", "120");

        // back and forth loses nothing
        Assert.Empty(walk.GoTo(1));
        Assert.Empty(walk.GoTo(5));
        Assert.Contains("thickness", walk.Finish().Faults[0].Message, StringComparison.Ordinal);
        (walk.Thickness, walk.Steel, walk.Width) = ("1/8 in", "80CrV2", "2 in");
        var stem = walk.Finish();
        Assert.True(stem.IsGood, string.Join("\n", stem.Faults));
        var plan = _folder.Plan(stem.Value).Value.Results.Plan;
        Assert.Equal(2, plan.Holes.Length);
        Assert.Equal((new Point(0, 40), new Point(0, 0)), (plan.Edge!.From, plan.Edge.To));
        Assert.Equal(25.4, plan.Bevel!.Plunge!.A.X, 9);
        Assert.Equal((new Point(60, 15), new Point(120, 15)), (plan.Grip!.From, plan.Grip.To));
        Assert.Equal(Length.OfInches(0.125), plan.Stock.Thickness);
        Assert.DoesNotContain("--", _folder.Plan(stem.Value).Value.Text, StringComparison.Ordinal);

        // nothing existing is replaced
        walk.Thickness = "4 mm";
        Assert.False(walk.Finish().IsGood);
        Assert.NotEqual(walk.Name, Walk("ezdxf-r2010-sheet.dxf").Name);
    }

    [Fact]
    public void The_unit_is_asked_where_the_drawing_does_not_say()
    {
        var walk = Walk("ezdxf-r2000-no-units.dxf");
        Assert.False(walk.SaysUnits);
        Assert.NotEmpty(walk.GoTo(2));
        var width = walk.HighMm - walk.LowMm;
        Assert.Empty(walk.SayUnits(LengthUnit.Inch));
        Assert.Equal(25.4 * width, walk.HighMm - walk.LowMm, 6);
        Assert.Empty(walk.GoTo(2));
    }

    [Fact]
    public void All_but_the_stock_may_be_left_open()
    {
        var walk = Walk("ezdxf-r12-lines-arcs.dxf");
        walk.SayUnits(LengthUnit.Mm);
        walk.Thickness = "3";
        var stem = walk.Finish();
        Assert.True(stem.IsGood, string.Join("\n", stem.Faults));
        var plan = _folder.Plan(stem.Value).Value.Results.Plan;
        Assert.Null(plan.Edge);
        Assert.Null(plan.Bevel);
        Assert.Null(plan.Grip);
    }

    [Theory]
    [InlineData("")]
    [InlineData("not a drawing")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"/>")]
    [InlineData("0\nSECTION\n2\nENTITIES\n0\nLINE\n10\n0\n20\n0\n11\n5\n21\n0\n0\nENDSEC\n0\nEOF\n")]
    public void What_is_no_drawing_is_refused_in_words(string text)
    {
        var begun = ImportWalk.Begin(_folder, "x.dxf", System.Text.Encoding.UTF8.GetBytes(text), "");
        Assert.False(begun.IsGood);
        Assert.NotEmpty(begun.Faults[0].Remedy);
        Assert.DoesNotContain("--", begun.Faults[0].Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../../etc/x.dxf")]
    [InlineData("..dxf")]
    [InlineData("a\u0000b:c.dxf")]
    public void A_name_leads_nowhere_else(string name)
    {
        var walk = ImportWalk.Begin(_folder, name, System.IO.File.ReadAllBytes(Repository.Path("tests", "fixtures", "drawings", "ezdxf-r2010-sheet.dxf")), "").Value;
        walk.Thickness = "3";
        Assert.True(walk.Finish().IsGood);
        Assert.Single(System.IO.Directory.GetFiles(_scratch.Folder, "*.plan.toml"));
        walk.Name = "../out";
        Assert.False(walk.Finish().IsGood);
    }
}
