using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>The basic shapes of SVG 1.1 §9 and its paths as curves, in the shape's own axes.</summary>
internal static class SvgShapes
{
    public static bool IsShape(string name) => name is "path" or "line" or "polyline" or "polygon" or "rect" or "circle" or "ellipse";

    /// <summary>Paths of one shape; a fault goes to the tray.</summary>
    public static ImmutableArray<Path> Of(SvgElement e, CurveTray tray)
    {
        double Number(string name, double absent = 0)
        {
            if (e[name] is not { } text) return absent;
            if (!SvgNumbers.TryLength(text, out var n, out var unit)) tray.Refuse(e.Line, $"{name} of a <{e.Name}> should be a number.", "Mend it, or save the drawing again.", text);
            else if (unit.Length > 0 && SvgNumbers.MmPer(unit) is null) tray.Refuse(e.Line, $"{name} of a <{e.Name}> is in {unit}, which has no fixed length.", "Save the drawing again with sizes in mm.", text);
            else return unit.Length == 0 ? n : n * SvgNumbers.MmPer(unit)!.Value / SvgNumbers.MmPerPx;
            return 0;
        }

        switch (e.Name)
        {
            case "path":
                if (e["d"] is not { } d || string.IsNullOrWhiteSpace(d)) return [];
                var read = PathData.Read(d, 1);
                if (read.Fault is { } f) tray.Refuse(e.Line, $"In the path data, character {f.Offset + 1}: {f.Message}.", f.Remedy, d[Math.Max(0, Math.Min(d.Length, f.Offset) - 20)..]);
                return read.Paths;
            case "line":
                var (a, b) = (new Point(Number("x1"), Number("y1")), new Point(Number("x2"), Number("y2")));
                return a == b ? [] : [new Path([new Line(a, b)], closed: false)];
            case "polyline": return Corners(e, closed: false, tray);
            case "polygon": return Corners(e, closed: true, tray);
            case "rect": return Rect(Number("x"), Number("y"), Number("width"), Number("height"), Number("rx", double.NaN), Number("ry", double.NaN));
            case "circle": return Ellipse(Number("cx"), Number("cy"), Number("r"), Number("r"));
            case "ellipse": return Ellipse(Number("cx"), Number("cy"), Number("rx"), Number("ry"));
            default: return [];
        }
    }

    private static ImmutableArray<Path> Corners(SvgElement e, bool closed, CurveTray tray)
    {
        var n = SvgNumbers.Numbers(e["points"] ?? "");
        if (n is null || n.Count % 2 != 0)
        {
            tray.Refuse(e.Line, $"The points of a <{e.Name}> should be pairs of numbers.", "Mend them, or save the drawing again.", e["points"] ?? "");
            return [];
        }

        var sides = ImmutableArray.CreateBuilder<Segment>();
        var first = n.Count > 0 ? new Point(n[0], n[1]) : default;
        var pen = first;
        for (var i = 2; i < n.Count; i += 2)
        {
            var p = new Point(n[i], n[i + 1]);
            if (p == pen) continue;
            sides.Add(new Line(pen, p));
            pen = p;
        }

        if (closed && sides.Count > 1 && pen != first) sides.Add(new Line(pen, first));
        return sides.Count == 0 ? [] : [new Path(sides.ToImmutable(), sides.Count > 1 && sides[^1].End == first)];
    }

    private static ImmutableArray<Path> Rect(double x, double y, double width, double height, double rx, double ry)
    {
        if (!(width > 0 && height > 0)) return [];
        if (double.IsNaN(rx)) rx = double.IsNaN(ry) ? 0 : ry;
        if (double.IsNaN(ry)) ry = rx;
        rx = Math.Clamp(rx, 0, width / 2);
        ry = Math.Clamp(ry, 0, height / 2);
        if (rx == 0 || ry == 0) return [Path.Polygon(new Point(x, y), new Point(x + width, y), new Point(x + width, y + height), new Point(x, y + height))];
        var sides = ImmutableArray.CreateBuilder<Segment>();
        var (u, v) = (new Point(rx, 0), new Point(0, ry));
        ReadOnlySpan<Point> centres = [new(x + width - rx, y + ry), new(x + width - rx, y + height - ry), new(x + rx, y + height - ry), new(x + rx, y + ry)];
        ReadOnlySpan<Point> steps = [-v, u, v, -u, -v];
        for (var i = 0; i < 4; i++)
        {
            var (from, to) = (centres[i] + steps[i], centres[i] + steps[i + 1]);
            if (sides.Count > 0 && sides[^1].End.To(from) > 0) sides.Add(new Line(sides[^1].End, from));
            sides.Add(Arc.Between(from, to, centres[i], u, v, (i - 1) * Math.PI / 2, Math.PI / 2));
        }

        if (sides[^1].End.To(sides[0].Start) > 0) sides.Add(new Line(sides[^1].End, sides[0].Start));
        return [new Path(sides.ToImmutable(), closed: true)];
    }

    private static ImmutableArray<Path> Ellipse(double cx, double cy, double rx, double ry)
    {
        if (!(rx > 0 && ry > 0)) return [];
        var c = new Point(cx, cy);
        if (rx == ry) return [Path.Circle(c, rx)];
        var (u, v) = (new Point(rx, 0), new Point(0, ry));
        return [new Path([Arc.Between(c + u, c - u, c, u, v, 0, Math.PI), Arc.Between(c - u, c + u, c, u, v, Math.PI, Math.PI)], closed: true)];
    }
}
