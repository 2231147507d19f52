using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>The finish in words, the same on the command line and the desk.</summary>
public static class FinishText
{
    /// <summary>Cautions.</summary>
    public static string Caution => FinishWords.Caution;

    /// <summary>Where the figures come from.</summary>
    public static string Sources => FinishWords.Sources;

    /// <summary>How one knows that a step is done.</summary>
    public static string DoneWhen => FinishWords.DoneWhen;

    /// <summary>"finish to P400, 35 µm; near CAMI 320, JIS 400".</summary>
    public static string Head(FinishPlan f) => $"finish to {FinishWords.Grain(new FinishTool("", f.Last, GritScale.Micron(f.Last)!.Value, null))}";

    /// <summary>"P60, 269 µm; near CAMI 60, JIS 60".</summary>
    public static string Grain(FinishTool tool) => FinishWords.Grain(tool);

    /// <summary>What a step does.</summary>
    public static string Does(FinishStep s, UnitsShown units) => FinishWords.Does(s, units);

    /// <summary>Time and belts.</summary>
    public static string Time(FinishStep s) => FinishWords.Time(s);

    /// <summary>The rest of what is known of a step: edge, speed, roughness.</summary>
    public static ImmutableArray<string> More(FinishStep s, Shop shop)
        => [.. new[] { FinishWords.Edge(s, shop.Show), s.Speed is { } v ? FinishWords.Speed(v, shop.Show) : "by hand", FinishWords.SpeedTrouble(s, shop), FinishWords.Roughness(s) is { Length: > 0 } ra ? "leaves " + ra : "" }.Where(t => t.Length > 0)];

    /// <summary>When to stop the coarse belt; empty when all the same.</summary>
    public static string StopCoarse(FinishPlan f, UnitsShown units) => FinishWords.StopCoarse(f, units);

    /// <summary>What the heat rows are about.</summary>
    public static string HeatHead(FinishPlan f) => FinishWords.HeatHead(f);

    /// <summary>A heat row.</summary>
    public static string Heat(EdgeHeatRow h, UnitsShown units) => FinishWords.Heat(h, units);

    /// <summary>Time of all steps.</summary>
    public static string All(FinishPlan f) => FinishWords.All(f);
}
