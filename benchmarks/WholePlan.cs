using BenchmarkDotNet.Attributes;
using Tangwright.Core;
using Tangwright.Inputs;

namespace Tangwright.Benchmarks;

/// <summary>The whole reference plan: reading it, and all its figures and findings.</summary>
[MemoryDiagnoser]
public class WholePlan
{
    private readonly Plan _plan = PlanReader.Read(ReferencePlan.Text, "reference.plan.toml").Value.Plan;
    private readonly Steel _steel = SteelList.BuiltIn.Find("80CrV2")!;

    /// <summary>Reads the text.</summary>
    [Benchmark]
    public PlanFile Read() => PlanReader.Read(ReferencePlan.Text, "reference.plan.toml").Value;

    /// <summary>Full figures and findings.</summary>
    [Benchmark(Baseline = true)]
    public Results FiguresAndFindings() => WorkUp.Of(_plan, ShopReader.BuiltIn, _steel);
}
