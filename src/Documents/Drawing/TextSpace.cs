using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Room that lettering takes on a sheet.</summary>
public static class TextSpace
{
    /// <summary>Depth of descenders below the base line, in heights of a capital, rounded up from the lettering's own 0.32.</summary>
    private const double Descender = 0.33;

    /// <summary>No line of a sheet can show more characters than this.</summary>
    private const int MostShown = 2000;

    /// <summary>From base line to base line, mm.</summary>
    public static double LineMm(double heightMm) => heightMm * Lettering.LinePitch;

    /// <summary>Height of a text broken over lines, mm.</summary>
    public static double WrappedMm(string text, double widthMm, double heightMm, bool bold = false)
        => Lines(text, widthMm, heightMm, bold).Length * LineMm(heightMm);

    /// <summary>A text broken over lines; one of more lines than allowed ends in an ellipsis.</summary>
    public static ImmutableArray<string> Lines(string text, double widthMm, double heightMm, bool bold = false, int mostLines = Canvas.MostLines)
    {
        // no line holds more characters than this, so the rest of a very long text need not be broken
        var most = (int)(mostLines * widthMm / heightMm * 8) + 8;
        var lines = Lettering.Wrap(Clean(text.Length > most ? text[..most] : text), widthMm, heightMm, bold);
        return lines.Length <= mostLines ? lines : [.. lines[..(mostLines - 1)], Fit(lines[mostLines - 1] + " " + lines[mostLines], widthMm, heightMm, bold, least: heightMm).Text];
    }

    /// <summary>The upright box around a line of text, turned as it stands.</summary>
    public static Box Of(TextMark mark)
    {
        var width = Lettering.Width(mark.Text, mark.HeightMm, mark.Bold);
        var left = mark.Anchor switch { TextAnchor.Left => 0, TextAnchor.Middle => -width / 2, _ => -width };
        var along = Point.Direction(mark.AngleDegrees * (Math.PI / 180));
        Point At(double x, double y) => mark.At + (along * x) + (along.Left * y);
        var (low, high) = (-Descender * mark.HeightMm, 1.05 * mark.HeightMm);
        return Box.Around(At(left, low), At(left + width, low), At(left + width, high), At(left, high));
    }

    /// <summary>A text and its height made to fit a width: smaller down to 2.5 mm, then cut off with an ellipsis.</summary>
    public static (string Text, double HeightMm) Fit(string text, double widthMm, double heightMm, bool bold, double least = Canvas.SmallMm)
    {
        var clean = Clean(text.Length > MostShown ? text[..MostShown] : text);
        foreach (var height in (ReadOnlySpan<double>)[heightMm, Math.Min(heightMm, Canvas.LargeMm), Math.Min(heightMm, Canvas.TextMm), Math.Min(heightMm, 3), Math.Min(heightMm, least)])
        {
            if (height < least) break;
            if (Lettering.Width(clean, height, bold) <= widthMm) return (clean, height);
        }

        least = Math.Min(heightMm, least);
        var (low, high) = (0, clean.Length);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (Lettering.Width(clean[..middle] + "…", least, bold) <= widthMm) low = middle;
            else high = middle - 1;
        }

        if (low > 0 && char.IsHighSurrogate(clean[low - 1])) low--;
        return (clean[..low] + "…", least);
    }

    /// <summary>Text on one line: control characters become spaces.</summary>
    public static string Clean(string text)
        => text.AsSpan().IndexOfAnyInRange('\0', '\u001f') < 0 && !text.Contains('\u007f', StringComparison.Ordinal)
            ? text
            : string.Create(text.Length, text, (to, from) =>
            {
                for (var i = 0; i < to.Length; i++) to[i] = char.IsControl(from[i]) ? ' ' : from[i];
            });
}
