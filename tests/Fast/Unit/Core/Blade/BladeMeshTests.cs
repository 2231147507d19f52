using Tangwright.Core;
using Tangwright.Foundation;

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
        foreach (var stage in Enum.GetValues<Stage>())
        {
            var started = System.Diagnostics.Stopwatch.GetTimestamp();
            var mesh = BladeMesh.Of(results, stage).Value;
            TestContext.Current.TestOutputHelper?.WriteLine($"{name} {stage}: {mesh.Solid.Triangles.Length} triangles, volume off {mesh.VolumeOffShare:E1}, thickness off {mesh.ThicknessOffMm:0.####} mm, {System.Diagnostics.Stopwatch.GetElapsedTime(started).TotalMilliseconds:0} ms");
            Assert.Equal(0, mesh.Solid.OpenSides);
            Assert.Equal(0, mesh.Solid.Collapsed);
            Assert.Equal(2 - (2 * (stage >= Stage.Drilled ? results.Holes.Length : 0)), mesh.Solid.Euler);
            Assert.InRange(mesh.VolumeOffShare, -1e-3, 1e-3);
            Assert.InRange(mesh.Solid.Triangles.Length, 4, 150_000);
        }
    }
}
