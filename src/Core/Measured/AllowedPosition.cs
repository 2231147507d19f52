using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How far a hole may be out of place, as a diameter: what is allowed at its least size, and as much more as it came out larger.</summary>
[Formula("Position error allowed as a diameter: T + (measured - least hole); for a pin through clearance holes T = hole - pin (floating fastener)", "asme-y14.5", "Round holes; position allowed at maximum material (M)")]
public static class AllowedPosition
{
    /// <summary>What is allowed.</summary>
    /// <param name="atLeast">Allowed at the least size.</param>
    /// <param name="leastHole">The least size.</param>
    /// <param name="measured">The size as measured.</param>
    public static Length Of(Length atLeast, Length leastHole, Length measured) => atLeast + (measured - leastHole);

    /// <summary>What is allowed of a hole that a rod has to pass, when each part may be as much out of place; under 0 when the rod does not go in at all.</summary>
    /// <param name="planned">Planned size of the hole.</param>
    /// <param name="rod">The rod.</param>
    /// <param name="measured">Size as measured.</param>
    public static Length ForPin(Length planned, Length rod, Length measured) => Of(planned - rod, planned, measured);
}
