using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A line of a true-scale drawing in its own axes.</summary>
/// <param name="Path">The line, true mm.</param>
/// <param name="Pen">How it is drawn.</param>
public sealed record PlanStroke(Path Path, Pen Pen);
