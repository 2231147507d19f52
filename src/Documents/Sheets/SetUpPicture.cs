using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The drawing of the set-up alone, for a screen.</summary>
public static class SetUpPicture
{
    private const double WidthMm = 230;
    private const double MostHeightMm = 130;

    /// <summary>A sheet no higher than the drawing needs.</summary>
    /// <param name="request">What it is drawn for.</param>
    /// <param name="program">The program.</param>
    public static Sheet Of(SheetRequest request, MachineProgram program)
    {
        Canvas Drawn(double heightMm, out Box below)
        {
            var canvas = new Canvas(SetUpSheet.Key, "Set-up for the mill", SheetFrame.Of(WidthMm, heightMm, 4));
            below = SetUpDrawing.Draw(canvas, request, program, canvas.Frame.Inside);
            return canvas;
        }

        Drawn(MostHeightMm, out var below);
        return Drawn(MostHeightMm - Math.Max(0, below.Height - 1), out _).Done();
    }
}
