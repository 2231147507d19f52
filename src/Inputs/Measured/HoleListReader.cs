using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A hole of a list to take in.</summary>
/// <param name="Name">Name.</param>
/// <param name="At">Place, mm.</param>
/// <param name="Diameter">Diameter; null when not in the list.</param>
public sealed record ListedHole(string Name, Point At, Length? Diameter);

/// <summary>Reads a list of measured holes as a readout, a spreadsheet or a measuring machine puts it out: one line a hole, name, x, y and perhaps the diameter, with commas, semicolons or tabs between them. A first line without numbers is taken for a heading; when it says <c>in</c> or <c>inch</c> bare numbers are inches, else mm.</summary>
public static class HoleListReader
{
    /// <summary>Reads a text.</summary>
    public static Checked<HoleList> Read(string text, string fileName)
    {
        var source = new SourceText(text, fileName);
        var faults = new List<Fault>();
        var first = source.LineAt(0).Line;
        var separator = first.Contains('\t') ? '\t' : first.Contains(';') ? ';' : ',';
        var rows = CommaRows.Read(source, faults, separator);
        var heading = rows is [var top, ..] && !top.Values.Skip(1).Any(v => v.Text.Any(char.IsAsciiDigit)) ? top : null;
        var unitMm = heading is not null && heading.Values.Any(v => v.Text.Split('_', ' ', '(', ')').Any(w => w.ToLowerInvariant() is "in" or "inch" or "inches")) ? Length.MmPerInch : 1;
        var holes = ImmutableArray.CreateBuilder<ListedHole>();
        foreach (var row in rows.Skip(heading is null ? 0 : 1))
        {
            if (faults.Count > 100) break;
            if (row.Values.Count is < 3)
            {
                faults.Add(source.Fault(row.Offset, "a line with fewer than three values", "write name, x, y and perhaps the diameter"));
                continue;
            }

            var (x, y) = (Value(row, 1), Value(row, 2));
            var diameter = row.Values.Count > 3 && row.Values[3].Text.Length > 0 ? Value(row, 3) : null;
            if (row.Values[0].Text.Length == 0) faults.Add(source.Fault(row.Offset, "the hole has no name", "write the hole's name as in the plan"));
            if (diameter is { Mm: <= 0 }) faults.Add(source.Fault(row.Values[3].Offset, "a diameter of 0 or less", "leave it empty when it was not measured"));
            if (x is { } a && y is { } b) holes.Add(new ListedHole(row.Values[0].Text, new Point(a.Mm, b.Mm), diameter));
        }

        if (faults.Count == 0 && holes.Count == 0) faults.Add(Fault.OfFile(fileName, "there is no hole in it", "write one line a hole: name, x, y"));
        return faults.Count > 0 ? Checked<HoleList>.Bad(faults) : Checked<HoleList>.Good(new HoleList(holes.ToImmutable()));

        Length? Value(ValueRow row, int i)
        {
            var read = LengthText.Read(row.Values[i].Text, unitMm);
            if (read.IsGood) return read.Value.Length;
            faults.Add(source.Fault(row.Values[i].Offset, read.Message, read.Remedy));
            return null;
        }
    }
}

/// <summary>The holes of a list.</summary>
/// <param name="Holes">In the order of the list.</param>
public sealed record HoleList(ImmutableArray<ListedHole> Holes);
