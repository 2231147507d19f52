using BenchmarkDotNet.Attributes;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Benchmarks;

/// <summary>Levers of weight and balance of the reference plan, its outline as 300 straight sides.</summary>
[MemoryDiagnoser]
public class Balancing
{
    private readonly Results _results;
    private readonly Length _to;

    /// <summary>Works the plan up once.</summary>
    public Balancing()
    {
        var plan = ReferencePlan.Plan;
        var polygon = Path.Polygon([.. plan.Outline.Segments.SelectMany(s => new[] { s.At(0), s.At(1.0 / 3), s.At(2.0 / 3) })]);
        _results = WorkUp.Of(plan with { Outline = polygon }, ShopReader.BuiltIn, SteelList.BuiltIn.Find("80CrV2"));
        _to = Length.OfMm(_results.Stages[^1].BalanceFromDatum.Mm + 2);
    }

    /// <summary>Number of levers.</summary>
    public int Count => BalanceLevers.Of(_results).Length;

    /// <summary>What a mm of each lever does.</summary>
    [Benchmark]
    public BalanceAnswer? Slopes() => BalanceStudy.Of(_results, null, null, []);

    /// <summary>The bevel at 8 stations along the edge.</summary>
    [Benchmark]
    public BevelTable? Stations() => BevelStations.Of(_results);

    /// <summary>And what brings the balance 2 mm further, alone and together.</summary>
    [Benchmark]
    public BalanceAnswer? Levers() => BalanceStudy.Of(_results, _to, null, []);
}
