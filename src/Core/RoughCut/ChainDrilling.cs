using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A row of holes that parts the steel along a curve.</summary>
/// <param name="Drill">The drill.</param>
/// <param name="Holes">Number of holes.</param>
/// <param name="Pitch">From hole to hole.</param>
/// <param name="Path">Length of the row, from the first centre to the last.</param>
/// <param name="Minutes">Time to mark and drill them and break the bridges, min.</param>
public sealed record ChainOfHoles(DrillSize Drill, int Holes, Length Pitch, Length Path, double Minutes);

/// <summary>Chain drilling: holes of one drill with a thin bridge between.</summary>
[Formula("holes of a chain along a curve: length / (d + 0.5 mm), rounded up, and one more", SourceTag.CommonPractice, "Drill d with a bridge of 0.5 mm between holes; the bridges are broken or sawn")]
public static class ChainDrilling
{
    /// <summary>Steel left between two holes, mm.</summary>
    public const double BridgeMm = 0.5;

    /// <summary>Time for one hole: punch, drill, and its bridge; min, common practice.</summary>
    public const double MinutesPerHole = 0.8;

    /// <summary>The chain.</summary>
    /// <param name="drill">The drill.</param>
    /// <param name="path">Length of the row, from the first centre to the last.</param>
    public static ChainOfHoles Of(DrillSize drill, Length path)
    {
        var holes = (int)Math.Ceiling((path.Mm / (drill.Diameter.Mm + BridgeMm)) - 1e-9) + 1;
        return new ChainOfHoles(drill, holes, Length.OfMm(holes > 1 ? path.Mm / (holes - 1) : 0), path, holes * MinutesPerHole);
    }
}
