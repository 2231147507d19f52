using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much larger all holes of one use can be made together.</summary>
internal static class HoleGrowth
{
    /// <summary>Most that can be added to their diameters, steel as wide as the stock is thick left beside them, mm; 0 when there is none to spare.</summary>
    public static double MostMm(Results r, HoleUse use)
    {
        var (web, most) = (r.Plan.Stock.Thickness.Mm, double.PositiveInfinity);
        foreach (var h in r.Holes.Where(h => h.Use == use))
        {
            var radius = 0.5 * h.Diameter.Mm;
            most = Math.Min(most, 2 * (Nearest.Distance(r.Plan.Outline, h.At) - radius - web));
            foreach (var other in r.Holes)
            {
                if (ReferenceEquals(other, h)) continue;
                var room = h.At.To(other.At) - radius - (0.5 * other.Diameter.Mm) - web;
                most = Math.Min(most, other.Use == use ? room : 2 * room);
            }
        }

        return double.IsFinite(most) ? Math.Max(0, most) : 0;
    }
}
