using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Where tabs hold the part in the stock: up to four, on straight flanks, far apart, away from the ends of the piece and from where the tool leads in.</summary>
internal static class TabPlaces
{
    /// <summary>Width of a tab where it meets the part, mm; common practice 3 to 5.</summary>
    public const double WidthMm = 4;

    /// <summary>Height of a tab, mm; common practice 0.5 to 1.</summary>
    public const double HeightMm = 0.8;

    private const int Most = 4;
    private const double FromEndsMm = 8;
    private const double ApartMm = 25;
    private const double StepMm = 1;

    /// <summary>Height of a tab in stock of a thickness, mm: never more than half of it.</summary>
    public static double Height(double thicknessMm) => Math.Min(HeightMm, thicknessMm / 2);

    /// <summary>From and to along the way, mm, in order.</summary>
    public static ImmutableArray<(double FromMm, double ToMm)> Of(Path around, EndMill mill, Path outline)
    {
        var half = (WidthMm + mill.Diameter.Mm) / 2;
        var total = around.Length;
        var ends = outline.Bounds;
        var free = new List<(double At, Point Place)>();
        var from = 0.0;
        foreach (var s in around.Segments)
        {
            var length = s.Length;
            if (s is Line)
            {
                for (var x = half + 0.5; x <= length - half - 0.5; x += StepMm)
                {
                    var (at, place) = (from + x, s.At(x / length));
                    if (at < (2 * half) + 2 || at > total - (2 * half) - 2) continue;
                    if (place.X < ends.MinX + FromEndsMm || place.X > ends.MaxX - FromEndsMm) continue;
                    free.Add((at, place));
                }
            }

            from += length;
        }

        var chosen = new List<(double At, Point Place)>();
        while (chosen.Count < Most && free.Count > 0)
        {
            var next = chosen.Count == 0 ? free.MinBy(f => f.Place.X) : free.MaxBy(f => chosen.Min(c => c.Place.To(f.Place)));
            if (chosen.Exists(c => c.Place.To(next.Place) < ApartMm && Math.Abs(c.At - next.At) < ApartMm)) break;
            chosen.Add(next);
        }

        return [.. chosen.OrderBy(c => c.At).Select(c => (c.At - half, c.At + half))];
    }
}
