using BenchmarkDotNet.Attributes;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Benchmarks;

/// <summary>A million trials of eight pins through three parts.</summary>
[MemoryDiagnoser]
public class Pins
{
    private const int Count = 8;
    private const int Trials = 1_000_000;

    private PinnedParts _parts = null!;

    /// <summary>Hole less rod of every hole, mm: a chance of nearly 0, of 0.99, and of nearly 1.</summary>
    [Params(0.1, 0.4, 0.6)]
    public double ClearanceMm { get; set; }

    /// <summary>Places of the pins, scatter of careful punching.</summary>
    [GlobalSetup]
    public void SetUp()
        => _parts = new([.. Enumerable.Range(0, Count).Select(k => new Point(200 + (22 * k), 34 + (0.5 * (k % 3))))], [.. Enumerable.Repeat(PinnedPart.Alike(Count, Length.OfMm(ClearanceMm), 0.099), 3)]);

    /// <summary>All of them, on one core.</summary>
    [Benchmark]
    public PinChance MillionTrials() => PinChance.Of(_parts, 1, Trials);
}
