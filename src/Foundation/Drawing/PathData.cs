using System.Collections.Immutable;
using System.Text;

namespace Tangwright.Foundation;

/// <summary>Path data as text: the grammar of SVG 1.1 §8.3 (W3C Recommendation, 2011), all commands. Coordinates are taken in the axes of the text: sweep flag 1 means the angle grows from x towards y, counter-clockwise with y up.</summary>
public static class PathData
{
    /// <summary>Most steps that are read from one text.</summary>
    public const int MostSteps = 100_000;

    /// <summary>Paths of a text. Arcs stay arcs; quadratic curves are raised to cubics exactly; a step that ends where it starts is dropped, an arc with a zero radius is a line (SVG 1.1, F.6.2). A subpath is closed by Z or when it ends within 5e-7 mm of its start.</summary>
    /// <param name="text">The path data.</param>
    /// <param name="unitMm">Length of one unit of the text, mm.</param>
    public static PathDataResult Read(string text, double unitMm) => new PathDataReader(text, unitMm).Read();

    /// <summary>Path data of a path, absolute commands M L C A Z, in the fewest digits that keep every point within 1e-9 mm. An arc of more than 160° is written in equal parts, because end points and radius alone do not fix the middle of a half turn that well.</summary>
    /// <param name="path">The path, mm.</param>
    /// <param name="unitMm">Length of one unit of the text, mm.</param>
    public static string Write(Path path, double unitMm)
    {
        var s = new StringBuilder("M");
        Put(s, path.Start, unitMm);
        for (var i = 0; i < path.Segments.Length; i++)
        {
            var segment = path.Segments[i];
            if (segment is Line && path.Closed && i == path.Segments.Length - 1) break;
            PutStep(s, segment, unitMm);
        }

        if (path.Closed) s.Append(" Z");
        return s.ToString();
    }

    /// <summary>A length as a number of the text: fewest decimals within 1e-11 mm, no exponent, no negative zero.</summary>
    /// <param name="mm">The length, mm.</param>
    /// <param name="unitMm">Length of one unit of the text, mm.</param>
    public static string Number(double mm, double unitMm) => Shortest(mm / unitMm, 1e-11 / unitMm);

    private static string Shortest(double value, double tolerance)
    {
        for (var decimals = 0; decimals < 14; decimals++)
        {
            if (Math.Abs(Math.Round(value, decimals) - value) <= tolerance) return Shown.Number(value, decimals);
        }

        return Shown.Number(value, 14);
    }

    /// <summary>One segment as an absolute command, a space before it.</summary>
    internal static void PutStep(StringBuilder s, Segment segment, double unitMm)
    {
        switch (segment)
        {
            case Line line:
                s.Append(" L");
                Put(s, line.End, unitMm);
                break;
            case Bezier curve:
                s.Append(" C");
                Put(s, curve.Control1, unitMm);
                Put(s, curve.Control2, unitMm);
                Put(s, curve.End, unitMm);
                break;
            case Arc arc:
                var parts = Math.Abs(arc.Sweep) > 160 * Math.PI / 180 ? (int)Math.Ceiling(Math.Abs(arc.Sweep) / (2 * Math.PI / 3)) : 1;
                for (var k = 0; k < parts; k++) PutArc(s, parts == 1 ? arc : (Arc)arc.Part((double)k / parts, (k + 1.0) / parts), unitMm);
                break;
        }
    }

    private static void Put(StringBuilder s, Point p, double unitMm)
        => s.Append(' ').Append(Number(p.X, unitMm)).Append(' ').Append(Number(p.Y, unitMm));

    private static void PutArc(StringBuilder s, Arc arc, double unitMm)
    {
        var (rx, ry, turn) = arc.IsCircle ? (arc.Radius, arc.Radius, 0) : MainAxes(arc.AxisU, arc.AxisV);
        s.Append(" A ").Append(Number(rx, unitMm)).Append(' ').Append(Number(ry, unitMm)).Append(' ').Append(Shortest(turn * 180 / Math.PI, 1e-12));
        s.Append(Math.Abs(arc.Sweep) > Math.PI ? " 1" : " 0").Append(arc.IsCounterClockwise ? " 1" : " 0");
        Put(s, arc.End, unitMm);
    }

    /// <summary>Half axes square to each other of the ellipse with any two conjugate half axes, and the angle of the first, radians.</summary>
    private static (double A, double B, double Turn) MainAxes(Point u, Point v)
    {
        var theta = 0.5 * Math.Atan2(2 * u.Dot(v), u.Dot(u) - v.Dot(v));
        var (sin, cos) = Math.SinCos(theta);
        var first = (u * cos) + (v * sin);
        var second = (v * cos) - (u * sin);
        return (first.Length, second.Length, Math.Atan2(first.Y, first.X));
    }
}
