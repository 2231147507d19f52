using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A line of a chart, in values of its axes.</summary>
/// <param name="Points">Points, x ascending.</param>
/// <param name="Label">What it is; empty for none.</param>
/// <param name="Pen">How it is drawn.</param>
internal sealed record ChartLine(ImmutableArray<Point> Points, string Label, Pen Pen);

/// <summary>A shaded band from one end of a chart to the other.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="IsUpright">Whether it spans values of x; else of y.</param>
/// <param name="Label">What it is; empty for none.</param>
internal readonly record struct ChartBand(double From, double To, bool IsUpright, string Label);

/// <summary>A marked point of a chart.</summary>
/// <param name="At">Where, in values of the axes.</param>
/// <param name="Label">What it is; empty for none.</param>
/// <param name="IsOpen">A ring instead of a dot.</param>
internal readonly record struct ChartDot(Point At, string Label, bool IsOpen = false);

/// <summary>A chart on a sheet: two axes, bands behind, lines, points. Nothing is lost in mono.</summary>
/// <param name="X">Axis across.</param>
/// <param name="Y">Axis up.</param>
internal sealed record Chart(ChartAxis X, ChartAxis Y)
{
    private const double LeftMm = 15;
    private const double BelowMm = 9.8;
    private const double LetterMm = Canvas.SmallMm;

    // beside the point first, then higher or lower with a leader
    private static readonly ImmutableArray<(double X, double Y, TextAnchor Anchor)> Offsets =
    [
        (-1.5, 1.8, TextAnchor.Right), (1.8, 1.8, TextAnchor.Left), (1.8, -4, TextAnchor.Left), (-1.5, -4, TextAnchor.Right),
        .. new[] { 8.0, -10, 12, -14, 16, -18, 20, -22 }.SelectMany(y => new[] { (-1.0, y, TextAnchor.Left), (1.0, y, TextAnchor.Right) }),
    ];

    /// <summary>Bands, behind all else.</summary>
    public ImmutableArray<ChartBand> Bands { get; init; } = [];

    /// <summary>Lines.</summary>
    public ImmutableArray<ChartLine> Lines { get; init; } = [];

    /// <summary>Points.</summary>
    public ImmutableArray<ChartDot> Dots { get; init; } = [];

    private double RightMm => Y.SecondTitle.Length > 0 ? 12 : 3;

    private double DownMm => BelowMm + (X.SecondTitle.Length > 0 ? 4.2 : 0);

    /// <summary>Draws it into a box, letters and all.</summary>
    public void Draw(Canvas canvas, Box box)
    {
        var room = new Box(box.MinX + LeftMm, box.MinY + DownMm, box.MaxX - RightMm, box.MaxY - 5);
        foreach (var b in Bands) canvas.Shade(BandBox(b, room));
        Grid(canvas, room);
        var taken = new List<Box>();
        foreach (var b in Bands) Named(canvas, room, b, taken);
        foreach (var l in Lines)
        {
            Point[] points = [.. l.Points.Select(p => On(p, room))];
            if (points.Length < 2) continue;
            var path = new Path([.. points.Zip(points.Skip(1), (a, b) => (Segment)new Line(a, b))], closed: false);
            canvas.Add(new ClippedMarks(room, [new StrokeMark(path, l.Pen)]));
        }

        foreach (var d in Dots.Where(d => Inside(d.At)))
        {
            var at = On(d.At, room);
            if (d.IsOpen) canvas.Stroke(Path.Circle(at, 1.1), Pen.Narrow);
            else canvas.Fill(Path.Circle(at, 1));
            taken.Add(new Box(at.X - 1, at.Y - 1, at.X + 1, at.Y + 1));
        }

        foreach (var d in Dots.Where(d => d.Label.Length > 0 && Inside(d.At))) Label(canvas, room, d.Label, [On(d.At, room)], taken, isDot: true);
        foreach (var l in Lines.Where(l => l.Label.Length > 0)) Label(canvas, room, l.Label, [.. l.Points.Where(Inside).Select(p => On(p, room)).Reverse()], taken);
    }

    private bool Inside(Point p) => X.ShareOf(p.X) is >= 0 and <= 1 && Y.ShareOf(p.Y) is >= 0 and <= 1;

    private Point On(Point p, Box room) => new(room.MinX + (X.ShareOf(p.X) * room.Width), room.MinY + (Y.ShareOf(p.Y) * room.Height));

    private Box BandBox(ChartBand b, Box room)
    {
        var axis = b.IsUpright ? X : Y;
        var (low, high) = (Math.Clamp(axis.ShareOf(b.From), 0, 1), Math.Clamp(axis.ShareOf(b.To), 0, 1));
        return b.IsUpright
            ? room with { MinX = room.MinX + (low * room.Width), MaxX = room.MinX + (high * room.Width) }
            : room with { MinY = room.MinY + (low * room.Height), MaxY = room.MinY + (high * room.Height) };
    }

    private void Named(Canvas canvas, Box room, ChartBand b, List<Box> taken)
    {
        var box = BandBox(b, room);
        if (b.Label.Length == 0 || (b.IsUpright ? box.Width : box.Height) <= 0) return;
        if (b.IsUpright)
        {
            var (fit, height) = TextSpace.Fit(b.Label, Math.Max(box.Width - 1, 8), LetterMm, bold: false);
            taken.Add(canvas.Text(fit, new Point(box.Centre.X, box.MinY + 1.5), height, anchor: TextAnchor.Middle));
        }
        else
        {
            taken.Add(canvas.Fitted(b.Label, new Point(box.MaxX - 1, Math.Min(box.Centre.Y - 1, room.MaxY - LetterMm)), box.Width / 2, LetterMm, anchor: TextAnchor.Right));
        }
    }

    private void Grid(Canvas canvas, Box room)
    {
        var help = new Pen(0.13, LineKind.Solid, Ink.Grey);
        foreach (var t in X.Ticks)
        {
            var x = room.MinX + (X.ShareOf(t.At) * room.Width);
            canvas.Line(new Point(x, room.MinY), new Point(x, room.MaxY), help);
            canvas.Text(t.Label, new Point(x, room.MinY - 4.8), LetterMm, anchor: TextAnchor.Middle);
            canvas.Text(t.Second, new Point(x, room.MinY - 8.8), LetterMm, anchor: TextAnchor.Middle);
        }

        foreach (var t in Y.Ticks)
        {
            var y = room.MinY + (Y.ShareOf(t.At) * room.Height);
            canvas.Line(new Point(room.MinX, y), new Point(room.MaxX, y), help);
            canvas.Text(t.Label, new Point(room.MinX - 1.5, y - 1.1), LetterMm, anchor: TextAnchor.Right);
            canvas.Text(t.Second, new Point(room.MaxX + 1.5, y - 1.1), LetterMm);
        }

        canvas.Frame4(room, Pen.Narrow);
        canvas.Text(X.Title + (X.SecondTitle.Length > 0 ? $"; below {X.SecondTitle}" : ""), new Point(room.MaxX, room.MinY - DownMm + 0.8), LetterMm, anchor: TextAnchor.Right);
        canvas.Text(Y.Title + (Y.SecondTitle.Length > 0 ? $"; at the right {Y.SecondTitle}" : ""), new Point(room.MinX, room.MaxY + 1.6), LetterMm);
    }

    // beside the first of the places where it hits neither an edge nor what is written already
    private void Label(Canvas canvas, Box room, string text, ReadOnlySpan<Point> places, List<Box> taken, bool isDot = false)
    {
        var width = Lettering.Width(text, LetterMm, bold: false);
        var lines = Lines.SelectMany(l => l.Points).Where(Inside).Select(p => On(p, room)).ToArray();
        foreach (var hidesLines in (ReadOnlySpan<bool>)[false, true])
        {
            foreach (var p in places)
            {
                foreach (var (dx, dy, anchor) in Offsets)
                {
                    if (!isDot && Math.Abs(dy) > 4) continue;
                    var mark = new TextMark(text, new Point(p.X + dx, p.Y + dy), LetterMm, Anchor: anchor);
                    var box = TextSpace.Of(mark);
                    if (box.MinX < room.MinX + 0.5 || box.MaxX > room.MaxX - 0.5 || box.MinY < room.MinY + 0.5 || box.MaxY > room.MaxY - 0.5) continue;
                    if (taken.Any(t => t.MinX < box.MaxX && t.MaxX > box.MinX && t.MinY < box.MaxY && t.MaxY > box.MinY)) continue;
                    if (!hidesLines && lines.Any(q => q.X > box.MinX && q.X < box.MaxX && q.Y > box.MinY && q.Y < box.MaxY)) continue;
                    canvas.Add(mark);
                    if (Math.Abs(dy) > 4) canvas.Line(p, new Point(p.X, dy > 0 ? box.MinY : box.MaxY), new Pen(0.18));
                    taken.Add(box);
                    return;
                }
            }
        }

        if (places.Length > 0) taken.Add(canvas.Fitted(text, new Point(room.MinX + 1, room.MaxY - 3.4 - (3.6 * taken.Count)), Math.Min(width, room.Width - 2), LetterMm));
    }
}
