using System.Collections.Immutable;
using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Writes a new plan file from a piece found in a drawing. Nothing moves by more than 1e-6 mm.</summary>
public static class ImportedPlanText
{
    /// <summary>The plan file's text, LF line ends.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="name">Name of the pattern.</param>
    /// <param name="units">Unit the plan is written in.</param>
    /// <param name="steel">Name of the steel file.</param>
    /// <param name="thickness">Thickness of the stock.</param>
    /// <param name="width">Width of the bar; null when not known.</param>
    /// <param name="told">What the person told besides; null: nothing.</param>
    public static string For(ImportedPiece piece, string name, LengthUnit units, string steel, Length thickness, Length? width = null, ImportAnswers? told = null)
    {
        var unitMm = units == LengthUnit.Inch ? Length.MmPerInch : 1.0;
        string N(double mm) => PathData.Number(mm, unitMm);
        var s = new StringBuilder();
        s.Append("# Made from a drawing. What was taken:\n");
        Comments(s, piece.Taken);
        if (!piece.LeftOut.IsEmpty) s.Append("# What was left out:\n");
        Comments(s, piece.LeftOut);
        s.Append('\n');
        s.Append("tangwright = 1\n");
        s.Append($"name = {Quoted(name)}\n");
        s.Append("revision = \"A\"\n");
        s.Append($"units = \"{(units == LengthUnit.Inch ? "in" : "mm")}\"              # of bare numbers and of the path\n\n");
        s.Append("[stock]                    # check these: the drawing does not say\n");
        s.Append($"steel = {Quoted(steel)}\n");
        s.Append($"thickness = {N(thickness.Mm)}\n");
        s.Append(width is { } w ? $"width = {N(w.Mm)}             # of the bar it is cut from\n\n" : "# width = \"2 in\"           # of the bar it is cut from\n\n");
        s.Append("[outline]                  # SVG path data, x along the piece, y up\n");
        s.Append($"path = \"{PathData.Write(piece.Outline, unitMm)}\"\n\n");
        if (told?.Edge is { } edge) Told(s, edge, told.Bevel, N);
        else Sharpened(s, piece.Outline, N, units);
        if (told?.Grip is { } grip) s.Append($"\n[grip]\nfrom = [{N(grip.From.X)}, {N(grip.From.Y)}]\nto = [{N(grip.To.X)}, {N(grip.To.Y)}]\n");
        for (var i = 0; i < piece.Holes.Length; i++)
        {
            var h = piece.Holes[i];
            s.Append($"\n[[hole]]{(Clean(h.Layer) is "0" or "" ? "" : $"                   # layer {Clean(h.Layer)}")}\n");
            s.Append($"name = \"H{i + 1}\"\n");
            s.Append($"at = [{N(h.Centre.X)}, {N(h.Centre.Y)}]\n");
            s.Append($"diameter = {Diameter(Length.OfMm(h.DiameterMm), units)}\n");
            s.Append(i == 0 ? "use = \"lightening\"         # lightening, pin, lanyard, glue, locating, hanging\n" : "use = \"lightening\"\n");
        }

        return s.ToString();
    }

    private static void Told(StringBuilder s, (Point From, Point To) edge, ImportedBevel? bevel, Func<double, string> n)
    {
        s.Append("[edge]                     # the sharpened part, in the direction of the path\n");
        s.Append($"from = [{n(edge.From.X)}, {n(edge.From.Y)}]\nto = [{n(edge.To.X)}, {n(edge.To.Y)}]\n");
        if (bevel is null) return;
        s.Append($"\n[bevel]\ngrind = \"flat\"             # flat, hollow, convex\nheight = {(bevel.HeightMm is { } h ? n(h) : "\"full\"")}\nedge_finished = {n(bevel.EdgeFinishedMm)}\n");
        if (bevel.PlungeX is { } x) s.Append($"plunge = {n(x)}\n");
    }

    /// <summary>What the drawing cannot say, ready to be filled in.</summary>
    private static void Sharpened(StringBuilder s, Path outline, Func<double, string> n, LengthUnit units)
    {
        var (a, b) = (outline.Start, outline.Segments[0].End);
        s.Append("# The sharpened part: two points on the outline, in the direction of the path (it runs counter-clockwise).\n");
        s.Append("# Its corners are in the path above; the first two of them stand here as a start.\n");
        s.Append($"# [edge]\n# from = [{n(a.X)}, {n(a.Y)}]\n# to = [{n(b.X)}, {n(b.Y)}]\n#\n");
        s.Append("# [bevel]\n# grind = \"flat\"\n# height = \"full\"\n");
        s.Append(units == LengthUnit.Inch ? "# edge_finished = 0.02\n" : "# edge_finished = 0.5\n");
        s.Append("# sharpen_per_side = 16\n");
    }

    /// <summary>A diameter as the maker writes it: whole tenths of a millimetre, or sixty-fourths of an inch, where it is one to 1e-6 mm; else a number in the plan's unit.</summary>
    private static string Diameter(Length d, LengthUnit units)
    {
        const double nearMm = 1e-6;
        var metric = Math.Abs(Math.Round(d.Mm, 1) - d.Mm) <= nearMm;
        if (metric) return units == LengthUnit.Mm ? Shown.Trimmed(d.Mm, 1) : $"\"{Shown.Trimmed(d.Mm, 1)} mm\"";
        var inch = SixtyFourths.Nearest(d);
        if (inch.Sixtyfourths > 0 && Math.Abs(inch.Error.Mm) <= nearMm) return $"\"{inch} in\"";
        return PathData.Number(d.Mm, units == LengthUnit.Inch ? Length.MmPerInch : 1);
    }

    private static void Comments(StringBuilder s, ImmutableArray<string> lines)
    {
        foreach (var line in lines) s.Append("#   ").Append(Clean(line)).Append('\n');
    }

    private static string Clean(string text) => new([.. text.Select(c => char.IsControl(c) || char.IsSurrogate(c) || c is '\u2028' or '\u2029' ? ' ' : c)]);

    private static string Quoted(string text) => "\"" + Clean(text).Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";
}
