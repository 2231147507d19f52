using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A clamp as a box on the table, from the spoil board up.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Box">Seen from above, from the program's zero, mm.</param>
/// <param name="TopZMm">Its top over the stock's upper face, mm.</param>
public sealed record ClampBox(string Name, Box Box, double TopZMm);

/// <summary>How the stock lies under the mill. From the program's zero: x along, y across, z 0 at the stock's upper face; mm.</summary>
/// <param name="Machine">The mill.</param>
/// <param name="ZeroAt">The program's zero in the plan's axes, mm.</param>
/// <param name="ZeroInWords">What it is touched off on: "sawn end at the left, lower long edge of the bar".</param>
/// <param name="Stock">The stock seen from above.</param>
/// <param name="ThicknessMm">Thickness of the stock, mm.</param>
/// <param name="SpoilMm">How deep a tool may go into the spoil board, mm.</param>
/// <param name="Travel">Reach of the table seen from above; null when the machine does not say.</param>
/// <param name="TravelZMm">Travel of the spindle, mm; null when the machine does not say.</param>
/// <param name="Clamps">Clamps.</param>
public sealed record ProgramSetUp(
    Machine Machine,
    Point ZeroAt,
    string ZeroInWords,
    Box Stock,
    double ThicknessMm,
    double SpoilMm,
    Box? Travel,
    double? TravelZMm,
    ImmutableArray<ClampBox> Clamps)
{
    /// <summary>Finished holes that stand on pins and place the stock; empty when edges place it.</summary>
    public ImmutableArray<WantedHole> Pins { get; init; } = [];
}

/// <summary>A hole that a program must leave behind.</summary>
/// <param name="Name">Name.</param>
/// <param name="At">Centre from the program's zero, mm.</param>
/// <param name="DiameterMm">Diameter, mm.</param>
public sealed record WantedHole(string Name, Point At, double DiameterMm);

/// <summary>What a program must leave behind.</summary>
/// <param name="Holes">Through holes at full size.</param>
/// <param name="Outline">Closed outline from the program's zero, mm; null when it is not cut.</param>
/// <param name="ToleranceMm">How far place, size and outline may be off, mm.</param>
public sealed record WantedPart(ImmutableArray<WantedHole> Holes, Path? Outline, double ToleranceMm);
