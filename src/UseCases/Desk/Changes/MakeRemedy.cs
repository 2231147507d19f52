using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Goes a way out of a finding.</summary>
/// <param name="Way">The way.</param>
public sealed record MakeRemedy(RemedyWay Way) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file) => RemedyEdit.Make(file, Way);
}
