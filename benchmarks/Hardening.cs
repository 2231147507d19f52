using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Benchmarks;

/// <summary>One blade in the quench at five thicknesses, and the sweep of 20 steels, 12 thicknesses and 6 quenchants.</summary>
[MemoryDiagnoser]
public class Hardening
{
    private static readonly Steel Blade = SteelList.BuiltIn.Find("80CrV2")!;
    private static readonly QuenchMedium Oil = QuenchList.BuiltIn.Find("fast oil")!;
    private static readonly ImmutableArray<QuenchStation> Stations = [.. new[] { 1, 2.34, 3.67, 5.01, 6.35 }.Select(mm => new QuenchStation("", mm, 0))];
    private static readonly string[] Media = ["fast oil", "medium oil", "slow oil", "water", "brine", "plates"];

    /// <summary>One blade.</summary>
    [Benchmark(Baseline = true)]
    public Hardens FiveStations() => Hardens.Of(Blade, Stations, Oil, Temperature.OfCelsius(840), Temperature.OfCelsius(50));

    /// <summary>The whole section at once, edge to spine, 37 columns.</summary>
    [Benchmark]
    public ImmutableArray<Structure> Section() => SectionCooling.Of([.. Enumerable.Range(0, 37).Select(i => Math.Min(6.35, 1 + (0.41 * i)))], 2, 840, 50, t => Oil.TransferWPerM2K(t, 50), new AusteniteDecay(InSolution.Of(Blade)!.Value), 60);

    /// <summary>20 steels, 12 thicknesses, 6 quenchants, on all cores.</summary>
    [Benchmark]
    public int Sweep()
    {
        var cases = from s in SteelList.BuiltIn.All.Where(s => s.Heat.Hardening is not null).Take(20)
                    from mm in Enumerable.Range(1, 12).Select(i => 0.75 * i)
                    from m in Media
                    select (s, mm, m);
        return cases.AsParallel().Count(c => Hardens.Of(c.s, [new QuenchStation("", c.mm, 0)], QuenchList.BuiltIn.Find(c.m)!, c.s.Heat.Hardening!.Middle, Temperature.OfCelsius(40)).Verdict == HardensVerdict.Through);
    }
}
