using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>The programs of the examples in every dialect, read by Debian's rs274: it accepts them, and what it says leaves each hole and the profile where the plan has them.</summary>
public class ExampleProgramTests
{
    private const double ToleranceMm = 0.005;

    private static readonly Dictionary<string, ProgramWays> Dialects = new(StringComparer.Ordinal)
    {
        ["usual"] = ProgramWays.Usual,
        ["no drill cycles"] = ProgramWays.Usual with { HasDrillCycles = false },
        ["no arcs"] = ProgramWays.Usual with { HasArcs = false, HasHelix = false },
        ["no helix"] = ProgramWays.Usual with { HasHelix = false },
        ["no tool change"] = ProgramWays.Usual with { HasToolChange = false },
        ["inches"] = ProgramWays.Usual with { Units = LengthUnit.Inch },
        ["inches and single moves"] = new(LengthUnit.Inch, false, false, false, false),
    };

    public static TheoryData<string, ProgramWork, string> Cases()
    {
        var data = new TheoryData<string, ProgramWork, string>();
        foreach (var (example, work) in new[] { ("skeleton-knife", ProgramWork.All), ("skeleton-knife", ProgramWork.Profile), ("paring-knife", ProgramWork.Holes), ("paring-knife", ProgramWork.Profile) })
        {
            foreach (var dialect in Dialects.Keys) data.Add(example, work, dialect);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Is_accepted_and_leaves_the_part_as_planned(string example, ProgramWork work, string dialect)
    {
        var made = Made(example, work, Dialects[dialect]);
        var (program, plan, holes) = (made.Program, made.Results.Plan, made.Results.Holes);
        var outside = OutsideReader.Of(made.Text, program.Path.Tools);
        Assert.True(outside.Exit == 0, outside.Said);
        Assert.Equal(program.Path.Tools.Length, outside.ToolChanges);

        // what is wanted is the plan itself, shifted to the program's zero
        var zero = program.SetUp.ZeroAt;
        Assert.Equal(work == ProgramWork.Profile ? 0 : holes.Length, program.Wanted.Holes.Length);
        Assert.All(program.Wanted.Holes, h => Assert.Equal(0, (h.At + zero).To(holes.Single(p => p.Name == h.Name).At), 1e-9));
        Assert.Equal(work == ProgramWork.Holes, program.Wanted.Outline is null);
        if (program.Wanted.Outline is { } shape) Assert.All(plan.Outline.Segments.SelectMany(s => new[] { s.Start, s.At(0.5) }), p => Assert.True(program.ToFile.Any(c => (c.At + zero).To(p) < 2) || Nearest.Distance(shape, p - zero) < 0.0201, $"the outline is elsewhere at {p}"));
        LeftAsPlanned.Check(outside.Motions, program.Path.Tools, program.Wanted, program.SetUp.ThicknessMm, ToleranceMm);
    }

    // what our own check refuses in a whole program, the outside reader refuses too
    [Theory]
    [InlineData("T3 M6", "T9 M6")]
    [InlineData("Z-7.373 R2", "Z-7.373 R-8")]
    [InlineData("I1.5 J0 F", "I1.6 J0 F")]
    [InlineData("G1 Z0.2 F96.5", "G0 G1 Z0.2 F96.5")]
    public void A_wrong_one_is_refused_by_both(string old, string instead)
    {
        var made = Made("skeleton-knife", ProgramWork.All, ProgramWays.Usual);
        Assert.Contains(old, made.Text, StringComparison.Ordinal);
        var broken = made.Text.Replace(old, instead, StringComparison.Ordinal);
        Assert.Equal(1, OutsideReader.Of(broken, made.Program.Path.Tools).Exit);
        Assert.NotEmpty(Inputs.ProgramCheck.Of(broken, made.Program.Path.Tools, made.Program.SetUp, made.Program.Wanted));
    }

    private static CheckedProgram Made(string example, ProgramWork work, ProgramWays ways)
    {
        var results = OddBlades.Example(example);
        var shop = results.Shop with { Machines = [.. results.Shop.Machines.Select(m => m with { ProgramWays = ways })] };
        var made = MakeProgram.For(results with { Shop = shop }, null, new(work, null), example + ".ngc");
        Assert.True(made.IsGood, string.Join("; ", made.Faults.Select(f => f.Message)));
        return made.Value;
    }
}
