using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How a pin goes into a hole.</summary>
public enum FitKind
{
    /// <summary>There is clearance at all limits.</summary>
    Slides,

    /// <summary>By where the two come out within their limits.</summary>
    SlidesOrPresses,

    /// <summary>The pin is never smaller than the hole.</summary>
    Presses,
}

/// <summary>What a hole and a pin of some limits make together.</summary>
/// <param name="LeastClearance">Least hole less greatest pin; under 0: overlap.</param>
/// <param name="MostClearance">Greatest hole less least pin; under 0: overlap.</param>
public sealed record FitResult(Length LeastClearance, Length MostClearance)
{
    private const double SameMm = 1e-9;

    /// <summary>How it goes together.</summary>
    public FitKind Kind => LeastClearance.Mm >= -SameMm ? FitKind.Slides : MostClearance.Mm <= SameMm ? FitKind.Presses : FitKind.SlidesOrPresses;

    /// <summary>In words.</summary>
    public string Says => Kind switch { FitKind.Slides => "slides", FitKind.Presses => "press", _ => "may slide or press" };

    /// <summary>Of two classes.</summary>
    public static FitResult Of(FitLimits hole, FitLimits pin) => Of((hole.Least, hole.Most), (pin.Least, pin.Most));

    /// <summary>Of any limits of a hole and a pin.</summary>
    public static FitResult Of((Length Least, Length Most) hole, (Length Least, Length Most) pin) => new(hole.Least - pin.Most, hole.Most - pin.Least);
}
