using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What would harden through where the plan does not.</summary>
/// <param name="Media">Quenchants that would, mildest first, with what they make of the thickest place.</param>
/// <param name="Thickest">Thickest plate that hardens through in the quenchant as it is; null when not even 1 mm does, or when it is not in question.</param>
public sealed record HeatWays(ImmutableArray<QuenchMedium> Media, Length? Thickest)
{
    private const double ThinnestMm = 1, ThickestMm = 12, StepMm = 0.25;

    /// <summary>Works them out for a piece that does not harden through.</summary>
    /// <param name="s">What is hardened.</param>
    /// <param name="at">Hardening temperature.</param>
    public static HeatWays Of(HeatSubject s, Temperature at)
    {
        var cycle = s.Steel.Heat.Hardening!;

        // water is offered only for a steel that is made for it
        var media = s.Shop.KnownMedia.Where(m => m.Kind is QuenchKind.Oil or QuenchKind.Plates || (m.Kind == QuenchKind.Water && cycle.CooledIn == CooledIn.Water))
            .Where(m => Verdict(s.Steel, s.Stations, m, at, null) == HardensVerdict.Through)
            .OrderBy(m => m.Severity?.Value.HighPerInch ?? 0)
            .ToImmutableArray();
        if (HeatPlan.QuenchantOf(s) is not { Medium: { } medium } quenchant) return new HeatWays(media, null);
        Length? thickest = null;
        var (low, high) = ((int)(ThinnestMm / StepMm), (int)(ThickestMm / StepMm));
        while (low <= high)
        {
            var middle = (low + high) / 2;
            if (Verdict(s.Steel, [new QuenchStation("plate", middle * StepMm, 0)], medium, at, HeatPlan.BathAt(quenchant)) == HardensVerdict.Through)
            {
                thickest = Length.OfMm(middle * StepMm);
                low = middle + 1;
            }
            else
            {
                high = middle - 1;
            }
        }

        return new HeatWays(media, thickest);
    }

    /// <summary>Steels of a list that harden through in the same thickness and quenchant.</summary>
    /// <param name="s">What is hardened.</param>
    /// <param name="steels">The list.</param>
    public static ImmutableArray<Steel> SteelsThat(HeatSubject s, IEnumerable<Steel> steels)
        => HeatPlan.QuenchantOf(s) is not { Medium: { } medium } quenchant ? [] :
        [
            .. steels.Where(x => x.Heat.Hardening is { } h && x.Chemistry is not null && x.Name != s.Steel.Name && h.CooledIn != CooledIn.Air == s.Steel.Chemistry!.Value.IsLowAlloy && Verdict(x, s.Stations, medium, h.Middle, HeatPlan.BathAt(quenchant)) == HardensVerdict.Through),
        ];

    private static HardensVerdict Verdict(Steel steel, ImmutableArray<QuenchStation> stations, QuenchMedium medium, Temperature at, Temperature? bath)
        => Hardens.Of(steel, [stations[^1]], medium, at, bath ?? HeatPlan.BathAt(new Quenchant(medium.Name, null) { Medium = medium })).Verdict;
}
