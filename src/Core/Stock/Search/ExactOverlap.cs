using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Looks at a finished layout again, apart from how it was found: corners rounded to a fine grid of whole numbers, edges judged without any rounding.</summary>
public static class ExactOverlap
{
    /// <summary>Fineness: the width of the strip is cut into so many steps.</summary>
    public const long Steps = 1L << 40;

    /// <summary>The first two pieces that touch or overlap, by their places in the layout; null when none do. The second is -1 when a piece stands out of the strip.</summary>
    /// <param name="pieces">The kinds of pieces.</param>
    /// <param name="layout">Where they lie.</param>
    public static (int First, int Second)? Of(ImmutableArray<SheetPiece> pieces, StripLayout layout)
    {
        var rings = layout.Places.Select(p => Ring(pieces[p.Piece], p, layout.WidthMm)).ToArray();
        var boxes = rings.Select(r => (MinX: r.Min(c => c.X), MinY: r.Min(c => c.Y), MaxX: r.Max(c => c.X), MaxY: r.Max(c => c.Y))).ToArray();
        for (var i = 0; i < rings.Length; i++)
        {
            var longest = (long)Math.Ceiling(layout.UsedMm[layout.Places[i].Bar] / layout.WidthMm * Steps) + 1;
            if (boxes[i].MinX < -1 || boxes[i].MinY < -1 || boxes[i].MaxY > Steps + 1 || boxes[i].MaxX > longest + 1) return (i, -1);
            for (var j = 0; j < i; j++)
            {
                if (layout.Places[i].Bar != layout.Places[j].Bar) continue;
                var (a, b) = (boxes[i], boxes[j]);
                if (a.MinX > b.MaxX || b.MinX > a.MaxX || a.MinY > b.MaxY || b.MinY > a.MaxY) continue;
                if (Touch(rings[i], rings[j])) return (j, i);
            }
        }

        return null;
    }

    private static (long X, long Y)[] Ring(SheetPiece piece, SheetPlace at, double width)
    {
        var turned = piece.Corners.Select(at.Turn.Transform.Map).ToArray();
        var box = Box.Around(turned);
        return [.. turned.Select(c => ((long)Math.Round((c.X - box.MinX + at.AlongMm) / width * Steps), (long)Math.Round((c.Y - box.MinY + at.UpMm) / width * Steps))).Distinct()];
    }

    private static bool Touch((long X, long Y)[] a, (long X, long Y)[] b)
    {
        for (int i = 0, h = a.Length - 1; i < a.Length; h = i++)
        {
            for (int j = 0, k = b.Length - 1; j < b.Length; k = j++)
            {
                if (Cross(a[h], a[i], b[k], b[j])) return true;
            }
        }

        return Inside(a, b[0]) || Inside(b, a[0]);
    }

    private static bool Cross((long X, long Y) p, (long X, long Y) q, (long X, long Y) r, (long X, long Y) s)
    {
        if (Math.Max(p.X, q.X) < Math.Min(r.X, s.X) || Math.Max(r.X, s.X) < Math.Min(p.X, q.X)) return false;
        if (Math.Max(p.Y, q.Y) < Math.Min(r.Y, s.Y) || Math.Max(r.Y, s.Y) < Math.Min(p.Y, q.Y)) return false;
        return Side(p, q, r) * Side(p, q, s) <= 0 && Side(r, s, p) * Side(r, s, q) <= 0;
    }

    private static int Side((long X, long Y) a, (long X, long Y) b, (long X, long Y) c)
        => Int128.Sign(((Int128)(b.X - a.X) * (c.Y - a.Y)) - ((Int128)(b.Y - a.Y) * (c.X - a.X)));

    private static bool Inside((long X, long Y)[] ring, (long X, long Y) p)
    {
        var inside = false;
        for (int i = 0, j = ring.Length - 1; i < ring.Length; j = i++)
        {
            var (low, high) = ring[i].Y < ring[j].Y ? (ring[i], ring[j]) : (ring[j], ring[i]);
            if (low.Y <= p.Y && p.Y < high.Y && Side(low, high, p) > 0) inside = !inside;
        }

        return inside;
    }
}
