using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Where a scanned drawing lies under a plan: NAME.background.toml beside the picture.</summary>
/// <param name="Corner">Lower left corner, plan's axes, mm.</param>
/// <param name="PixelMm">Size of a pixel, mm.</param>
/// <param name="TurnDegrees">Turned counter-clockwise about its lower left corner, degrees.</param>
/// <param name="StrengthShare">How strongly it is shown, above 0, at most 1.</param>
/// <param name="Shown">Whether it is shown.</param>
public sealed record BackgroundPlace(Point Corner, double PixelMm, double TurnDegrees, double StrengthShare, bool Shown)
{
    private const double LargestMm = 100_000;
    private const double LargestPixelMm = 100;
    private const double SmallestPixelMm = 1e-5;

    /// <summary>As long as a box along, at its lower left corner.</summary>
    public static BackgroundPlace Under(Box box, PictureSize picture) => new(new(box.MinX, box.MinY), Math.Clamp(box.Width / picture.Wide, SmallestPixelMm, LargestPixelMm), 0, 0.35, true);

    /// <summary>Two places of the picture given their true distance: it is scaled about the first.</summary>
    /// <param name="a">First place, plan's axes, mm.</param>
    /// <param name="b">Second place, plan's axes, mm.</param>
    /// <param name="length">The distance they should have.</param>
    public Checked<BackgroundPlace> Scaled(Point a, Point b, Length length)
    {
        var now = a.To(b);
        if (now < 1e-6 || length <= Length.Zero) return Bad("the two places must lie apart, and their distance be above 0", "point at two places far from each other");
        var by = length.Mm / now;
        return (this with { Corner = a + ((Corner - a) * by), PixelMm = PixelMm * by }).Sound();
    }

    /// <summary>Moved so that one place comes to another.</summary>
    public Checked<BackgroundPlace> Moved(Point from, Point to) => (this with { Corner = Corner + to - from }).Sound();

    /// <summary>Turned to an angle about a place.</summary>
    /// <param name="degrees">The angle it then has, counter-clockwise.</param>
    /// <param name="about">What stays where it is, plan's axes, mm.</param>
    public Checked<BackgroundPlace> Turned(double degrees, Point about)
    {
        var corner = Transform.Turn((degrees - TurnDegrees) * Math.PI / 180).Map(Corner - about) + about;
        return (this with { Corner = corner, TurnDegrees = Math.IEEERemainder(degrees, 360) }).Sound();
    }

    /// <summary>Itself, or what is wrong with it.</summary>
    public Checked<BackgroundPlace> Sound()
    {
        if (!(Math.Abs(Corner.X) <= LargestMm && Math.Abs(Corner.Y) <= LargestMm)) return Bad("the background would lie off the sheet", "keep it near the piece");
        if (!(PixelMm >= SmallestPixelMm && PixelMm <= LargestPixelMm)) return Bad("that size makes no sense for a drawing", $"a pixel is {SmallestPixelMm:0.#####} to {LargestPixelMm} mm");
        if (!double.IsFinite(TurnDegrees)) return Bad("the angle is no number", "write degrees, as 1.5");
        return StrengthShare is > 0 and <= 1 ? Checked<BackgroundPlace>.Good(this) : Bad("the strength must be above 0 and at most 1", "write 0.35");
    }

    /// <summary>Reads the file's text.</summary>
    public static Checked<BackgroundPlace> Read(string text, string fileName)
        => TomlReading.Read(new SourceText(text, fileName)).Then(table =>
        {
            double Number(string key) => table.Find(key)?.Value is TomlNumber n ? n.Value : double.NaN;
            return new BackgroundPlace(new(Number("x"), Number("y")), Number("mm_per_pixel"), Number("turn"), Number("strength"), table.Find("shown")?.Value is not TomlFlag { Value: false }).Sound();
        });

    /// <summary>The file's text.</summary>
    public string Text() => string.Create(CultureInfo.InvariantCulture, $"""
        # Where the scanned drawing of the same name lies under the plan: lower left corner and sizes in mm, turned counter-clockwise in degrees.
        x = {Corner.X:0.######}
        y = {Corner.Y:0.######}
        mm_per_pixel = {PixelMm:0.##########}
        turn = {TurnDegrees:0.######}
        strength = {StrengthShare:0.##}
        shown = {(Shown ? "true" : "false")}

        """);

    private static Checked<BackgroundPlace> Bad(string message, string remedy) => Checked<BackgroundPlace>.Bad(Fault.OfFile("background", message, remedy));
}
