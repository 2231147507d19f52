using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A section through the bevel, hatched and not to scale, with its sizes: thickness, height, edge, angle both ways.</summary>
internal static class SectionView
{
    /// <summary>Height it takes, mm.</summary>
    public const double HeightMm = 46.5;

    /// <summary>Draws it in a box.</summary>
    public static void Draw(Canvas canvas, SheetRequest request, Box room)
    {
        if (request.Results.Plan.Bevel is not { } bevel) return;
        canvas.Text("Section, not to scale", new Point(room.MinX, room.MaxY - 5), bold: true);
        canvas.Line(new Point(room.MinX, room.MaxY - 7), new Point(room.MaxX, room.MaxY - 7), Pen.Wide);

        var (top, bottom) = (room.MaxY - 10, room.MaxY - HeightMm + 3);
        var middle = room.MinX + 7.5;
        const double Half = 5.5;
        var shoulder = bevel.IsFull ? top : top - 8;
        var edgeHalf = 1.0;
        var bulge = bevel.Grind switch { Grind.Convex => 1.2, Grind.Hollow when !BevelSolid.IsFlatStandIn(bevel) => -1.2, _ => 0 };
        Point[] shape = bevel.OneSided
            ? [new(middle - Half, top), new(middle + Half, top), new(middle + Half, bottom), .. Face(new(middle + Half - (2 * edgeHalf), bottom), new(middle - Half, shoulder), bulge)]
            : [new(middle - Half, top), new(middle + Half, top), .. Face(new(middle + Half, shoulder), new(middle + edgeHalf, bottom), bulge), .. Face(new(middle - edgeHalf, bottom), new(middle - Half, shoulder), bulge)];
        canvas.Hatch(shape);
        for (var i = 1; i < shape.Length; i++) canvas.Line(shape[i], shape[(i + 1) % shape.Length], Pen.Wide);
        canvas.Break(new Point(middle - Half - 1.5, top), new Point(middle + Half + 1.5, top));
        if (!bevel.IsFull) canvas.Line(new Point(middle - Half - 2, shoulder), new Point(middle + Half + 2, shoulder), Pen.Centre);

        var x = room.MinX + 17;
        var y = top - 3;
        foreach (var line in FigureLine.OfBevel(request.Results.Plan, request.Units))
        {
            canvas.Fitted($"{line.Name}: {line.Value}", new Point(x, y), room.MaxX - x, 3);
            y -= 5;
        }
    }

    // a face from one end to the other, clockwise about the steel, bowed out of it by so much in the middle
    private static IEnumerable<Point> Face(Point a, Point b, double bulge)
    {
        var steps = bulge == 0 ? 1 : 12;
        var away = (b - a).Unit.Left * bulge;
        for (var i = 0; i <= steps; i++)
        {
            var t = (double)i / steps;
            yield return a.Toward(b, t) + (away * (4 * t * (1 - t)));
        }
    }
}
