using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A closed loop of a drawing.</summary>
/// <param name="Number">Number it is chosen by, as with --loop; 0 for a circle that can only be a hole.</param>
/// <param name="Path">The loop, mm, y up.</param>
/// <param name="Said">Its size in both units, its place and its layer, in words.</param>
/// <param name="Centre">Centre when it is round; else null.</param>
/// <param name="DiameterMm">Diameter when it is round, mm; else null.</param>
public sealed record FoundLoop(int Number, Path Path, string Said, Point? Centre, double? DiameterMm);

/// <summary>The closed loops of a drawing.</summary>
/// <param name="Shaped">Those that can be the outline, largest first.</param>
/// <param name="Round">Circles.</param>
/// <param name="Suggested">Number of the one taken unasked; null when that is none of the shaped ones.</param>
/// <param name="Units">Unit of the drawing.</param>
/// <param name="SaysUnits">Whether the drawing, or the person, says its unit; else mm is taken.</param>
/// <param name="Notes">What else there is to say, a line each.</param>
public sealed record FoundLoops(ImmutableArray<FoundLoop> Shaped, ImmutableArray<FoundLoop> Round, int? Suggested, LengthUnit Units, bool SaysUnits, ImmutableArray<string> Notes);
