using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What is asked of the finish.</summary>
/// <param name="Last">Last grit; null: the plan's, else P400.</param>
/// <param name="Tempered">Temperature of the last temper; null: the plan's, else <see cref="FinishPlan.AssumedTemperC"/>.</param>
public sealed record FinishWanted(Grit? Last, Temperature? Tempered);

/// <summary>A belt or paper of the shop.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Grain">As marked.</param>
/// <param name="Micron">Grain size, µm.</param>
/// <param name="Belt">The belt; null for paper or stone by hand.</param>
public sealed record FinishTool(string Name, Grit Grain, double Micron, Belt? Belt);

/// <summary>When a step is done.</summary>
public enum FinishStage
{
    /// <summary>In soft steel.</summary>
    Soft,

    /// <summary>In hard steel.</summary>
    Hard,
}

/// <summary>One step of the ladder.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Stage">Soft or hard.</param>
/// <param name="Tool">With what.</param>
/// <param name="IsBevel">Grinds the bevels down; else takes out the scratches of the step before on both faces.</param>
/// <param name="Before">What it follows; null when it is the first on sawn or rolled faces.</param>
/// <param name="PerFaceUm">Depth off each face with its band, µm; null for grinding the bevels down.</param>
/// <param name="Grams">Steel off the piece, both faces; null when the density is not known.</param>
/// <param name="LowGrams">Lower end.</param>
/// <param name="HighGrams">Upper end.</param>
/// <param name="Edge">Thickness of the edge when it is done; null without a bevel.</param>
/// <param name="Minutes">Minutes a piece; null when nothing is known of it.</param>
/// <param name="LowMinutes">Lower end.</param>
/// <param name="HighMinutes">Upper end.</param>
/// <param name="Belts">Belts worn for a piece; null when not known.</param>
/// <param name="TimeSays">Where the time comes from.</param>
/// <param name="Ratio">How many times coarser the step before is; null for the first.</param>
/// <param name="Speed">Belt speed; null by hand.</param>
/// <param name="Ra">Roughness it leaves, µm; null when not listed.</param>
public sealed record FinishStep(
    int Number,
    FinishStage Stage,
    FinishTool Tool,
    bool IsBevel,
    FinishTool? Before,
    (double Low, double Usual, double High)? PerFaceUm,
    double? Grams,
    double? LowGrams,
    double? HighGrams,
    Length? Edge,
    double? Minutes,
    double? LowMinutes,
    double? HighMinutes,
    double? Belts,
    string TimeSays,
    double? Ratio,
    BeltSpeed? Speed,
    (double LowUm, double HighUm)? Ra);

/// <summary>Room for heat at a place of the hardened blade.</summary>
/// <param name="Where">Where, in words.</param>
/// <param name="Thickness">Thickness there.</param>
/// <param name="Room">Depth off a face between dips.</param>
/// <param name="Seconds">Seconds of one belt's width ground without a stop, usual; null when the belt's rate is not known.</param>
/// <param name="LowSeconds">Lower end.</param>
/// <param name="HighSeconds">Upper end.</param>
public sealed record EdgeHeatRow(string Where, Length Thickness, HeatRoom Room, double? Seconds, double? LowSeconds, double? HighSeconds);

/// <summary>From ground bevels to the finish wanted.</summary>
/// <param name="Steps">The steps in order.</param>
/// <param name="Last">Last grit wanted.</param>
/// <param name="MostRatio">Greatest ratio of sizes aimed at.</param>
/// <param name="FaceMm2">Area of one face, mm².</param>
/// <param name="AfterCoarse">Thickness at which to stop the coarse belt in hard steel so that the ladder ends at the finished edge; null without a bevel ground in hard steel or finished there.</param>
/// <param name="LadderTakes">What all steps after the coarse one take off the edge, both faces, usual.</param>
/// <param name="Heat">Heat rows; empty without a bevel.</param>
/// <param name="HeatTool">The belt they hold for; null when there is none.</param>
/// <param name="Tempered">Tempering temperature counted with.</param>
/// <param name="IsTemperAssumed">Whether nobody said it.</param>
/// <param name="SavedMinutes">Minutes that sawing first saves a piece, from the rough-cut plan; null when there is none.</param>
/// <param name="Notes">What to know, in words.</param>
public sealed record FinishPlan(
    ImmutableArray<FinishStep> Steps,
    Grit Last,
    double MostRatio,
    double FaceMm2,
    Length? AfterCoarse,
    Length? LadderTakes,
    ImmutableArray<EdgeHeatRow> Heat,
    FinishTool? HeatTool,
    Temperature Tempered,
    bool IsTemperAssumed,
    double? SavedMinutes,
    ImmutableArray<string> Notes)
{
    /// <summary>Tempering temperature when nobody says one, °C: the low end of common practice, so that the heat limit is on the careful side.</summary>
    public const double AssumedTemperC = 175;

    /// <summary>Minutes of all steps whose time is known.</summary>
    public double Minutes => Steps.Sum(s => s.Minutes ?? 0);

    /// <summary>Lower end.</summary>
    public double LowMinutes => Steps.Sum(s => s.LowMinutes ?? 0);

    /// <summary>Upper end.</summary>
    public double HighMinutes => Steps.Sum(s => s.HighMinutes ?? 0);

    /// <summary>Whether the time of a step is not known.</summary>
    public bool HasUntimed => Steps.Any(s => s.Minutes is null);
}
