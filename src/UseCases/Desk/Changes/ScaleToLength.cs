using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Scales the whole piece evenly to a length over all. The datum stays; holes and rows go along, their diameters stay, and so do bevel height and thickness.</summary>
/// <param name="Written">The length as a maker writes it: 280, 11 in, 10 3/4 in.</param>
public sealed record ScaleToLength(string Written) : PlanChange
{
    /// <summary>A piece is scaled at most this many times longer or shorter in one go.</summary>
    private const double Most = 20;

    /// <inheritdoc/>
    internal override Checked<PlanFile> Of(PlanFile file)
    {
        var read = LengthText.Read(Written, file.Plan.Units == LengthUnit.Inch ? Length.MmPerInch : 1);
        if (!read.IsGood) return No(file, read.Message, read.Remedy);
        var factor = read.Value.Length.Mm / file.Plan.Outline.Bounds.Width;
        return factor is >= 1 / Most and <= Most
            ? PieceMap.Scaled(file, factor)
            : No(file, $"{Written.Trim()} is no length for this piece", $"write a length near {DeskFigures.Size(Length.OfMm(file.Plan.Outline.Bounds.Width), file.Plan.Units)}, which it has now");
    }
}
