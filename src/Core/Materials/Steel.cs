using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A value with the place it comes from.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="SourceKey">Key in <c>data/sources.toml</c>, "from memory" or "common practice".</param>
public sealed record Sourced<T>(T Value, string SourceKey);

/// <summary>Content of one element.</summary>
/// <param name="Element">Symbol: C, Mn, Cr.</param>
/// <param name="LowPercent">Least, mass per cent.</param>
/// <param name="HighPercent">Greatest, mass per cent.</param>
/// <param name="NominalPercent">Nominal, mass per cent; null: the middle.</param>
public sealed record ElementContent(string Element, double LowPercent, double HighPercent, double? NominalPercent);

/// <summary>One grade of steel, from its data file. A property the file does not give is null, never assumed.</summary>
/// <param name="Name">Standard designation the plan names it by.</param>
/// <param name="OtherNames">Other standard designations and numbers of the same grade.</param>
/// <param name="Description">One plain line on what it is.</param>
/// <param name="Density">Density.</param>
/// <param name="Composition">Composition with its source.</param>
/// <param name="DeliveredHardnessHb">Usual hardness as delivered, HB.</param>
/// <param name="Cautions">What to watch for, one sentence each.</param>
public sealed record Steel(
    string Name,
    ImmutableArray<string> OtherNames,
    string Description,
    Sourced<Density>? Density,
    Sourced<ImmutableArray<ElementContent>>? Composition,
    Sourced<double>? DeliveredHardnessHb,
    ImmutableArray<string> Cautions)
{
    /// <summary>What is known of its heat treatment.</summary>
    public SteelHeat Heat { get; init; } = SteelHeat.None;

    /// <summary>Its nominal composition; null when the file gives none.</summary>
    public Chemistry? Chemistry => Composition is null ? null : Core.Chemistry.Nominal(Composition.Value);
}
