namespace Tangwright.Formats;

/// <summary>What the controller of a machine understands.</summary>
/// <param name="IsInch">Written in inches.</param>
/// <param name="HasDrillCycles">G81, G82, G83, G85; else single moves.</param>
/// <param name="HasArcs">G2, G3; else short straight moves.</param>
/// <param name="HasHelix">Arcs that go down; else short straight moves.</param>
/// <param name="HasToolChange">M6; else M0 with a remark.</param>
public sealed record ProgramDialect(bool IsInch, bool HasDrillCycles, bool HasArcs, bool HasHelix, bool HasToolChange);
