using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>The three worked examples as plans built by hand, and what is needed to work them up.</summary>
internal static class Worked
{
    public static readonly Point[] HatchetHoles = [new(100, 18.2), new(124, 17.6), new(147, 17.6), new(169, 17.8), new(190, 18), new(210, 18), new(229, 18), new(258, 18)];
    public static readonly double[] HatchetDiameters = [16, 15, 14, 13, 12, 11, 10, 8];

    public static Length Mm(double mm) => Length.OfMm(mm);

    public static Steel Steel(double gramsPerCm3) => new("steel", [], "", new(Density.OfGramsPerCm3(gramsPerCm3), "from memory"), null, null, []);

    public static Hole Drilled(string name, Point at, double d, HoleUse use = HoleUse.Lightening) => new(name, at, Mm(d), $"{d}", use, HoleMake.Drill);

    public static Plan Plan(string name, double thickness, Path outline, SharpenedPart? edge = null, Bevel? bevel = null, Grip? grip = null, Datum? datum = null, params ImmutableArray<HoleEntry> holes)
        => new(name, "A", LengthUnit.Mm, Target.None, new Stock("steel", Mm(thickness), null, null, ""), outline, datum ?? Datum.LowerLeft, edge, bevel, grip, null, new Layout(DrilledIn.Profile, null, null), holes);

    public static Plan Hatchet { get; } = Plan(
        "Skeleton hatchet",
        6.35,
        Joined(
            Through(new(0, 6), new(2, 68.78)),
            [Arc.Through(new(2, 68.78), new(72, 68.78), 120, large: false, counterClockwise: false)],
            Through(new(72, 68.78), new(76, 45)),
            [Arc.Through(new(76, 45), new(88, 33), 12, large: false, counterClockwise: true)],
            Through(new(88, 33), new(130, 31), new(200, 31.5), new(255, 33.5), new(270, 34), new(275, 29), new(275, 7), new(270, 2), new(255, 2.5), new(200, 4.5), new(130, 4), new(84, 3), new(60, 0), new(6, 0), new(0, 6))),
        new SharpenedPart(new(2, 68.78), new(72, 68.78)),
        new Bevel(Grind.Flat, false, Mm(26), GroundWhen.BeforeHardening, Mm(1.0), Mm(0.5), Angle.OfDegrees(16), null),
        new Grip(new(150, 18), new(250, 18)),
        null,
        [.. HatchetHoles.Select((p, i) => Drilled($"L{i + 1}", p, HatchetDiameters[i]))]);

    public static Plan Kitchen { get; } = Plan(
        "Kitchen knife",
        2.5,
        Path.Polygon(
            new(0, 18), new(10, 13.2), new(25, 8.5), new(45, 4.8), new(70, 2.2), new(100, .8), new(140, .1), new(170, 0), new(200, 0), new(202, 20), new(206, 22), new(235, 21.5), new(270, 23), new(300, 21), new(318, 16), new(328, 17),
            new(330, 22), new(330, 40), new(326, 45), new(318, 46), new(290, 46.5), new(240, 46), new(205, 46), new(150, 46), new(100, 44.5), new(60, 40), new(30, 33), new(10, 24.5)),
        new SharpenedPart(new(0, 18), new(200, 0)),
        new Bevel(Grind.Flat, false, null, GroundWhen.AfterHardening, null, Mm(0.25), Angle.OfDegrees(14), new PlungeLine(new(198, 0), new(198, 10))),
        null,
        new Datum(new(DatumSide.At, Mm(200)), new(DatumSide.Bottom, default), "heel"),
        [
            Drilled("P1", new(222, 34), 5, HoleUse.Pin), Drilled("P2", new(266, 34.5), 5, HoleUse.Pin), Drilled("P3", new(310, 33), 5, HoleUse.Pin),
            Drilled("G1", new(236.7, 34.2), 9, HoleUse.Glue), Drilled("G2", new(251.3, 34.3), 9, HoleUse.Glue), Drilled("G3", new(280.7, 34.5), 9, HoleUse.Glue), Drilled("G4", new(295.3, 34), 9, HoleUse.Glue),
        ]);

    public static Plan Paring { get; } = Plan(
        "Paring knife",
        1.6,
        Path.Polygon(
            new(0, 9), new(6, 6), new(15, 3.2), new(30, 1.2), new(50, .3), new(70, 0), new(85, 0), new(86, 4), new(90, 5), new(110, 4.5), new(140, 5.5), new(165, 4.5), new(178, 2), new(184, 4), new(185, 10), new(185, 16), new(182, 20),
            new(170, 21), new(140, 20.5), new(110, 20.8), new(88, 20.5), new(60, 20.2), new(35, 18.5), new(15, 14.5), new(4, 11)),
        new SharpenedPart(new(0, 9), new(85, 0)),
        new Bevel(Grind.Hollow, false, Mm(12), GroundWhen.AfterHardening, null, Mm(0.20), Angle.OfDegrees(12), null));

    public static ImmutableArray<StageFigures> Stages(Plan plan, double gramsPerCm3)
    {
        var holes = HolePlacement.Of(plan);
        return StageWeights.Of(plan, holes, Piece(plan, holes), Bench(plan), Steel(gramsPerCm3));
    }

    public static Region Piece(Plan plan, ImmutableArray<PlacedHole> holes) => new(plan.Outline, [.. holes.Select(h => Path.Circle(h.At, h.Diameter.Mm / 2))]);

    public static BenchDatum Bench(Plan plan)
    {
        var box = plan.Outline.Bounds.Grown(2);
        return new BenchDatum(DrilledIn.Profile, "", "", new(box.MinX, box.MinY), 1, 1, box, "");
    }

    private static Path Joined(params Segment[][] parts) => new([.. parts.SelectMany(p => p)], closed: true);

    private static Segment[] Through(params Point[] points) => [.. points.Zip(points.Skip(1), (a, b) => new Line(a, b))];
}
