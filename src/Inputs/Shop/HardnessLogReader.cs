using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A hardness log as read.</summary>
/// <param name="Text">The text; empty when there is no file.</param>
/// <param name="Entries">Its lines.</param>
public sealed record HardnessLogFile(string Text, ImmutableArray<HardnessEntry> Entries)
{
    /// <summary>No log.</summary>
    public static HardnessLogFile Empty { get; } = new("", []);
}

/// <summary>The shop's hardness log, <c>hardness.csv</c>: one line for a reading on a piece.</summary>
public static class HardnessLogReader
{
    /// <summary>The columns.</summary>
    public const string Heading = "date,batch,steel,oven,temper,hold_h,tempers,reading,reads_high_by,piece,load,spot,oil,wanted";

    /// <summary>Reads a text.</summary>
    public static Checked<HardnessLogFile> Read(string text, string fileName)
    {
        var source = new SourceText(text, fileName);
        var faults = new List<Fault>();
        var entries = ImmutableArray.CreateBuilder<HardnessEntry>();
        foreach (var row in LogRows.Of(source, Heading, faults))
        {
            DateOnly? date = DateOnly.TryParseExact(row.Values[0].Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
            var steel = row.Values[2].Text;
            if (steel.Length == 0) faults.Add(source.Fault(row.Values[2].Offset, "no steel is named", "write its name as in the plan"));
            var (temper, oil) = (Heat(row, 4, "temper"), Heat(row, 12, "oil"));
            var (hold, tempers) = (Number(row, 5, "hold_h", 0, 48, mayMiss: true), Number(row, 6, "tempers", 0, 9, mayMiss: true));
            var (reading, high) = (Number(row, 7, "reading", 10, 72, mayMiss: false), Number(row, 8, "reads_high_by", -10, 10, mayMiss: true));
            if (tempers is { } n && Math.Abs(n - Math.Round(n)) > 1e-9) faults.Add(source.Fault(row.Values[6].Offset, "tempers: not a whole number", "write how many, as 2"));
            if (reading is { } hrc && steel.Length > 0) entries.Add(new HardnessEntry(date, row.Values[1].Text, steel, row.Values[3].Text, temper, hold ?? TemperPlan.UsualHoldHours, (int)(tempers ?? (temper is null ? 0 : 1)), hrc, high, row.Values[9].Text, row.Values[10].Text, row.Values[11].Text, oil) { Wanted = Wanted(row) });
        }

        return faults.Count > 0 ? Checked<HardnessLogFile>.Bad(faults.Take(50)) : Checked<HardnessLogFile>.Good(new HardnessLogFile(text, entries.ToImmutable()));

        double? Number(ValueRow row, int i, string what, double low, double high, bool mayMiss)
        {
            if (mayMiss && row.Values[i].Text.Length == 0) return null;
            var read = NumberText.Read(row.Values[i].Text, "", out _);
            if (read.IsGood && read.Value >= low && read.Value <= high) return read.Value;
            faults.Add(source.Fault(row.Values[i].Offset, $"{what}: {(read.IsGood ? "a number that cannot be" : row.Values[i].Text.Length == 0 ? "nothing is written" : read.Message)}", "write a number with a point, as 57.5"));
            return null;
        }

        HardnessBand? Wanted(ValueRow row)
        {
            if (row.Values[13].Text.Length == 0) return null;
            var read = QuantityText.Hardness(row.Values[13].Text);
            if (read.IsGood) return read.Value;
            faults.Add(source.Fault(row.Values[13].Offset, $"wanted: {read.Message}", read.Remedy));
            return null;
        }

        Temperature? Heat(ValueRow row, int i, string what)
        {
            if (row.Values[i].Text.Length == 0) return null;
            var read = QuantityText.Temperature(row.Values[i].Text);
            if (read.IsGood) return read.Value;
            faults.Add(source.Fault(row.Values[i].Offset, $"{what}: {read.Message}", read.Remedy));
            return null;
        }
    }

    /// <summary>One line of the log.</summary>
    public static string Line(HardnessEntry e)
    {
        static string Of(double? v) => v is { } x ? x.ToString("0.###", CultureInfo.InvariantCulture) : "";
        static string Heat(Temperature? t) => t is { } x ? Of(x.Celsius) + " C" : "";
        return string.Join(
            ',',
            e.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
            CommaRows.Written(e.Batch),
            CommaRows.Written(e.Steel),
            CommaRows.Written(e.Oven),
            Heat(e.TemperedAt),
            Of(e.HoldHours),
            e.Tempers.ToString(CultureInfo.InvariantCulture),
            Of(e.ReadHrc),
            Of(e.ReadsHighByHrc),
            CommaRows.Written(e.Piece),
            CommaRows.Written(e.Load),
            CommaRows.Written(e.Spot),
            Heat(e.Oil),
            e.Wanted is { } w ? $"{Of(w.LowHrc)} to {Of(w.HighHrc)} HRC" : "") + "\n";
    }
}
