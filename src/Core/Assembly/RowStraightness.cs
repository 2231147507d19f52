using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How straight a row of holes comes out: what is left of their errors when the best line is laid through them.</summary>
/// <param name="Row">Name of the row.</param>
/// <param name="Making">How the holes are placed.</param>
/// <param name="Rms">Root of the mean square left over, on the average over rows.</param>
/// <param name="WorstUsual">The worst hole of a row; half of all rows do better.</param>
/// <param name="WorstSeldom">The worst hole of a row; 95 of 100 rows do better.</param>
/// <remarks>Across the line each centre is off by N(0, σ); shift and turn of the line take away two, so that the mean square left over is σ² (n − 2) / n.</remarks>
[Formula("How far holes of a row stand off their best line, mm: rms σ √((n - 2) / n), the worst of n by seeded trials", "least-squares-line", "Three holes or more; errors alike and apart from one another. rms exact, worst within 1 %")]
public sealed record RowStraightness(string Row, WayOfMaking Making, Length Rms, Length WorstUsual, Length WorstSeldom)
{
    /// <summary>What a sharp eye begins to see of a hole out of its row, at arm's length; common practice.</summary>
    public static Length Seen { get; } = Length.OfMm(0.1);

    /// <summary>What anybody sees; common practice.</summary>
    public static Length Plain { get; } = Length.OfMm(0.3);

    private const int Trials = 4_000;

    /// <summary>Every row of three holes or more, placed each way that the shop has and that places one hole after another.</summary>
    public static ImmutableArray<RowStraightness> Of(Results r)
        => [.. from row in r.Holes.Where(h => h.Row is not null).GroupBy(h => h.Row!)
               let holes = row.Select(h => h.At).ToImmutableArray()
               where holes.Length > 2
               from way in WayOfMaking.All
               where !way.IsThroughTang && way.IsIn(r.Shop)
               let capability = way.In(r.Shop, r.Drilling.Holes.FirstOrDefault(h => h.Hole.Name == row.First().Name)?.Machine?.Name)
               where capability is not null
               select Of(row.Key, way, holes, PlacingScatter.Of(capability))];

    /// <summary>One row.</summary>
    /// <param name="row">Its name.</param>
    /// <param name="way">How its holes are placed.</param>
    /// <param name="holes">Planned centres, mm; three or more.</param>
    /// <param name="sigma">Scatter along one axis.</param>
    public static RowStraightness Of(string row, WayOfMaking way, ImmutableArray<Point> holes, Length sigma)
    {
        var worst = Worst(holes);
        return new(row, way, Length.OfMm(sigma.Mm * Math.Sqrt((holes.Length - 2.0) / holes.Length)), worst[Trials / 2] * sigma, worst[Trials * 95 / 100] * sigma);
    }

    // in units of sigma, ascending
    private static double[] Worst(ImmutableArray<Point> holes)
    {
        var mean = RigidFit.Mean(holes);
        var along = (holes[^1] - holes[0]).Unit;
        double[] at = [.. holes.Select(h => (h - mean).Dot(along))];
        var spread = at.Sum(s => s * s);
        var off = new double[at.Length];
        var worst = new double[Trials];
        for (var t = 0; t < Trials; t++)
        {
            var chance = SeededChance.OfTrial(GoTogether.UsualSeed, t);
            var (sum, turn) = (0.0, 0.0);
            for (var i = 0; i < off.Length; i++)
            {
                off[i] = NormalDeviate.Next(ref chance);
                sum += off[i];
                turn += off[i] * at[i];
            }

            for (var i = 0; i < off.Length; i++) worst[t] = Math.Max(worst[t], Math.Abs(off[i] - (sum / off.Length) - (turn * at[i] / spread)));
        }

        Array.Sort(worst);
        return worst;
    }
}
