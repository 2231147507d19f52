using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What else a maker should know before the oven is lit, a sentence each.</summary>
internal static class HeatRemarks
{
    private const double CurieCelsius = 770, GrainC = 50, GrainMinutes = 30;

    public static ImmutableArray<string> Of(HeatSubject s, HardeningCycle cycle, Temperature at, Hardens? hardens)
    {
        var all = ImmutableArray.CreateBuilder<string>();
        if (s.Shop.Oven is null)
        {
            all.Add(cycle.WithoutOven switch
            {
                WithoutOven.Usual => "Forge or torch: usual for this grade, but the hardness is less sure: its band out of the quench is given twice as wide. A coupon first.",
                WithoutOven.WithCare => "Forge or torch: with care; the time at heat cannot be held evenly, so part of the carbides stays undissolved. The band of the hardness out of the quench is given twice as wide. A coupon first.",
                _ => "Forge or torch: advised against for this grade, its soak cannot be held there. Send it out or use an oven.",
            });
            all.Add($"A magnet lets go of steel at about {Shown.Both(Temperature.OfCelsius(CurieCelsius))} whatever the steel (from memory): the window begins {Shown.Number(Math.Max(0, cycle.From.Celsius - CurieCelsius), 0)} °C above that. The magnet says when you are near, not when you are there.");
        }

        if (at.Celsius > cycle.To.Celsius + GrainC || s.Wish.SoakMinutes > cycle.SoakToMinutes + GrainMinutes) all.Add("So hot or so long the grain grows: the steel gets brittle, and no temper mends that.");
        if (s.Steel.Heat.Normalise is not null && !OvenSteps.NeedsNormalising(s.Condition)) all.Add($"Soft bar as delivered is not normalised again; forged, hot rolled or coarse bar is: {Shown.Both(s.Steel.Heat.Normalise.Value)}, still air ({SourceTag.CommonPractice}).");
        if (hardens?.Medium.Kind == QuenchKind.Water && cycle.CooledIn == CooledIn.Oil) all.Add("Water is faster than this grade asks for: thin edges crack.");
        if (!s.Steel.Chemistry!.Value.IsLowAlloy) all.Add("What stays austenite in such a steel cannot be predicted: too hot a soak leaves more, a cold bath within the hour turns some of it (1 to 2 HRC for stainless strip by its maker's guide).");
        all.AddRange(s.Steel.Cautions);
        if (InSolution.Of(s.Steel) is { } x && s.Steel.Chemistry.Value.IsLowAlloy) all.Add($"Out of the quench under {Shown.Number(HalfMartensiteHardness.Hrc(x.CarbonPercent), 0)} HRC it is not even half hardened: the whole load goes in again, a normalising before it.");
        if (!s.Steel.Chemistry.Value.IsLowAlloy && s.Shop.Oven is { Guard: SkinGuard.None }) all.Add("The shop file names nothing that keeps air from it (guard of the oven): at such heat it wants foil or a protective gas.");
        all.Add("How it warps cannot be predicted: hang it straight, quench point or edge first and upright, and straighten while it is still warm.");
        return all.ToImmutable();
    }
}
