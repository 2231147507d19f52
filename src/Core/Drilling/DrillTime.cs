using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Time to make a group of holes on one machine, s: cutting, a change for each tool when all holes of a tool are made together, and finding each place. Handling: common practice.</summary>
public static class DrillTime
{
    /// <summary>Changing a tool when the shop file does not say, s; common practice.</summary>
    public const double UsualChangeSeconds = 30;

    /// <summary>Finding a place, lowering and drawing out by hand, s; common practice.</summary>
    public const double FindSeconds = 15;

    /// <summary>Moving to the next hole under computer control, s; common practice.</summary>
    public const double MoveSeconds = 3;

    /// <summary>From a quick hand to a careful one; common practice.</summary>
    private const double QuickShare = 0.7;
    private const double CarefulShare = 1.5;

    /// <summary>The time, first set-up of the stock not counted; zero without a machine.</summary>
    public static Estimate<double> Of(HoleGroup group)
    {
        if (group.Machine is not { } machine) return new(0, 0, 0, SourceTag.CommonPractice);
        var steps = group.Holes.SelectMany(h => h.Operations).ToArray();
        var cutting = steps.Sum(o => o.TimeSeconds);
        var changes = steps.Select(o => o.Tool).Distinct(StringComparer.Ordinal).Count() * (machine.ToolChangeSeconds ?? UsualChangeSeconds);
        var places = steps.Length * (machine.Kind == MachineKind.CncMill ? MoveSeconds : FindSeconds);
        return new(cutting + changes + places, cutting + (QuickShare * (changes + places)), cutting + (CarefulShare * (changes + places)), SourceTag.CommonPractice);
    }
}
