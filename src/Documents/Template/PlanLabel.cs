using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Words that belong to a spot of a true-scale drawing.</summary>
/// <param name="Text">The words.</param>
/// <param name="At">The spot, the drawing's own axes.</param>
/// <param name="ClearMm">How far from the spot they must stay, mm.</param>
/// <param name="HeightMm">Height of capitals.</param>
/// <param name="RimMm">Radius a leader runs to when the words end up further away; null for no leader.</param>
public sealed record PlanLabel(string Text, Point At, double ClearMm, double HeightMm, double? RimMm = null);
