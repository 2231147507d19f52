using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Adds lines to a file of measured values, or takes one out; all other lines stay as they are. The result is read again and compared before it is given.</summary>
public static class MeasuredEdit
{
    private const int Decimals = 6;

    /// <summary>Adds holes at the end, and before them the corner they were measured from where that is not the one in force for the piece.</summary>
    public static Checked<MeasuredFile> Add(MeasuredFile file, ImmutableArray<MeasuredHole> holes)
    {
        if (holes.IsEmpty) return Checked<MeasuredFile>.Good(file);
        var (text, end) = (file.Text, file.Source.LineEnd);
        var lines = new List<string>();
        var edges = file.Edges;
        foreach (var hole in holes)
        {
            if (hole.Edges is { } from && !SameEdges(edges.GetValueOrDefault(hole.Piece), from))
            {
                edges = edges.SetItem(hole.Piece, from);
                lines.Add(Line(hole, MeasuredReader.Corner, MeasuredReader.Corners[(from.IsRight ? 1 : 0) + (from.IsUpper ? 2 : 0)], from.Corner, null));
            }

            lines.Add(Line(hole, MeasuredReader.Hole, hole.Name, hole.At, hole.Diameter));
        }

        var whole = text + (text.EndsWith('\n') ? "" : end) + string.Concat(lines.Select(l => l + end));
        return Again(file, whole, now => now.Holes.Length == file.Holes.Length + holes.Length && now.Holes.TakeLast(holes.Length).Zip(holes).All(p => SameHole(p.First, p.Second)));
    }

    /// <summary>Takes the last line of a hole out.</summary>
    public static Checked<MeasuredFile> TakeOut(MeasuredFile file, string piece, string name)
    {
        for (var i = file.Holes.Length - 1; i >= 0; i--)
        {
            if (file.Holes[i].Piece != piece || file.Holes[i].Name != name) continue;
            var (from, to) = file.Places[i];
            return Again(file, file.Source.With([new Splice(from, to - from, "")]), now => now.Holes.SequenceEqual(file.Holes.RemoveAt(i)));
        }

        return Checked<MeasuredFile>.Bad(Fault.OfFile(file.Source.FileName, $"hole {name} of piece {piece} was not measured", "name a hole and a piece of the list"));
    }

    private static Checked<MeasuredFile> Again(MeasuredFile before, string text, Func<MeasuredFile, bool> isWanted)
        => MeasuredReader.Read(text, before.Source.FileName).Then(now => isWanted(now)
            ? Checked<MeasuredFile>.Good(now)
            : Checked<MeasuredFile>.Bad(Fault.OfFile(before.Source.FileName, "the lines would not read as they were meant", "write them into the file by hand")));

    private static bool SameHole(MeasuredHole a, MeasuredHole b)
        => a.Piece == b.Piece && a.Name == b.Name && a.Date == b.Date && a.At.To(b.At) < 1e-5 && Math.Abs((a.Diameter?.Mm ?? 0) - (b.Diameter?.Mm ?? 0)) < 1e-5 && (b.Edges is null || SameEdges(a.Edges, b.Edges));

    private static bool SameEdges(MeasuredEdges? a, MeasuredEdges b) => a is not null && a.IsRight == b.IsRight && a.IsUpper == b.IsUpper && a.Corner.To(b.Corner) < 1e-5;

    private static string Line(MeasuredHole hole, string what, string name, Point at, Length? diameter)
        => string.Join(',', new[]
        {
            hole.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
            hole.Piece,
            what,
            name,
            Shown.Trimmed(at.X, Decimals),
            Shown.Trimmed(at.Y, Decimals),
            diameter is { } d ? Shown.Trimmed(d.Mm, Decimals) : "",
            diameter is null ? "" : "mm",
        }.Select(CommaRows.Written));
}
