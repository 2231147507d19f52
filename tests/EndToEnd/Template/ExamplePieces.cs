using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>The three worked examples as results, built by hand so that the sheets are tested on their own.</summary>
internal static class ExamplePieces
{
    public static Results Hatchet { get; } = MakeHatchet();

    public static Results Kitchen { get; } = MakeKitchen();

    public static Results Paring { get; } = MakeParing();

    public static SheetRequest Request(Results results, PaperSize paper, double margin = 10)
        => new(results, paper, margin, PrintScale.True, Mirror: false, new DateOnly(2025, 11, 25), UnitsShown.Both, "assumed shop");

    private static Results MakeHatchet()
    {
        Point[] rest = [new(130, 31), new(200, 31.5), new(255, 33.5), new(270, 34), new(275, 29), new(275, 7), new(270, 2), new(255, 2.5), new(200, 4.5), new(130, 4), new(84, 3), new(60, 0), new(6, 0), new(0, 6)];
        var segments = new List<Segment>
        {
            new Line(new(0, 6), new(2, 68.78)),
            Arc.Through(new(2, 68.78), new(72, 68.78), 120, large: false, counterClockwise: false),
            new Line(new(72, 68.78), new(76, 45)),
            Arc.Through(new(76, 45), new(88, 33), 12, large: false, counterClockwise: true),
        };
        foreach (var p in rest) segments.Add(new Line(segments[^1].End, p));
        (string, double, double, double)[] holes = [("L1", 100, 18.2, 16), ("L2", 124, 17.6, 15), ("L3", 147, 17.6, 14), ("L4", 169, 17.8, 13), ("L5", 190, 18, 12), ("L6", 210, 18, 11), ("L7", 229, 18, 10), ("lanyard", 258, 18, 8)];
        return Make(
            "Skeleton hatchet 275",
            new Path([.. segments], closed: true),
            holes,
            new SharpenedPart(new(2, 68.78), new(72, 68.78)),
            new Bevel(Grind.Flat, false, Length.OfMm(26), GroundWhen.BeforeHardening, Length.OfMm(1), Length.OfMm(0.5), null, null),
            new Grip(new(150, 18), new(250, 18)),
            new BenchDatum(DrilledIn.Bar, "sawn end at the left", "lower long edge of the bar", new(-1, -1.1), 1, 1, new Box(-1, -1.1, 276, 75.1), ""));
    }

    private static Results MakeKitchen()
    {
        Point[] p = [new(0, 18), new(10, 13.2), new(25, 8.5), new(45, 4.8), new(70, 2.2), new(100, .8), new(140, .1), new(170, 0), new(200, 0), new(202, 20), new(206, 22), new(235, 21.5), new(270, 23), new(300, 21), new(318, 16), new(328, 17), new(330, 22), new(330, 40), new(326, 45), new(318, 46), new(290, 46.5), new(240, 46), new(205, 46), new(150, 46), new(100, 44.5), new(60, 40), new(30, 33), new(10, 24.5)];
        (string, double, double, double)[] holes = [("P1", 222, 34, 5), ("P2", 266, 34.5, 5), ("P3", 310, 33, 5), ("G1", 236.7, 34.2, 9), ("G2", 251.3, 34.3, 9), ("G3", 280.7, 34.5, 9), ("G4", 295.3, 34, 9)];
        return Make(
            "Kitchen knife 200",
            Path.Polygon(p),
            holes,
            new SharpenedPart(new(0, 18), new(200, 0)),
            new Bevel(Grind.Flat, false, null, GroundWhen.AfterHardening, null, Length.OfMm(0.25), null, new PlungeLine(new(198, 0), new(198, 46))),
            null,
            new BenchDatum(DrilledIn.Profile, "butt end at the right", "spine", new(330, 46.5), -1, -1, new Box(0, 0, 330, 46.5), ""));
    }

    private static Results MakeParing()
    {
        Point[] p = [new(0, 9), new(6, 6), new(15, 3.2), new(30, 1.2), new(50, .3), new(70, 0), new(85, 0), new(86, 4), new(90, 5), new(110, 4.5), new(140, 5.5), new(165, 4.5), new(178, 2), new(184, 4), new(185, 10), new(185, 16), new(182, 20), new(170, 21), new(140, 20.5), new(110, 20.8), new(88, 20.5), new(60, 20.2), new(35, 18.5), new(15, 14.5), new(4, 11)];
        (string, double, double, double)[] holes = [("P1", 105, 12.6, 3), ("P2", 165, 12.6, 3)];
        return Make(
            "Paring knife 85",
            Path.Polygon(p),
            holes,
            new SharpenedPart(new(0, 9), new(85, 0)),
            new Bevel(Grind.Hollow, false, Length.OfMm(12), GroundWhen.AfterHardening, null, Length.OfMm(0.2), null, new PlungeLine(new(84, 0), new(84, 20))),
            new Grip(new(95, 12.5), new(180, 12)),
            new BenchDatum(DrilledIn.Rectangle, "sawn end at the left", "lower sawn edge", new(-2, -2), 1, 1, new Box(-2, -2, 187, 23), ""));
    }

    private static Results Make(string name, Path outline, (string Name, double X, double Y, double D)[] holes, SharpenedPart edge, Bevel bevel, Grip? grip, BenchDatum bench)
    {
        var plan = new Plan(name, "B", LengthUnit.Mm, Target.None, new Stock("80CrV2", Length.OfMm(6.35), null, null, ""), outline, Datum.LowerLeft, edge, bevel, grip, null, new Layout(bench.State, null, null), []);
        var shop = new Shop("test", true, UnitsShown.Both, [], [], [], [], [], null, null, null, [], default, default);
        ImmutableArray<PlacedHole> placed = [.. holes.Select(h => new PlacedHole(h.Name, new Point(h.X, h.Y), Length.OfMm(h.D), "", HoleUse.Lightening, HoleMake.Drill, null))];
        var piece = new Region(outline, [.. placed.Select(h => Path.Circle(h.At, h.Diameter.Mm / 2))]);
        var box = outline.Bounds;
        var figures = new OutlineFigures(Area.OfMm2(Moments.Of(piece.Outer).AreaMm2), Length.OfMm(outline.Length), Length.OfMm(box.Width), Length.OfMm(box.Height), Moments.Of(piece.Outer).Centroid, placed.Length, default);
        return new Results(plan, shop, null, placed, piece, figures, [], null, bench, [], []);
    }
}
