using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Discs inside an outline that together stand for its bulk: the largest there is room for, then the largest clear of those before, and so on. They only guide a search; nothing is judged by them.</summary>
internal readonly record struct InnerDisc(double X, double Y, double R)
{
    private const int FewDiscs = 8;
    private const int SomeDiscs = 16;
    private const int MostDiscs = 32;
    private const double MostCovered = 0.9;
    private const double WellCovered = 0.8;
    private const double RoughlyShare = 0.01;

    /// <summary>The discs of a polygon.</summary>
    /// <param name="corners">Corners, counter-clockwise, mm.</param>
    /// <param name="area">Its area, mm².</param>
    public static InnerDisc[] Of(Point[] corners, double area)
    {
        var box = Box.Around(corners);
        var (found, covered, least) = (new List<InnerDisc>(), 0.0, RoughlyShare * Math.Min(box.Width, box.Height));
        while (found.Count < MostDiscs)
        {
            if (found.Count >= FewDiscs && covered >= MostCovered * area) break;
            if (found.Count >= SomeDiscs && covered >= WellCovered * area) break;
            var next = Largest(corners, box, found, least);
            if (next.R < least) break;
            found.Add(next);
            covered += Math.PI * next.R * next.R;
        }

        return [.. found];
    }

    private static InnerDisc Largest(Point[] corners, Box box, List<InnerDisc> taken, double within)
    {
        var cells = new PriorityQueue<(Point Centre, double Half, double Room), double>();
        var (half, best) = (0.5 * Math.Min(box.Width, box.Height), new InnerDisc(0, 0, 0));
        for (var x = box.MinX + half; x < box.MaxX + half; x += 2 * half)
        {
            for (var y = box.MinY + half; y < box.MaxY + half; y += 2 * half) Add(new Point(x, y), half);
        }

        while (cells.TryDequeue(out var cell, out _))
        {
            if (cell.Room > best.R) best = new(cell.Centre.X, cell.Centre.Y, cell.Room);
            if (cell.Room + (cell.Half * Math.Sqrt(2)) <= best.R + (0.2 * within)) continue;
            var h = 0.5 * cell.Half;
            foreach (var (sx, sy) in new[] { (-h, -h), (h, -h), (-h, h), (h, h) }) Add(new Point(cell.Centre.X + sx, cell.Centre.Y + sy), h);
        }

        return best;

        void Add(Point c, double h)
        {
            var room = Room(corners, taken, c);
            if (room + (h * Math.Sqrt(2)) > best.R) cells.Enqueue((c, h, room), -(room + (h * Math.Sqrt(2))));
        }
    }

    /// <summary>Distance to the outline and to the discs taken; negative outside.</summary>
    private static double Room(Point[] corners, List<InnerDisc> taken, Point c)
    {
        var (least, inside) = (double.PositiveInfinity, false);
        for (int i = 0, j = corners.Length - 1; i < corners.Length; j = i++)
        {
            var (a, b) = (corners[j], corners[i]);
            least = Math.Min(least, PlanarKernels.PointToSegmentSquared(c.X, c.Y, a.X, a.Y, b.X, b.Y));
            if (a.Y > c.Y != b.Y > c.Y && c.X < ((b.X - a.X) * (c.Y - a.Y) / (b.Y - a.Y)) + a.X) inside = !inside;
        }

        var room = inside ? Math.Sqrt(least) : -Math.Sqrt(least);
        foreach (var d in taken) room = Math.Min(room, new Point(d.X, d.Y).To(c) - d.R);
        return room;
    }
}
