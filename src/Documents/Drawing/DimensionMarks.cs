using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Dimensions, leaders, hatching and breaks as the drawing standards draw them.</summary>
internal static class DimensionMarks
{
    private const double ArrowMm = 2.8;

    /// <summary>A closed, filled arrow head of about 20° with its tip at a point.</summary>
    /// <param name="canvas">Where it is drawn.</param>
    /// <param name="tip">Tip.</param>
    /// <param name="direction">Where it points.</param>
    public static void Arrow(this Canvas canvas, Point tip, Point direction)
    {
        var back = tip - (direction.Unit * ArrowMm);
        var side = direction.Unit.Left * (ArrowMm * 0.18);
        canvas.Fill(Path.Polygon(tip, back + side, back - side));
    }

    /// <summary>A leader from a label to a feature, ending in an arrow on an edge (ISO 128-2).</summary>
    public static void Leader(this Canvas canvas, Point from, Point tip)
    {
        canvas.Line(from, tip, Pen.Narrow);
        canvas.Arrow(tip, tip - from);
    }

    /// <summary>A dimension along x below or above two points, with its figure standing over the line (ISO 129-1).</summary>
    /// <param name="canvas">Where it is drawn.</param>
    /// <param name="a">One end on the piece.</param>
    /// <param name="b">The other end.</param>
    /// <param name="y">Height of the dimension line.</param>
    /// <param name="text">The figure.</param>
    public static void DimensionAlong(this Canvas canvas, Point a, Point b, double y, string text)
    {
        var (left, right) = a.X <= b.X ? (a, b) : (b, a);
        Extension(canvas, left, new Point(left.X, y));
        Extension(canvas, right, new Point(right.X, y));
        var (p, q) = (new Point(left.X, y), new Point(right.X, y));
        Span(canvas, p, q, Lettering.Width(text, Canvas.SmallMm) > q.X - p.X - 4);
        var inside = q.X - p.X - 4;
        foreach (var height in (ReadOnlySpan<double>)[Canvas.TextMm, 3, Canvas.SmallMm])
        {
            if (Lettering.Width(text, height) > inside) continue;
            canvas.Text(text, new Point((p.X + q.X) / 2, y + 1.4), height, anchor: TextAnchor.Middle);
            return;
        }

        // no room between: beside the arrows, on the side that has more room
        var frame = canvas.Frame.Inside;
        var toLeft = p.X - frame.MinX > frame.MaxX - q.X;
        var beyond = (2 * ArrowMm) + 1.5;
        if (toLeft) canvas.Fitted(text, new Point(p.X - beyond, y - 1.2), p.X - beyond - frame.MinX, 3, anchor: TextAnchor.Right);
        else canvas.Fitted(text, new Point(q.X + beyond, y - 1.2), frame.MaxX - q.X - beyond, 3);
    }

    /// <summary>A dimension along y to the right of two points, its figures lying level beside the line, one unit a line (ISO 129-1).</summary>
    /// <param name="canvas">Where it is drawn.</param>
    /// <param name="a">One end on the piece.</param>
    /// <param name="b">The other end.</param>
    /// <param name="x">Place of the dimension line.</param>
    /// <param name="lines">The figure, a line for each unit.</param>
    public static void DimensionAcross(this Canvas canvas, Point a, Point b, double x, ReadOnlySpan<string> lines)
    {
        var (low, high) = a.Y <= b.Y ? (a, b) : (b, a);
        Extension(canvas, low, new Point(x, low.Y));
        Extension(canvas, high, new Point(x, high.Y));
        Span(canvas, new Point(x, low.Y), new Point(x, high.Y), fromOutside: false);
        var pitch = TextSpace.LineMm(3);
        var y = ((low.Y + high.Y) / 2) + ((lines.Length - 1) * pitch / 2) - 1.5;
        foreach (var line in lines)
        {
            canvas.Fitted(line, new Point(x + 1.8, y), canvas.Frame.Inside.MaxX - x - 1.8, 3);
            y -= pitch;
        }
    }

    /// <summary>Section hatching at 45° inside a convex or simple polygon (ISO 128-3).</summary>
    public static void Hatch(this Canvas canvas, ReadOnlySpan<Point> polygon, double pitchMm = 1.5)
    {
        var box = Box.Around(polygon);
        var pen = new Pen(0.18);
        var hits = new List<double>();
        for (var c = Math.Ceiling((box.MinY - box.MaxX) / pitchMm) * pitchMm; c <= box.MaxY - box.MinX; c += pitchMm)
        {
            // the line y = x + c against every side
            hits.Clear();
            for (var i = 0; i < polygon.Length; i++)
            {
                var (p, q) = (polygon[i], polygon[(i + 1) % polygon.Length]);
                var (fp, fq) = (p.Y - p.X - c, q.Y - q.X - c);
                if (fp < 0 != fq < 0) hits.Add(p.X + ((q.X - p.X) * fp / (fp - fq)));
            }

            hits.Sort();
            for (var i = 0; i + 1 < hits.Count; i += 2) canvas.Line(new Point(hits[i], hits[i] + c), new Point(hits[i + 1], hits[i + 1] + c), pen);
        }
    }

    /// <summary>A break line: narrow, with a zigzag in the middle (ISO 128-2).</summary>
    public static void Break(this Canvas canvas, Point a, Point b)
    {
        var middle = a.Toward(b, 0.5);
        var along = (b - a).Unit;
        var side = along.Left * 2;
        canvas.Polyline([a, middle - (along * 1.2), middle - (along * 0.4) + side, middle + (along * 0.4) - side, middle + (along * 1.2), b], Pen.Narrow);
    }

    /// <summary>A centre cross, long dash dot, past a circle's rim.</summary>
    public static void CentreCross(this Canvas canvas, Point centre, double radiusMm)
    {
        var reach = radiusMm + 1.5;
        canvas.Line(centre - new Point(reach, 0), centre + new Point(reach, 0), new Pen(0.18, radiusMm > 4 ? LineKind.LongDashDot : LineKind.Solid));
        canvas.Line(centre - new Point(0, reach), centre + new Point(0, reach), new Pen(0.18, radiusMm > 4 ? LineKind.LongDashDot : LineKind.Solid));
    }

    private static void Extension(Canvas canvas, Point from, Point to)
    {
        var step = to - from;
        if (step.Length < 1) return;
        var along = step.Unit;
        canvas.Line(from + along, to + (along * 1.5), Pen.Narrow);
    }

    private static void Span(Canvas canvas, Point p, Point q, bool fromOutside)
    {
        var along = (q - p).Unit;
        if (!fromOutside && p.To(q) >= 3 * ArrowMm)
        {
            canvas.Line(p, q, Pen.Narrow);
            canvas.Arrow(p, -along);
            canvas.Arrow(q, along);
            return;
        }

        // too short for arrows or figure: arrows from outside
        canvas.Line(p - (along * 2 * ArrowMm), q + (along * 2 * ArrowMm), Pen.Narrow);
        canvas.Arrow(p, along);
        canvas.Arrow(q, -along);
    }
}
