using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Thickness at one height above the edge.</summary>
/// <param name="Up">Height, square to the edge.</param>
/// <param name="Soft">Before hardening; null when the bevel is ground hard.</param>
/// <param name="Finished">Ground finished, not sharpened.</param>
public readonly record struct BevelThickness(Length Up, Length? Soft, Length Finished);

/// <summary>The bevel at one place of the edge, looked at square to the edge.</summary>
/// <param name="Name">"S1".</param>
/// <param name="FromDatum">Along the piece from the datum, into it.</param>
/// <param name="Foot">Place on the edge, plan's axes, mm.</param>
/// <param name="Inward">Direction square to the edge, into the steel, length 1.</param>
/// <param name="Height">Height of the bevel there.</param>
/// <param name="Spine">From edge to spine, square to the edge.</param>
/// <param name="Stock">Thickness of the flat faces at the shoulder.</param>
/// <param name="SoftAngle">Angle per side before hardening, of the straight line from edge to shoulder; null when ground hard.</param>
/// <param name="FinishedAngle">The same finished.</param>
/// <param name="Thicknesses">Thickness at stated heights, those under the shoulder.</param>
public sealed record BevelStation(
    string Name,
    Length FromDatum,
    Point Foot,
    Point Inward,
    Length Height,
    Length Spine,
    Length Stock,
    Angle? SoftAngle,
    Angle FinishedAngle,
    ImmutableArray<BevelThickness> Thicknesses)
{
    /// <summary>Shoulder of the bevel, plan's axes, mm.</summary>
    public Point Shoulder => Foot + (Inward * Height.Mm);
}

/// <summary>The bevel at even places along the edge.</summary>
/// <param name="Stations">From the datum on; none where nothing is ground.</param>
/// <param name="Plunge">Ends of the plunge line on the outline, plan's axes, mm; null without one.</param>
public sealed record BevelTable(ImmutableArray<BevelStation> Stations, (Point A, Point B)? Plunge)
{
    /// <summary>Spread of angles along the edge above which a jig of one angle does not follow, degrees per side; common practice.</summary>
    public const double JigDegrees = 0.3;

    /// <summary>Whether the angles differ too much for a jig of one angle.</summary>
    public bool WantsManyAngles => Range is { } r && r.Steepest.Degrees - r.Flattest.Degrees > JigDegrees;

    /// <summary>Greatest height of the bevel; 0 without stations.</summary>
    public Length Highest => Length.OfMm(Stations.Select(s => s.Height.Mm).DefaultIfEmpty(0).Max());

    /// <summary>Greatest distance from edge to spine; 0 without stations.</summary>
    public Length BladeHeight => Length.OfMm(Stations.Select(s => s.Spine.Mm).DefaultIfEmpty(0).Max());

    /// <summary>Flattest and steepest finished angle; null without stations.</summary>
    public (Angle Flattest, Angle Steepest)? Range => Stations.IsEmpty ? null : (Angle.OfRadians(Stations.Min(s => s.FinishedAngle.Radians)), Angle.OfRadians(Stations.Max(s => s.FinishedAngle.Radians)));
}

/// <summary>Makes the table.</summary>
public static class BevelStations
{
    /// <summary>Stations when nobody says how many.</summary>
    public const int Usual = 8;

    /// <summary>Most stations.</summary>
    public const int Most = 60;

    /// <summary>Heights thickness is told at, mm.</summary>
    public static ImmutableArray<double> HeightsMm { get; } = [2, 5, 10, 20];

    private const double LeastHeightMm = 1;

    /// <summary>Stations at even places along the edge, its ends left out; null without edge or bevel.</summary>
    public static BevelTable? Of(Results r, int count = Usual)
    {
        if (EdgeSpan.Of(r.Plan, r.Piece) is not { } edge) return null;
        var total = edge.Path.Length;
        return Of(r, edge, Enumerable.Range(0, count).Select(i => At(edge.Path, total * (i + 0.5) / count)));
    }

    /// <summary>Stations where the edge passes given x of the plan.</summary>
    public static BevelTable? AtX(Results r, params ImmutableArray<double> planXMm)
    {
        if (EdgeSpan.Of(r.Plan, r.Piece) is not { } edge) return null;
        return Of(r, edge, planXMm.Select(x => Passing(edge.Path, x)).OfType<(Point, Point)>());
    }

    private static BevelTable? Of(Results r, EdgeSpan edge, IEnumerable<(Point Foot, Point Along)> places)
    {
        if (r.Plan.Bevel is not { } bevel) return null;
        var finished = GrindProfile.Finished(r.Plan) with { SharpenTangent = 0 };
        var soft = bevel.Ground == GroundWhen.BeforeHardening ? GrindProfile.BeforeHardening(r.Plan) : null;
        var rays = new RayHits(r.Piece.Outer.Segments);
        var (hits, full) = (new RayHit[rays.MostHits], new FullHeight(r.Piece, edge, new RayHits(r.Piece)));
        var far = r.Piece.Outer.Bounds.Width + r.Piece.Outer.Bounds.Height;
        var side = bevel.Plunge is { } line ? (line.A, SteelThickness.GroundSide(edge, line)) : ((Point, Point)?)null;
        var stations = new List<BevelStation>();
        foreach (var (foot, along) in places)
        {
            var inward = along.Left;
            if (side is { } p && (foot - p.Item1).Dot(p.Item2) < 0) continue;
            if (rays.Along(foot, inward, 1e-6, far, hits) == 0) continue;
            var spine = hits[0].Distance;
            var height = finished.IsFull ? full.Along(foot, inward, out _) : bevel.Height?.Mm ?? double.PositiveInfinity;
            if (height <= 0) continue;
            var face = new FaceAlong(finished, foot.X, inward.X, height);
            if (double.IsInfinity(height)) height = face.Ends(finished.Reach(height)).Bevel;
            height = Math.Min(height, spine);
            if (height < LeastHeightMm) continue;
            var softFace = soft is null ? (FaceAlong?)null : new FaceAlong(soft, foot.X, inward.X, finished.FlatTangent is null ? (finished.IsFull ? height : bevel.Height!.Value.Mm) : double.PositiveInfinity);
            var stock = face.Flat(height);
            stations.Add(new BevelStation(
                "",
                FromDatum.Of(r.Plan, foot).Along,
                foot,
                inward,
                Length.OfMm(height),
                Length.OfMm(spine),
                Length.OfMm(stock),
                soft is null ? null : BevelAngle.Of(softFace!.Value.At(height), soft.EdgeMm, height, bevel.OneSided),
                BevelAngle.Of(face.At(height), finished.EdgeMm, height, bevel.OneSided),
                [.. HeightsMm.Where(h => h < height).Select(h => new BevelThickness(Length.OfMm(h), softFace is { } s ? Length.OfMm(s.At(h)) : null, Length.OfMm(face.At(h))))]));
        }

        return new BevelTable([.. stations.OrderBy(s => s.FromDatum.Mm).Select((s, i) => s with { Name = $"S{i + 1}" })], bevel.Plunge is { } plunge ? Ends(r, plunge, rays, hits) : null);
    }

    private static (Point Foot, Point Along) At(Path path, double length)
    {
        foreach (var s in path.Segments)
        {
            if (length <= s.Length)
            {
                // near enough the even place on a curve
                var t = Math.Clamp(length / s.Length, 0, 1);
                return (s.At(t), s.Tangent(t));
            }

            length -= s.Length;
        }

        return (path.End, path.Segments[^1].Tangent(1));
    }

    private static (Point, Point)? Passing(Path path, double x)
    {
        const int Steps = 64;
        foreach (var s in path.Segments)
        {
            for (var i = 0; i < Steps; i++)
            {
                var (low, high) = ((double)i / Steps, (i + 1.0) / Steps);
                if ((s.At(low).X - x) * (s.At(high).X - x) > 0) continue;
                var rises = s.At(high).X > s.At(low).X;
                for (var k = 0; k < 60; k++)
                {
                    var middle = 0.5 * (low + high);
                    if (s.At(middle).X < x == rises) low = middle;
                    else high = middle;
                }

                return (s.At(low), s.Tangent(low));
            }
        }

        return null;
    }

    private static (Point A, Point B)? Ends(Results r, PlungeLine plunge, RayHits rays, RayHit[] hits)
    {
        var along = (plunge.B - plunge.A).Unit;
        var start = plunge.A + (along * (r.Piece.Outer.Bounds.Centre - plunge.A).Dot(along));
        var far = r.Piece.Outer.Bounds.Width + r.Piece.Outer.Bounds.Height;
        var n = rays.Along(start, along, -far, far, hits);
        return n < 2 ? null : (start + (along * hits[0].Distance), start + (along * hits[n - 1].Distance));
    }
}
