using System.Text;
using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>Numbers and words as SVG writes them.</summary>
internal static class SvgText
{
    /// <summary>A length to 0.0001 mm, the fewest digits.</summary>
    public static string Mm(double mm) => Shown.Trimmed(mm, 4);

    /// <summary>Text safe in XML: marks escaped, characters XML does not allow turned into spaces.</summary>
    public static string Escaped(string text)
    {
        var s = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '<' => s.Append("&lt;"),
                '>' => s.Append("&gt;"),
                '&' => s.Append("&amp;"),
                '"' => s.Append("&quot;"),
                < 0x20 or 0x7F or 0xFFFE or 0xFFFF or 0xFFFD => s.Append(' '),
                _ => s.Append(rune),
            };
        }

        return s.ToString();
    }
}
