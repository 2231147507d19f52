using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A sheet being drawn: takes marks one by one.</summary>
/// <param name="kind">Stable name of the sheet kind.</param>
/// <param name="title">What stands on it.</param>
/// <param name="frame">Paper and margins.</param>
internal sealed class Canvas(string kind, string title, SheetFrame frame)
{
    /// <summary>Smallest lettering, mm (a height of ISO 3098-1; 1.8 mm, the least of its series, is kept for the labels of the title block).</summary>
    public const double SmallMm = 2.5;

    /// <summary>Usual lettering, mm (ISO 3098-1).</summary>
    public const double TextMm = 3.5;

    /// <summary>Large lettering, mm (ISO 3098-1).</summary>
    public const double LargeMm = 5;

    /// <summary>Headings, mm (ISO 3098-1).</summary>
    public const double HeadingMm = 7;

    /// <summary>Most lines one piece of text takes, so that no text can run off its sheet.</summary>
    public const int MostLines = 5;

    /// <summary>Side of a box to tick with a pencil, mm.</summary>
    public const double TickMm = 7;

    private readonly ImmutableArray<Mark>.Builder _marks = ImmutableArray.CreateBuilder<Mark>();

    /// <summary>Paper and margins.</summary>
    public SheetFrame Frame { get; } = frame;

    /// <summary>Scale of the drawing on it, for the title block; empty when there is no drawing to scale.</summary>
    public string Scale { get; set; } = "";

    /// <summary>The sheet as drawn.</summary>
    public Sheet Done() => new(kind, title, Frame.WidthMm, Frame.HeightMm, _marks.ToImmutable(), Scale);

    /// <summary>Adds a finished mark.</summary>
    public void Add(Mark mark) => _marks.Add(mark);

    /// <summary>A path.</summary>
    public void Stroke(Path path, Pen pen) => _marks.Add(new StrokeMark(path, pen));

    /// <summary>A straight line.</summary>
    public void Line(Point a, Point b, Pen pen) => Stroke(new Path([new Line(a, b)], closed: false), pen);

    /// <summary>A line through points.</summary>
    public void Polyline(ReadOnlySpan<Point> points, Pen pen)
    {
        if (points.Length < 2) return;
        var lines = ImmutableArray.CreateBuilder<Segment>(points.Length - 1);
        for (var i = 1; i < points.Length; i++) lines.Add(new Line(points[i - 1], points[i]));
        Stroke(new Path(lines.MoveToImmutable(), closed: false), pen);
    }

    /// <summary>A filled loop.</summary>
    public void Fill(Path loop, Ink ink = Ink.Black) => _marks.Add(new FillMark([loop], ink));

    /// <summary>The outline of a box.</summary>
    public void Frame4(Box box, Pen pen) => Stroke(Corners(box), pen);

    /// <summary>A filled box.</summary>
    public void Shade(Box box, Ink ink = Ink.Pale) => Fill(Corners(box), ink);

    /// <summary>A box to tick with a pencil, 7 mm, its left side given and centred on a height.</summary>
    public void TickBox(double left, double middleY)
        => Frame4(new Box(left, middleY - (TickMm / 2), left + TickMm, middleY + (TickMm / 2)), new Pen(0.35));

    /// <summary>One line of text; gives the box it takes.</summary>
    public Box Text(string text, Point at, double heightMm = TextMm, bool bold = false, TextAnchor anchor = TextAnchor.Left, double angleDegrees = 0, Ink ink = Ink.Black)
    {
        var clean = TextSpace.Clean(text);
        if (clean.Length == 0) return Box.Around(at);
        var mark = new TextMark(clean, at, heightMm, bold, anchor, angleDegrees, ink);
        _marks.Add(mark);
        return TextSpace.Of(mark);
    }

    /// <summary>One line of text made to fit a width: smaller down to 2.5 mm, then cut off with an ellipsis.</summary>
    public Box Fitted(string text, Point at, double widthMm, double heightMm = TextMm, bool bold = false, TextAnchor anchor = TextAnchor.Left)
    {
        var (fit, height) = TextSpace.Fit(text, widthMm, heightMm, bold);
        return Text(fit, at, height, bold, anchor);
    }

    /// <summary>Text broken over lines below a top left corner; gives the y below it. A text of more lines than allowed ends in an ellipsis.</summary>
    public double Wrapped(string text, Point topLeft, double widthMm, double heightMm = TextMm, bool bold = false, int mostLines = MostLines)
    {
        var y = topLeft.Y;
        foreach (var line in TextSpace.Lines(text, widthMm, heightMm, bold, mostLines))
        {
            Text(line, new Point(topLeft.X, y - (heightMm * 1.2)), heightMm, bold);
            y -= TextSpace.LineMm(heightMm);
        }

        return y;
    }

    private static Path Corners(Box b) => Path.Polygon(new Point(b.MinX, b.MinY), new Point(b.MaxX, b.MinY), new Point(b.MaxX, b.MaxY), new Point(b.MinX, b.MaxY));
}
