using System.Text;
using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>Writes a flat drawing as SVG 1.1 at true size: user unit 1 mm, y turned down, arcs as A and curves as C. Each layer is a group with its name.</summary>
public static class SvgWriter
{
    /// <summary>Line width, mm: template outline.</summary>
    private const string StrokeMm = "0.2";

    /// <summary>Empty margin round the drawing, mm.</summary>
    private const double MarginMm = 2;

    /// <summary>The file's text: LF line ends, the same for the same drawing.</summary>
    public static string Write(FlatDrawing drawing)
    {
        var box = drawing.Paths.Aggregate(Box.Nothing, (b, p) => b.With(p.Path.Bounds));
        foreach (var c in drawing.Circles)
        {
            var r = c.DiameterMm / 2;
            box = box.With(new Box(c.Centre.X - r, c.Centre.Y - r, c.Centre.X + r, c.Centre.Y + r));
        }

        if (drawing.Paths.IsEmpty && drawing.Circles.IsEmpty) box = new Box(0, 0, 0, 0);
        box = box.Grown(MarginMm);
        var s = new StringBuilder();
        s.Append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        s.Append($"<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"{N(box.Width)}mm\" height=\"{N(box.Height)}mm\" viewBox=\"{N(box.MinX)} {N(-box.MaxY)} {N(box.Width)} {N(box.Height)}\">\n");
        s.Append($"  <title>{SvgText.Escaped(drawing.Title)}</title>\n");
        var layers = drawing.Paths.Select(p => p.Layer).Concat(drawing.Circles.Select(c => c.Layer)).Distinct(StringComparer.Ordinal).ToArray();
        var ids = Ids(layers);
        for (var i = 0; i < layers.Length; i++)
        {
            s.Append($"  <g id=\"{ids[i]}\" fill=\"none\" stroke=\"#000000\" stroke-width=\"{StrokeMm}\">\n");
            foreach (var p in drawing.Paths.Where(p => p.Layer == layers[i]))
                s.Append($"    <path d=\"{PathData.Write(p.Path.Transformed(Transform.Scale(1, -1)), 1)}\"/>\n");
            foreach (var c in drawing.Circles.Where(c => c.Layer == layers[i]))
            {
                s.Append($"    <circle cx=\"{N(c.Centre.X)}\" cy=\"{N(-c.Centre.Y)}\" r=\"{N(c.DiameterMm / 2)}\"");
                s.Append(c.Name.Length == 0 ? "/>\n" : $"><title>{SvgText.Escaped(c.Name)}</title></circle>\n");
            }

            s.Append("  </g>\n");
        }

        return s.Append("</svg>\n").ToString();
    }

    private static string N(double mm) => PathData.Number(mm, 1);

    /// <summary>Layer names as XML ids: letters, digits, _ and - only, none twice.</summary>
    private static string[] Ids(string[] layers)
    {
        var used = new HashSet<string>(StringComparer.Ordinal);
        return [.. layers.Select(name =>
        {
            var id = new string([.. name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '_' or '-' ? c : '_')]);
            if (id.Length == 0 || !char.IsAsciiLetter(id[0])) id = "L" + id;
            var one = id;
            for (var n = 2; !used.Add(one); n++) one = $"{id}-{n}";
            return one;
        })];
    }
}
