using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>A path on a layer of a flat drawing, true size, mm, y up.</summary>
/// <param name="Layer">Layer: OUTLINE, HOLES, EDGE, PLUNGE, STOCK.</param>
/// <param name="Path">The path.</param>
public sealed record DrawnPath(string Layer, Path Path);

/// <summary>A circle on a layer of a flat drawing, true size, mm.</summary>
/// <param name="Layer">Layer.</param>
/// <param name="Name">Name of the hole; may be empty.</param>
/// <param name="Centre">Centre.</param>
/// <param name="DiameterMm">Diameter, mm.</param>
public sealed record DrawnCircle(string Layer, string Name, Point Centre, double DiameterMm);

/// <summary>A flat drawing to hand to another program: true size, mm, y up.</summary>
/// <param name="Title">Title.</param>
/// <param name="Paths">Paths.</param>
/// <param name="Circles">Circles.</param>
public sealed record FlatDrawing(string Title, ImmutableArray<DrawnPath> Paths, ImmutableArray<DrawnCircle> Circles);
