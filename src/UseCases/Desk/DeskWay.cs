using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>One stop of a tool on the page of the order of holes.</summary>
/// <param name="Number">From 1 within the tool.</param>
/// <param name="Hole">Name of the hole.</param>
/// <param name="X">Distance from the first edge, with unit.</param>
/// <param name="Y">Distance from the second edge, with unit.</param>
/// <param name="First">Where to go past to before, in words; empty where that is not needed.</param>
/// <param name="At">Centre, plan's axes, mm.</param>
public sealed record StopShown(int Number, string Hole, string X, string Y, string First, Point At);

/// <summary>One tool's way.</summary>
/// <param name="Key">Names it on the page.</param>
/// <param name="Says">Tool, step, speed and depth.</param>
/// <param name="From">Where it starts, plan's axes, mm.</param>
/// <param name="Stops">Its stops in order.</param>
/// <param name="Before">What is done before it: clamping anew; empty for most.</param>
public sealed record ToolWayShown(string Key, string Says, Point From, ImmutableArray<StopShown> Stops, ImmutableArray<string> Before);

/// <summary>The way of one machine over one face.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="IsBack">Whether the back face is meant.</param>
/// <param name="Play">How the play is taken out.</param>
/// <param name="Tools">The tools in order.</param>
public sealed record WayShown(string Machine, bool IsBack, string Play, ImmutableArray<ToolWayShown> Tools);

/// <summary>The piece with one tool's way over it.</summary>
/// <param name="ViewBox">View box, y down.</param>
/// <param name="Turned">Transform from the plan's axes to the picture.</param>
/// <param name="Outline">Path data of the outline.</param>
/// <param name="Holes">Path data of the holes.</param>
/// <param name="Way">Path data of the way.</param>
/// <param name="LettersMm">Height of the numbers.</param>
/// <param name="Numbers">Numbers beside the holes: text and place in the picture.</param>
public sealed record WayPicture(string ViewBox, string Turned, string Outline, string Holes, string Way, string LettersMm, ImmutableArray<(string Text, string X, string Y)> Numbers);

/// <summary>The order of holes of an open plan: every machine's tools, their ways, and the picture.</summary>
public static class DeskWay
{
    /// <summary>The way of each machine that makes holes.</summary>
    public static ImmutableArray<WayShown> All(Results r, bool back)
        => [.. r.Drilling.ByMachine.Select(g => MachineWay.Of(g, r.Bench)).OfType<MachineWay>().Select(w => back ? Back(r, w) : Front(r, w))];

    /// <summary>What x and y are measured from, and the state of the work.</summary>
    public static string Edges(Results r) => $"x from the {r.Bench.AlongFrom}, y from the {r.Bench.AcrossFrom}, work {FigureText.Of(r.Bench.State)}. {r.Bench.Remark}".TrimEnd();

    /// <summary>What to add for further pieces in the bar.</summary>
    public static ImmutableArray<string> MorePieces(Results r) => ReadoutText.MorePieces(r, r.Shop.Show);

    /// <summary>The piece with a tool's way.</summary>
    public static WayPicture Picture(Results r, ToolWayShown? tool, bool back)
    {
        var box = r.Bench.StockBox.With(r.Plan.Outline.Bounds).With(r.Bench.Corner);
        var (m, letters) = (0.03 * box.Width, Math.Max(3, 0.022 * box.Width));
        var top = back ? box.MinY : -box.MaxY;
        var side = back ? 1 : -1;
        ImmutableArray<Point> way = tool is null ? [] : [tool.From, .. tool.Stops.Select(s => s.At)];
        return new WayPicture(
            $"{N(box.MinX - m)} {N(top - m)} {N(box.Width + (2 * m))} {N(box.Height + (2 * m))}",
            back ? "scale(1,1)" : "scale(1,-1)",
            PathData.Write(r.Plan.Outline, 1),
            string.Concat(r.Holes.Select(h => PathData.Write(Path.Circle(h.MadeAt, h.MadeDiameter.Mm / 2), 1))),
            way.Length < 2 ? "" : "M" + string.Join(" L", way.Select(p => $"{N(p.X)} {N(p.Y)}")),
            N(letters),
            tool is null ? [] : [.. tool.Stops.Select(s => (s.Number.ToString(CultureInfo.InvariantCulture), N(s.At.X), N((side * s.At.Y) - (0.5 * Diameter(r, s.Hole)) - (0.3 * letters))))]);
    }

    /// <summary>All stops as a file for a spreadsheet.</summary>
    public static OutputFile Csv(PlanOnDesk desk) => new(OpenWork.Stem(desk.Path) + "-readout.csv", CsvWriter.Write(ReadoutCsv.Rows(desk.Results)));

    private static double Diameter(Results r, string hole) => r.Holes.First(h => h.Name == hole).MadeDiameter.Mm;

    private static WayShown Front(Results r, MachineWay way)
    {
        var tools = ImmutableArray.CreateBuilder<ToolWayShown>();
        var from = r.Bench.Corner;
        foreach (var clamping in way.Clampings)
        {
            ImmutableArray<string> before = clamping == way.Clampings[0] ? [] : ReadoutText.ClampAnew(clamping, r.Bench, r.Shop.Show);
            if (clamping.Pins.Length == 2) from = clamping.Pins[1].MadeAt;
            foreach (var tool in clamping.Tools)
            {
                tools.Add(new(Key(way, tools.Count), ReadoutText.Tool(tool.Round.Work, r.Shop.Show), from, Stops(tool.Stops, way), before));
                (before, from) = ([], tool.Stops[^1].Hole.MadeAt);
            }
        }

        return new(way.Machine.Name, false, ReadoutText.Play(way, r.Shop.Show), tools.ToImmutable());
    }

    private static WayShown Back(Results r, MachineWay way)
        => new(way.Machine.Name, true, ReadoutText.Play(way, r.Shop.Show), [new(Key(way, 0), "Every hole once, y counted the other way", r.Bench.Corner, Stops(way.Back(r.Bench), way), [])]);

    private static string Key(MachineWay way, int number) => string.Create(CultureInfo.InvariantCulture, $"{way.Machine.Name}:{number}");

    private static ImmutableArray<StopShown> Stops(ImmutableArray<WayStop> stops, MachineWay way)
        => [.. stops.Select((s, i) => new StopShown(i + 1, s.Hole.Name, Both(s.At.X), Both(s.At.Y), way.Machine.HasReadout ? First(s) : "", s.Hole.MadeAt))];

    private static string First(WayStop stop)
    {
        string[] parts = [stop.PastXMm is { } x ? $"x to {Both(x)}" : "", stop.PastYMm is { } y ? $"y to {Both(y)}" : ""];
        var words = string.Join(", ", parts.Where(p => p.Length > 0));
        return words.Length == 0 ? "" : "first " + words;
    }

    private static string Both(double mm) => Shown.Both(Length.OfMm(mm));

    private static string N(double v) => Shown.Trimmed(v, 3);
}
