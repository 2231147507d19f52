using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The way of an end mill's centre round the outline, clockwise: climb milling with a spindle that turns clockwise. It starts in the middle of its longest straight flank.</summary>
/// <param name="Mill">The end mill.</param>
/// <param name="Around">The way round, closed, in lines and circular arcs.</param>
/// <param name="Tabs">Where the tool is lifted over a tab: from and to along the way, mm.</param>
/// <param name="Shape">The outline as it comes out: inside corners left round where the end mill is wider.</param>
/// <param name="Corners">Inside corners it leaves round.</param>
internal sealed record ProfileCut(EndMill Mill, Path Around, ImmutableArray<(double FromMm, double ToMm)> Tabs, Path Shape, ImmutableArray<RoundCorner> Corners)
{
    /// <summary>Curves other than circles become lines that stay this close, mm; the tolerance of arcs in NIST IR 6556.</summary>
    private const double LinesWithinMm = 0.002;

    /// <summary>Depth of one pass as a share of the tool's diameter in a slot; common practice.</summary>
    public const double PassShare = 0.5;

    /// <summary>Radius of lead-in and lead-out as a share of the tool's diameter.</summary>
    public const double LeadShare = 0.25;

    /// <summary>How far under the stock the last pass goes, mm.</summary>
    public const double ThroughMm = 0.3;

    /// <summary>How far from the outline the tool and its lead-in reach, mm.</summary>
    public static double RoomMm(EndMill mill) => mill.Diameter.Mm * (1 + LeadShare);

    /// <summary>Middle of each tab on the way of the tool, mm.</summary>
    public IEnumerable<Point> TabCentres => Tabs.Select(t => At((t.FromMm + t.ToMm) / 2));

    private Point At(double along)
    {
        foreach (var s in Around.Segments)
        {
            var length = s.Length;
            if (along <= length) return s.At(along / length);
            along -= length;
        }

        return Around.Start;
    }

    /// <summary>The profile with the widest end mill that gets into every inside corner; else with the narrowest, its corners left round; or why there is none.</summary>
    public static (ProfileCut? Cut, string Why) Of(Results results, Path outline, Machine machine, Point zero)
    {
        if (results.Bench.State == DrilledIn.Profile) return (null, "the piece is profiled already");
        var mills = results.Shop.EndMills.IsDefaultOrEmpty ? [] : results.Shop.EndMills;
        if (mills.IsEmpty) return (null, "there is no end mill in the shop file");
        var why = "";
        var rounder = default(ProfileCut);
        foreach (var mill in mills.OrderByDescending(m => m.Diameter.Mm))
        {
            if (machine.Chuck is { } chuck && mill.Diameter > chuck) continue;
            if (mill.CuttingLength is { } cuts && cuts.Mm < results.Plan.Stock.Thickness.Mm + ThroughMm)
            {
                why = $"the {mill.Name} cuts on {Shown.Mm(cuts)} only";
                continue;
            }

            var radius = mill.Diameter.Mm / 2;
            var offset = OffsetLoop.Of(outline, radius);
            if (offset.Path is not { } loop)
            {
                why = $"the {mill.Name} does not get round it: {offset.Why}";
                continue;
            }

            var corners = RoundCorners.Of(outline, loop, radius);
            var shape = corners.IsEmpty ? outline : OffsetLoop.Of(loop, -radius).Path;
            if (shape is null || corners.Any(c => c.Mm > RoundCorners.MostMm))
            {
                var worst = corners.MaxBy(c => c.Mm)!;
                why = $"the {mill.Name} leaves {Shown.Mm(Length.OfMm(worst.Mm))} in the inside corner at {Places(worst.At + zero)}; a smaller one, or a rounder corner";
                continue;
            }

            var around = FromLongestFlank(Plain(Moments.Of(loop).AreaMm2 > 0 ? loop.Reversed() : loop));
            var tabs = TabPlaces.Of(around, mill, outline);
            if (tabs.Length < 2) return (null, "there is no place for two tabs");
            var cut = new ProfileCut(mill, around, tabs, shape, corners);
            if (corners.IsEmpty) return (cut, "");
            rounder = cut;
        }

        return (rounder, rounder is not null ? "" : why.Length > 0 ? why : "no end mill fits the chuck");
    }

    private static string Places(Point p) => $"x {Shown.Mm(Length.OfMm(p.X))}, y {Shown.Mm(Length.OfMm(p.Y))}";

    /// <summary>The same way in lines and circular arcs.</summary>
    private static Path Plain(Path path) => new([.. path.Segments.SelectMany(Pieces)], closed: true);

    private static IEnumerable<Segment> Pieces(Segment s)
    {
        if (s is Line or Arc { IsCircle: true }) return [s];
        var count = 1;
        while (count < 4096 && Off(s, count) > LinesWithinMm) count *= 2;
        return Enumerable.Range(0, count).Select(i => (Segment)new Line(s.At((double)i / count), s.At((i + 1.0) / count)));
    }

    private static double Off(Segment s, int count)
    {
        var worst = 0.0;
        for (var i = 0; i < count; i++)
        {
            var chord = new Line(s.At((double)i / count), s.At((i + 1.0) / count));
            for (var k = 1; k < 4; k++) worst = Math.Max(worst, Nearest.Distance(chord, s.At((i + (k / 4.0)) / count)));
        }

        return worst;
    }

    private static Path FromLongestFlank(Path path)
    {
        var (longest, length) = (0, 0.0);
        for (var i = 0; i < path.Segments.Length; i++)
        {
            if (path.Segments[i] is not Line || path.Segments[i].Length <= length) continue;
            (longest, length) = (i, path.Segments[i].Length);
        }

        var s = path.Segments[longest];
        return new([s.Part(0.5, 1), .. path.Segments[(longest + 1)..], .. path.Segments[..longest], s.Part(0, 0.5)], closed: true);
    }
}
