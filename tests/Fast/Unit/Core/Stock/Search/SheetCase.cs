using System.Collections.Immutable;
using System.Text.Json;
using NetTopologySuite.Geometries;
using Tangwright.Core;
using Tangwright.Foundation;
using Point = Tangwright.Foundation.Point;

namespace Tangwright.Tests.Bars;

/// <summary>One of the public sets of unlike pieces, and another library's word on a layout.</summary>
internal sealed record SheetCase(ImmutableArray<SheetPiece> Pieces, double WidthMm, double KnownMm)
{
    public static SheetCase Read(string folder, string name)
    {
        using var json = JsonDocument.Parse(Repository.Text("tests", "fixtures", "nesting", folder, name + ".json"));
        var root = json.RootElement;
        ImmutableArray<SheetPiece> pieces =
        [
            .. root.GetProperty("items").EnumerateArray().Select(i => new SheetPiece(
                [.. i.GetProperty("shape").GetProperty("data").EnumerateArray().Select(p => new Point(p[0].GetDouble(), p[1].GetDouble()))],
                i.GetProperty("demand").GetInt32(),
                [.. i.GetProperty("allowed_orientations").EnumerateArray().Select(a => new PieceTurn(a.GetDouble()))])),
        ];
        return new SheetCase(pieces, root.GetProperty("strip_height").GetDouble(), root.TryGetProperty("known_optimum_length", out var known) ? known.GetDouble() : double.NaN);
    }

    /// <summary>The last layout of a search bounded by its work.</summary>
    public StripLayout Lay(long work, ulong seed = 1, int searches = 2, StripStock? stock = null)
        => StripSearch.Run(Pieces, stock ?? StripStock.Endless(WidthMm), new SearchEffort(work, searches, seed)).Last();

    /// <summary>Area that two pieces have in common or that stands out of the steel, by another library.</summary>
    public double Amiss(StripLayout layout)
    {
        var rings = layout.Places.Select(p =>
        {
            var turned = Pieces[p.Piece].Corners.Select(p.Turn.Transform.Map).ToArray();
            var box = Box.Around(turned);
            var ring = turned.Select(c => new Coordinate(c.X - box.MinX + p.AlongMm, c.Y - box.MinY + p.UpMm)).ToList();
            return (Geometry)new Polygon(new LinearRing([.. ring, ring[0].Copy()]));
        }).ToArray();
        var worst = 0.0;
        for (var i = 0; i < rings.Length; i++)
        {
            var steel = new GeometryFactory().ToGeometry(new Envelope(0, layout.UsedMm[layout.Places[i].Bar], 0, layout.WidthMm));
            worst = Math.Max(worst, rings[i].Area - rings[i].Intersection(steel).Area);
            for (var j = 0; j < i; j++)
            {
                if (layout.Places[i].Bar == layout.Places[j].Bar && rings[i].EnvelopeInternal.Intersects(rings[j].EnvelopeInternal)) worst = Math.Max(worst, rings[i].Intersection(rings[j]).Area);
            }
        }

        return worst;
    }
}
