using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Writes the revision into the plan's head.</summary>
/// <param name="Revision">The revision: "B".</param>
public sealed record MarkRevision(string Revision) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => PlanEdit.SetText(file, "", "revision", Revision);
}
