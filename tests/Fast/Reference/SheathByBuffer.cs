using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>The sheath's cut line against the buffer of another library about the blade it covers.</summary>
public class SheathByBuffer
{
    [Theory]
    [InlineData("kitchen-knife", "leather", 15.0, null)]
    [InlineData("kitchen-knife", "two sheets", 25.0, null)]
    [InlineData("paring-knife", "leather", 14.0, null)]
    [InlineData("paring-knife", "sheet", 25.0, 95.0)]
    [InlineData("skeleton-knife", "leather", 16.0, null)]
    public void Cut_and_area_are_those_of_the_buffer(string example, string kind, double seam, double? mouth)
    {
        var text = System.IO.File.ReadAllText(Repository.Path("examples", example + ".plan.toml"));
        if (text.IndexOf("[sheath]", StringComparison.Ordinal) is var at and > 0) text = text[..at];
        text += $"\n[sheath]\nkind = \"{kind}\"\nseam = {seam.ToString(System.Globalization.CultureInfo.InvariantCulture)}\n{(mouth is { } x ? $"mouth = {x.ToString(System.Globalization.CultureInfo.InvariantCulture)}\n" : "")}";
        var read = PlanReader.Read(text, "x");
        Assert.True(read.IsGood, string.Join("\n", read.Faults));
        var piece = new Region(read.Value.Plan.Outline, []);
        if (Moments.Of(piece.Outer).AreaMm2 < 0) piece = new Region(piece.Outer.Reversed(), []);
        var p = SheathPattern.Of(read.Value.Plan, piece, out var why);
        Assert.True(p is not null, why);

        // the outline swept out of the mouth, put together by the other library, then its hull with the corner beside the tip
        var blade = Polygon(Chords.Of(piece.Outer, 0.002).Select(p.Pocket.ToSheath.Map));
        Geometry inside = blade.Intersection(Box(0, -1000, 1000, 1000));
        Assert.Equal(p.Pocket.Depth.Mm, inside.EnvelopeInternal.MaxX, 0.003);
        Assert.Equal(p.Pocket.Widest.Mm, -inside.EnvelopeInternal.MinY, 0.003);
        Assert.Equal(0, inside.EnvelopeInternal.MaxY, 0.003);
        var moved = NetTopologySuite.Geometries.Utilities.AffineTransformation.TranslationInstance(-inside.EnvelopeInternal.MaxX, 0).Transform(inside);
        var swept = inside.Union(moved).ConvexHull().Intersection(Box(0, -1000, 1000, 1000));
        var room = swept.Union(Box(0, -1, inside.EnvelopeInternal.MaxX, 0)).ConvexHull();
        var grown = room.Buffer(seam, new BufferParameters(90) { SimplifyFactor = 1e-5 }).Intersection(kind == "two sheets" ? Box(0, -1000, 1000, 1000) : Box(0, -1000, 1000, 0));
        var own = p.IsFolded ? (Moments.Of(p.Cut).AreaMm2 - (p.Fold.Mm * p.BlankLength.Mm)) / 2 : Moments.Of(p.Cut).AreaMm2;
        Assert.Equal(1, Math.Abs(own) / grown.Area, 2e-4);

        // and no point of the cut is off the buffer's rim, which leaves out the arcs of corners of a few degrees
        var rim = grown.Boundary;
        foreach (var q in p.Cut.Segments.SelectMany(s => new[] { s.Start, s.At(0.37), s.At(0.5) }).Where(q => q.Y <= -p.FaceFrom.Mm))
            Assert.InRange(rim.Distance(new NetTopologySuite.Geometries.Point(q.X, q.Y + p.FaceFrom.Mm)), 0, 6e-4 * seam);
    }

    private static Polygon Polygon(IEnumerable<Foundation.Point> points)
    {
        Coordinate[] all = [.. points.Select(q => new Coordinate(q.X, q.Y))];
        return new Polygon(new LinearRing([.. all, all[0]]));
    }

    private static Polygon Box(double x0, double y0, double x1, double y1) => Polygon([new(x0, y0), new(x1, y0), new(x1, y1), new(x0, y1)]);
}
