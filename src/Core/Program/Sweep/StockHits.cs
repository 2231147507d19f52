using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Motions that meet stock or spoil board in a way they must not.</summary>
internal static class StockHits
{
    /// <summary>A rapid may touch a wall that a cut of the same tool has left.</summary>
    private const double SlackMm = 0.02;

    /// <summary>Feed a turn beyond which any of these tools breaks, as a share of its diameter; common practice is a tenth to a third of it.</summary>
    private const double MostFeedShare = 0.15;

    public static IEnumerable<ProgramTrouble> Of(IReadOnlyList<Motion> motions, ImmutableArray<ProgramTool> tools, ProgramSetUp setUp)
        => Each(motions, tools, setUp).DistinctBy(t => (t.Trouble.Kind, t.Tool)).Select(t => t.Trouble);

    private static IEnumerable<(ProgramTrouble Trouble, int Tool)> Each(IReadOnlyList<Motion> motions, ImmutableArray<ProgramTool> tools, ProgramSetUp setUp)
    {
        var field = new StockField(setUp.Stock, setUp.ThicknessMm);
        var floor = -setUp.ThicknessMm - setUp.SpoilMm;
        foreach (var m in motions)
        {
            var tool = SweptTool.Of(tools, m.Tool);
            var lowest = Math.Min(m.From.Z, m.To.Z);
            if (lowest < floor - 1e-6) yield return (new("spoil board", m.Line, $"the tip goes {Mm(-setUp.ThicknessMm - lowest)} into the spoil board; {Mm(setUp.SpoilMm)} is allowed", $"go no deeper than z {Mm(floor)}"), m.Tool);
            if (m.Kind == MotionKind.Rapid)
            {
                if (field.Sweep(m, tool, takesAway: false, SlackMm)) yield return (new("rapid through stock", m.Line, "a rapid goes through steel or spoil board", "lift the tool first, or go in at feed"), m.Tool);
                continue;
            }

            var isSolid = tool.Tool?.Form == ToolForm.Reamer && field.HeightAt(m.To.Flat) > Math.Max(m.To.Z, -setUp.ThicknessMm) + 1e-3;
            if (!field.Sweep(m, tool, takesAway: true)) continue;
            if (isSolid) yield return (new("reamer", m.Line, $"the {tool.Tool!.Name} goes into solid steel; it only follows a hole", "drill the hole first"), m.Tool);
            if (m.TurnsPerMin <= 0) yield return (new("spindle", m.Line, "the tool cuts while the spindle stands", "write S and M3 before it"), m.Tool);
            if (tool.Tool is not { } named) yield return (new("tool", m.Line, "it cuts before a tool is in the spindle", "write T and M6 before it"), m.Tool);
            else if (m.TurnsPerMin > 0 && m.MmPerMin / m.TurnsPerMin > MostFeedShare * named.DiameterMm) yield return (new("feed", m.Line, $"the {named.Name} would go {Mm(m.MmPerMin / m.TurnsPerMin)} a turn; {Mm(MostFeedShare * named.DiameterMm)} is the most it bears", "check F and its unit"), m.Tool);
            else if (tool.IsDrill && m.From.Flat.To(m.To.Flat) > 1e-6) yield return (new("sideways", m.Line, $"the {named.Name} is moved sideways in the work; it cuts with its end only", "lift it over the work first, or use an end mill"), m.Tool);
            else if (named.CuttingLengthMm is { } length && -lowest > length + 1e-6) yield return (new("tool too short", m.Line, $"the {named.Name} goes {Mm(-lowest)} deep and cuts on {Mm(length)}", "use a longer one"), m.Tool);
        }
    }

    private static string Mm(double mm) => Shown.Mm(Length.OfMm(mm));
}
