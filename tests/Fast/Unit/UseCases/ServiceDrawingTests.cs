using NetTopologySuite.Geometries;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Tests.Bars;
using Tangwright.UseCases;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>Drawings for a cutting service: room for the kerf, lead-ins in the waste, by another library.</summary>
public class ServiceDrawingTests
{
    [Theory]
    [InlineData("skeleton-hatchet", "laser")]
    [InlineData("skeleton-hatchet", "waterjet")]
    [InlineData("kitchen-knife", "waterjet")]
    [InlineData("paring-knife", "laser")]
    public void Outlines_keep_the_widest_kerf_and_lead_ins_touch_no_piece(string example, string name)
    {
        var s = Plan(example, name);
        var service = HiredCut.All.First(c => c.Name == name);
        foreach (var cut in s.Cuts)
        {
            var drawing = BarDrawing.Of(s, cut, 1);
            var outlines = drawing.Paths.Where(p => p.Layer == "CUT_KERF_OUTSIDE").Select(p => Solid(p.Path)).ToArray();
            var leads = drawing.Paths.Where(p => p.Layer == "LEAD_IN").Select(p => p.Path.Segments[0]).ToArray();
            Assert.Equal(cut.Places.Length, outlines.Length);
            Assert.True(BarCase.LeastGap(outlines) >= service.MostKerf.Mm - (2 * OffsetLoop.FitMm) - 1e-3);
            var holes = drawing.Circles.Where(c => c.Layer == "CUT_KERF_INSIDE").ToArray();
            Assert.Equal(outlines.Length + holes.Length, leads.Length);
            foreach (var lead in leads)
            {
                var blade = new LineString([new Coordinate(lead.Start.X, lead.Start.Y), new Coordinate(lead.End.X, lead.End.Y)]);
                var start = new NetTopologySuite.Geometries.Point(lead.Start.X, lead.Start.Y);
                var hole = Array.Find(holes, h => h.Centre.To(lead.End) <= (0.5 * h.DiameterMm) + 1e-6);
                if (hole is not null)
                {
                    Assert.True(hole.Centre.To(lead.Start) < 0.5 * hole.DiameterMm);
                    continue;
                }

                // it ends on one outline from outside, and half a kerf clear of all others
                var own = outlines.MinBy(o => o.Boundary.Distance(new NetTopologySuite.Geometries.Point(lead.End.X, lead.End.Y)))!;
                Assert.False(own.Contains(start));
                Assert.InRange(own.Intersection(blade).Length, 0, 0.01);
                Assert.All(outlines.Where(o => o != own), o => Assert.True(o.Distance(blade) >= (0.5 * service.Kerf.Mm) - 1e-3));
                Assert.InRange(lead.Start.X, 0, cut.Length.Mm);
                Assert.InRange(lead.Start.Y, 0, cut.Width.Mm);
            }
        }
    }

    [Fact]
    public void Holes_smaller_than_the_steel_is_thick_are_left_to_the_drill_and_others_hold_steel_to_grind()
    {
        var s = Plan("skeleton-hatchet", "laser");
        var drawing = BarDrawing.Of(s, s.Cuts[0], 1);
        var results = s.Patterns[0].Results;
        Assert.All(drawing.Circles.Where(c => c.Layer == "CUT_KERF_INSIDE"), c => Assert.True(c.DiameterMm >= results.Plan.Stock.Thickness.Mm));
        Assert.Equal(results.Holes.Length * s.Cuts[0].Places.Length, drawing.Circles.Length);
        Assert.Equal(results.Holes.Max(h => h.MadeDiameter.Mm) - 1, drawing.Circles.Where(c => c.Layer == "CUT_KERF_INSIDE").Max(c => c.DiameterMm), 1e-9);
        Assert.DoesNotContain(BarDrawing.Of(s with { Service = null }, s.Cuts[0], 1).Paths, p => p.Layer == "LEAD_IN");
        Assert.Contains("kerf outside the outlines, inside the holes", drawing.Title, StringComparison.Ordinal);
    }

    // the table of kerfs, copied by hand: usual, widest, edge
    [Theory]
    [InlineData("laser", 0.2, 0.5, 0.5)]
    [InlineData("waterjet", 1, 1.2, 0.3)]
    [InlineData("fine-plasma", 1, 1.5, 2)]
    [InlineData("plasma", 2, 3, 3)]
    [InlineData("oxy-fuel", 2.5, 5, 3)]
    public void Clearance_is_the_widest_kerf_and_both_edges(string name, double kerf, double most, double edge)
    {
        var service = HiredCut.All.First(c => c.Name == name);
        Assert.Equal((kerf, most, edge), (service.Kerf.Mm, service.MostKerf.Mm, service.Edge.Mm));
        Assert.Equal(most + (2 * edge), service.Clearance.Mm, 1e-9);
    }

    [Fact]
    public void An_unknown_service_is_refused_in_words()
        => Assert.Contains("no service known", PlanStock.Of(Repository.Path("examples", "paring-knife.plan.toml"), null, new StockRequest(3) { Service = "axe" }).Faults[0].Message, StringComparison.Ordinal);

    private static StockPlan Plan(string example, string service) => PlanStock.Of(Repository.Path("examples", example + ".plan.toml"), null, new StockRequest(6) { Service = service, Bars = ["48 in"] }).Value.Stock;

    private static Polygon Solid(Path path)
    {
        var ring = Chords.Of(path, 1e-4).Select(c => new Coordinate(c.X, c.Y)).ToList();
        return new Polygon(new LinearRing([.. ring, ring[0].Copy()]));
    }
}
