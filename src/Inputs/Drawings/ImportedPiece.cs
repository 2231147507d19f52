using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A round hole found in a drawing.</summary>
/// <param name="Centre">Centre, mm, y up.</param>
/// <param name="DiameterMm">Diameter, mm.</param>
/// <param name="Layer">The layer it was drawn on.</param>
public sealed record ImportedHole(Point Centre, double DiameterMm, string Layer);

/// <summary>A layer of a drawing.</summary>
/// <param name="Name">Name.</param>
/// <param name="Curves">How many curves are drawn on it.</param>
public sealed record ImportedLayer(string Name, int Curves);

/// <summary>The piece found in a drawing, true size, mm, y up, with what was taken and what was not.</summary>
/// <param name="Outline">Closed, counter-clockwise.</param>
/// <param name="Holes">Round holes inside it, left to right.</param>
/// <param name="Units">Unit the drawing is in: inches where it says so, millimetres for every metric one.</param>
/// <param name="Taken">What was taken, and what was done to it, a line each.</param>
/// <param name="LeftOut">What was left out and why, a line each.</param>
/// <param name="Layers">Layers of the drawing, by name.</param>
public sealed record ImportedPiece(
    Path Outline,
    ImmutableArray<ImportedHole> Holes,
    LengthUnit Units,
    ImmutableArray<string> Taken,
    ImmutableArray<string> LeftOut,
    ImmutableArray<ImportedLayer> Layers);
