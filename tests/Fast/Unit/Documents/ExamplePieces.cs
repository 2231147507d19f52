using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>The three worked examples, as far as the sheets need them: skeleton hatchet, kitchen knife, paring knife.</summary>
internal static class ExamplePieces
{
    public static Results Hatchet() => Of(HatchetPlan(), Shop("Press and mill", assumed: false), Steel("80CrV2", [("C", 0.75, 0.85), ("Cr", 0.4, 0.6), ("V", 0.15, 0.25)]), [549, 549, 499, 459, 455], 110.4, 22.3);

    public static Results Kitchen() => Of(KitchenPlan(), Shop("Kitchen shop", assumed: false), Steel("X65Cr13", [("C", 0.63, 0.68), ("Cr", 12.5, 14.5)]), [320, 207, 202, 202, 137.5], 196.7, 24.1);

    public static Results Paring() => Of(ParingPlan(), Shop("built-in", assumed: true), Steel("X50CrMoV15", [("C", 0.45, 0.55), ("Cr", 14, 15), ("Mo", 0.5, 0.8), ("V", 0.1, 0.2)]), [58, 36.5, 36.3, 36.3, 30.1], 92.5, 10.9);

    public static IEnumerable<Results> All => [Hatchet(), Kitchen(), Paring()];

    private static Results Of(Plan plan, Shop shop, Steel steel, double[] grams, double balance, double across)
    {
        var holes = plan.Holes.OfType<Hole>().Select(h => new PlacedHole(h.Name, h.At, h.Diameter, h.DiameterAsWritten, h.Use, h.Make, null)).ToImmutableArray();
        var bounds = plan.Outline.Bounds;
        var m = Moments.Of(plan.Outline);
        var bench = BenchEdges.Of(plan, shop);
        var stages = Enum.GetValues<Stage>().Select((s, i) => new StageFigures(s, Volume.OfMm3(grams[i] / 7.85e-3), Mass.OfGrams(grams[i]), new Point(balance, across), Length.OfMm(balance), Length.OfMm(across), m)).ToImmutableArray();
        StrikingFigures? striking = plan.Bevel!.Height is { Mm: 26 } ? new StrikingFigures(plan.Grip!.Middle, 0.0031, new Point(38.2, 40), Length.OfMm(89.6), Length.OfMm(161.8)) : null;
        var results = new Results(
            plan,
            shop,
            steel,
            holes,
            new Region(plan.Outline, [.. holes.Select(h => Foundation.Path.Circle(h.At, h.Diameter.Mm / 2))]),
            new OutlineFigures(Area.OfMm2(Math.Abs(m.AreaMm2)), Length.OfMm(plan.Outline.Length), Length.OfMm(bounds.Width), Length.OfMm(bounds.Height), bounds.Centre, holes.Length, Area.OfMm2(holes.Sum(h => Math.PI * h.Diameter.Mm * h.Diameter.Mm / 4))),
            stages,
            striking,
            bench,
            OrderOfWork.Of(plan, shop, holes),
            []);
        return results with { Findings = AllFindings.Of(results) };
    }

    private static Steel Steel(string name, (string, double, double)[] content)
        => new(name, [], "a blade steel", new(Density.OfGramsPerCm3(7.85), "common practice"), new([.. content.Select(c => new ElementContent(c.Item1, c.Item2, c.Item3, null))], "standard"), null, []);

    private static Shop Shop(string name, bool assumed) => new(
        name,
        assumed,
        UnitsShown.Both,
        [
            new Machine("drill press", MachineKind.DrillPress, [500, 800, 1200, 1900, 2500], false, Length.OfMm(13), Length.OfMm(104), null, null, 350, false),
            new Machine("mill-drill", MachineKind.MillDrill, [100, 2000], true, Length.OfMm(16), null, Length.OfMm(300), Length.OfMm(150), 750, true),
        ],
        [.. new[] { 3, 5, 6, 8, 9, 10, 11, 12, 13, 14, 16.0 }.Select(d => new DrillSize($"{d} mm", Length.OfMm(d)))],
        [new DrillSize("5 mm", Length.OfMm(5))],
        [new Saw("band saw", Length.OfMm(1), null)],
        [new Wheel("small wheel", Length.OfMm(20)), new Wheel("contact wheel", Length.OfMm(254))],
        new Oven("oven", null, null, null, null),
        null,
        new Quenchant("medium oil", 15),
        [new Printer("printer", "a4", null, Length.OfMm(5), 100, 100)],
        Length.OfMm(5),
        Length.OfMm(2));

    private static Plan HatchetPlan() => new(
        "Skeleton hatchet 275",
        "A",
        LengthUnit.Mm,
        new Target(Mass.OfGrams(450), Mass.OfGrams(15), Length.OfMm(115), Length.OfMm(5), new HardnessBand(55, 57)),
        new Stock("80CrV2", Length.OfMm(6.35), Length.OfMm(76.2), Length.OfMm(1219), "annealed"),
        HatchetOutline(),
        Datum.LowerLeft with { Name = "head end" },
        new SharpenedPart(new Point(2, 68.78), new Point(72, 68.78)),
        new Bevel(Grind.Flat, false, Length.OfMm(26), GroundWhen.BeforeHardening, Length.OfMm(1), Length.OfMm(0.5), Angle.OfDegrees(16), null),
        new Grip(new Point(150, 18), new Point(250, 18)),
        null,
        new Layout(DrilledIn.Bar, Length.OfMm(5), null),
        Holes(("L1", 100, 18.2, 16, HoleUse.Lightening), ("L2", 124, 17.6, 15, HoleUse.Lightening), ("L3", 147, 17.6, 14, HoleUse.Lightening), ("L4", 169, 17.8, 13, HoleUse.Lightening), ("L5", 190, 18, 12, HoleUse.Lightening), ("L6", 210, 18, 11, HoleUse.Lightening), ("L7", 229, 18, 10, HoleUse.Lightening), ("lanyard", 258, 18, 8, HoleUse.Lanyard)));

    private static Plan KitchenPlan() => new(
        "Kitchen knife 200",
        "B",
        LengthUnit.Mm,
        new Target(null, null, Length.OfMm(190), Length.OfMm(2), new HardnessBand(60, 61)),
        new Stock("X65Cr13", Length.OfMm(2.5), Length.OfMm(50), Length.OfMm(1000), "annealed"),
        Polygon(0, 18, 10, 13.2, 25, 8.5, 45, 4.8, 70, 2.2, 100, .8, 140, .1, 170, 0, 200, 0, 202, 20, 206, 22, 235, 21.5, 270, 23, 300, 21, 318, 16, 328, 17, 330, 22, 330, 40, 326, 45, 318, 46, 290, 46.5, 240, 46, 205, 46, 150, 46, 100, 44.5, 60, 40, 30, 33, 10, 24.5),
        Datum.LowerLeft with { Name = "tip" },
        new SharpenedPart(new Point(0, 18), new Point(200, 0)),
        new Bevel(Grind.Flat, false, null, GroundWhen.AfterHardening, null, Length.OfMm(0.25), Angle.OfDegrees(14), new PlungeLine(new Point(198, 0), new Point(198, 46))),
        new Grip(new Point(206, 34), new Point(330, 31)),
        null,
        new Layout(DrilledIn.Bar, null, null),
        Holes(("P1", 222, 34, 5, HoleUse.Pin), ("P2", 266, 34.5, 5, HoleUse.Pin), ("P3", 310, 33, 5, HoleUse.Pin), ("G1", 236.7, 34.2, 9, HoleUse.Glue), ("G2", 251.3, 34.3, 9, HoleUse.Glue), ("G3", 280.7, 34.5, 9, HoleUse.Glue), ("G4", 295.3, 34, 9, HoleUse.Glue)));

    private static Plan ParingPlan() => new(
        "Paring knife 85",
        "C",
        LengthUnit.Inch,
        new Target(null, null, null, null, new HardnessBand(56, 57)),
        new Stock("X50CrMoV15", Length.OfInches(0.0625), Length.OfMm(25), Length.OfMm(1000), ""),
        Polygon(0, 9, 6, 6, 15, 3.2, 30, 1.2, 50, .3, 70, 0, 85, 0, 86, 4, 90, 5, 110, 4.5, 140, 5.5, 165, 4.5, 178, 2, 184, 4, 185, 10, 185, 16, 182, 20, 170, 21, 140, 20.5, 110, 20.8, 88, 20.5, 60, 20.2, 35, 18.5, 15, 14.5, 4, 11),
        Datum.LowerLeft,
        new SharpenedPart(new Point(0, 9), new Point(85, 0)),
        new Bevel(Grind.Hollow, false, Length.OfMm(12), GroundWhen.AfterHardening, null, Length.OfMm(0.2), Angle.OfDegrees(12), new PlungeLine(new Point(84, 0), new Point(84, 20))),
        null,
        null,
        new Layout(DrilledIn.Bar, null, null),
        Holes(("P1", 110, 12.5, 3, HoleUse.Pin), ("P2", 160, 12.5, 3, HoleUse.Pin)));

    private static ImmutableArray<HoleEntry> Holes(params (string Name, double X, double Y, double D, HoleUse Use)[] holes)
        => [.. holes.Select(h => new Hole(h.Name, new Point(h.X, h.Y), Length.OfMm(h.D), $"{h.D}", h.Use, h.Use == HoleUse.Pin ? HoleMake.Ream : HoleMake.Drill))];

    private static Foundation.Path Polygon(params double[] xy)
        => Foundation.Path.Polygon([.. Enumerable.Range(0, xy.Length / 2).Select(i => new Point(xy[2 * i], xy[(2 * i) + 1]))]);

    private static Foundation.Path HatchetOutline()
    {
        var parts = new List<Segment>();
        var at = new Point(0, 6);
        void To(double x, double y)
        {
            parts.Add(new Line(at, new Point(x, y)));
            at = new Point(x, y);
        }

        void Round(double x, double y, double r, bool counterClockwise)
        {
            parts.Add(Arc.Through(at, new Point(x, y), r, large: false, counterClockwise));
            at = new Point(x, y);
        }

        To(2, 68.78);
        Round(72, 68.78, 120, counterClockwise: false);
        To(76, 45);
        Round(88, 33, 12, counterClockwise: true);
        foreach (var (x, y) in new[] { (130, 31), (200, 31.5), (255, 33.5), (270, 34), (275, 29), (275, 7), (270, 2), (255, 2.5), (200, 4.5), (130, 4), (84, 3), (60, 0), (6, 0), (0, 6.0) }) To(x, y);
        return new Foundation.Path([.. parts], closed: true);
    }
}
