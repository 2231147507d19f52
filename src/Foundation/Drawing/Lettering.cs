using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>How much room lettering takes: the sheets are lettered in DejaVu Sans Condensed, sized by the height of its capitals as in ISO 3098.</summary>
public static class Lettering
{
    /// <summary>Height of a capital in the em: 1493 of 2048 units (glyph H of both faces).</summary>
    public const double CapitalInEm = 1493.0 / 2048;

    /// <summary>Distance between base lines, in heights of a capital: 1.7, so that lines of mixed marks and accents stay apart (ISO 3098-1 asks for at least 1.4 with lettering type B without accents).</summary>
    public const double LinePitch = 1.7;

    /// <summary>Drawn in place of a character that is not in the table.</summary>
    public const char Box = '\u25A1';

    /// <summary>Width of a line of text as <see cref="Drawn"/> draws it, mm; exact, the faces are set without kerning.</summary>
    /// <param name="text">One line.</param>
    /// <param name="heightMm">Height of capitals, mm.</param>
    /// <param name="bold">Bold face.</param>
    public static double Width(string text, double heightMm, bool bold = false)
    {
        var units = 0L;
        foreach (var c in text) units += Units(c, bold);
        return units * heightMm / 1493;
    }

    /// <summary>Whether a character is in the table of widths.</summary>
    public static bool Knows(char c) => Listed(c, bold: false) is not null;

    /// <summary>The text with every character the table lacks turned into an empty box and every control character into a space, so that what is drawn has the width computed.</summary>
    public static string Drawn(string text)
    {
        var plain = true;
        foreach (var c in text) plain &= Knows(c);
        return plain ? text : string.Concat(text.Select(Stand));
    }

    /// <summary>Breaks a text into lines no wider than asked, at spaces; a word that is too long by itself is broken where it must. Line ends in the text are kept.</summary>
    /// <param name="text">The text.</param>
    /// <param name="widthMm">Greatest width of a line, mm.</param>
    /// <param name="heightMm">Height of capitals, mm.</param>
    /// <param name="bold">Bold face.</param>
    public static ImmutableArray<string> Wrap(string text, double widthMm, double heightMm, bool bold = false)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        foreach (var paragraph in text.ReplaceLineEndings("\n").Split('\n')) WrapOne(paragraph, (long)(widthMm * 1493 / heightMm), bold, lines);
        return lines.ToImmutable();
    }

    private static void WrapOne(string text, long room, bool bold, ImmutableArray<string>.Builder lines)
    {
        var start = 0;
        while (true)
        {
            var first = start == 0;
            while (start < text.Length && text[start] == ' ') start++;
            if (start == text.Length && !first) return;
            var (i, used, lastSpace) = (start, 0L, -1);
            for (; i < text.Length; i++)
            {
                if (text[i] == ' ') lastSpace = i;
                used += Units(text[i], bold);
                if (used > room && text[i] != ' ') break;
            }

            if (i >= text.Length)
            {
                lines.Add(text[start..].TrimEnd(' '));
                return;
            }

            // no space to break at: break the word, but take at least one character
            var end = lastSpace > start ? lastSpace : Math.Max(i, start + 1);
            if (end < text.Length && end == i && char.IsLowSurrogate(text[end]) && end > start + 1) end--;
            lines.Add(text[start..end].TrimEnd(' '));
            start = end;
        }
    }

    private static int Units(char c, bool bold) => Listed(c, bold) ?? Listed(Stand(c), bold) ?? 0;

    private static char Stand(char c) => Knows(c) ? c : char.IsControl(c) ? ' ' : Box;

    private static int? Listed(char c, bool bold)
    {
        // the table's runs ascend; printable ASCII is the first and by far the most usual
        foreach (var (first, regular, heavy) in LetteringWidths.Runs)
        {
            if (c < first) break;
            if (c - first < regular.Length) return (bold ? heavy : regular)[c - first];
        }

        return null;
    }
}
