using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What kind of thing a handle material is.</summary>
public enum HandleKind
{
    /// <summary>Wood: it moves with the moisture of the air.</summary>
    Wood,

    /// <summary>Sheets of glass, paper, cloth or carbon in resin.</summary>
    Laminate,

    /// <summary>Cast resin.</summary>
    Resin,

    /// <summary>Metal for pins, tubes and bolsters.</summary>
    Metal,

    /// <summary>Horn or hoof.</summary>
    Horn,

    /// <summary>Bone or antler.</summary>
    Bone,

    /// <summary>Vulcanised fibre, for liners.</summary>
    Fibre,

    /// <summary>Cord or lace a handle is wrapped with.</summary>
    Cord,
}

/// <summary>Stiffness in bending of a plate or rod, GPa.</summary>
/// <param name="LengthwiseGPa">Along the grain or the length of the sheet.</param>
/// <param name="CrosswiseGPa">Across; null when not known.</param>
public readonly record struct HandleStiffness(double LengthwiseGPa, double? CrosswiseGPa);

/// <summary>A band of strength, MPa.</summary>
/// <param name="LowMPa">Least.</param>
/// <param name="HighMPa">Greatest.</param>
public readonly record struct StrengthBand(double LowMPa, double HighMPa);

/// <summary>A band of surface speed of a drill.</summary>
/// <param name="Low">Slowest.</param>
/// <param name="High">Fastest.</param>
public readonly record struct DrillSpeedBand(CuttingSpeed Low, CuttingSpeed High);

/// <summary>How much wood moves across the grain for each per cent of moisture, as a share of its width. Holds from 6 to 14 % of moisture.</summary>
/// <param name="TangentialPerPercent">Along the rings: the width of a flat-sawn piece; null when not known.</param>
/// <param name="RadialPerPercent">Across the rings: the width of a quarter-sawn piece; null when not known.</param>
public sealed record WoodMovementCoefficients(Sourced<double>? TangentialPerPercent, Sourced<double>? RadialPerPercent);

/// <summary>One material a handle is made of or held by, from its data file. A property the file does not give is null, never assumed.</summary>
/// <param name="Name">Name in trade words, the one a plan uses.</param>
/// <param name="OtherNames">Other names and standard designations.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Description">One plain line on what it is.</param>
/// <param name="Cautions">What to watch for, one sentence each.</param>
public sealed record HandleMaterial(string Name, ImmutableArray<string> OtherNames, HandleKind Kind, string Description, ImmutableArray<string> Cautions)
{
    private const double MetalShare = 0.03, LaminateShare = 0.03, OtherShare = 0.08;

    /// <summary>Density as used; wood at 12 % of moisture.</summary>
    public Sourced<Density>? Density { get; init; }

    /// <summary>How far a piece may be from <see cref="Density"/>, as a share; null: the band of its kind.</summary>
    public double? OwnDensityBandShare { get; init; }

    /// <summary>How far a piece may be from <see cref="Density"/>, as a share: its own, else 3 % for metals and laminates, 8 % for the rest (common practice).</summary>
    public double DensityBandShare => OwnDensityBandShare ?? Kind switch { HandleKind.Metal => MetalShare, HandleKind.Laminate => LaminateShare, _ => OtherShare };

    /// <summary>Specific gravity of wood at 12 % of moisture: dry mass in the volume of 12 %.</summary>
    public Sourced<double>? SpecificGravity { get; init; }

    /// <summary>Stiffness.</summary>
    public Sourced<HandleStiffness>? Stiffness { get; init; }

    /// <summary>Growth with heat, in the plane of a sheet, millionths of the length per K.</summary>
    public Sourced<double>? ExpansionMillionthsPerK { get; init; }

    /// <summary>How it moves with moisture; null when it does not or is not known.</summary>
    public WoodMovementCoefficients? Movement { get; init; }

    /// <summary>Shear strength, least and greatest: yield and ultimate where both are known, else the one that is.</summary>
    public Sourced<StrengthBand>? ShearMPa { get; init; }

    /// <summary>Water a sheet takes up in 24 h, mass per cent.</summary>
    public Sourced<double>? WaterPercent { get; init; }

    /// <summary>Surface speed of a drill.</summary>
    public Sourced<DrillSpeedBand>? Drilling { get; init; }

    /// <summary>Diameter of a cord as laid.</summary>
    public Sourced<Length>? CordDiameter { get; init; }

    /// <summary>Mass of a metre of cord, g.</summary>
    public Sourced<double>? GramsPerMetre { get; init; }

    /// <summary>Keys of the limits its dust comes under: <see cref="ExposureLimit"/>.</summary>
    public ImmutableArray<string> Dust { get; init; } = [];

    /// <summary>The limits its dust comes under.</summary>
    public ImmutableArray<ExposureLimit> DustLimits => [.. Dust.Select(ExposureLimit.Find).OfType<ExposureLimit>()];

    /// <summary>Least density of its band.</summary>
    public Density? LeastDensity => Density is { } d ? Foundation.Density.OfGramsPerCm3(d.Value.GramsPerCm3 * (1 - DensityBandShare)) : null;

    /// <summary>Greatest density of its band.</summary>
    public Density? GreatestDensity => Density is { } d ? Foundation.Density.OfGramsPerCm3(d.Value.GramsPerCm3 * (1 + DensityBandShare)) : null;

    /// <summary>Whether a name is one of its own; capitals do not matter.</summary>
    /// <param name="name">The name.</param>
    public bool IsCalled(string name) => string.Equals(Name, name.Trim(), StringComparison.OrdinalIgnoreCase) || OtherNames.Contains(name.Trim(), StringComparer.OrdinalIgnoreCase);
}
