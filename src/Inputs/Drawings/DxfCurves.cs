using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>DXF entities as curves: LINE, ARC, CIRCLE, ELLIPSE, LWPOLYLINE, POLYLINE, SPLINE. Group codes as in the published DXF reference.</summary>
internal static class DxfCurves
{
    /// <summary>Below this bulge a polyline's side is straight: it rises less than a billionth of its length.</summary>
    private const double LeastBulge = 1e-9;

    private const int MostControlPoints = 10_000;

    private const double Turn = 2 * Math.PI;

    /// <summary>Which way the drawing plane of an entity faces: 1 towards the viewer, -1 away, 0 neither.</summary>
    public static int Facing(DxfRecord e)
    {
        if (!e.Has(210) && !e.Has(230)) return 1;
        var (x, y, z) = (e.Number(210, 0), e.Number(220, 0), e.Number(230, 1));
        return Math.Abs(x) > 1e-9 * Math.Abs(z) || Math.Abs(y) > 1e-9 * Math.Abs(z) || z == 0 ? 0 : Math.Sign(z);
    }

    /// <summary>The map from an entity's own axes to the drawing's: seen from behind, x runs the other way (arbitrary axis rule of the DXF reference).</summary>
    public static Transform OwnAxes(int facing, Transform map) => facing < 0 ? Transform.Scale(-1, 1).Then(map) : map;

    public static void Line(DxfRecord e, Transform map, string layer, CurveTray tray)
    {
        var (a, b) = (map.Map(e.NeededPoint(10, "first point")), map.Map(e.NeededPoint(11, "last point")));
        if (e.Trouble is not null) return;
        if (a.To(b) <= 0) tray.Leave("line without length");
        else tray.Add(layer, [new Line(a, b)], closed: false, e.Line);
    }

    public static void Circle(DxfRecord e, Transform map, string layer, CurveTray tray)
    {
        var (c, r) = (e.NeededPoint(10, "centre"), Radius(e));
        if (e.Trouble is null) tray.Add(layer, Path.Circle(c, r).Transformed(map).Segments, closed: true, e.Line);
    }

    public static void Arc(DxfRecord e, Transform map, string layer, CurveTray tray)
    {
        var (c, r) = (e.NeededPoint(10, "centre"), Radius(e));
        var (from, to) = (e.Needed(50, "start angle"), e.Needed(51, "end angle"));
        if (e.Trouble is not null) return;
        var sweep = Sweep(from / 360, to / 360);
        var start = (from / 360) - Math.Floor(from / 360);
        if (sweep >= 1 - 1e-12) tray.Add(layer, Path.Circle(c, r).Transformed(map).Segments, closed: true, e.Line);
        else tray.Add(layer, [Foundation.Arc.OfCircle(c, r, start * Turn, sweep * Turn).Transformed(map)], closed: false, e.Line);
    }

    public static void Ellipse(DxfRecord e, int facing, Transform map, string layer, CurveTray tray)
    {
        var (c, u) = (e.NeededPoint(10, "centre"), e.NeededPoint(11, "long half axis"));
        var ratio = e.Needed(40, "ratio of its axes");
        var (from, to) = (e.Number(41, 0), e.Number(42, Turn));
        if (e.Trouble is null && (u.Length <= 0 || !(ratio is > 1e-6 and < 1e6))) e.Spoil(e.Line, "This ELLIPSE has an axis without length.");
        if (e.Trouble is not null) return;
        var v = u.Left * (facing * ratio);
        var sweep = Sweep(from / Turn, to / Turn) * Turn;
        var start = from - (Math.Floor(from / Turn) * Turn);
        if (sweep >= Turn * (1 - 1e-9))
        {
            var (p, q) = (c + u, c - u);
            tray.Add(layer, [.. new[] { Foundation.Arc.Between(p, q, c, u, v, 0, Math.PI), Foundation.Arc.Between(q, p, c, u, v, Math.PI, Math.PI) }.Select(s => s.Transformed(map))], closed: true, e.Line);
        }
        else
        {
            tray.Add(layer, [Foundation.Arc.OfEllipse(c, u, v, start, sweep).Transformed(map)], closed: false, e.Line);
        }
    }

    public static void LightPolyline(DxfRecord e, Transform map, string layer, CurveTray tray)
    {
        var corners = new List<(Point At, double Bulge)>();
        double? x = null;
        foreach (var p in e.Pairs)
        {
            switch (p.Code)
            {
                case 10: x = e.Number(p); break;
                case 20 when x is { } known:
                    corners.Add((new Point(known, e.Number(p)), 0));
                    x = null;
                    break;
                case 42 when corners.Count > 0: corners[^1] = (corners[^1].At, e.Number(p)); break;
                default: break;
            }
        }

        if (x is not null) e.Spoil(e.Line, "This LWPOLYLINE has a point without y.");
        if (e.Trouble is null) Polyline(corners, (e.Whole(70, 0) & 1) != 0, e.Line, map, layer, tray);
    }

    public static void Polyline(List<(Point At, double Bulge)> corners, bool closed, int line, Transform map, string layer, CurveTray tray)
    {
        var sides = ImmutableArray.CreateBuilder<Segment>();
        for (var i = 0; i + (closed ? 0 : 1) < corners.Count; i++)
        {
            var (a, bulge) = corners[i];
            var b = corners[(i + 1) % corners.Count].At;
            if (a.To(b) > 0) sides.Add(Side(a, b, bulge).Transformed(map));
        }

        if (sides.Count == 0) tray.Leave("polyline without length");
        else tray.Add(layer, sides.ToImmutable(), closed && sides.Count > 1, line);
    }

    public static void Spline(DxfRecord e, Transform map, string layer, CurveTray tray)
    {
        var (knots, weights, points) = (new List<double>(), new List<double>(), new List<Point>());
        double? x = null;
        foreach (var p in e.Pairs)
        {
            switch (p.Code)
            {
                case 40: knots.Add(e.Number(p)); break;
                case 41: weights.Add(e.Number(p)); break;
                case 10: x = e.Number(p); break;
                case 20 when x is { } known:
                    points.Add(map.Map(new Point(known, e.Number(p))));
                    x = null;
                    break;
                default: break;
            }
        }

        var degree = e.Whole(71, 3);
        if (e.Trouble is not null) return;
        if (points.Count == 0 && e.Has(11)) e.Spoil(e.Line, "This SPLINE has only the points it goes through; how it runs between them is not in the file.");
        else if (degree is < 1 or > 25) e.Spoil(e.Line, $"This SPLINE has degree {degree}; 1 to 25 can be read.");
        else if (points.Count > MostControlPoints) e.Spoil(e.Line, $"This SPLINE has more than {MostControlPoints:N0} control points.");
        else if (points.Count <= degree) e.Spoil(e.Line, $"This SPLINE of degree {degree} has only {points.Count} control points.");
        else if (knots.Count != points.Count + degree + 1) e.Spoil(e.Line, $"This SPLINE needs {points.Count + degree + 1} knots and has {knots.Count}.");
        else if (weights.Count != 0 && weights.Count != points.Count) e.Spoil(e.Line, $"This SPLINE has {points.Count} control points but {weights.Count} weights.");
        else if (weights.Exists(w => w <= 0)) e.Spoil(e.Line, "This SPLINE has a weight that is not above zero.");
        if (e.Trouble is not null) return;
        for (var i = 1; i < knots.Count; i++)
        {
            if (knots[i] >= knots[i - 1]) continue;
            e.Spoil(e.Line, "The knots of this SPLINE do not rise.");
            return;
        }

        double[] allWeights = weights.Count == 0 ? [.. points.Select(_ => 1.0)] : [.. weights];
        if (DxfSpline.Of(degree, [.. knots], [.. points], allWeights) is not { } segments) e.Spoil(e.Line, "This SPLINE is too wild to be fitted within 0.0001 mm.");
        else if (segments.Any(s => !double.IsFinite(s.Bounds.Width + s.Bounds.Height))) e.Spoil(e.Line, "The numbers of this SPLINE make no sense.");
        else if (segments.Length == 0) tray.Leave("spline without length");
        else tray.Add(layer, segments, segments.Length > 1 && segments[0].Start == segments[^1].End, e.Line);
    }

    private static Segment Side(Point a, Point b, double bulge)
    {
        if (Math.Abs(bulge) < LeastBulge) return new Line(a, b);

        // bulge = tan(sweep / 4); the centre lies square to the chord's middle
        var chord = b - a;
        var centre = a.Toward(b, 0.5) + (chord.Left * ((1 - (bulge * bulge)) / (4 * bulge)));
        var r = 0.5 * (centre.To(a) + centre.To(b));
        var s = a - centre;
        return Foundation.Arc.Between(a, b, centre, new Point(r, 0), new Point(0, r), Math.Atan2(s.Y, s.X), 4 * Math.Atan(bulge));
    }

    private static double Radius(DxfRecord e)
    {
        var r = e.Needed(40, "radius");
        if (!(r > 0)) e.Spoil(e.Line, $"This {e.Type} has a radius that is not above zero.");
        return r;
    }

    /// <summary>Counter-clockwise way from one angle to another, in turns, above 0 to 1.</summary>
    private static double Sweep(double from, double to)
    {
        var s = to - from;
        s -= Math.Floor(s);
        return s <= 1e-12 ? 1 : s;
    }
}
