using System.Collections.Immutable;
using System.Text;
using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>Draws marks as SVG elements, sheet coordinates turned down.</summary>
internal sealed class SvgInk(StringBuilder to, double sheetHeightMm) : SheetInk
{
    private static string Colour(Ink ink) => ink switch
    {
        Ink.Black => "#000",
        Ink.Grey => "#808080",
        Ink.Pale => "#e0e0e0",
        _ => "#fff",
    };

    private static string N(double mm) => SvgText.Mm(mm);

    protected override void Stroke(StrokeMark mark)
    {
        to.Append("<path d=\"");
        Add(mark.Path);
        to.Append($"\" stroke=\"{Colour(mark.Pen.Ink)}\" stroke-width=\"{N(mark.Pen.WidthMm)}\"");
        if (mark.Pen.Kind != LineKind.Solid)
            to.Append($" stroke-dasharray=\"{string.Join(' ', DashPattern.Of(mark.Pen.Kind).Select(d => N(d * mark.Pen.WidthMm)))}\"");
        to.Append("/>\n");
    }

    protected override void Fill(FillMark mark)
    {
        to.Append("<path d=\"");
        foreach (var loop in mark.Loops) Add(loop);
        to.Append($"\" fill=\"{Colour(mark.Ink)}\" fill-rule=\"evenodd\"/>\n");
    }

    protected override void Letter(TextMark mark, string text, double widthMm, double backMm)
    {
        var (x, y) = (mark.At.X, sheetHeightMm - mark.At.Y);
        to.Append($"<text x=\"{N(x + backMm)}\" y=\"{N(y)}\" font-size=\"{N(mark.HeightMm / Lettering.CapitalInEm)}\" textLength=\"{N(widthMm)}\" fill=\"{Colour(mark.Ink)}\" xml:space=\"preserve\"");
        if (mark.Bold) to.Append(" font-weight=\"700\"");
        if (mark.AngleDegrees != 0) to.Append($" transform=\"rotate({N(-mark.AngleDegrees)} {N(x)} {N(y)})\"");
        to.Append($">{SvgText.Escaped(text)}</text>\n");
    }

    /// <summary>A drawing in the drawing, which shows nothing beyond its box; it needs no name as a clip path would.</summary>
    protected override void Clip(ClippedMarks mark)
    {
        var (x, y, w, h) = (N(mark.Window.MinX), N(sheetHeightMm - mark.Window.MaxY), N(mark.Window.Width), N(mark.Window.Height));
        to.Append($"<svg x=\"{x}\" y=\"{y}\" width=\"{w}\" height=\"{h}\" viewBox=\"{x} {y} {w} {h}\" overflow=\"hidden\">\n");
        Draw(mark.Marks);
        to.Append("</svg>\n");
    }

    private void Add(Path path)
    {
        to.Append('M');
        Put(path.Start);
        foreach (var segment in path.Segments)
        {
            switch (segment)
            {
                case Line line:
                    to.Append('L');
                    Put(line.End);
                    break;
                case Bezier bezier:
                    Add(bezier);
                    break;
                case Arc arc:
                    foreach (var piece in ArcPieces.Of(arc)) Add(piece);
                    break;
                default:
                    throw new InvalidOperationException("unknown segment " + segment.GetType().Name);
            }
        }

        if (path.Closed) to.Append('Z');
    }

    private void Add(Bezier bezier)
    {
        to.Append('C');
        Put(bezier.Control1);
        to.Append(' ');
        Put(bezier.Control2);
        to.Append(' ');
        Put(bezier.End);
    }

    private void Put(Point p) => to.Append(N(p.X)).Append(' ').Append(N(sheetHeightMm - p.Y));
}
