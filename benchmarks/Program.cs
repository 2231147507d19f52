using System.Diagnostics;
using BenchmarkDotNet.Running;
using Tangwright.Benchmarks;

// "write FILE" writes the reference plan, "cutting-stock FOLDER FILE ..." solves public sets, "quick" measures with a stopwatch, anything else goes to BenchmarkDotNet
if (args is ["write", var file])
{
    File.WriteAllText(file, ReferencePlan.Text);
    return;
}

if (args is ["cutting-stock", var sets, .. var names])
{
    CuttingStock.Run(sets, names);
    return;
}

if (args is ["quick", ..])
{
    Quick();
    return;
}

if (args is ["strip", var folder, var strips, var seconds, .. var seeds])
{
    StripRuns.Run(folder, strips.Split(','), double.Parse(seconds, System.Globalization.CultureInfo.InvariantCulture), [.. seeds.Select(ulong.Parse)]);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(ReferencePlan).Assembly).Run(args);

static void Quick()
{
    var bench = new Geometry();
    var whole = new WholePlan();
    var rough = new RoughCutting();
    var balance = new Balancing();
    Console.WriteLine($"{bench.Rays} base points for the bevel");
    foreach (var (name, run) in new (string, Action)[]
    {
        ("plate moments", () => bench.PlateMoments()),
        ("bevel, two thickness laws", () => bench.Bevel()),
        ("bevel to the spine", () => bench.FullBevel()),
        ("hole placement", () => bench.PlaceHoles()),
        ("row along the midline", () => bench.RowOnMidline()),
        ("stage weights", () => bench.Weights()),
        ("read the plan", () => whole.Read()),
        ("all figures and findings", () => whole.FiguresAndFindings()),
        ("levers: what a mm of each does, 300 sides", () => balance.Slopes()),
        ("levers: alone and together, 300 sides", () => balance.Levers()),
        ("bevel at 8 stations, 300 sides", () => balance.Stations()),
        ("rough cuts, hatchet", () => rough.Hatchet()),
        ("rough cuts, kitchen knife", () => rough.KitchenKnife()),
        ("rough cuts, paring knife", () => rough.ParingKnife()),
        ("rough cuts, skeleton knife", () => rough.SkeletonKnife()),
    })
    {
        var best = double.PositiveInfinity;
        for (var round = 0; round < 60; round++)
        {
            var clock = Stopwatch.StartNew();
            for (var i = 0; i < 10; i++) run();
            best = Math.Min(best, clock.Elapsed.TotalMicroseconds / 10);
        }

        Console.WriteLine($"{name,-28} {best,10:F1} µs");
    }
}
