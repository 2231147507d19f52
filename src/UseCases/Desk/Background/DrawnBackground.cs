namespace Tangwright.UseCases;

/// <summary>The background for the screen: lower left corner in mm, mm per pixel, pixels, degrees counter-clockwise, strength from 0 to 1.</summary>
public sealed record DrawnBackground(string Address, double X, double Y, double MmPerPixel, int Wide, int High, double Turn, double Strength, bool Shown)
{
    /// <summary>Draws a background.</summary>
    public static DrawnBackground Of(Background b, string address)
        => new(address, b.Place.Corner.X, b.Place.Corner.Y, b.Place.PixelMm, b.Picture.Wide, b.Picture.High, b.Place.TurnDegrees, b.Place.StrengthShare, b.Place.Shown);
}
