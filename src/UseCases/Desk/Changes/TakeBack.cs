using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Puts another text in place of the whole plan.</summary>
/// <param name="Text">The text.</param>
/// <param name="FileName">Where it comes from, for the faults.</param>
public sealed record TakeBack(string Text, string FileName) : PlanChange
{
    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file)
    {
        var read = PlanReader.Read(Text, FileName);
        return read.IsGood ? PlanReader.Read(Text, file.FileName) : read;
    }
}
