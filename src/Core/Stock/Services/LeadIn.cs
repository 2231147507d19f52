using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Where the jet, arc or beam goes in: beside the piece, in the waste, never over a piece.</summary>
public static class LeadIn
{
    /// <summary>Usual length, in kerfs; common practice 2 to 5.</summary>
    public const double Kerfs = 3;

    /// <summary>Least usual length, mm; common practice.</summary>
    public const double LeastMm = 2;

    private static readonly double[] Shares = [1, 0.7, 0.5, 0.35, 0.25];

    /// <summary>A way onto an outline from outside: where most room is; null where there is not half a kerf of room anywhere.</summary>
    /// <param name="outline">The outline to be cut.</param>
    /// <param name="others">The other outlines of the bar.</param>
    /// <param name="bar">The bar.</param>
    /// <param name="kerfMm">Kerf, mm.</param>
    public static Line? Outside(Path outline, IReadOnlyList<Path> others, Box bar, double kerfMm)
    {
        var outward = Moments.Of(outline).AreaMm2 > 0 ? -1 : 1;
        var (near, usual) = (outline.Bounds.Grown(10), Math.Max(LeastMm, Kerfs * kerfMm));
        var about = others.Where(o => o.Bounds is var b && b.MinX < near.MaxX && b.MaxX > near.MinX && b.MinY < near.MaxY && b.MaxY > near.MinY).ToArray();
        foreach (var share in Shares)
        {
            var (best, most) = ((Line?)null, 0.5 * kerfMm);
            foreach (var s in outline.Segments)
            {
                var on = s.At(0.5);
                var start = on + (outward * share * usual * s.Derivative(0.5).Unit.Left);
                var room = Math.Min(Math.Min(start.X - bar.MinX, bar.MaxX - start.X), Math.Min(start.Y - bar.MinY, bar.MaxY - start.Y));
                if (room <= most || Inside.Of(outline, start)) continue;
                var way = new Path([new Line(start, on)], closed: false);
                var ahead = new Path([new Line(start, on.Toward(start, 0.5))], closed: false);
                room = Math.Min(room, LeastGap.Of(outline, ahead, usual));
                foreach (var other in about)
                {
                    if (room <= most) break;
                    room = Inside.Of(other, start) ? 0 : Math.Min(room, LeastGap.Of(other, way, 2 * usual));
                }

                if (room > most + 1e-9) (best, most) = (new Line(start, on), room);
            }

            if (best is not null) return best;
        }

        return null;
    }

    /// <summary>A way onto a hole from inside it.</summary>
    /// <param name="centre">Centre of the hole.</param>
    /// <param name="diameterMm">Diameter to be cut, mm.</param>
    /// <param name="kerfMm">Kerf, mm.</param>
    public static Line Within(Point centre, double diameterMm, double kerfMm)
    {
        var radius = 0.5 * diameterMm;
        var length = Math.Min(radius, Math.Max(LeastMm, Kerfs * kerfMm));
        return new Line(new Point(centre.X + radius - length, centre.Y), new Point(centre.X + radius, centre.Y));
    }
}
