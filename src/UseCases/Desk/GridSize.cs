using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Size of the grid a dragged place may hold on to.</summary>
/// <param name="Written">As the maker wrote it.</param>
/// <param name="Mm">Its size, mm.</param>
public sealed record GridSize(string Written, double Mm)
{
    private const double LeastMm = 0.05;

    /// <summary>5 mm, or 1/4 in.</summary>
    public static GridSize Usual(LengthUnit units) => units == LengthUnit.Inch ? new("1/4 in", Length.MmPerInch / 4) : new("5", 5);

    /// <summary>Reads a size.</summary>
    public static Checked<GridSize> Of(string written, LengthUnit units)
    {
        var read = LengthText.Read(written, units == LengthUnit.Inch ? Length.MmPerInch : 1, drills: false);
        if (!read.IsGood) return Checked<GridSize>.Bad(Fault.OfFile("", read.Message, read.Remedy));
        return read.Value.Length.Mm >= LeastMm
            ? Checked<GridSize>.Good(new(written, read.Value.Length.Mm))
            : Checked<GridSize>.Bad(Fault.OfFile("", "that grid is too fine", $"use {LeastMm} mm or more"));
    }
}
