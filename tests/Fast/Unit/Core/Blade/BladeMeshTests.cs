using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>The solid against the figures of the stages, which know nothing of triangles: they integrate along rays, and are themselves held against closed forms and columns.</summary>
public class BladeMeshTests
{
    public static TheoryData<string> Blades => [.. OddBlades.Examples, .. OddBlades.Odd.Keys];

    [Theory]
    [MemberData(nameof(Blades))]
    public void Is_closed_and_weighs_what_the_figures_say(string name)
    {
        var results = OddBlades.Of(name);
        foreach (var stage in Enum.GetValues<Stage>().Where(s => s != Stage.Assembled))
        {
            var mesh = BladeMesh.Of(results, stage).Value;
            TestContext.Current.TestOutputHelper?.WriteLine($"{name} {stage}: {mesh.Solid.Triangles.Length} triangles, volume off {mesh.VolumeOffShare:E1}, thickness off {mesh.ThicknessOffMm:0.####} mm");
            Assert.Equal(0, mesh.Solid.OpenSides);
            Assert.Equal(0, mesh.Solid.Collapsed);
            Assert.Equal(2 - (2 * (stage >= Stage.Drilled ? results.Holes.Length : 0)), mesh.Solid.Euler);
            Assert.InRange(mesh.VolumeOffShare, -1e-3, 1e-3);
            Assert.InRange(mesh.Solid.Triangles.Length, 4, 150_000);
            Assert.Equal(mesh.Solid.Triangles.Length, mesh.Faces.Length);
        }
    }

    [Fact]
    public void A_wedge_has_the_volume_of_a_wedge()
    {
        // a plate 100 x 40 x 4 mm ground on one long side, full height to nothing but 0.3 mm at the edge: a trapezium all along
        var plate = OddBlades.Blade(Path.Polygon(new(0, 0), new(100, 0), new(100, 40), new(0, 40)), new(0, 0), new(100, 0), null);
        var plan = plate.Plan with { Bevel = plate.Plan.Bevel! with { SharpenPerSide = null } };
        var mesh = BladeMesh.Of(WorkUp.Of(plan, plate.Shop, null), Stage.Finished).Value;
        Assert.Equal(100 * 40 * (0.3 + 4) / 2, mesh.Solid.VolumeMm3, 0.5);
        Assert.Contains(BladeFace.Bevel, mesh.Faces);
    }

    [Fact]
    public void A_bevel_on_one_face_leaves_the_other_flat()
    {
        var mesh = BladeMesh.Of(OddBlades.Odd["one-sided"], Stage.Finished).Value;
        var below = mesh.Solid.Triangles.Where(t => mesh.Solid.Points[t.A].Z == 0 && mesh.Solid.Points[t.B].Z == 0 && mesh.Solid.Points[t.C].Z == 0);
        var area = below.Sum(t => -FlatMesh.Twice(At(t.A), At(t.B), At(t.C)) / 2);
        Assert.Equal(Moments.Of(OddBlades.Odd["one-sided"].Piece).AreaMm2, area, 1.0);

        Point At(int p) => new(mesh.Solid.Points[p].X, mesh.Solid.Points[p].Y);
    }

    [Fact]
    public void Whatever_is_wrong_with_a_plan_there_is_a_sound_solid_or_a_plain_reason()
    {
        var (made, refused) = (0, 0);
        foreach (var file in System.IO.Directory.GetFiles(Repository.Path("examples", "broken"), "*.plan.toml").Order(StringComparer.Ordinal))
        {
            var read = PlanReader.Read(System.IO.File.ReadAllText(file), file);
            if (!read.IsGood) continue;
            var results = WorkUp.Of(read.Value.Plan, ShopReader.BuiltIn, null);
            var mesh = BladeMesh.Of(results, Stage.Finished);
            if (mesh.IsGood)
            {
                made++;
                Assert.Equal(0, mesh.Value.Solid.OpenSides);
                Assert.True(Math.Abs(mesh.Value.VolumeOffShare) < 1e-3, $"{System.IO.Path.GetFileName(file)}: {mesh.Value.VolumeOffShare:E2} of the volume off");
            }
            else
            {
                refused++;
                Assert.All(mesh.Faults, f => Assert.NotEmpty(f.Remedy));
            }
        }

        Assert.True(made > 20 && refused > 3, $"{made} made, {refused} refused");
    }

    [Theory]
    [InlineData(20, "run into one another")]
    [InlineData(3, "runs out of the outline")]
    public void Holes_that_run_into_something_are_named(double y, string says)
    {
        var results = OddBlades.Blade(Path.Polygon(new(0, 0), new(100, 0), new(100, 40), new(0, 40)), new(0, 0), new(100, 0), 10, null, false, (50, y, 4), (55, 20, 4));
        var fault = Assert.Single(BladeMesh.Of(results, Stage.Drilled).Faults);
        Assert.Contains("H1", fault.Message, StringComparison.Ordinal);
        Assert.Contains(says, fault.Message, StringComparison.Ordinal);
        Assert.True(BladeMesh.Of(results, Stage.Profiled).IsGood);
    }
}
