using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Benchmarks;

/// <summary>Searches of published strip-packing sets for a time: "strip FOLDER NAME,NAME SECONDS SEEDS".</summary>
internal static class StripRuns
{
    /// <summary>Runs and prints a line for each.</summary>
    public static void Run(string folder, string[] names, double seconds, ulong[] seeds)
    {
        foreach (var name in names)
        {
            var (pieces, width) = Read(System.IO.Path.Combine(folder, name + ".json"));
            foreach (var seed in seeds)
            {
                var process = Process.GetCurrentProcess();
                var cpu = process.TotalProcessorTime;
                double Used()
                {
                    process.Refresh();
                    return (process.TotalProcessorTime - cpu).TotalSeconds / 2;
                }

                var clock = Stopwatch.StartNew();
                var (marks, said) = (new[] { 0.02, 0.1, 0.25, 0.5, 0.8, 1.0 }, new List<string>());
                StripLayout? last = null;
                var best = 0.0;
                foreach (var layout in StripSearch.Run(pieces, StripStock.Endless(width), new SearchEffort(long.MaxValue, 2, seed) { ClockShare = () => Used() / seconds }))
                {
                    var at = Used() / seconds;
                    while (said.Count < marks.Length && at > marks[said.Count]) said.Add((100 * best).ToString("F2", CultureInfo.InvariantCulture));
                    (best, last) = (layout.Share, layout);
                }

                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} seed {seed}: {100 * best:F2} % in {clock.Elapsed.TotalSeconds:F1} s wall, {Used():F1} s of two cores; {(ExactOverlap.Of(pieces, last!) is { } bad ? $"OVERLAP {bad}" : "checked clear")}; {last!.Work / 1e6:F1} million weighed; on the way {string.Join(" ", said)}"));
            }
        }
    }

    private static (ImmutableArray<SheetPiece> Pieces, double WidthMm) Read(string path)
    {
        using var json = JsonDocument.Parse(System.IO.File.ReadAllText(path));
        var root = json.RootElement;
        return ([.. root.GetProperty("items").EnumerateArray().Select(i => new SheetPiece(
            [.. i.GetProperty("shape").GetProperty("data").EnumerateArray().Select(p => new Point(p[0].GetDouble(), p[1].GetDouble()))],
            i.GetProperty("demand").GetInt32(),
            [.. i.GetProperty("allowed_orientations").EnumerateArray().Select(a => new PieceTurn(a.GetDouble()))]))], root.GetProperty("strip_height").GetDouble());
    }
}
