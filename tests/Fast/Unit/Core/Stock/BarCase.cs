using System.Text.Json;
using NetTopologySuite.Geometries;
using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;
using Point = Tangwright.Foundation.Point;

namespace Tangwright.Tests.Bars;

/// <summary>One of the public cases of equal pieces on a bar, and another library's word on a layout.</summary>
internal sealed record BarCase(Path Outline, int Count, bool MayTurn, double WidthMm, double KnownMm)
{
    public static BarCase Read(string folder, string name)
    {
        using var json = JsonDocument.Parse(Repository.Text("tests", "fixtures", "nesting", folder, name + ".json"));
        var (root, item) = (json.RootElement, json.RootElement.GetProperty("items")[0]);
        var corners = item.GetProperty("shape").GetProperty("data").EnumerateArray().Select(p => new Point(p[0].GetDouble(), p[1].GetDouble())).ToList();
        if (corners[0] == corners[^1]) corners.RemoveAt(corners.Count - 1);
        return new BarCase(
            Path.Polygon([.. corners]),
            item.GetProperty("demand").GetInt32(),
            item.GetProperty("allowed_orientations").EnumerateArray().Any(a => a.GetDouble() == 180),
            root.GetProperty("strip_height").GetDouble(),
            root.TryGetProperty("known_optimum_length", out var known) ? known.GetDouble() : double.NaN);
    }

    public LaneLayout Lay(double clearanceMm = 0, bool mayTurnOver = false, double shorterMm = 0)
        => Lane.Of(LanePiece.Of(Outline, MayTurn, mayTurnOver), WidthMm - shorterMm, clearanceMm, Count * (Outline.Bounds.Width + clearanceMm))!.Lay(Count);

    /// <summary>The pieces as another library sees them; curves as fine chords inside them, 0.1 µm.</summary>
    public static Polygon[] Placed(Path outline, LaneLayout layout, double spreadMm = 0)
    {
        var corners = Chords.Of(outline, 1e-4);
        return
        [
            .. layout.Places.Select((p, i) =>
            {
                var turn = Lies.Turn(p.Lie, outline.Bounds).Then(Transform.Shift(new Point(p.AlongMm + (i * spreadMm), p.UpMm)));
                var ring = corners.Select(turn.Map).Select(c => new Coordinate(c.X, c.Y)).ToList();
                return new Polygon(new LinearRing([.. ring, ring[0].Copy()]));
            }),
        ];
    }

    /// <summary>Least distance between any two of all pieces, by another library.</summary>
    public static double LeastGap(Polygon[] pieces)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < pieces.Length; i++)
        {
            for (var j = i + 1; j < pieces.Length; j++) least = Math.Min(least, pieces[i].Distance(pieces[j]));
        }

        return least;
    }

    /// <summary>Greatest area two pieces have in common, by another library, mm².</summary>
    public static double MostOverlap(Polygon[] pieces)
    {
        var most = 0.0;
        for (var i = 0; i < pieces.Length; i++)
        {
            for (var j = i + 1; j < pieces.Length; j++)
            {
                if (pieces[i].EnvelopeInternal.Intersects(pieces[j].EnvelopeInternal)) most = Math.Max(most, pieces[i].Intersection(pieces[j]).Area);
            }
        }

        return most;
    }
}
