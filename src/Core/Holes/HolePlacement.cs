using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>All holes of a plan, rows spread out, in the plan's order.</summary>
public static class HolePlacement
{
    /// <summary>Single holes as written; a row's holes named Name1, Name2, ... A row along the midline of a plan without a usable grip falls back on the straight line between its ends, or is left out when it has none.</summary>
    public static ImmutableArray<PlacedHole> Of(Plan plan)
    {
        var placed = ImmutableArray.CreateBuilder<PlacedHole>();
        Midline? midline = null;
        foreach (var entry in plan.Holes)
        {
            if (entry is Hole hole)
            {
                placed.Add(new PlacedHole(hole.Name, hole.At, hole.Diameter, hole.DiameterAsWritten, hole.Use, hole.Make, null) { Pin = hole.Pin, Tube = hole.Tube, IsDrilledHard = hole.IsDrilledHard });
            }
            else if (entry is HoleRow row && row.Count > 0)
            {
                if (row.OnMidline && plan.Grip is { } grip) midline ??= Midline.Of(Moments.Of(plan.Outline).AreaMm2 < 0 ? plan.Outline.Reversed() : plan.Outline, grip);
                var diameters = Diameters(row);
                var centres = Centres(row, diameters, row.OnMidline ? midline : null, plan.Grip);
                for (var i = 0; i < centres.Length; i++)
                {
                    placed.Add(new PlacedHole($"{row.Name}{i + 1}", centres[i], Length.OfMm(diameters[i]), "", row.Use, row.Make, row.Name));
                }
            }
        }

        return placed.ToImmutable();
    }

    /// <summary>Diameters of a row: one for all, two graded evenly, or as written. mm.</summary>
    internal static double[] Diameters(HoleRow row)
    {
        var d = row.Diameters;
        if (d.IsDefaultOrEmpty) return [];
        return [.. Enumerable.Range(0, row.Count).Select(i => d.Length == 2 && row.Count > 1
            ? d[0].Mm + ((d[1].Mm - d[0].Mm) * i / (row.Count - 1))
            : d[Math.Min(i, d.Length - 1)].Mm)];
    }

    private static Point[] Centres(HoleRow row, double[] diameters, Midline? midline, Grip? grip)
    {
        if (diameters.Length == 0) return [];

        // distance from centre to centre is its own part and an equal share of what is left
        var own = new double[diameters.Length - 1];
        if (row.Spacing == RowSpacing.EqualWebs)
        {
            for (var i = 0; i < own.Length; i++) own[i] = 0.5 * (diameters[i] + diameters[i + 1]);
        }

        if (midline is not null)
        {
            var start = row.From is { } f ? midline.StationNear(f) : 0;
            var end = row.To is { } t ? midline.StationNear(t) : midline.Length;
            return AlongMidline(midline, start, end, own);
        }

        if ((row.From ?? grip?.From) is not { } from || (row.To ?? grip?.To) is not { } to) return [];
        return AlongLine(from, to, own);
    }

    private static Point[] AlongLine(Point from, Point to, double[] own)
    {
        var length = from.To(to);
        var share = own.Length == 0 ? 0 : (length - own.Sum()) / own.Length;
        var centres = new Point[own.Length + 1];
        centres[0] = from;
        var at = 0.0;
        for (var i = 0; i < own.Length; i++)
        {
            at += own[i] + share;
            centres[i + 1] = i == own.Length - 1 ? to : from.Toward(to, at / length);
        }

        return centres;
    }

    // stations moved until every chord is its own part and the same share: each stretch of curve is taken as straight at its present slope, which corrects the stations some ten times closer a round
    private static Point[] AlongMidline(Midline midline, double start, double end, double[] own)
    {
        var n = own.Length;
        var stations = Enumerable.Range(0, n + 1).Select(i => n == 0 ? start : start + ((end - start) * i / n)).ToArray();
        var centres = stations.Select(midline.At).ToArray();
        if (n < 2 || start == end) return centres;
        var slope = new double[n];
        for (var round = 0; round < 100; round++)
        {
            // mm of curve to one of station
            for (var i = 0; i < n; i++) slope[i] = Math.Max(1, centres[i].To(centres[i + 1]) / Math.Abs(stations[i + 1] - stations[i]));
            var share = (Math.Abs(end - start) - own.Zip(slope, (o, k) => o / k).Sum()) / slope.Sum(k => 1 / k);
            var (at, moved) = (start, 0.0);
            for (var i = 1; i < n; i++)
            {
                at += Math.Sign(end - start) * Math.Max(1e-3, own[i - 1] + share) / slope[i - 1];
                moved = Math.Max(moved, Math.Abs(at - stations[i]));
                (stations[i], centres[i]) = (at, midline.At(at));
            }

            if (moved < 1e-10) break;
        }

        return centres;
    }
}
