using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Holes that no machine of the shop can make: what keeps the machine that comes nearest from it, one finding for each reason.</summary>
public static class RefusedFindings
{
    /// <summary>What is wrong, reason by reason.</summary>
    public static IEnumerable<Finding> Of(Results r)
    {
        var unmade = r.Drilling.Holes.Where(h => h.Machine is null);
        foreach (var group in unmade.SelectMany(h => h.Nearest.Select(n => (h.Hole, Refusal: n, h.Pilot))).GroupBy(x => (x.Refusal.Gate, x.Refusal.Machine)))
        {
            yield return ShopFinding.Of(r.Shop, Refused(r, [.. group]));
        }
    }

    private static Finding Refused(Results r, ImmutableArray<(PlacedHole Hole, MachineRefusal Refusal, PilotElsewhere? Pilot)> group)
    {
        // the smallest hole is the one nearest to passing: its numbers are shown, and what would pass for all
        var holes = group.OrderBy(g => g.Hole.Diameter.Mm).ToArray();
        var (nearest, worst) = (holes[0].Refusal, holes[^1].Refusal);
        var pilot = group.Select(g => g.Pilot).OfType<PilotElsewhere>().FirstOrDefault();
        var names = Named(group.Select(g => g.Hole));
        return new Finding(
            CodeOf(nearest.Gate),
            Severity.Warning,
            names,
            group[0].Hole.At,
            $"No machine of the shop can make {names}. The {nearest.Machine} comes nearest, but {nearest.Reason}.{(pilot is null ? "" : $" The pilots can be drilled there or on the {pilot.Machine.Name}.")}",
            holes.Length == 1 ? nearest.Found : Range(nearest.Found, worst.Found),
            holes.Length == 1 ? nearest.Limit : Range(nearest.Limit, worst.Limit),
            nearest.Source,
            worst.Remedy)
        {
            Ways = nearest.Largest is null ? [] : Smaller(r, group),
        };
    }

    /// <summary>All holes of the group at the largest drill that passes; none when one of them would come under half its size.</summary>
    private static ImmutableArray<RemedyWay> Smaller(Results r, ImmutableArray<(PlacedHole Hole, MachineRefusal Refusal, PilotElsewhere? Pilot)> group)
        => HoleWays.Resized(r.Plan, group.Select(g => (g.Hole, HoleWays.AtMost(r.Shop, r.Plan.Units, g.Hole, g.Refusal.Largest!.Value.Mm))));

    private static string CodeOf(MachineGate gate) => gate switch
    {
        MachineGate.TooFast => FindingCodes.TooFast,
        MachineGate.Chuck => FindingCodes.ChuckTooSmall,
        MachineGate.Thrust => FindingCodes.ThrustTooGreat,
        MachineGate.Power => FindingCodes.PowerTooGreat,
        MachineGate.Throat => FindingCodes.ThroatTooShort,
        MachineGate.Vise => FindingCodes.ViseTooNarrow,
        MachineGate.Bore => FindingCodes.CannotBore,
        _ => FindingCodes.DrilledHard,
    };

    private static string Range(string first, string last) => first == last ? first : $"{first} … {last}";

    /// <summary>"hole A", "holes A, B".</summary>
    internal static string Named(IEnumerable<PlacedHole> holes)
    {
        var names = holes.Select(h => h.Name).ToArray();
        return (names.Length == 1 ? "hole " : "holes ") + string.Join(", ", names);
    }
}
