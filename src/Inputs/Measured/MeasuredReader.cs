using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>
/// Reads <c>NAME.measured.csv</c>. A line <c>hole</c> is one hole of one piece: its distances from two edges and, when measured, its diameter with unit.
/// A line <c>corner</c> says for the lines of that piece below it where the two edges meet, in the plan's axes, and in its name which end and side they are: <c>lower left</c>; without it the edges of the bench sheets are meant.
/// </summary>
public static class MeasuredReader
{
    /// <summary>The word of a hole.</summary>
    public const string Hole = "hole";

    /// <summary>The word of a corner.</summary>
    public const string Corner = "corner";

    private const double LargestHoleMm = 500;

    /// <summary>The columns.</summary>
    public static ImmutableArray<string> Columns { get; } = ["date", "piece", "what", "name", "x_mm", "y_mm", "value", "unit"];

    /// <summary>Which end and side the corner is, in the order lower left, lower right, upper left, upper right.</summary>
    public static ImmutableArray<string> Corners { get; } = ["lower left", "lower right", "upper left", "upper right"];

    /// <summary>Reads a text.</summary>
    public static Checked<MeasuredFile> Read(string text, string fileName)
    {
        var source = new SourceText(text, fileName);
        var faults = new List<Fault>();
        var rows = CommaRows.Read(source, faults);
        if (rows.Count == 0 || !rows[0].Values.Select(v => v.Text.ToLowerInvariant()).SequenceEqual(Columns, StringComparer.Ordinal))
            return Checked<MeasuredFile>.Bad(source.Fault(0, "the first line does not name the columns", "write " + MeasuredFile.Heading));
        var holes = ImmutableArray.CreateBuilder<MeasuredHole>();
        var places = ImmutableArray.CreateBuilder<(int Offset, int End)>();
        var edges = ImmutableDictionary.CreateBuilder<string, MeasuredEdges>(StringComparer.Ordinal);
        foreach (var row in rows.Skip(1))
        {
            if (faults.Count > 100) break;
            if (row.Values.Count != Columns.Length)
            {
                faults.Add(source.Fault(row.Offset, $"{row.Values.Count} values where {Columns.Length} are wanted", "write one value for each column, empty ones too, numbers with a point as 147.22"));
                continue;
            }

            var cells = new Cells(source, row, faults);
            var date = cells.Date();
            var piece = cells.Needed(1, "the piece has no name", "write guide for the guide piece, else its number");
            var what = cells.Text(2);
            if (piece is null || what is not (Hole or Corner)) continue;
            var (name, x, y) = (cells.Needed(3, $"the {what} has no name", what == Hole ? "write the hole's name as in the plan" : "write lower left, or as it is"), cells.Mm(4), cells.Mm(5));
            if (name is null || x is null || y is null) continue;
            var at = new Point(x.Value, y.Value);
            if (what == Hole)
            {
                holes.Add(new MeasuredHole(piece, name, at, cells.Diameter(), edges.GetValueOrDefault(piece), date));
                places.Add((row.Offset, row.End));
            }
            else if (Corners.IndexOf(name) is var corner and >= 0)
            {
                edges[piece] = new MeasuredEdges(at, corner % 2 == 1, corner > 1);
            }
            else
            {
                cells.Bad(3, $"'{NumberText.Clip(name)}' is no corner", "write one of: " + string.Join(", ", Corners));
            }
        }

        return faults.Count > 0 ? Checked<MeasuredFile>.Bad(faults) : Checked<MeasuredFile>.Good(new MeasuredFile(source, holes.ToImmutable(), places.ToImmutable()) { Edges = edges.ToImmutable() });
    }

    private sealed class Cells(SourceText source, ValueRow row, List<Fault> faults)
    {
        public string Text(int i) => row.Values[i].Text;

        public void Bad(int i, string message, string remedy) => faults.Add(source.Fault(row.Values[i].Offset, message, remedy));

        public string? Needed(int i, string message, string remedy)
        {
            if (Text(i).Length > 0) return Text(i);
            Bad(i, message, remedy);
            return null;
        }

        public DateOnly? Date()
        {
            if (Text(0).Length == 0) return null;
            if (DateOnly.TryParseExact(Text(0), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)) return date;
            Bad(0, $"'{NumberText.Clip(Text(0))}' is no date", "write it as 2026-03-31, or leave it empty");
            return null;
        }

        public double? Mm(int i)
        {
            var read = NumberText.Read(Text(i), "", out var isFraction);
            if (read.IsGood && !isFraction && Math.Abs(read.Value) <= LengthText.GreatestMm) return read.Value;
            Bad(i, Text(i).Length == 0 ? $"{Columns[i]} is missing" : $"'{NumberText.Clip(Text(i))}' is no number of mm", "write mm as 147.22");
            return null;
        }

        public Length? Diameter()
        {
            if (Text(6).Length == 0) return null;
            if (Text(7) is not ("mm" or "in"))
            {
                Bad(7, "the diameter has no unit", "write mm or in in the last column");
                return null;
            }

            var read = LengthText.Read($"{Text(6)} {Text(7)}", 1);
            if (read.IsGood && read.Value.Length.Mm is > 0 and <= LargestHoleMm) return read.Value.Length;
            Bad(6, $"'{NumberText.Clip(Text(6))}' is no diameter", "write it as 14.05, its unit in the last column");
            return null;
        }
    }
}
