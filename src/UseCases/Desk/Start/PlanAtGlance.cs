using System.Collections.Concurrent;
using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A small drawing: outline and holes, y up, mm.</summary>
/// <param name="WidthMm">Width of the piece.</param>
/// <param name="HeightMm">Height of the piece.</param>
/// <param name="ViewBox">View box with a rim, y down.</param>
/// <param name="Outline">Path data of the outline.</param>
/// <param name="Holes">Path data of all holes.</param>
public sealed record SmallDrawing(double WidthMm, double HeightMm, string ViewBox, string Outline, string Holes)
{
    private const double RimMm = 3;

    /// <summary>Of a worked-up plan.</summary>
    internal static SmallDrawing Of(Results r)
    {
        var b = r.Plan.Outline.Bounds;
        string N(double v) => Shown.Trimmed(v, 2);
        return new SmallDrawing(
            b.Width + (2 * RimMm),
            b.Height + (2 * RimMm),
            $"{N(b.MinX - RimMm)} {N(-b.MaxY - RimMm)} {N(b.Width + (2 * RimMm))} {N(b.Height + (2 * RimMm))}",
            PathData.Write(r.Plan.Outline, 1),
            string.Join(' ', r.Holes.Take(200).Select(h => PathData.Write(Path.Circle(h.At, 0.5 * h.Diameter.Mm), 1))));
    }
}

/// <summary>What the first page shows of a plan: a small drawing, its weight, how much was found.</summary>
/// <param name="Stem">Name of the plan without its ending.</param>
/// <param name="Changed">When it was last changed.</param>
/// <param name="Title">Its own name; empty while it cannot be read.</param>
/// <param name="Drawing">The drawing; null while it cannot be read.</param>
/// <param name="Weight">Weight of the finished steel.</param>
/// <param name="Found">Number of findings in words, or why it cannot be read.</param>
/// <param name="IsWrong">Whether it holds errors or cannot be read.</param>
public sealed record PlanAtGlance(string Stem, DateTime Changed, string Title, SmallDrawing? Drawing, string Weight, string Found, bool IsWrong)
{
    /// <summary>So many plans are drawn; the rest is listed by name.</summary>
    public const int MostDrawn = 40;

    private static readonly ConcurrentDictionary<string, (string Stamp, PlanAtGlance Seen)> Known = new(StringComparer.Ordinal);

    /// <summary>The plans of the folder, last changed first.</summary>
    public static ImmutableArray<PlanAtGlance> InFolder(DeskFolder folder)
        => [.. folder.Plans().OrderByDescending(p => p.Changed).ThenBy(p => p.Stem, StringComparer.Ordinal).Select((p, i) => i < MostDrawn ? Of(folder, p) : new PlanAtGlance(p.Stem, p.Changed, "", null, "", "", false))];

    /// <summary>The examples to copy, each with its small drawing: key, what it is.</summary>
    public static ImmutableArray<(string Like, string Says, SmallDrawing? Drawing)> Examples { get; } =
        [.. NewOnDesk.Examples.Select(e => (e.Like, e.Says, Example(e.Like)))];

    /// <summary>The scale common to some drawings: the share of the room each takes, so that all are to one scale.</summary>
    /// <param name="drawings">The drawings.</param>
    public static double WidestMm(IEnumerable<SmallDrawing?> drawings) => drawings.Max(d => d?.WidthMm) ?? 1;

    private static SmallDrawing? Example(string like)
        => NewPlan.Starter(like).Then(text => PlanReader.Read(text, like)) is { IsGood: true, Value: var file }
            ? SmallDrawing.Of(WorkUp.Of(file.Plan, ShopReader.BuiltIn, null))
            : null;

    private static PlanAtGlance Of(DeskFolder folder, PlanInFolder plan)
    {
        if (folder.PathOf(plan.Stem) is not { IsGood: true, Value: var path }) return new(plan.Stem, plan.Changed, "", null, "", "cannot be read", true);
        var stamp = $"{plan.Changed.Ticks} {ShopInUse.Stamp(path)}";
        if (Known.TryGetValue(path, out var known) && known.Stamp == stamp) return known.Seen;
        var work = OpenWork.Of(path, null);
        var seen = work.IsGood ? Of(plan, work.Value.WorkUp()) : new PlanAtGlance(plan.Stem, plan.Changed, "", null, "", "cannot be read: " + work.Faults[0].Message, true);
        if (Known.Count > 500) Known.Clear();
        Known[path] = (stamp, seen);
        return seen;
    }

    private static PlanAtGlance Of(PlanInFolder plan, Results r)
    {
        var weighs = DeskFigures.Main(r)[0];
        int Count(Severity s) => r.Findings.Count(f => f.Severity == s);
        string Some(int n, string one) => n == 0 ? "" : $"{n} {one}{(n == 1 ? "" : "s")}";
        var found = string.Join(", ", new[] { Some(Count(Severity.Error), "error"), Some(Count(Severity.Warning), "warning"), Some(Count(Severity.Note), "note") }.Where(t => t.Length > 0));
        return new PlanAtGlance(plan.Stem, plan.Changed, r.Plan.Name, SmallDrawing.Of(r), $"{weighs.Number} {weighs.Unit}".Trim(), found.Length == 0 ? "nothing found" : found, Count(Severity.Error) > 0);
    }
}
