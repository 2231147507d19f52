using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Writes changed segments into the outline's path data. Computed places are rounded to 1e-6 of the plan's unit; ends of the sharpened part that no longer lie on the outline go to the nearest point of it.</summary>
internal static class OutlineText
{
    /// <summary>How far an end of the sharpened part may come to lie off the outline before it is laid on it again, mm.</summary>
    private const double OffMm = 0.002;

    /// <summary>An arc that turns further is written in parts, radians.</summary>
    private const double GreatestSweep = 150 * Math.PI / 180;

    /// <summary>The plan with some segments replaced; where the text cannot be cut up, the whole path is written anew.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="first">First segment replaced.</param>
    /// <param name="count">How many; at most two when they run over the end of the path to its start.</param>
    /// <param name="by">What takes their place.</param>
    /// <param name="edge">Where the ends of the sharpened part are looked for on the new outline; null: where they are.</param>
    public static Checked<PlanFile> Replace(PlanFile file, int first, int count, ImmutableArray<Segment> by, SharpenedPart? edge = null)
    {
        if (Written(file) is not { } path) return PlanEdit.Refused(file, "the plan has no outline", "add [outline]");
        var outline = file.Plan.Outline.Segments;
        var rounded = Rounded(by, file.UnitMm);
        var over = first + count - outline.Length;
        if (over <= 0)
        {
            Path changed = new([.. outline.Take(first), .. rounded, .. outline.Skip(first + count)], closed: true);
            return Write(file, path, PathDataReplace.Of(path.Value, file.UnitMm, first, count, rounded) ?? PathData.Write(changed, file.UnitMm), changed, edge);
        }

        // the path then starts at the last of the new ones, or where they end when there is only one
        var (last, head) = (rounded[..Math.Max(1, rounded.Length - 1)], rounded[Math.Max(1, rounded.Length - 1)..]);
        Path turned = new([.. head, .. outline.Skip(over).Take(outline.Length - count), .. last], closed: true);
        var text = count == 2 ? PathDataReplace.OverStart(path.Value, file.UnitMm, last, head) : null;
        return Write(file, path, text ?? PathData.Write(turned, file.UnitMm), turned, edge);
    }

    /// <summary>The plan with a whole new outline.</summary>
    /// <param name="file">The plan.</param>
    /// <param name="outline">The outline.</param>
    /// <param name="edge">Where the ends of the sharpened part are looked for on it; null: where they are.</param>
    public static Checked<PlanFile> Whole(PlanFile file, Path outline, SharpenedPart? edge)
    {
        if (Written(file) is not { } path) return PlanEdit.Refused(file, "the plan has no outline", "add [outline]");
        var rounded = Rounded(outline, file.UnitMm);
        return Write(file, path, PathData.Write(rounded, file.UnitMm), rounded, edge);
    }

    /// <summary>Where the path stands; null when there is none.</summary>
    public static TomlText? Written(PlanFile file) => (file.Root.Find("outline")?.Value as TomlTable)?.Find("path")?.Value as TomlText;

    /// <summary>The change of the path's own text.</summary>
    public static Splice Splice(PlanFile file, TomlText path, string text)
        => path.ContentOffset >= 0 ? new Splice(path.ContentOffset, path.Value.Length, text) : new Splice(path.Offset, path.Length, PlanEdit.Quoted(text, path, file));

    /// <summary>A closed path with all places rounded to 1e-6 of a unit; arcs near a half turn, whose middle end points and radius do not fix well, are halved first.</summary>
    public static Path Rounded(Path loop, double unitMm)
    {
        var all = Rounded([.. loop.Segments.SelectMany<Segment, Segment>(s => s is Arc a && Math.Abs(a.Sweep) > 2.7 ? [a.Part(0, 0.5), a.Part(0.5, 1)] : [s])], unitMm);
        var start = Near(loop.Start, unitMm);
        all = all.SetItem(0, Between(all[0], start, all[0].End, unitMm));
        return new Path(all.SetItem(all.Length - 1, Between(all[^1], all[^1].Start, start, unitMm)), closed: true);
    }

    /// <summary>A place rounded to 1e-6 of a unit.</summary>
    public static Point Near(Point p, double unitMm) => new(Math.Round(p.X / unitMm, 6) * unitMm, Math.Round(p.Y / unitMm, 6) * unitMm);

    /// <summary>Segments with all places rounded to 1e-6 of a unit; first and last end stay as they are.</summary>
    public static ImmutableArray<Segment> Rounded(ImmutableArray<Segment> given, double unitMm)
    {
        ImmutableArray<Segment> segments = [.. given.SelectMany(InParts)];
        var all = ImmutableArray.CreateBuilder<Segment>(segments.Length);
        for (var i = 0; i < segments.Length; i++)
        {
            var s = segments[i];
            all.Add(Between(s, i == 0 ? s.Start : all[^1].End, i == segments.Length - 1 ? s.End : Near(s.End, unitMm), unitMm));
        }

        return all.ToImmutable();
    }

    /// <summary>An arc near half a turn or more in parts: its ends and a rounded radius would not fix its middle.</summary>
    private static IEnumerable<Segment> InParts(Segment s)
    {
        var parts = s is Arc a ? (int)Math.Ceiling(Math.Abs(a.Sweep) / GreatestSweep) : 1;
        return parts < 2 ? [s] : Enumerable.Range(0, parts).Select(k => s.Part((double)k / parts, (k + 1.0) / parts));
    }

    /// <summary>A segment between other ends close by, its own numbers rounded.</summary>
    private static Segment Between(Segment s, Point start, Point end, double unitMm) => s switch
    {
        Bezier b => new Bezier(start, Near(b.Control1, unitMm), Near(b.Control2, unitMm), end),
        Arc { IsCircle: true } a => Arc.Through(start, end, Math.Round(a.Radius / unitMm, 6) * unitMm, Math.Abs(a.Sweep) > Math.PI, a.IsCounterClockwise),
        Arc a => Arc.Through(start, end, a.AxisU, a.AxisV, Math.Abs(a.Sweep) > Math.PI, a.IsCounterClockwise),
        _ => new Line(start, end),
    };

    private static Checked<PlanFile> Write(PlanFile file, TomlText path, string text, Path wanted, SharpenedPart? goal)
    {
        var splices = new List<Splice> { Splice(file, path, text) };
        if (file.Root.Find("edge")?.Value is TomlTable edge && file.Plan.Edge is { } part)
        {
            foreach (var (key, was, at) in new[] { ("from", part.From, (goal ?? part).From), ("to", part.To, (goal ?? part).To) })
            {
                if (edge.Find(key)?.Value is not { } node || (was.To(at) <= OffMm && Nearest.Distance(wanted, was) <= OffMm)) continue;
                splices.Add(new Splice(node.Offset, node.Length, PlanEdit.PointLike(file, node, PlaceEdit.OnOutline(wanted, file.Plan.Units, at))));
            }
        }

        return PlanSplice.Apply(file, splices, f => Math.Abs(Moments.Of(f.Plan.Outline).AreaMm2 - Moments.Of(wanted).AreaMm2) < 1e-3, "outline.path", "edge.from", "edge.to");
    }
}
