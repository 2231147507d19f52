using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a steel is usually cooled in to harden.</summary>
public enum CooledIn
{
    /// <summary>Water or brine.</summary>
    Water,

    /// <summary>Oil.</summary>
    Oil,

    /// <summary>Still air or between plates.</summary>
    Air,
}

/// <summary>How far a steel can be trusted to a forge or torch, where no soak can be held.</summary>
public enum WithoutOven
{
    /// <summary>Usual for a skilled hand.</summary>
    Usual,

    /// <summary>With care: some of it stays soft or grows coarse.</summary>
    WithCare,

    /// <summary>Advised against.</summary>
    No,
}

/// <summary>How a grade is hardened.</summary>
/// <param name="From">Lower end of the window.</param>
/// <param name="To">Upper end of the window.</param>
/// <param name="SoakFromMinutes">Shortest time at heat, min.</param>
/// <param name="SoakToMinutes">Longest time at heat, min.</param>
/// <param name="CooledIn">What it is cooled in.</param>
/// <param name="Quench">Kinds of quenchant in the order of choice: "fast oil".</param>
/// <param name="DissolvedCarbonPercent">Carbon in solution at heat, mass per cent; null: all of it, at most what plain steel holds.</param>
/// <param name="DissolvedChromiumPercent">Chromium in solution at heat, mass per cent; null: all of it.</param>
/// <param name="WithoutOven">In a forge or with a torch.</param>
/// <param name="SourceKey">Where it is from.</param>
public sealed record HardeningCycle(Temperature From, Temperature To, double SoakFromMinutes, double SoakToMinutes, CooledIn CooledIn, ImmutableArray<string> Quench, double? DissolvedCarbonPercent, double? DissolvedChromiumPercent, WithoutOven WithoutOven, string SourceKey)
{
    /// <summary>Middle of the window.</summary>
    public Temperature Middle => Temperature.OfCelsius(0.5 * (From.Celsius + To.Celsius));
}

/// <summary>Temperatures published for a grade at which it begins and ends to turn austenite on heating.</summary>
/// <param name="Ac1">Begins.</param>
/// <param name="Ac3">Ends; null when not given.</param>
/// <param name="SourceKey">Where they are from.</param>
public sealed record PublishedCritical(Temperature Ac1, Temperature? Ac3, string SourceKey);

/// <summary>Hardness published after a temper.</summary>
/// <param name="At">Temperature.</param>
/// <param name="HardnessHrc">Hardness, HRC.</param>
/// <param name="HeldHours">Time at heat in all, h.</param>
/// <param name="SourceKey">Where it is from.</param>
public sealed record TemperPoint(Temperature At, double HardnessHrc, double HeldHours, string SourceKey);

/// <summary>Temperatures at which a grade is not tempered.</summary>
/// <param name="From">From.</param>
/// <param name="To">To.</param>
/// <param name="Why">What happens there, plain words.</param>
/// <param name="SourceKey">Where it is from.</param>
public sealed record TemperAvoided(Temperature From, Temperature To, string Why, string SourceKey);

/// <summary>What is known of the heat treatment of a grade. What its file does not give is null or empty, never assumed.</summary>
public sealed record SteelHeat
{
    /// <summary>Nothing known.</summary>
    public static SteelHeat None { get; } = new();

    /// <summary>How it is hardened.</summary>
    public HardeningCycle? Hardening { get; init; }

    /// <summary>Hardness out of the quench, HRC.</summary>
    public Sourced<HardnessBand>? AsQuenched { get; init; }

    /// <summary>Published critical points.</summary>
    public PublishedCritical? Critical { get; init; }

    /// <summary>Heat conductivity near room temperature, W/(m·K).</summary>
    public Sourced<double>? ConductivityWPerMK { get; init; }

    /// <summary>Where it is normalised; null when it is not to be.</summary>
    public Sourced<Temperature>? Normalise { get; init; }

    /// <summary>How it is made soft, in words.</summary>
    public Sourced<string>? Anneal { get; init; }

    /// <summary>How often it is tempered.</summary>
    public Sourced<int>? Tempers { get; init; }

    /// <summary>Published hardness by temper, coldest first.</summary>
    public ImmutableArray<TemperPoint> TemperTable { get; init; } = [];

    /// <summary>Where it is not tempered.</summary>
    public ImmutableArray<TemperAvoided> Avoided { get; init; } = [];
}
