using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Holes that are large enough for every part to go with every other, by the drawing standard: worst against worst, no chance in it.</summary>
[Formula("Least hole for a rod, mm: F + T where it has play in every part (floating), F + T1 + T2 where one part holds it (fixed)", "asme-y14.5", "Position errors as diameters; rod square to the faces")]
public static class FastenerClearance
{
    /// <summary>The rod has play in every part; each hole so large.</summary>
    /// <param name="rod">The rod.</param>
    /// <param name="position">Position error of the holes, as a diameter.</param>
    public static Length Floating(Length rod, Length position) => rod + position;

    /// <summary>One part holds the rod; the holes of the other so large.</summary>
    /// <param name="rod">The rod.</param>
    /// <param name="held">Position error in the part that holds it, as a diameter.</param>
    /// <param name="open">Position error in the other, as a diameter.</param>
    public static Length Fixed(Length rod, Length held, Length open) => rod + held + open;
}
