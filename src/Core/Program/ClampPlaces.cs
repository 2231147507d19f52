using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Where the clamps go: two, as far apart as may be, clear of holes and of the profile's cut.</summary>
internal static class ClampPlaces
{
    /// <summary>How far a clamp stands out over the edge of the stock, mm; common practice.</summary>
    private const double OutsideMm = 25;

    /// <summary>Steel kept between a clamp and any tool, mm; common practice.</summary>
    private const double ClearMm = 2;

    private const double StepMm = 5;

    /// <summary>Two clamps; none when there is no room for them.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="stock">The stock, from the program's zero.</param>
    /// <param name="outline">The outline, from the program's zero.</param>
    /// <param name="holes">The holes made.</param>
    /// <param name="zero">The program's zero, plan's axes.</param>
    /// <param name="mill">The end mill that runs round the outline; null when none does.</param>
    public static ImmutableArray<ClampBox> Of(Shop shop, Box stock, Path outline, ImmutableArray<HolePlan> holes, Point zero, EndMill? mill)
    {
        var rim = mill is null ? ImmutableArray<Point>.Empty : [.. outline.Segments.SelectMany(s => Enumerable.Range(0, 24).Select(i => s.At(i / 24.0)))];
        var keep = mill is null ? 0 : ProfileCut.RoomMm(mill) + ClearMm;
        bool IsFree(Box box)
            => rim.All(p => box.DistanceTo(p) >= keep)
                && (mill is null || !outline.Bounds.Holds(box.Centre) || !Inside.Of(outline, box.Centre))
                && holes.All(h => box.DistanceTo(h.Hole.MadeAt - zero) >= (Widest(h) / 2) + ClearMm);

        var free = shop.Clamps.SelectMany(c => Candidates(c, stock)).Where(c => IsFree(c.Box)).ToArray();
        var best = (Apart: 0.0, Pair: ImmutableArray<ClampBox>.Empty);
        for (var i = 0; i < free.Length; i++)
        {
            for (var j = i + 1; j < free.Length; j++)
            {
                var apart = free[i].Box.Centre.To(free[j].Box.Centre);
                if (apart > best.Apart + 1e-6 && !free[i].Box.Touches(free[j].Box)) best = (apart, [free[i], free[j]]);
            }
        }

        return best.Pair.Length < 2 ? [] : [Numbered(best.Pair[0], 1), Numbered(best.Pair[1], 2)];
    }

    private static ClampBox Numbered(ClampBox clamp, int number) => clamp with { Name = $"{clamp.Name} {number}" };

    private static double Widest(HolePlan hole) => Math.Max(hole.Hole.MadeDiameter.Mm, hole.Operations.Max(o => o.Step == HoleStep.Chamfer ? 0 : o.Diameter.Mm));

    private static IEnumerable<ClampBox> Candidates(Clamp clamp, Box stock)
    {
        var (along, onto) = (clamp.Width.Mm, clamp.Depth.Mm);
        ClampBox At(double x0, double y0, double x1, double y1) => new(clamp.Name, new Box(x0, y0, x1, y1), clamp.Height.Mm);

        // on the ends first, from the middle of each
        foreach (var y in FromTheMiddle(stock.MinY, stock.MaxY, along))
        {
            yield return At(stock.MinX - OutsideMm, y, stock.MinX + onto, y + along);
            yield return At(stock.MaxX - onto, y, stock.MaxX + OutsideMm, y + along);
        }

        foreach (var x in FromTheMiddle(stock.MinX, stock.MaxX, along))
        {
            yield return At(x, stock.MinY - OutsideMm, x + along, stock.MinY + onto);
            yield return At(x, stock.MaxY - onto, x + along, stock.MaxY + OutsideMm);
        }
    }

    private static IEnumerable<double> FromTheMiddle(double low, double high, double width)
    {
        var middle = (low + high - width) / 2;
        yield return middle;
        for (var step = StepMm; middle - step >= low; step += StepMm)
        {
            yield return middle - step;
            yield return middle + step;
        }
    }
}
