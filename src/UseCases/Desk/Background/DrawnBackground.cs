namespace Tangwright.UseCases;

/// <summary>The background for the screen: lower left corner in mm, mm per pixel, pixels, degrees counter-clockwise, strength from 0 to 1.</summary>
public sealed record DrawnBackground(string Address, double X, double Y, double MmPerPixel, int Wide, int High, double Turn, double Strength, bool Shown)
{
    /// <summary>Draws a background.</summary>
    public static DrawnBackground Of(Background b, string address)
        => new(address, b.Place.X, b.Place.Y, b.Place.MmPerPixel, b.Picture.Wide, b.Picture.High, b.Place.Turn, b.Place.Strength, b.Place.Shown);
}
