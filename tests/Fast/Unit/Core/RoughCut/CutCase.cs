using System.Collections.Immutable;
using System.Text.Json;
using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests.Sawing;

/// <summary>Blanks, pieces and the slow way to the best cuts.</summary>
internal static class CutCase
{
    public static ImmutableArray<Point> Rectangle(Box b) => [new(b.MinX, b.MinY), new(b.MaxX, b.MinY), new(b.MaxX, b.MaxY), new(b.MinX, b.MaxY)];

    /// <summary>The outline of one of the synthetic parts.</summary>
    public static Path Part(string file)
    {
        using var json = JsonDocument.Parse(Repository.Text("tests", "fixtures", "nesting", "bar", file + ".json"));
        return Path.Polygon([.. json.RootElement.GetProperty("items")[0].GetProperty("shape").GetProperty("data").EnumerateArray().Select(p => new Point(p[0].GetDouble(), p[1].GetDouble()))]);
    }

    /// <summary>The best sets by area.</summary>
    public static (BestCuts Best, CutWorth Worth, ImmutableArray<SupportCut> Cuts) Best(ImmutableArray<Point> blank, GrownHull hull, int most, double stepDegrees = 3)
    {
        var cuts = hull.Candidates(stepDegrees);
        var worth = CutWorth.Of(blank, [], cuts);
        return (BestCuts.Of(cuts, worth.One, worth.Both, most), worth, cuts);
    }

    /// <summary>Area cut off by a set, by clipping the blank with one line after the other: knows nothing of overlaps.</summary>
    public static double Removed(ImmutableArray<Point> blank, IEnumerable<SupportCut> cuts)
        => ConvexClip.AreaMm2(blank.AsSpan()) - ConvexClip.AreaMm2(cuts.Aggregate(blank, (left, c) => left.IsEmpty ? left : ConvexClip.Beyond(left, -c.Normal, -c.OffsetMm)).AsSpan());

    /// <summary>The best k of the candidates, by trying every set.</summary>
    public static double Exhaustive(ImmutableArray<Point> blank, ImmutableArray<SupportCut> cuts, int k)
    {
        var best = 0.0;
        void Try(int from, int left, ImmutableList<SupportCut> set)
        {
            if (left == 0)
            {
                best = Math.Max(best, Removed(blank, set));
                return;
            }

            for (var i = from; i < cuts.Length; i++) Try(i + 1, left - 1, set.Add(cuts[i]));
        }

        Try(0, k, []);
        return best;
    }
}
