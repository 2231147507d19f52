using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One opinion on the critical points.</summary>
/// <param name="By">Whose.</param>
/// <param name="Lower">Austenite begins.</param>
/// <param name="Upper">All austenite; null when not given.</param>
public sealed record CriticalOpinion(string By, Temperature Lower, Temperature? Upper);

/// <summary>Critical points by several prints, with their spread: never a single number.</summary>
/// <param name="Opinions">Each print.</param>
/// <param name="MartensiteBegins">Ms; null when the formulas do not hold for the steel.</param>
/// <param name="BainiteBegins">Bs; null likewise.</param>
/// <param name="FullSolution">Acm, steel over the eutectoid; null when not.</param>
public sealed record CriticalSpread(ImmutableArray<CriticalOpinion> Opinions, Temperature? MartensiteBegins, Temperature? BainiteBegins, Temperature? FullSolution)
{
    /// <summary>Lowest and highest opinion on where austenite begins; null without one.</summary>
    public (Temperature Low, Temperature High)? Lower => Opinions.IsEmpty ? null : (Temperature.OfCelsius(Opinions.Min(o => o.Lower.Celsius)), Temperature.OfCelsius(Opinions.Max(o => o.Lower.Celsius)));

    /// <summary>Highest opinion on where all is austenite; null when nobody says.</summary>
    public Temperature? Upper => Opinions.Any(o => o.Upper is not null) ? Temperature.OfCelsius(Opinions.Max(o => Math.Max(o.Lower.Celsius, o.Upper?.Celsius ?? 0))) : null;

    /// <summary>Works them out: the published points of the grade when there are some; else five prints for low-alloy steel; none for others.</summary>
    /// <param name="steel">The steel.</param>
    public static CriticalSpread Of(Steel steel)
    {
        var published = steel.Heat.Critical is { } p ? new CriticalOpinion("its data sheet", p.Ac1, p.Ac3) : null;
        if (steel.Chemistry is not { IsLowAlloy: true } bar || InSolution.Of(steel) is not { } x) return new(published is null ? [] : [published], null, null, null);
        ImmutableArray<CriticalOpinion> printed =
        [
            One("Andrews 1965", AndrewsCritical.LowerCelsius(bar), AndrewsCritical.UpperCelsius(bar)),
            One("Grange 1961", GrangeCritical.LowerCelsius(bar), GrangeCritical.UpperCelsius(bar)),
            One("Eldis 1978", EldisCritical.LowerCelsius(bar), EldisCritical.UpperCelsius(bar)),
            One("Hougardy 1984 (ends: from memory)", HougardyCritical.LowerCelsius(bar), HougardyCritical.UpperCelsius(bar)),
            One("Trzaska 2016 (from memory)", TrzaskaCritical.LowerCelsius(bar), TrzaskaCritical.UpperCelsius(bar)),
        ];
        return new(
            published is null ? printed : printed.Insert(0, published),
            Temperature.OfCelsius(MartensiteStart.Celsius(x)),
            Temperature.OfCelsius(BainiteStart.LiCelsius(x)),
            bar.CarbonPercent > 0.77 ? Temperature.OfCelsius(AcmLine.Celsius(bar.CarbonPercent)) : null);

        static CriticalOpinion One(string by, double lower, double upper) => new(by, Temperature.OfCelsius(lower), upper > lower ? Temperature.OfCelsius(upper) : null);
    }
}
