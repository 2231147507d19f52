using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Stretches of the outline that are not cut through: tabs may stay, nothing else.</summary>
internal static class OutlineWalls
{
    private const double StepMm = 0.25;

    /// <summary>A tab may be this long, mm; more is a forgotten stretch.</summary>
    private const double LongestTabMm = 15;

    /// <summary>A tab may be this high as a share of the thickness.</summary>
    private const double TabShare = 0.6;

    public static IEnumerable<ProgramTrouble> Of(IReadOnlyList<Motion> motions, ImmutableArray<ProgramTool> tools, ProgramSetUp setUp, WantedPart wanted)
    {
        if (wanted.Outline is not { } outline) return [];
        var through = Cuts(motions, tools, -setUp.ThicknessMm);
        var nearly = Cuts(motions, tools, -setUp.ThicknessMm * (1 - TabShare));
        var places = Places(outline);
        var isCut = places.ConvertAll(p => IsCut(p, through, wanted.ToleranceMm) || setUp.Stock.Grown(-wanted.ToleranceMm).DistanceTo(p) > 0);
        var last = through.Count > 0 ? through.Max(c => c.Line) : 0;
        if (isCut.TrueForAll(c => c)) return [new("loose part", last, "nothing holds the part at the end of the profile: it can be thrown", "leave tabs on straight flanks")];
        var first = isCut.IndexOf(true);
        if (first < 0) return [new("outline", last, "the outline is not cut", "add the profile to the program")];

        var found = new List<ProgramTrouble>();
        for (var i = 0; i < places.Count;)
        {
            var stretch = new List<Point>();
            while (i < places.Count && !isCut[(first + i) % places.Count]) stretch.Add(places[(first + i++) % places.Count]);
            i++;
            if (stretch.Count == 0) continue;
            var length = stretch.Count * StepMm;
            if (length <= LongestTabMm && stretch.TrueForAll(p => IsCut(p, nearly, wanted.ToleranceMm))) continue;
            found.Add(new("outline", last, $"{Shown.Mm(Length.OfMm(length))} of the outline near x {Shown.Mm(Length.OfMm(stretch[stretch.Count / 2].X))}, y {Shown.Mm(Length.OfMm(stretch[stretch.Count / 2].Y))} is not cut to its line", "lead the tool along it; an inside corner needs a tool that fits into it"));
        }

        return found;
    }

    private static bool IsCut(Point p, List<(Segment Path, Box Near, double Radius, int Line)> cuts, double toleranceMm)
        => cuts.Exists(c => c.Near.Holds(p) && Nearest.Distance(c.Path, p) <= c.Radius + toleranceMm);

    /// <summary>Paths of end mills while their end is at or under a height.</summary>
    private static List<(Segment Path, Box Near, double Radius, int Line)> Cuts(IReadOnlyList<Motion> motions, ImmutableArray<ProgramTool> tools, double heightMm)
    {
        var cuts = new List<(Segment, Box, double, int)>();
        var seen = new HashSet<(Point, Point, Point, bool, int)>();
        foreach (var m in motions)
        {
            if (m.Kind == MotionKind.Rapid || m.AtMost(heightMm + 1e-6) is not { } low || low.To - low.From < 1e-9) continue;
            var tool = SweptTool.Of(tools, m.Tool);
            if (tool.IsDrill || tool.Tool is null || m.Flat() is not { } flat) continue;
            if (low is (0, 1) && !seen.Add((m.From.Flat, m.To.Flat, m.Centre, m.IsCounterClockwise, m.Tool))) continue;
            var path = low is (0, 1) ? flat : flat.Part(low.From, low.To);
            cuts.Add((path, path.Bounds.Grown(tool.Radius + 1), tool.Radius, m.Line));
        }

        return cuts;
    }

    private static List<Point> Places(Path outline)
    {
        var places = new List<Point>();
        foreach (var s in outline.Segments)
        {
            var count = Math.Max(1, (int)Math.Ceiling(s.Length / StepMm));
            for (var i = 0; i < count; i++) places.Add(s.At((double)i / count));
        }

        return places;
    }
}
