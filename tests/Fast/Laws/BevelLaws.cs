using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for the numbers of a bevel whatever they are.</summary>
public class BevelLaws
{
    private static IEnumerable<(double Stock, double Edge, double Height)> Cases()
    {
        var chance = new Random(23);
        for (var i = 0; i < 500; i++)
        {
            var stock = 1 + (7 * chance.NextDouble());
            yield return (stock, stock * (0.02 + (0.4 * chance.NextDouble())), 5 + (40 * chance.NextDouble()));
        }
    }

    [Fact]
    public void One_face_has_twice_the_tangent_and_any_one_follows_from_the_others()
    {
        foreach (var (t, e, h) in Cases())
        {
            var (two, one) = (BevelAngle.Of(t, e, h), BevelAngle.Of(t, e, h, oneSided: true));
            Assert.Equal(2 * Math.Tan(two.Radians), Math.Tan(one.Radians), 1e-12);
            Assert.Equal(h, BevelAngle.HeightMm(t, e, one, oneSided: true), 1e-9);
            Assert.Equal(e, BevelAngle.EdgeMm(t, h, two), 1e-9);
        }
    }

    /// <summary>A hollow face lies under the straight one, is the thinner the smaller the wheel, goes through edge and shoulder, and at the least wheel stands upright at the edge.</summary>
    [Fact]
    public void Hollow_faces_go_through_their_ends_and_thin_with_the_wheel()
    {
        foreach (var (t, e, h) in Cases())
        {
            var least = HollowFace.LeastRadiusMm(t, e, h);
            var (at, wide, small) = (new HollowFace(t, e, h, least), new HollowFace(t, e, h, 2 * least), new HollowFace(t, e, h, Math.Max(0.7 * least, 0.51 * Math.Sqrt((h * h) + (t * t)))));
            Assert.Equal(0, at.EdgeSlope.Degrees, 1e-6);
            Assert.Equal(h, HollowFace.MostHeightMm(t, e, least), 1e-6 * h);
            if (HollowFace.LeastStockMm(e, h, least) is { } stock && least >= h) Assert.Equal(t, stock, 1e-6 * t);
            foreach (var f in new[] { at, wide })
            {
                Assert.Equal(e, f.ThicknessMm(0), 1e-8 * f.RadiusMm);
                Assert.Equal(t, f.ThicknessMm(h), 1e-8 * f.RadiusMm);
                Assert.Equal(0, f.Thinnest.UpMm, 1e-6);
            }

            Assert.True(wide.ThicknessMm(0.5 * h) > at.ThicknessMm(0.5 * h));
            Assert.True(wide.ThicknessMm(0.5 * h) < e + (0.5 * (t - e)));
            if (small.RadiusMm < least) Assert.True(small.Thinnest.ThicknessMm < e);
            Assert.True(ConvexFace.RadiusMm(0.5 * (t - e), h) >= 0.5 * h);
            Assert.Equal(Math.Atan2(t - e, 2 * h) * 2, ConvexFace.EdgeSlope(0.5 * (t - e), h).Radians, 1e-12);
        }
    }

    [Fact]
    public void A_steeper_sharpening_has_a_lower_facet_and_sharpening_back_thickens()
    {
        foreach (var (t, e, h) in Cases())
        {
            var a = BevelAngle.Of(t, e, h);
            var (low, high) = (Angle.OfDegrees(a.Degrees + 5), Angle.OfDegrees(a.Degrees + 12));
            var (one, two) = (EdgeBevel.Of(e, low, a)!.Value, EdgeBevel.Of(e, high, a)!.Value);
            Assert.True(two.HeightMm < one.HeightMm);

            // at the shoulder of the facet the bevel is as thick
            Assert.Equal(e + (2 * one.HeightMm * Math.Tan(a.Radians)), one.ShoulderMm, 1e-9);
            Assert.True(EdgeBevel.AfterMm(e, 1, a) > e);
        }
    }

    [Fact]
    public void The_oven_costs_more_the_hotter_and_with_the_root_of_time()
    {
        for (var c = 780.0; c < 1100; c += 20)
        {
            var (at, hotter) = (Temperature.OfCelsius(c), Temperature.OfCelsius(c + 20));
            Assert.True(SurfaceLoss.FaceMm(hotter, 10, false) > SurfaceLoss.FaceMm(at, 10, false));
            Assert.Equal(2 * SurfaceLoss.FaceMm(at, 10, false), SurfaceLoss.FaceMm(at, 40, false), 1e-12);
        }
    }

    /// <summary>Stations tell the thickness the solid has: by the law at the same places.</summary>
    [Fact]
    public void Stations_agree_with_the_closed_form()
    {
        var r = UseCases.OpenWork.Of(Repository.Path("examples", "skeleton-hatchet.plan.toml"), null).Value.WorkUp();
        foreach (var s in BevelStations.Of(r, 20)!.Stations)
        {
            Assert.Equal(26, s.Height.Mm, 1e-9);
            foreach (var t in s.Thicknesses)
            {
                Assert.Equal(0.5 + (5.85 * t.Up.Mm / 26), t.Finished.Mm, 1e-9);
                Assert.Equal(1.0 + (5.35 * t.Up.Mm / 26), t.Soft!.Value.Mm, 1e-9);
            }
        }
    }
}
