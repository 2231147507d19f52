using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

// The kitchen knife of the worked examples: taper of the tang to 1.5 mm at the butt gives 9.9 mm ahead of the heel and 161.9 g, scales 7 mm instead of 8 move it by 1.8; computed apart from this program.
public class BalanceStudied
{
    private static readonly BalanceAnswer Answer = BalanceStudy.Of(Plain(), Length.OfMm(9.9), null, [])!;

    // as the worked example has it: scales and pins by their weight alone, no glue
    private static Results Plain()
    {
        var r = ExamplePieces.Kitchen();
        var over = (Length.OfMm(206), Length.OfMm(330));
        AddedMass[] handle = [new("scales", Mass.OfGrams(26), null, Length.OfMm(8), 2, null, over), new("pins", Mass.OfGrams(9.3), null, Length.OfMm(8), 2, new Point(266, 33.8), null)];
        return WorkUp.Of(r.Plan with { Scales = r.Plan.Scales! with { Material = "" }, AddedMasses = [.. handle] }, r.Shop, r.Steel);
    }

    private static LeverAnswer Lever(string key) => Answer.Levers.Single(l => l.Lever.Key == key);

    [Fact]
    public void Worked_example_taper_of_the_tang()
    {
        var taper = Lever("tang-taper");
        TestContext.Current.TestOutputHelper?.WriteLine($"{Answer.Now}; " + string.Join("; ", Answer.Levers.Select(l => $"{l.Lever.Key} {l.Lever.Now:F2} [{l.Lever.Low:F2} {l.Lever.High:F2}] {l.GramsPerUnit:F3} {l.MmPerUnit:F3} {l.Reaches} {l.Value:F3} {l.Then}")));
        Assert.True(taper.Reaches);

        // 1.5 mm in the worked example, which starts from 3.3 mm ahead of the heel, not 2.8
        Assert.Equal(1.5, taper.Value!.Value, 0.1);
        Assert.Equal(161.9, taper.Then!.Value.Grams, 0.02 * 161.9);
        Assert.Equal(9.9, taper.Then.Value.FromDatumMm, 0.01);
    }

    [Fact]
    public void Worked_example_scales()
    {
        Assert.Equal(-1.8, Lever("scales").MmPerUnit, 0.15);
        Assert.Equal((26 + 9.3) / 8, Lever("scales").GramsPerUnit, 0.01);
    }

    // m (p − b) = M (b − b0): a weight at p moves the balance from b0 to b
    [Fact]
    public void Weight_at_the_butt_pulls_toward_itself()
    {
        var r = ExamplePieces.Kitchen();
        var a = BalanceStudy.Of(r, Length.OfMm(0), null, ["weight-rear"])!;
        var (w, now) = (Assert.Single(a.Levers), a.Now);
        Assert.True(w.Reaches);

        // the butt at x 330 lies 130 mm behind the heel at x 200
        Assert.Equal(now.Grams * now.FromDatumMm / 130, w.Value!.Value, 0.002);
        Assert.Equal(-(130 + now.FromDatumMm) / now.Grams, w.MmPerUnit, 0.001);
    }

    [Fact]
    public void Together_they_meet_balance_and_weight()
    {
        var r = ExamplePieces.Kitchen();
        var j = BalanceStudy.Of(r, Length.OfMm(10), Mass.OfGrams(160), ["tang-taper", "holes-glue", "scales"])!.Together!;
        TestContext.Current.TestOutputHelper?.WriteLine(string.Join("; ", j.Moves.Select(m => $"{m.Lever.Key} {m.Lever.Now:F3} -> {m.Value:F3}")) + $" {j.Then} {j.Reaches}");
        Assert.True(j.Reaches);

        // written into the plan and worked up from the start it is so
        var plan = j.Moves.Aggregate(r.Plan, (p, m) => m.Lever.Set(p, m.Value));
        var whole = WorkUp.Of(plan, r.Shop, r.Steel).Stages[^1];
        Assert.Equal(10, whole.BalanceFromDatum.Mm, JointChange.GoodMm);
        Assert.Equal(160, whole.Mass!.Value.Grams, 0.02);
    }

    [Fact]
    public void Too_far_is_told()
    {
        var a = BalanceStudy.Of(ExamplePieces.Kitchen(), Length.OfMm(80), null, ["tang-taper", "scales"])!;
        Assert.All(a.Levers, l => Assert.False(l.Reaches));
        Assert.False(a.Together!.Reaches);
        Assert.Equal(a.Levers.Select(l => l.Value!.Value), a.Together.Moves.Select(m => m.Value), (x, y) => Math.Abs(x - y) < 1e-6);
    }
}
