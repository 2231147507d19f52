using System.Collections.Immutable;
using System.Text.Json;
using BenchmarkDotNet.Attributes;
using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Benchmarks;

/// <summary>Shortest rows of equal pieces on a bar.</summary>
[MemoryDiagnoser]
public class Bars
{
    private readonly Path _a = Outline("bar_A40_w50");
    private readonly Path _b = Outline("bar_B24_w150");
    private readonly LaneLayout _row;

    /// <summary>Reads the outlines once.</summary>
    public Bars() => _row = Lane.Of(LanePiece.Of(ReferencePlan.Outline), 60, 4, 6000)!.MostIn(6000)!;

    /// <summary>Forty copies on a bar 50 mm wide.</summary>
    [Benchmark]
    public LaneLayout FortyCopies() => Lane.Of(LanePiece.Of(_a), 50, 0, 9400)!.Lay(40);

    /// <summary>Twenty-four on a bar with much room across.</summary>
    [Benchmark]
    public LaneLayout TwentyFourWithRoom() => Lane.Of(LanePiece.Of(_b), 150, 0, 7300)!.Lay(24);

    /// <summary>The reference plan, 100 Béziers, as many as 6 m hold.</summary>
    [Benchmark]
    public LaneLayout ReferenceOnSixMetres() => Lane.Of(LanePiece.Of(ReferencePlan.Outline), 60, 4, 6000)!.MostIn(6000)!;

    /// <summary>The gaps of that row, on the true outline.</summary>
    [Benchmark]
    public double GapsOfThatRow() => GapCheck.LeastMm(ReferencePlan.Outline, _row.Places, 4);

    private static Path Outline(string name)
    {
        var folder = new System.IO.DirectoryInfo(AppContext.BaseDirectory);
        while (!System.IO.File.Exists(System.IO.Path.Combine(folder.FullName, "Tangwright.slnx"))) folder = folder.Parent!;
        using var json = JsonDocument.Parse(System.IO.File.ReadAllText(System.IO.Path.Combine(folder.FullName, "tests", "fixtures", "nesting", "bar", name + ".json")));
        ImmutableArray<Point> corners = [.. json.RootElement.GetProperty("items")[0].GetProperty("shape").GetProperty("data").EnumerateArray().Select(p => new Point(p[0].GetDouble(), p[1].GetDouble()))];
        return Path.Polygon([.. corners[0] == corners[^1] ? corners[..^1] : corners]);
    }
}
