using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Reference;

/// <summary>What a log of readings says.</summary>
public class HardnessLogCases
{
    private static HardnessEntry Read(double hrc, string piece, string load = "1", double? oilC = null, double? readsHighBy = null, string spot = "")
        => new(null, "autumn", "8670", "kiln", Temperature.OfCelsius(250), 2, 2, hrc, readsHighBy, piece, load, spot, oilC is { } c ? Temperature.OfCelsius(c) : null);

    /// <summary>Four readings 2 HRC under the prediction: 2 · 4 / (4 + 1/1.8²) = 1.86 under, known to 0.48.</summary>
    [Fact]
    public void Four_readings()
    {
        var bias = HardnessBias.Of([-2, -2, -2, -2]);
        Assert.Equal(-1.857, bias.MeanHrc, 0.001);
        Assert.Equal(0.4818, bias.SdHrc, 0.001);
        Assert.Equal(new HardnessBias(0, 0, 1.8), HardnessBias.Of([]));
    }

    /// <summary>55, 56, 56 and, from a second load in oil of 71 °C, 53 HRC for 55 to 57: the last is not one of the rest, and the oil is the first thing asked about.</summary>
    [Fact]
    public void One_soft_blade()
    {
        ImmutableArray<HardnessEntry> log = [Read(55, "1"), Read(56, "2"), Read(56, "3"), Read(53, "4", load: "2", oilC: 71)];
        var review = HardnessReview.Of(log, null, TemperingData.Steel("8670"), "kiln", 64, new HardnessBand(55, 57));
        var flagged = Assert.Single(review.Readings, r => r.IsFlagged);
        Assert.Equal("4", flagged.Entry.Piece);
        Assert.True(flagged.IsFarFromRest);
        Assert.Contains("71 °C", flagged.Causes[0], StringComparison.Ordinal);
        Assert.Contains("load 2", flagged.Causes[0], StringComparison.Ordinal);
        Assert.Contains("same oil", flagged.Causes[0], StringComparison.Ordinal);
        Assert.Contains("load 2", flagged.Do, StringComparison.Ordinal);
        Assert.Equal(3, review.Bias.Readings); // what went wrong teaches nothing of the oven
    }

    /// <summary>A tester that reads 0.8 low: 60.1 and 60.4 are 60.9 and 61.2, and only the second misses 60 to 61.</summary>
    [Fact]
    public void A_tester_that_reads_low()
    {
        ImmutableArray<HardnessEntry> log = [Read(60.1, "1"), Read(60.4, "2")];
        var review = HardnessReview.Of(log, new HardnessTester("bench", -0.8), TemperingData.Steel("8670"), "kiln", 64, new HardnessBand(60, 61));
        Assert.Equal([60.9, 61.2], review.Readings.Select(r => Math.Round(r.Hrc, 9)));
        Assert.Equal([false, true], review.Readings.Select(r => r.IsFlagged));
    }

    /// <summary>Readings on the same steel in another oven say nothing of this one.</summary>
    [Fact]
    public void Another_oven() => Assert.Empty(HardnessReview.Of([Read(56, "1")], null, TemperingData.Steel("8670"), "kitchen oven", 64, null).Readings);
}
