using System.Collections.Immutable;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>Draws the marks of one sheet on one page.</summary>
internal sealed class PdfInk(XGraphics paper, double sheetHeightMm, PdfFonts fonts) : SheetInk
{
    private const double PointsPerMm = 72 / 25.4;

    private readonly Dictionary<Pen, XPen> _pens = [];

    /// <summary>Points of 1/72 in in so many mm.</summary>
    public static double Points(double mm) => mm * PointsPerMm;

    private static XColor Colour(Ink ink) => ink switch
    {
        Ink.Black => XColor.FromGrayScale(0),
        Ink.Grey => XColor.FromGrayScale(0.5),
        Ink.Pale => XColor.FromGrayScale(0.88),
        _ => XColor.FromGrayScale(1),
    };

    protected override void Stroke(StrokeMark mark)
    {
        if (mark.Path is { Closed: false, Segments: [Line line] })
        {
            paper.DrawLine(PenOf(mark.Pen), Place(line.Start), Place(line.End));
            return;
        }

        var path = new XGraphicsPath();
        Add(path, mark.Path);
        paper.DrawPath(PenOf(mark.Pen), path);
    }

    protected override void Fill(FillMark mark)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
        foreach (var loop in mark.Loops) Add(path, loop);
        paper.DrawPath(new XSolidBrush(Colour(mark.Ink)), path);
    }

    protected override void Letter(TextMark mark, string text, double widthMm, double backMm)
    {
        var font = fonts.Of(mark.HeightMm, mark.Bold);
        var brush = new XSolidBrush(Colour(mark.Ink));
        if (mark.AngleDegrees == 0)
        {
            paper.DrawString(text, font, brush, Place(mark.At + new Point(backMm, 0)));
            return;
        }

        var state = paper.Save();
        paper.RotateAtTransform(-mark.AngleDegrees, Place(mark.At));
        paper.DrawString(text, font, brush, Place(mark.At + new Point(backMm, 0)));
        paper.Restore(state);
    }

    protected override void Clip(ClippedMarks mark)
    {
        var state = paper.Save();
        var upper = Place(new Point(mark.Window.MinX, mark.Window.MaxY));
        paper.IntersectClip(new XRect(upper.X, upper.Y, Points(mark.Window.Width), Points(mark.Window.Height)));
        Draw(mark.Marks);
        paper.Restore(state);
    }

    private void Add(XGraphicsPath to, Path path)
    {
        to.StartFigure();
        foreach (var segment in path.Segments)
        {
            switch (segment)
            {
                case Line line:
                    to.AddLine(Place(line.Start), Place(line.End));
                    break;
                case Bezier bezier:
                    Add(to, bezier);
                    break;
                case Arc arc:
                    foreach (var piece in ArcPieces.Of(arc)) Add(to, piece);
                    break;
                default:
                    throw new InvalidOperationException("unknown segment " + segment.GetType().Name);
            }
        }

        if (path.Closed) to.CloseFigure();
    }

    private void Add(XGraphicsPath to, Bezier bezier)
        => to.AddBezier(Place(bezier.Start), Place(bezier.Control1), Place(bezier.Control2), Place(bezier.End));

    private XPen PenOf(Pen pen)
    {
        if (_pens.TryGetValue(pen, out var known)) return known;
        var made = new XPen(Colour(pen.Ink), Points(pen.WidthMm)) { LineCap = XLineCap.Flat, LineJoin = XLineJoin.Round };
        if (pen.Kind != LineKind.Solid) made.DashPattern = [.. DashPattern.Of(pen.Kind)];
        return _pens[pen] = made;
    }

    private XPoint Place(Point p) => new(p.X * PointsPerMm, (sheetHeightMm - p.Y) * PointsPerMm);
}

/// <summary>The fonts of one document, one per size and face.</summary>
internal sealed class PdfFonts
{
    private static readonly XPdfFontOptions Unicode = new(PdfFontEncoding.Unicode);

    private readonly Dictionary<(double HeightMm, bool Bold), XFont> _made = [];

    /// <summary>The font whose capitals are so many mm high.</summary>
    public XFont Of(double heightMm, bool bold)
    {
        if (_made.TryGetValue((heightMm, bold), out var known)) return known;
        var em = PdfInk.Points(heightMm / Lettering.CapitalInEm);
        return _made[(heightMm, bold)] = new XFont(SheetFonts.Family, em, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular, Unicode);
    }
}
