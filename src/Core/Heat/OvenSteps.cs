using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The steps of the hardening oven in order: what the bar's condition asks first, a pause on the way for high-alloy steel, the soak.</summary>
internal static class OvenSteps
{
    // air-hardening and stainless steels are paused on the way so that they come evenly to heat; common practice
    private const double PauseC = 760, PauseLowMinutes = 10, PauseHighMinutes = 15;

    public static ImmutableArray<OvenStep> Of(HeatSubject s, HardeningCycle cycle, Temperature at, (double LowMinutes, double HighMinutes) soak)
    {
        var steps = ImmutableArray.CreateBuilder<OvenStep>();
        if (NeedsNormalising(s.Condition))
        {
            if (s.Steel.Heat.Normalise is { } n) steps.Add(Step("normalise: the bar is not delivered soft", n.Value, (5, 10), "out into still air, hung, until black"));
            else steps.Add(Step("relieve stress: this grade is not normalised", Temperature.OfCelsius(HeatPlan.RelieveC), (60, 120), "cool in the shut oven"));
        }
        else if (IsGroundOrCut(s.Condition))
        {
            steps.Add(Step("relieve stress of grinding or cutting", Temperature.OfCelsius(HeatPlan.RelieveC), (60, 120), "cool in the shut oven"));
        }

        if (!s.Steel.Chemistry!.Value.IsLowAlloy) steps.Add(Step("pause on the way, to come evenly to heat", Temperature.OfCelsius(PauseC), (PauseLowMinutes, PauseHighMinutes), "on to the soak"));
        steps.Add(Step("soak", at, soak, cycle.CooledIn == CooledIn.Air ? "out and cool as below, in foil or out of it as the foil's sheet says" : "out and into the quench within 1 to 2 s"));
        return steps.ToImmutable();

        OvenStep Step(string what, Temperature piece, (double, double) hold, string then) => new(what, piece, Temperature.OfCelsius(piece.Celsius + (s.Shop.Oven?.ReadsHighByC ?? 0)), hold, then);
    }

    /// <summary>Hot-rolled and forged bar is not even inside.</summary>
    public static bool NeedsNormalising(string condition) => Has(condition, "hot") || Has(condition, "forged") || Has(condition, "as rolled");

    private static bool IsGroundOrCut(string condition) => Has(condition, "ground") || Has(condition, "laser") || Has(condition, "plasma") || Has(condition, "cold");

    private static bool Has(string condition, string word) => condition.Contains(word, StringComparison.OrdinalIgnoreCase);
}
