using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The profiled piece across at one distance from the datum end.</summary>
/// <param name="FromEnd">Distance from the end measured from.</param>
/// <param name="PlanXMm">The same in the plan's axes, mm.</param>
/// <param name="Low">Lower edge, from the lower or upper extreme measured from.</param>
/// <param name="High">Upper edge, from the same.</param>
/// <param name="Width">From the one to the other.</param>
/// <param name="Least">No-go below this.</param>
/// <param name="Most">Go below this.</param>
/// <param name="IsHollow">Whether the outline is crossed more than twice there: a caliper bridges a hollow.</param>
public sealed record WidthStation(Length FromEnd, double PlanXMm, Length Low, Length High, Length Width, Length Least, Length Most, bool IsHollow)
{
    /// <summary>Whether the flanks are so steep there that calipers half a millimetre beside the station read off by more than the tolerance.</summary>
    public bool IsSteep { get; init; }
}

/// <summary>Widths of the profiled piece at even stations, and what it weighs.</summary>
/// <param name="EndWords">End the stations count from: "left end of the piece".</param>
/// <param name="EdgeWords">Side the heights count from: "lowest point of the piece".</param>
/// <param name="Step">From station to station.</param>
/// <param name="Stations">The stations.</param>
/// <param name="Tolerance">How far a width may be off, either way.</param>
/// <param name="Mass">Mass when profiled, holes not drilled; null without the steel's density.</param>
/// <param name="DrilledMass">The same with its holes.</param>
/// <param name="MassBand">How far the mass may be off when every width is.</param>
/// <param name="MassPerTenth">How much a tenth of a millimetre of thickness weighs.</param>
public sealed record WidthTable(
    string EndWords,
    string EdgeWords,
    Length Step,
    ImmutableArray<WidthStation> Stations,
    Length Tolerance,
    Mass? Mass,
    Mass? DrilledMass,
    Mass? MassBand,
    Mass? MassPerTenth);

/// <summary>Makes the table.</summary>
public static class WidthStations
{
    private const int MostStations = 24;
    private const double EndMm = 2;
    private const double BesideMm = 0.5;

    /// <summary>Stations every 10, 15, 20 or 25 mm from the datum end, further apart on a long piece.</summary>
    public static WidthTable Of(Results r)
    {
        var (box, fromRight, fromTop) = (r.Piece.Outer.Bounds, r.Bench.AlongSign < 0, r.Bench.AcrossSign < 0);
        double[] steps = [10, 15, 20, 25, 50, 100, 200, 500];
        var step = steps.FirstOrDefault(s => box.Width / s <= MostStations, box.Width / MostStations);
        var rays = new RayHits(r.Piece.Outer.Segments);
        var hits = new RayHit[rays.MostHits];
        var (stations, tolerance) = (ImmutableArray.CreateBuilder<WidthStation>(), r.Shop.ProfileTolerance);
        for (var s = step; s < box.Width - EndMm; s += step)
        {
            var x = fromRight ? box.MaxX - s : box.MinX + s;
            var n = rays.Along(new Point(x, box.MinY - 1), new Point(0, 1), 0, box.Height + 2, hits);
            if (n < 2) continue;
            var (low, high) = (hits[0].Distance - 1, hits[n - 1].Distance - 1);
            double Height(double up) => fromTop ? box.Height - up : up;
            var width = Length.OfMm(high - low);
            stations.Add(new WidthStation(
                Length.OfMm(s),
                x,
                Length.OfMm(Height(low)),
                Length.OfMm(Height(high)),
                width,
                width - tolerance,
                width + tolerance,
                Crossings(hits.AsSpan(0, n)) > 2)
            {
                IsSteep = Math.Max(Math.Abs(At(x + BesideMm) - width.Mm), Math.Abs(At(x - BesideMm) - width.Mm)) > tolerance.Mm,
            });
        }

        double At(double x)
        {
            var n = rays.Along(new Point(x, box.MinY - 1), new Point(0, 1), 0, box.Height + 2, hits);
            return n < 2 ? 0 : hits[n - 1].Distance - hits[0].Distance;
        }

        var density = r.Steel?.Density?.Value;
        var edges = r.Outline.Perimeter.Mm * 0.5 * tolerance.Mm;
        return new WidthTable(
            fromRight ? "right end of the piece" : "left end of the piece",
            fromTop ? "highest point of the piece" : "lowest point of the piece",
            Length.OfMm(step),
            stations.ToImmutable(),
            tolerance,
            r.At(Stage.Profiled)?.Mass,
            r.Holes.IsEmpty ? null : r.At(Stage.Drilled)?.Mass,
            density is { } d ? Volume.OfMm3(edges * r.Plan.Stock.Thickness.Mm) * d : null,
            density is { } d2 ? Volume.OfMm3(r.Outline.Area.Mm2 * 0.1) * d2 : null);
    }

    // a corner met exactly counts for both of its sides
    private static int Crossings(ReadOnlySpan<RayHit> hits)
    {
        var (count, last) = (0, double.NegativeInfinity);
        foreach (var h in hits)
        {
            if (h.Distance - last > 1e-6) count++;
            last = h.Distance;
        }

        return count;
    }
}
