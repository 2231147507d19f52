using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for scales, cuts across and grips whatever the numbers.</summary>
public class HandleShapeLaws
{
    private static Length Mm(double mm) => Length.OfMm(mm);

    /// <summary>The solid of a scale is its thickness over its outline, by a plain sum of small squares, for every section.</summary>
    [Theory]
    [InlineData(HandleSection.Slab)]
    [InlineData(HandleSection.Oval)]
    [InlineData(HandleSection.Octagon)]
    public void Solid_is_the_sum_of_its_thickness(HandleSection section)
    {
        var r = ExamplePieces.Kitchen();
        var shape = ScaleShape.Of(r.Plan with { Scales = r.Plan.Scales! with { Section = section, Stations = [new(Mm(206), Mm(7)), new(Mm(260), Mm(9)), new(Mm(330), Mm(8))] } })!;
        var box = shape.Outline.Path.Bounds;
        const double Step = 0.5;
        double sum = 0, x1 = 0;
        for (var x = box.MinX + (Step / 2); x < box.MaxX; x += Step)
        {
            for (var y = box.MinY + (Step / 2); y < box.MaxY; y += Step)
            {
                var t = shape.At(new Point(x, y));
                sum += t;
                x1 += t * x;
            }
        }

        var solid = shape.Solid([]);
        Assert.Equal(1, sum * Step * Step / solid.AreaMm2, 0.01);
        Assert.Equal(x1 / sum, solid.Centroid.X, 0.3);
    }

    /// <summary>A thicker scale has a greater girth; all lie between the ellipse inside and the box around, and a flat handle with small rounds has a greater one than a bulged one.</summary>
    [Fact]
    public void Girths_lie_between_ellipse_and_box()
    {
        var r = ExamplePieces.Kitchen();
        foreach (var section in Enum.GetValues<HandleSection>())
        {
            var last = 0.0;
            foreach (var t in new[] { 5.0, 7, 9, 11 })
            {
                var plan = r.Plan with { Scales = r.Plan.Scales! with { Section = section, Thickness = Mm(t), Stations = [] } };
                var cut = HandleCuts.Of(r with { Plan = plan }, ScaleShape.Of(plan), null)[2];
                var (a, b) = (0.5 * cut.Height.Mm, 0.5 * cut.Width.Mm);
                var ellipse = Math.PI * ((3 * (a + b)) - Math.Sqrt(((3 * a) + b) * (a + (3 * b))));
                Assert.InRange(cut.Girth.Mm, ellipse - 1e-6, 4 * (a + b));
                Assert.True(cut.Girth.Mm > last);
                last = cut.Girth.Mm;
            }
        }
    }

    /// <summary>Rounded a little, a flat handle is longer round than a bulged one of the same size.</summary>
    [Fact]
    public void A_flat_handle_is_longer_round()
    {
        var r = ExamplePieces.Kitchen();
        double Girth(HandleSection section)
        {
            var plan = r.Plan with { Scales = r.Plan.Scales! with { Section = section, Round = Mm(1) } };
            return HandleCuts.Of(r with { Plan = plan }, ScaleShape.Of(plan), null)[2].Girth.Mm;
        }

        Assert.True(Girth(HandleSection.Slab) > Girth(HandleSection.Oval));
        Assert.True(Girth(HandleSection.Slab) > Girth(HandleSection.Octagon));
    }

    /// <summary>The finger is as far from the edge as the front end is, however long the handle.</summary>
    [Theory]
    [InlineData(8)]
    [InlineData(14)]
    public void The_first_finger_lies_at_the_front_end(double away)
    {
        var text = FormattableString.Invariant($"tangwright = 1\nname = \"Near\"\nunits = \"mm\"\n[stock]\nsteel = \"80CrV2\"\nthickness = 4\n[outline]\npath = \"M 0 0 L 240 0 L 240 26 L 0 26 Z\"\n[edge]\nfrom = [0, 0]\nto = [100, 0]\n[grip]\nfrom = [{100 + away}, 13]\nto = [236, 13]\n[hand]\nlength = 190\n");
        var r = WorkUp.Of(Inputs.PlanReader.Read(text, "x").Value.Plan, Inputs.ShopReader.BuiltIn, null);
        Assert.Equal(away, HandlePlan.Of(r, new HandleWanted(1, null)).Grip!.EdgeAway!.Value.Mm, 9);
        Assert.Equal(away < 10, r.Findings.Any(f => f.Code == FindingCodes.HandNearEdge));
    }

    /// <summary>What is not known of the air and the wood widens the band, and air outside the formula's range is flagged.</summary>
    [Fact]
    public void Movement_carries_the_bands_of_the_air()
    {
        var r = ExamplePieces.Kitchen();
        Estimate<Length> Change(Air air) => Assert.Single(HandlePlan.Of(r with { Plan = r.Plan with { UserAir = air } }, new HandleWanted(1, null)).Wood).Change!;
        var metered = Change(new Air(null, null, 7));
        var byAir = Change(new Air(null, 36.2, null));
        Assert.Equal(metered.Value.Mm, byAir.Value.Mm, 0.02);
        Assert.True(byAir.Low < metered.Low && byAir.High > metered.High);
        Assert.Empty(metered.OutsideRange);
        Assert.Contains("humidity", Change(new Air(null, 97, null)).OutsideRange, StringComparison.Ordinal);
    }

    /// <summary>Cutting facets loses ever less: sixteen sides of the same width over all have a lesser girth than eight, and both a greater than the circle.</summary>
    [Fact]
    public void Facets_come_nearer_to_the_round()
    {
        for (var side = 5.0; side < 50; side += 3)
        {
            var leg = OctagonLeg.FromSquareMm(side);
            var facet = side - (2 * leg);
            var next = OctagonLeg.FromOctagonMm(facet);
            var (eight, sixteen) = (8 * facet, 16 * (facet - (2 * next)));
            Assert.True(4 * side > eight && eight > sixteen && sixteen > Math.PI * side);
        }
    }

    /// <summary>The best round grows with the hand and in proportion.</summary>
    [Fact]
    public void Larger_hands_want_thicker_handles()
    {
        for (var mm = 150.0; mm < 230; mm += 10)
        {
            Assert.True(BestGrip.Diameter(Mm(mm + 1)) > BestGrip.Diameter(Mm(mm)));
            Assert.Equal(2 * BestGrip.Diameter(Mm(mm)).Mm, BestGrip.Diameter(Mm(2 * mm)).Mm, 9);
        }
    }

    /// <summary>A handle turned end for end or upside down weighs the same and its scales go with it.</summary>
    [Fact]
    public void Handle_goes_with_the_piece()
    {
        var file = Inputs.PlanReader.Read(System.IO.File.ReadAllText(Repository.Path("examples", "kitchen-knife.plan.toml")), "kitchen").Value;
        var shop = Inputs.ShopReader.BuiltIn;
        double Grams(Plan plan) => HandleParts.Of(plan, HolePlacement.Of(plan), shop).Sum(p => p.Weight.Grams);
        var was = Grams(file.Plan);
        foreach (var upsideDown in new[] { true, false })
        {
            var turned = Inputs.WholePiece.Mirror(file, upsideDown);
            Assert.True(turned.IsGood, string.Join("\n", turned.Faults));
            Assert.Equal(was, Grams(turned.Value.Plan), 1e-6);
        }
    }
}
