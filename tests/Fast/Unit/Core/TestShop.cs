using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>A shop and plans the findings are tried on, built in code.</summary>
internal static class TestShop
{
    public static Length Mm(double mm) => Length.OfMm(mm);

    public static DrillSize Size(double mm) => new($"{mm} mm", Mm(mm));

    public static Shop Own { get; } = new(
        "bench",
        IsAssumed: false,
        UnitsShown.Both,
        [new Machine("drill press", MachineKind.DrillPress, [500, 1000, 2000], false, Mm(13), null, null, null, null, false)],
        [.. new[] { 3.0, 5, 6, 8, 10, 12, 15.5, 16 }.Select(Size)],
        [Size(5)],
        [new Saw("band saw", Mm(1), null)],
        [new Wheel("19 mm wheel", Mm(19)), new Wheel("250 mm wheel", Mm(250))],
        new Oven("kiln", null, null, null, null),
        null,
        new Quenchant("medium oil", 15),
        [new Printer("office printer", "a4", null, Mm(5), 100, 100)],
        Mm(5),
        Mm(3))
    { KnownHandles = Inputs.HandleList.BuiltIn.All };

    public static Steel Steel { get; } = new("80CrV2", [], "carbon steel", new Sourced<Density>(Density.OfGramsPerCm3(7.85), SourceTag.FromMemory), null, null, []);

    /// <summary>A plain plate 200 x 40 mm, 5 mm thick, in a 50 mm bar: nothing to find.</summary>
    public static Plan Plate { get; } = new(
        "plate",
        "A",
        LengthUnit.Mm,
        Target.None,
        new Stock("80CrV2", Mm(5), Mm(50), Mm(500), "annealed"),
        Path.Polygon(new Point(0, 0), new Point(200, 0), new Point(200, 40), new Point(0, 40)),
        Datum.LowerLeft,
        null,
        null,
        null,
        null,
        new Layout(DrilledIn.Bar, null, null),
        []);

    /// <summary>The worked example of the skeleton hatchet.</summary>
    public static Plan Hatchet { get; } = Plate with
    {
        Name = "Skeleton hatchet 275",
        Stock = new Stock("80CrV2", Mm(6.35), Mm(76.2), null, "annealed"),
        Outline = PathData.Read("M 0 6 L 2 68.78 A 120 120 0 0 0 72 68.78 L 76 45 A 12 12 0 0 1 88 33 L 130 31 L 200 31.5 L 255 33.5 L 270 34 L 275 29 L 275 7 L 270 2 L 255 2.5 L 200 4.5 L 130 4 L 84 3 L 60 0 L 6 0 Z", 1).Paths[0],
        Edge = new SharpenedPart(new Point(2, 68.78), new Point(72, 68.78)),
        Bevel = new Bevel(Grind.Flat, false, Mm(26), GroundWhen.BeforeHardening, Mm(1), Mm(0.5), Angle.OfDegrees(16), null),
        Grip = new Grip(new Point(150, 18), new Point(250, 18)),
        Holes =
        [
            Hole("L1", 100, 18.2, 16), Hole("L2", 124, 17.6, 15), Hole("L3", 147, 17.6, 14), Hole("L4", 169, 17.8, 13),
            Hole("L5", 190, 18, 12), Hole("L6", 210, 18, 11), Hole("L7", 229, 18, 10), Hole("lanyard", 258, 18, 8),
        ],
    };

    public static Hole Hole(string name, double x, double y, double d, HoleMake make = HoleMake.Drill)
        => new(name, new Point(x, y), Mm(d), $"{d}", HoleUse.Lightening, make);

    /// <summary>Results as far as the findings need them; stages only when given.</summary>
    public static Results WorkedUp(Plan plan, Shop? shop = null, Steel? steel = null, bool noSteel = false, params ImmutableArray<StageFigures> stages)
    {
        shop ??= Own;
        ImmutableArray<PlacedHole> holes = [.. plan.Holes.OfType<Hole>().Select(h => new PlacedHole(h.Name, h.At, h.Diameter, h.DiameterAsWritten, h.Use, h.Make, null) { Pin = h.Pin, IsDrilledHard = h.IsDrilledHard })];
        var piece = new Region(plan.Outline, [.. holes.Select(h => Path.Circle(h.At, h.Diameter.Mm / 2))]);
        var box = plan.Outline.Bounds;
        var area = Moments.Of(piece.Outer);
        var outline = new OutlineFigures(Area.OfMm2(area.AreaMm2), Mm(plan.Outline.Length), Mm(box.Width), Mm(box.Height), box.Centre, holes.Length, default);
        var bench = BenchEdges.Of(plan, shop);
        steel = noSteel ? null : steel ?? Steel;
        var drilling = DrillPlan.Of(plan, shop, steel, holes, bench);
        var results = new Results(plan, shop, steel, holes, piece, outline, stages, null, bench, OrderOfWork.Of(plan, shop, holes, drilling), []) { Drilling = drilling };
        return results with { Findings = AllFindings.Of(results) };
    }
}
