using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>Closed cases on a plate 200 x 40 x 5 mm of 7.85 g/cm³: 314 g.</summary>
public class PlanDifferenceTests
{
    private static readonly Plan Plate = TestShop.Plate with { Holes = [Hole("A", 50, 10), Hole("B", 100, 8)] };

    [Fact]
    public void A_plan_does_not_differ_from_itself()
    {
        var d = Differ(Plate, Plate);
        Assert.True(d.IsNone);
        Assert.Empty(d.Figures);
        Assert.Empty(d.Findings.Gone);
        Assert.Empty(d.Findings.New);
        Assert.Empty(d.Findings.Changed);
    }

    [Fact]
    public void Holes_by_name_moved_resized_added_and_gone()
    {
        var d = Differ(Plate, Plate with { Holes = [Hole("A", 53, 10), Hole("C", 150, 6)] });
        Assert.Equal(["A", "C", "B"], d.Holes.Select(h => h.Name));
        Assert.Equal(new Point(3, 0), d.Holes[0].Moved);
        Assert.Null(d.Holes[1].Was);
        Assert.Null(d.Holes[2].Now);
        Assert.Null(d.Outline);
        Assert.Empty(d.Values);
    }

    [Fact]
    public void A_longer_plate_weighs_what_its_end_weighs()
    {
        var longer = Plate with { Outline = Path.Polygon(new(0, 0), new(210, 0), new(210, 40), new(0, 40)) };
        var d = Differ(Plate, longer);
        Assert.Equal(10, d.Outline!.Apart.Mm, FarthestApart.WithinMm);
        Assert.Equal([2, 3], d.Outline.Moved.Select(m => m.Number));
        Assert.Equal(10, Figure(d, "outline.length_mm"), 9);
        Assert.Equal(20, Figure(d, "outline.perimeter_mm"), 9);
        Assert.Equal(400, Figure(d, "outline.area_mm2"), 6);
        Assert.Equal(10 * 40 * 5 * 0.00785, Figure(d, "finished.mass_g"), 6); // 15.7 g
        Assert.DoesNotContain(d.Figures, f => f.Key == "outline.height_mm");
    }

    /// <summary>8 mm out of a 10 mm hole: π (25 - 16) 5 mm³ of steel more; the web to the lower edge grows by 1 mm.</summary>
    [Fact]
    public void A_smaller_hole_leaves_more_steel()
    {
        var one = Plate with { Holes = [Hole("A", 50, 10)] };
        var d = Differ(one, one with { Holes = [Hole("A", 50, 8)] });
        Assert.Equal(Math.PI * 9 * 5, Figure(d, "finished.volume_mm3"), 6);
        Assert.Equal(Math.PI * 9 * 5 * 0.00785, Figure(d, "drilled.mass_g"), 6);
        Assert.Equal(1, Figure(d, "holes.least_web_mm"), 9);
        Assert.DoesNotContain(d.Figures, f => f.Key == "profiled.mass_g");
    }

    [Fact]
    public void Values_are_told_by_name_in_the_unit_of_the_later_plan()
    {
        var d = Differ(Plate, Plate with { Stock = Plate.Stock with { Thickness = Length.OfInches(0.25), Width = null }, Revision = "B" });
        Assert.Equal(
            [new("revision", "A", "B"), new("thickness of the stock", "5 mm", "6.35 mm"), new("width of the bar", "50 mm", "")],
            d.Values);
    }

    [Fact]
    public void Findings_gone_new_and_changed()
    {
        // A lies 1 mm nearer to the edge than allowed, then 2 mm; B comes too near as A leaves
        var thin = Plate with { Holes = [Hole("A", 50, 10, y: 9), Hole("B", 100, 8)] };
        var thinner = Plate with { Holes = [Hole("A", 50, 10, y: 8), Hole("B", 100, 8, y: 8)] };
        var web = FindingCodes.WebToOutline;
        var changed = Differ(thin, thinner).Findings;
        Assert.Equal("4.00 mm (0.157 in)", changed.Changed.Single(c => c.Was.Code == web).Was.Found);
        Assert.Equal("3.00 mm (0.118 in)", changed.Changed.Single(c => c.Was.Code == web).Now.Found);
        Assert.Equal("hole B", changed.New.Single(f => f.Code == web).Where);
        Assert.Equal(["hole A", "hole B"], Differ(thinner, Plate).Findings.Gone.Where(f => f.Code == web).Select(f => f.Where));

        // a rule that names all its holes is one finding, whichever it names
        Assert.Contains(changed.Changed, c => c.Now.Code == FindingCodes.EdgeDistanceRule && c.Was.Where == "hole A" && c.Now.Where == "holes A, B");
    }

    private static Hole Hole(string name, double x, double d, double y = 20) => new(name, new Point(x, y), Length.OfMm(d), $"{d}", HoleUse.Lightening, HoleMake.Drill);

    private static PlanDifference Differ(Plan was, Plan now) => PlanDifference.Of(WorkUp.Of(was, TestShop.Own, TestShop.Steel), WorkUp.Of(now, TestShop.Own, TestShop.Steel));

    private static double Figure(PlanDifference d, string key)
    {
        var f = d.Figures.Single(f => f.Key == key);
        return f.Now!.Value - f.Was!.Value;
    }
}
