using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>Mirror, length and offset take the whole piece along.</summary>
public class WholePieceTests
{
    public static TheoryData<string> Examples => ["skeleton-hatchet", "kitchen-knife", "paring-knife"];

    private static PlanFile Example(string name) => PlanReader.Read(Repository.Text("examples", name + ".plan.toml"), name).Value;

    private static Results Of(PlanFile f) => WorkUp.Of(f.Plan, ShopReader.BuiltIn, SteelList.BuiltIn.Find(f.Plan.Stock.Steel));

    [Theory]
    [MemberData(nameof(Examples))]
    public void Mirrored_it_weighs_the_same_and_balances_as_far_from_its_datum(string name)
    {
        var file = Example(name);
        foreach (var upsideDown in new[] { false, true })
        {
            var mirrored = WholePiece.Mirror(file, upsideDown).Value;
            var (a, b) = (Of(file), Of(mirrored));
            Assert.Equal(a.Stages[^1].Mass!.Value.Grams, b.Stages[^1].Mass!.Value.Grams, 1e-3);
            Assert.Equal(a.Stages[^1].BalanceFromDatum.Mm, b.Stages[^1].BalanceFromDatum.Mm, 1e-3);
            Assert.Equal(a.Findings.Select(f => f.Code).Order(), b.Findings.Select(f => f.Code).Order());
            var again = Of(WholePiece.Mirror(mirrored, upsideDown).Value);
            Assert.Equal(a.Stages[^1].Balance.X, again.Stages[^1].Balance.X, 1e-3);
            Assert.Equal(a.Stages[^1].Balance.Y, again.Stages[^1].Balance.Y, 1e-3);
            foreach (var (h, g) in a.Holes.Zip(again.Holes)) Assert.Equal(0, h.At.To(g.At), 1e-5);
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Scaled_its_area_goes_with_the_square_and_its_holes_keep_their_size(string name)
    {
        var file = Example(name);
        var box = file.Plan.Outline.Bounds;
        var scaled = WholePiece.ScaleTo(file, Length.OfMm(box.Width * 1.25)).Value;
        Assert.Equal(box.Width * 1.25, scaled.Plan.Outline.Bounds.Width, 1e-4);
        var area = Moments.Of(file.Plan.Outline).AreaMm2;
        Assert.Equal(1.25 * 1.25, Moments.Of(scaled.Plan.Outline).AreaMm2 / area, 1e-6);
        Assert.Equal(Of(file).Holes.Select(h => h.Diameter), Of(scaled).Holes.Select(h => h.Diameter));
        foreach (var line in file.Text.Split('\n').Where(l => l.TrimStart().StartsWith('#'))) Assert.Contains(line, scaled.Text, StringComparison.Ordinal);
    }

    // J. Steiner 1840: a convex figure laid d outside gains perimeter · d + π d² and 2 π d of length
    [Theory]
    [InlineData("M 0 0 L 100 0 L 100 30 L 0 30 Z", 4)]
    [InlineData("M 0 0 L 80 -10 A 60 60 0 0 1 80 40 C 60 50 20 48 0 30 Z", 2.5)]
    [InlineData("M 0 0 A 40 25 20 0 1 60 30 L 0 40 Z", 3)]
    public void Laid_outside_it_gains_what_Steiner_says(string path, double distance)
    {
        var loop = PathData.Read(path, 1).Paths[0];
        var offset = OffsetLoop.Of(loop, distance);
        Assert.Equal("", offset.Why);
        Assert.True(offset.WorstMm <= OffsetLoop.FitMm);
        var wanted = Math.Abs(Moments.Of(loop).AreaMm2) + (loop.Length * distance) + (Math.PI * distance * distance);
        Assert.Equal(wanted, Math.Abs(Moments.Of(offset.Path!).AreaMm2), offset.WorstMm * loop.Length + 1e-6);
        Assert.Equal(loop.Length + (2 * Math.PI * distance), offset.Path!.Length, 0.02);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Laid_outside_or_inside_every_point_is_as_far_away_as_asked(string name)
    {
        var file = Example(name);
        foreach (var outward in new[] { 0.8, -0.5 })
        {
            var moved = WholePiece.Offset(file, Length.OfMm(outward)).Value;
            foreach (var s in moved.Plan.Outline.Segments)
            {
                foreach (var t in new[] { 0.0, 0.3, 0.7 }) Assert.Equal(Math.Abs(outward), Nearest.Distance(file.Plan.Outline, s.At(t)), 0.01);
            }

            Assert.NotNull(moved.Plan.Edge);
        }
    }

    [Fact]
    public void An_offset_that_leaves_nothing_is_refused_in_words()
        => Assert.Contains("inside", WholePiece.Offset(Example("paring-knife"), Length.OfMm(-60)).Faults[0].Message, StringComparison.Ordinal);
}
