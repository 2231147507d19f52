using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Benchmarks;

/// <summary>Drill plan and way of many holes.</summary>
[MemoryDiagnoser]
public class Holes
{
    private readonly Plan _plan = ReferencePlan.Plan;
    private readonly Steel _steel = SteelList.BuiltIn.Find("80CrV2")!;
    private readonly ImmutableArray<PlacedHole> _holes;
    private readonly BenchDatum _bench;
    private readonly ImmutableArray<Point> _strewn;

    /// <summary>Builds the plan once; 200 places strewn over 300 x 60 mm.</summary>
    public Holes()
    {
        _holes = HolePlacement.Of(_plan);
        _bench = BenchEdges.Of(_plan, ShopReader.BuiltIn);
        var chance = new Random(1);
        _strewn = [.. Enumerable.Range(0, 200).Select(_ => new Point(chance.NextDouble() * 300, chance.NextDouble() * 60))];
    }

    /// <summary>What each of forty holes takes on which machine.</summary>
    [Benchmark]
    public DrillPlan FortyHolesDrilled() => DrillPlan.Of(_plan, ShopReader.BuiltIn, _steel, _holes, _bench);

    /// <summary>The way over two hundred holes.</summary>
    [Benchmark]
    public ImmutableArray<int> WayOverTwoHundred() => ShortestWay.Over(default, _strewn);
}
