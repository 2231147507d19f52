using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>The example plans and blades of odd shapes, worked up, for what is made of solids.</summary>
internal static class OddBlades
{
    /// <summary>A belly to a pointed tip, a heel and a grip.</summary>
    public static readonly Path Belly = new(
        [
            new Bezier(new(0, 20), new(20, 4), new(90, -2), new(200, 0)),
            new Line(new(200, 0), new(200, 25)),
            new Line(new(200, 25), new(310, 25)),
            new Line(new(310, 25), new(310, 45)),
            new Bezier(new(310, 45), new(150, 47), new(40, 44), new(0, 20)),
        ],
        closed: true);

    /// <summary>An edge that curves in and out.</summary>
    public static readonly Path Recurved = new(
        [
            new Bezier(new(0, 10), new(30, -20), new(50, -5), new(80, 8)),
            new Bezier(new(80, 8), new(110, 21), new(130, -10), new(180, 0)),
            new Line(new(180, 0), new(180, 50)),
            new Line(new(180, 50), new(0, 50)),
            new Line(new(0, 50), new(0, 10)),
        ],
        closed: true);

    /// <summary>An edge with a notch narrower than a wide bevel.</summary>
    public static readonly Path Notched = new(
        [
            new Line(new(0, 0), new(40, 0)),
            Arc.Through(new(40, 0), new(60, 0), 10, large: false, counterClockwise: false),
            new Line(new(60, 0), new(100, 0)),
            new Line(new(100, 0), new(100, 60)),
            new Line(new(100, 60), new(0, 60)),
            new Line(new(0, 60), new(0, 0)),
        ],
        closed: true);

    /// <summary>An edge of corners both ways.</summary>
    public static readonly Path SawToothed = Path.Polygon(new(0, 0), new(20, 6), new(40, 0), new(60, 6), new(80, 0), new(100, 6), new(120, 0), new(120, 40), new(0, 40));

    public static IReadOnlyList<string> Examples { get; } = ["skeleton-hatchet", "kitchen-knife", "paring-knife", "skeleton-knife"];

    public static IReadOnlyDictionary<string, Results> Odd { get; } = new Dictionary<string, Results>(StringComparer.Ordinal)
    {
        ["run out at a heel"] = Blade(Belly, new(0, 20), new(200, 0), 18),
        ["upright plunge line"] = Blade(Belly, new(0, 20), new(200, 0), 18, new(new(150, 0), new(150, 9))),
        ["oblique plunge line from the edge"] = Blade(Belly, new(0, 20), new(200, 0), 18, new(new(170, 0), new(188, 30))),
        ["holes in the bevel"] = Blade(Belly, new(0, 20), new(200, 0), 18, null, false, (120, 10, 4), (60, 18, 5), (180, 17, 3)),
        ["one-sided"] = Blade(Belly, new(0, 20), new(200, 0), 18, new(new(150, 0), new(150, 9)), true),
        ["full height"] = Blade(Belly, new(0, 20), new(200, 0), null, new(new(196, 0), new(196, 9))),
        ["full height, holes, one-sided"] = Blade(Belly, new(0, 20), new(200, 0), null, new(new(196, 0), new(190, 9)), true, (120, 20, 6), (60, 22, 4), (250, 35, 5)),
        ["bevel wider than the blade"] = Blade(Belly, new(0, 20), new(200, 0), 60),
        ["recurved"] = Blade(Recurved, new(0, 10), new(180, 0), 30),
        ["double edge to a point"] = Blade(
            new Path(
                [
                    new Bezier(new(0, 0), new(40, -14), new(90, -16), new(150, -15)),
                    new Line(new(150, -15), new(150, -9)),
                    new Line(new(150, -9), new(240, -9)),
                    new Line(new(240, -9), new(240, 9)),
                    new Line(new(240, 9), new(150, 9)),
                    new Line(new(150, 9), new(150, 15)),
                    new Bezier(new(150, 15), new(90, 16), new(40, 14), new(0, 0)),
                ],
                closed: true), new(150, 15), new(150, -15), 12, new(new(145, 0), new(145, 5))),
        ["double edge, full height"] = Blade(Path.Polygon(new(0, 0), new(60, -14), new(150, -15), new(240, -9), new(240, 9), new(150, 15), new(60, 14)), new(150, 15), new(150, -15), null, new(new(148, 0), new(148, 5))),
        ["round all sharp"] = Blade(Path.Circle(default, 60), new(60, 0), new(60, 0), 20, null, false, (0, 0, 10)),
        ["notch narrower than the bevel"] = Blade(Notched, new(0, 0), new(100, 0), 25),
        ["saw teeth"] = Blade(SawToothed, new(0, 0), new(120, 0), 15),
        ["sixty holes"] = Blade(Path.Polygon(new(0, 0), new(220, 0), new(220, 60), new(0, 60)), new(0, 0), new(220, 0), 12, null, false, [.. Enumerable.Range(0, 60).Select(i => (10 + (10.0 * (i % 20)), 18 + (14.0 * (i / 20)), 4.0))]),
    };

    public static Results Example(string name)
    {
        var plan = PlanReader.Read(Repository.Text("examples", name + ".plan.toml"), name).Value.Plan;
        var shop = ShopReader.Read(Repository.Text("examples", name + ".shop.toml"), name).Value;
        return WorkUp.Of(plan, shop, SteelList.BuiltIn.Find(plan.Stock.Steel));
    }

    public static Results Of(string name) => Odd.TryGetValue(name, out var odd) ? odd : Example(name);

    public static Results Blade(Path outline, Point from, Point to, double? height, PlungeLine? plunge = null, bool oneSided = false, params (double X, double Y, double Radius)[] holes)
    {
        var plan = new Plan(
            "blade",
            "A",
            LengthUnit.Mm,
            Target.None,
            new Stock("80CrV2", Length.OfMm(4), null, null, ""),
            outline,
            Datum.LowerLeft,
            new SharpenedPart(from, to),
            new Bevel(Grind.Flat, oneSided, height is { } h ? Length.OfMm(h) : null, GroundWhen.BeforeHardening, Length.OfMm(0.6), Length.OfMm(0.3), Angle.OfDegrees(17), plunge),
            null,
            null,
            new Layout(DrilledIn.Profile, null, null),
            [.. holes.Select((c, i) => new Hole($"H{i + 1}", new(c.X, c.Y), Length.OfMm(2 * c.Radius), "", HoleUse.Lightening, HoleMake.Drill))]);
        return WorkUp.Of(plan, ShopReader.BuiltIn, null);
    }
}
