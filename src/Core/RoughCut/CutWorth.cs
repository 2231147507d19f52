using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What each candidate cut takes off, and what two of them take off both.</summary>
/// <param name="One">Area beyond each cut, mm².</param>
/// <param name="Both">Area beyond both of two cuts, mm², [i, j] for i before j; 0 when they are half a turn apart or more.</param>
/// <param name="ChordMm">Length of each cut through the whole blank, mm.</param>
public sealed record CutWorth(double[] One, double[,] Both, double[] ChordMm)
{
    /// <summary>Works it out.</summary>
    /// <param name="blank">The blank, convex.</param>
    /// <param name="gone">Convex parts of it that other cuts take off anyway, apart from each other.</param>
    /// <param name="cuts">The candidates, by rising angle.</param>
    public static CutWorth Of(ImmutableArray<Point> blank, ImmutableArray<ImmutableArray<Point>> gone, ImmutableArray<SupportCut> cuts)
    {
        var m = cuts.Length;
        var (one, both, chord) = (new double[m], new double[m, m], new double[m]);
        for (var i = 0; i < m; i++)
        {
            chord[i] = ConvexClip.Chord(blank, cuts[i].Normal, cuts[i].OffsetMm) is { } c ? c.From.To(c.To) : 0;
            Add(blank, i, 1);
            foreach (var g in gone) Add(g, i, -1);
        }

        return new CutWorth(one, both, chord);

        void Add(ImmutableArray<Point> part, int i, double sign)
        {
            Span<Point> beyond = stackalloc Point[part.Length + 2];
            Span<Point> again = stackalloc Point[part.Length + 4];
            var off = beyond[..ConvexClip.Beyond(part.AsSpan(), cuts[i].Normal, cuts[i].OffsetMm, beyond)];
            if (off.Length < 3) return;
            one[i] += sign * ConvexClip.AreaMm2(off);
            for (var j = i + 1; j < m; j++)
            {
                var apart = cuts[j].AngleRadians - cuts[i].AngleRadians;
                if (Math.Abs(apart - Math.PI) < 1e-9) continue;
                var area = ConvexClip.AreaMm2(again[..ConvexClip.Beyond(off, cuts[j].Normal, cuts[j].OffsetMm, again)]);
                both[i, j] += sign * area;
            }
        }
    }
}
