namespace Tangwright.Core;

/// <summary>What of a steel is in solution at hardening heat; what stays in carbides does not harden.</summary>
public static class InSolution
{
    /// <summary>Plain steel dissolves so much in a short soak, mass per cent; an engineering figure, from memory.</summary>
    public const double PlainCarbonPercent = 0.77;

    /// <summary>Composition in solution: as the steel's file says, else all, carbon up to 0.77 %.</summary>
    /// <param name="steel">The steel.</param>
    public static Chemistry? Of(Steel steel) => steel.Chemistry is not { } bar ? null : bar with
    {
        CarbonPercent = Math.Min(bar.CarbonPercent, steel.Heat.Hardening?.DissolvedCarbonPercent ?? PlainCarbonPercent),
        ChromiumPercent = Math.Min(bar.ChromiumPercent, steel.Heat.Hardening?.DissolvedChromiumPercent ?? double.MaxValue),

        // vanadium carbide does not dissolve at these heats
        VanadiumPercent = 0,
    };
}
