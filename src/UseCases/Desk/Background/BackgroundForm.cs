using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>The background as a form shows it and takes it.</summary>
public static class BackgroundForm
{
    /// <summary>Its fields as they would be typed in.</summary>
    public static (string Left, string Lower, string Wide, string Turn) Written(Background b, LengthUnit units)
        => (DeskFigures.Typed(Length.OfMm(b.Place.Corner.X), units), DeskFigures.Typed(Length.OfMm(b.Place.Corner.Y), units), DeskFigures.Typed(Length.OfMm(b.Place.PixelMm * b.Picture.Wide), units), Foundation.Shown.Trimmed(b.Place.TurnDegrees, 3));

    /// <summary>Where it lies when a field is typed anew.</summary>
    /// <param name="b">The background.</param>
    /// <param name="field">left, lower, wide or turn.</param>
    /// <param name="written">As typed.</param>
    /// <param name="plan">The plan it lies under.</param>
    public static Checked<Background> Typed(Background b, string field, string written, Plan plan)
    {
        if (field == "turn")
        {
            return double.TryParse(written.Trim().TrimEnd('°'), NumberStyles.Float, CultureInfo.InvariantCulture, out var degrees)
                ? b.At(b.Place.Turned(degrees, plan.Outline.Bounds.Centre))
                : Bad("that is no number", "write degrees, as 1.5");
        }

        return Mm(b, written, plan.Units, mm => field switch
        {
            "left" => b.Place with { Corner = b.Place.Corner with { X = mm } },
            "lower" => b.Place with { Corner = b.Place.Corner with { Y = mm } },
            _ => b.Place with { PixelMm = mm / b.Picture.Wide },
        });
    }

    /// <summary>Where it lies when two places of it are this far apart.</summary>
    public static Checked<Background> Scaled(Background b, (Point A, Point B) places, string written, LengthUnit units)
    {
        var read = LengthText.Read(written, units == LengthUnit.Inch ? Length.MmPerInch : 1);
        return read.IsGood ? b.At(b.Place.Scaled(places.A, places.B, read.Value.Length)) : Bad(read.Message, read.Remedy);
    }

    /// <summary>Moved so that the first of two places comes to the second.</summary>
    public static Checked<Background> Moved(Background b, (Point A, Point B) places) => b.At(b.Place.Moved(places.A, places.B));

    /// <summary>Shown or hidden.</summary>
    public static Checked<Background> Shown(Background b, bool shown) => b.At((b.Place with { Shown = shown }).Sound());

    /// <summary>Shown more or less strongly, above 0 and at most 1.</summary>
    public static Checked<Background> Strong(Background b, string strength)
        => double.TryParse(strength, NumberStyles.Float, CultureInfo.InvariantCulture, out var s) ? b.At((b.Place with { StrengthShare = s }).Sound()) : Bad("that is no number", "write 0.35");

    /// <summary>How far apart two places lie now, both units.</summary>
    public static string Apart((Point A, Point B) places) => Foundation.Shown.Both(Length.OfMm(places.A.To(places.B)));

    private static Checked<Background> Mm(Background b, string written, LengthUnit units, Func<double, BackgroundPlace> place)
    {
        var read = LengthText.Read(written, units == LengthUnit.Inch ? Length.MmPerInch : 1);
        return read.IsGood ? b.At(place(read.Value.Length.Mm).Sound()) : Bad(read.Message, read.Remedy);
    }

    private static Checked<Background> Bad(string message, string remedy) => Checked<Background>.Bad(Fault.OfFile("background", message, remedy));
}
