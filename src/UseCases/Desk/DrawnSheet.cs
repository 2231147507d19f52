using System.Collections.Immutable;
using Tangwright.Formats;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>One sheet as a picture for a page.</summary>
/// <param name="Label">What it is.</param>
/// <param name="WidthMm">Width of the paper, mm.</param>
/// <param name="HeightMm">Height of the paper, mm.</param>
/// <param name="Svg">The picture, an SVG element of that size.</param>
public sealed record DrawnSheet(string Label, double WidthMm, double HeightMm, string Svg)
{
    /// <summary>Draws it.</summary>
    internal static DrawnSheet Of(Sheet sheet, string label) => new(label, sheet.WidthMm, sheet.HeightMm, SheetSvg.Write(sheet, label));

    /// <summary>The bytes of a face the sheets are lettered in; null when there is none of that name.</summary>
    /// <param name="face">plain or bold.</param>
    public static byte[]? Lettering(string face) => face switch { "plain" => SheetFonts.Of(SheetFonts.Regular), "bold" => SheetFonts.Of(SheetFonts.Bold), _ => null };
}

/// <summary>Sheets as pictures, in order.</summary>
/// <param name="Sheets">The sheets.</param>
public sealed record DrawnSheets(ImmutableArray<DrawnSheet> Sheets);
