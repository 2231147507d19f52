using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The steps of a program: all spots, all drilled sizes, reamers, bores, and the profile last, so that the stock stays stiff and clamped.</summary>
internal static class ToolpathOf
{
    /// <summary>Height from which a drill feeds, mm; common practice.</summary>
    private const double RetractMm = 2;

    /// <summary>How far over the highest clamp the tool crosses, mm; common practice.</summary>
    private const double OverClampsMm = 5;

    private static readonly ImmutableArray<HoleStep> InOrder = [HoleStep.Spot, HoleStep.Pilot, HoleStep.Drill, HoleStep.Ream, HoleStep.Bore];

    public static Toolpath The(Plan plan, ProgramSetUp setUp, ImmutableArray<HolePlan> holes, ProfileCut? profile)
    {
        var safe = Math.Ceiling(setUp.Clamps.Max(c => c.TopZMm) + OverClampsMm);
        var (tools, steps) = (new List<ProgramTool>(), ImmutableArray.CreateBuilder<ToolpathStep>());
        var work = holes.SelectMany(h => h.Operations.Select(o => (Hole: h.Hole, Work: o))).Where(w => InOrder.Contains(w.Work.Step) && !IsByHand(w.Work));
        foreach (var tool in work.GroupBy(w => (Form: Form(w.Work.Step), w.Work.Diameter.Mm, w.Work.Tool)).OrderBy(g => InOrder.IndexOf(g.Min(w => w.Work.Step))).ThenBy(g => g.Key.Mm))
        {
            var first = tool.First().Work;
            var mill = tool.Key.Form == ToolForm.EndMill ? EndMillOf(profile, first) : null;
            var speed = tool.Min(w => w.Work.Speed!.SetRpm);
            steps.Add(new ToolStep(Tool(tools, tool.Key.Form, first, mill?.CuttingLength), Math.Round(speed)));
            foreach (var (hole, o) in NearestFirst(tool, setUp.ZeroAt))
            {
                var at = hole.MadeAt - setUp.ZeroAt;
                var feed = Math.Round(o.FeedMmPerTurn * speed, 1);
                if (o.Step == HoleStep.Bore) steps.AddRange(BoreOnHelix.Steps(hole.MadeDiameter, o.Diameter, at, setUp.ThicknessMm, feed, safe));
                else steps.Add(new DrillStep(hole.Name, at, RetractMm, -o.DepthMm, feed, o.PeckMm, o.Step == HoleStep.Spot ? 0.2 : 0, o.Step == HoleStep.Ream));
            }
        }

        if (profile is not null)
        {
            var speed = MillingFeed.TurnsPerMin(profile.Mill, setUp.Machine);
            var m = profile.Mill;
            var known = tools.Find(t => t.Form == ToolForm.EndMill && t.Name == m.Name);
            if (known is null)
            {
                known = new ProgramTool(tools.Count + 1, m.Name, ToolForm.EndMill, m.Diameter.Mm, 180, m.CuttingLength?.Mm);
                tools.Add(known);
            }

            if (steps.OfType<ToolStep>().LastOrDefault() is not { } last || last.Tool != known || Math.Abs(last.TurnsPerMin - speed) > 0.5) steps.Add(new ToolStep(known, speed));
            steps.AddRange(ProfilePasses.Steps(profile, setUp.ThicknessMm, MillingFeed.StraightMmPerMin(m, setUp.Machine), safe));
        }

        return new($"{plan.Name}, revision {plan.Revision}", safe, [.. tools], steps.ToImmutable());
    }

    /// <summary>No spindle turns for it, or no feed is known.</summary>
    private static bool IsByHand(HoleOperation o) => o.Speed is null || o.FeedMmPerTurn <= 0;

    private static EndMill? EndMillOf(ProfileCut? profile, HoleOperation o) => profile?.Mill is { } m && m.Name == o.Tool ? m : null;

    private static ToolForm Form(HoleStep step) => step switch
    {
        HoleStep.Spot => ToolForm.SpotDrill,
        HoleStep.Ream => ToolForm.Reamer,
        HoleStep.Bore => ToolForm.EndMill,
        _ => ToolForm.TwistDrill,
    };

    private static ProgramTool Tool(List<ProgramTool> tools, ToolForm form, HoleOperation o, Length? cuts)
    {
        var point = form switch { ToolForm.SpotDrill => 90.0, ToolForm.TwistDrill => 118.0, _ => 180.0 };
        var tool = new ProgramTool(tools.Count + 1, o.Tool, form, o.Diameter.Mm, point, cuts?.Mm);
        tools.Add(tool);
        return tool;
    }

    /// <summary>From the program's zero each time to the nearest hole that is left.</summary>
    private static IEnumerable<(PlacedHole Hole, HoleOperation Work)> NearestFirst(IEnumerable<(PlacedHole Hole, HoleOperation Work)> work, Point from)
    {
        var left = work.ToList();
        while (left.Count > 0)
        {
            var here = from;
            var next = left.MinBy(w => w.Hole.MadeAt.To(here));
            left.Remove(next);
            from = next.Hole.MadeAt;
            yield return next;
        }
    }
}
