using BenchmarkDotNet.Attributes;
using Tangwright.Core;
using Tangwright.Inputs;

namespace Tangwright.Benchmarks;

/// <summary>Rough cuts of the examples: candidates, pockets, order, check on the true outline.</summary>
[MemoryDiagnoser]
public class RoughCutting
{
    private readonly Results _hatchet = Read("skeleton-hatchet");
    private readonly Results _kitchen = Read("kitchen-knife");
    private readonly Results _paring = Read("paring-knife");
    private readonly Results _knife = Read("skeleton-knife");

    /// <summary>The hatchet.</summary>
    [Benchmark]
    public RoughCutPlan Hatchet() => RoughCuts.Of(_hatchet, new RoughCutWanted(null, null)).Value;

    /// <summary>The chef's knife.</summary>
    [Benchmark]
    public RoughCutPlan KitchenKnife() => RoughCuts.Of(_kitchen, new RoughCutWanted(null, null)).Value;

    /// <summary>The paring knife.</summary>
    [Benchmark]
    public RoughCutPlan ParingKnife() => RoughCuts.Of(_paring, new RoughCutWanted(null, null)).Value;

    /// <summary>The skeleton knife.</summary>
    [Benchmark]
    public RoughCutPlan SkeletonKnife() => RoughCuts.Of(_knife, new RoughCutWanted(null, null)).Value;

    private static Results Read(string name)
    {
        var folder = new System.IO.DirectoryInfo(AppContext.BaseDirectory);
        while (!System.IO.File.Exists(System.IO.Path.Combine(folder.FullName, "Tangwright.slnx"))) folder = folder.Parent!;
        string Text(string ending) => System.IO.File.ReadAllText(System.IO.Path.Combine(folder.FullName, "examples", name + ending));
        var plan = PlanReader.Read(Text(".plan.toml"), name).Value.Plan;
        return WorkUp.Of(plan, ShopReader.Read(Text(".shop.toml"), name).Value, SteelList.BuiltIn.Find(plan.Stock.Steel));
    }
}
