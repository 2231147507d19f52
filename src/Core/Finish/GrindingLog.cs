using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One line of the shop's grinding log: what one belt or paper did on one batch.</summary>
/// <param name="Date">Day; null when not written.</param>
/// <param name="Batch">Name of the batch.</param>
/// <param name="Tool">Name of the belt or the grit as marked.</param>
/// <param name="Pieces">Pieces worked on.</param>
/// <param name="Grams">Steel taken off all of them, g; null when not weighed.</param>
/// <param name="Minutes">Time at the belt or by hand for all of them, min.</param>
/// <param name="Belts">Belts or sheets worn out; null when not counted.</param>
public sealed record GrindingEntry(DateOnly? Date, string Batch, string Tool, int Pieces, double? Grams, double Minutes, double? Belts);

/// <summary>What a log says of one figure, with the range the next batch is expected in.</summary>
/// <param name="Batches">Batches it was seen in.</param>
/// <param name="Mean">Mean over the batches.</param>
/// <param name="Low">Lower end of the range.</param>
/// <param name="High">Upper end.</param>
public readonly record struct LoggedRange(int Batches, double Mean, double Low, double High)
{
    /// <summary>Batches from which on the log's own scatter gives the range; before that common practice does.</summary>
    public const int Enough = 3;

    /// <summary>Whether the range is the log's own.</summary>
    public bool IsOwn => Batches >= Enough;
}

/// <summary>The range the next batch of a shop falls into with 80 in 100, from the batches logged: mean ± t · s · √(1 + 1/n).</summary>
[Formula("range of the next batch from those before: mean ± t · s · √(1 + 1/n)", "hahn-meeker", "Three batches or more whose figures scatter about evenly; 80 in 100; never under a fifth of the mean")]
public static class GrindingLog
{
    /// <summary>Share of next batches within the range.</summary>
    public const double Share = 0.8;

    /// <summary>The range; null without a batch.</summary>
    /// <param name="each">One figure for each batch.</param>
    /// <param name="lowShare">Lower end as a share of the mean while there are too few batches.</param>
    /// <param name="highShare">Upper end.</param>
    public static LoggedRange? Range(ReadOnlySpan<double> each, double lowShare, double highShare)
    {
        if (each.IsEmpty) return null;
        var mean = 0.0;
        foreach (var v in each) mean += v / each.Length;
        if (each.Length < LoggedRange.Enough) return new LoggedRange(each.Length, mean, lowShare * mean, highShare * mean);
        var squares = 0.0;
        foreach (var v in each) squares += (v - mean) * (v - mean);
        var reach = StudentT.For(Share, each.Length - 1) * Math.Sqrt(squares / (each.Length - 1) * (1 + (1.0 / each.Length)));
        return new LoggedRange(each.Length, mean, Math.Max(0.2 * mean, mean - reach), mean + reach);
    }

    /// <summary>Grams a minute of a belt by batch.</summary>
    public static double[] GramsPerMinute(IEnumerable<GrindingEntry> log, string tool)
        => [.. Of(log, tool).Where(e => e.Grams is > 0).GroupBy(e => e.Batch, StringComparer.OrdinalIgnoreCase).Select(b => b.Sum(e => e.Grams!.Value) / b.Sum(e => e.Minutes))];

    /// <summary>Minutes a piece by batch.</summary>
    public static double[] MinutesPerPiece(IEnumerable<GrindingEntry> log, string tool)
        => [.. Of(log, tool).GroupBy(e => e.Batch, StringComparer.OrdinalIgnoreCase).Select(b => b.Sum(e => e.Minutes) / b.Max(e => e.Pieces))];

    /// <summary>Grams a belt takes in its life, over all batches in which belts were counted; null when none were.</summary>
    public static double? GramsPerBelt(IEnumerable<GrindingEntry> log, string tool)
    {
        var counted = Of(log, tool).Where(e => e.Grams is > 0 && e.Belts is > 0).ToArray();
        return counted.Length == 0 ? null : counted.Sum(e => e.Grams!.Value) / counted.Sum(e => e.Belts!.Value);
    }

    private static IEnumerable<GrindingEntry> Of(IEnumerable<GrindingEntry> log, string tool)
        => log.Where(e => e.Minutes > 0 && string.Equals(e.Tool, tool, StringComparison.OrdinalIgnoreCase));
}
