using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A grinding log as read.</summary>
/// <param name="Text">The text; empty when there is no file.</param>
/// <param name="Entries">Its lines.</param>
public sealed record GrindingLogFile(string Text, ImmutableArray<GrindingEntry> Entries)
{
    /// <summary>No log.</summary>
    public static GrindingLogFile Empty { get; } = new("", []);
}

/// <summary>The shop's grinding log, <c>grinding.csv</c>: one line for what a belt or paper did on a batch.</summary>
public static class GrindingLogReader
{
    /// <summary>The columns.</summary>
    public const string Heading = "date,batch,tool,pieces,grams,minutes,belts";

    /// <summary>Reads a text.</summary>
    public static Checked<GrindingLogFile> Read(string text, string fileName)
    {
        var source = new SourceText(text, fileName);
        var faults = new List<Fault>();
        var entries = ImmutableArray.CreateBuilder<GrindingEntry>();
        foreach (var row in LogRows.Of(source, Heading, faults))
        {
            DateOnly? date = DateOnly.TryParseExact(row.Values[0].Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
            var (batch, tool) = (row.Values[1].Text, row.Values[2].Text);
            if (batch.Length == 0) faults.Add(source.Fault(row.Values[1].Offset, "the batch has no name", "write what you call it"));
            if (tool.Length == 0) faults.Add(source.Fault(row.Values[2].Offset, "no belt or paper is named", "write its name as in the shop file"));
            var (pieces, minutes) = (Number(row, 3, "pieces", 1, 100_000), Number(row, 5, "minutes", 0.01, 1e6));
            var grams = row.Values[4].Text.Length == 0 ? null : Number(row, 4, "grams", 0.001, 1e7);
            var belts = row.Values[6].Text.Length == 0 ? null : Number(row, 6, "belts", 0.001, 1e5);
            if (pieces is { } p && minutes is { } m && batch.Length > 0 && tool.Length > 0) entries.Add(new GrindingEntry(date, batch, tool, (int)p, grams, m, belts));
        }

        return faults.Count > 0 ? Checked<GrindingLogFile>.Bad(faults) : Checked<GrindingLogFile>.Good(new GrindingLogFile(text, entries.ToImmutable()));

        double? Number(ValueRow row, int i, string what, double low, double high)
        {
            var read = NumberText.Read(row.Values[i].Text, "", out _);
            if (read.IsGood && read.Value >= low && read.Value <= high) return read.Value;
            faults.Add(source.Fault(row.Values[i].Offset, $"{what}: {(read.IsGood ? "a number that cannot be" : row.Values[i].Text.Length == 0 ? "nothing is written" : read.Message)}", "write a number with a point, as 12.5"));
            return null;
        }
    }

    /// <summary>One line of the log.</summary>
    public static string Line(GrindingEntry e)
    {
        static string Of(double? v) => v is { } x ? x.ToString("0.###", CultureInfo.InvariantCulture) : "";
        return string.Join(',', e.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "", CommaRows.Written(e.Batch), CommaRows.Written(e.Tool), e.Pieces.ToString(CultureInfo.InvariantCulture), Of(e.Grams), Of(e.Minutes), Of(e.Belts)) + "\n";
    }
}
