using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>One segment as one DXF entity.</summary>
internal static class DxfEntities
{
    private const double DegreesPerRadian = 180 / Math.PI;

    public static void Put(DxfText t, string layer, string owner, Segment segment)
    {
        switch (segment)
        {
            case Line l:
                Begin(t, "LINE", "AcDbLine", layer, owner).PutPoint(10, l.Start).PutPoint(11, l.End);
                break;
            case Arc { IsCircle: true } a when Math.Abs(a.Sweep) >= (2 * Math.PI) - 1e-9: PutCircle(t, layer, owner, a.Centre, a.Radius); break;
            case Arc { IsCircle: true } a: PutArc(t, layer, owner, a); break;
            case Arc a: PutEllipse(t, layer, owner, a); break;
            case Bezier b: PutSpline(t, layer, owner, b); break;
        }
    }

    public static void PutCircle(DxfText t, string layer, string owner, Point centre, double radius)
        => Begin(t, "CIRCLE", "AcDbCircle", layer, owner).PutPoint(10, centre).Put(40, radius);

    private static void PutArc(DxfText t, string layer, string owner, Arc a)
    {
        // ARC always runs counter-clockwise
        var (from, to) = a.IsCounterClockwise ? (a.Start - a.Centre, a.End - a.Centre) : (a.End - a.Centre, a.Start - a.Centre);
        PutCircle(t, layer, owner, a.Centre, a.Radius, "ARC");
        t.Put(100, "AcDbArc").Put(50, Turned(Math.Atan2(from.Y, from.X)) * DegreesPerRadian).Put(51, Turned(Math.Atan2(to.Y, to.X)) * DegreesPerRadian);
    }

    private static void PutCircle(DxfText t, string layer, string owner, Point centre, double radius, string entity)
        => Begin(t, entity, "AcDbCircle", layer, owner).PutPoint(10, centre).Put(40, radius);

    private static void PutEllipse(DxfText t, string layer, string owner, Arc a)
    {
        // main axes of the ellipse with conjugate half axes U and V (Rytz): tan 2φ = 2 U·V / (U² − V²)
        var (u, v) = (a.AxisU, a.AxisV);
        var phi = 0.5 * Math.Atan2(2 * u.Dot(v), u.Dot(u) - v.Dot(v));
        var (sin, cos) = Math.SinCos(phi);
        var (longAxis, shortAxis) = ((u * cos) + (v * sin), (v * cos) - (u * sin));
        var (from, to) = (a.StartAngle - phi, a.StartAngle + a.Sweep - phi);
        if (longAxis.Cross(shortAxis) < 0) (from, to) = (-from, -to);
        if (to < from) (from, to) = (to, from);
        var full = to - from >= (2 * Math.PI) - 1e-9;
        from = full ? 0 : Turned(from);
        to = full ? 2 * Math.PI : Turned(to);
        if (to <= from) to += 2 * Math.PI;
        Begin(t, "ELLIPSE", "AcDbEllipse", layer, owner).PutPoint(10, a.Centre).PutPoint(11, longAxis).PutPoint210()
            .Put(40, shortAxis.Length / longAxis.Length).Put(41, from).Put(42, to);
    }

    private static void PutSpline(DxfText t, string layer, string owner, Bezier b)
    {
        Begin(t, "SPLINE", "AcDbSpline", layer, owner).PutPoint210().Put(70, 8).Put(71, 3).Put(72, 8).Put(73, 4).Put(74, 0).Put(42, 1e-9).Put(43, 1e-10);
        for (var i = 0; i < 8; i++) t.Put(40, i < 4 ? 0.0 : 1.0);
        t.PutPoint(10, b.Start).PutPoint(10, b.Control1).PutPoint(10, b.Control2).PutPoint(10, b.End);
    }

    private static DxfText Begin(DxfText t, string entity, string subclass, string layer, string owner)
        => t.Put(0, entity).Put(5, t.NewHandle()).Put(330, owner).Put(100, "AcDbEntity").Put(8, layer).Put(100, subclass);

    private static DxfText PutPoint210(this DxfText t) => t.Put(210, 0.0).Put(220, 0.0).Put(230, 1.0);

    /// <summary>An angle brought into 0 to a full turn, radians.</summary>
    private static double Turned(double angle)
    {
        var a = angle - (Math.Floor(angle / (2 * Math.PI)) * 2 * Math.PI);
        return a >= 2 * Math.PI ? 0 : a;
    }
}
