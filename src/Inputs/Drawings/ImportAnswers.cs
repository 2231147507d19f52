using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>The bevel as it was told of an imported piece.</summary>
/// <param name="HeightMm">Height square to the edge, mm; null: to the spine.</param>
/// <param name="EdgeFinishedMm">Thickness of the edge before sharpening, mm.</param>
/// <param name="PlungeX">Where it ends, x, mm; null: it runs out at the ends of the edge.</param>
public sealed record ImportedBevel(double? HeightMm, double EdgeFinishedMm, double? PlungeX);

/// <summary>What a drawing cannot say and the person did.</summary>
/// <param name="Edge">First and last point of the sharpened part, along the outline counter-clockwise; null: not told.</param>
/// <param name="Bevel">The bevel; null: not told.</param>
/// <param name="Grip">Front and rear end of the grip; null: not told.</param>
public sealed record ImportAnswers((Point From, Point To)? Edge, ImportedBevel? Bevel, (Point From, Point To)? Grip);
