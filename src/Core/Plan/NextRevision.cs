using System.Globalization;

namespace Tangwright.Core;

/// <summary>The revision that comes after another: A, B, ... Z, AA, AB, ..., I and O left out because they read as 1 and 0 (common practice; ISO 7200:2004 only asks that a revision be named); a number counts on.</summary>
public static class NextRevision
{
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    /// <summary>The next one; A after none or after a word that cannot be counted on.</summary>
    public static string After(string revision)
    {
        var text = revision.Trim();
        var digits = text.Length - text.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9').Length;
        if (digits is > 0 and < 9) return text[..^digits] + (int.Parse(text.AsSpan(text.Length - digits), CultureInfo.InvariantCulture) + 1).ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0');
        var upper = text.ToUpperInvariant();
        if (upper.Length is 0 or > 3 || upper.Any(c => !char.IsAsciiLetter(c))) return "A";
        var letters = upper.ToCharArray();
        for (var i = letters.Length - 1; i >= 0; i--)
        {
            // one that is left out counts as the one before it
            var at = Letters.IndexOf(letters[i] is 'I' or 'O' ? (char)(letters[i] - 1) : letters[i], StringComparison.Ordinal);
            letters[i] = Letters[(at + 1) % Letters.Length];
            if (at + 1 < Letters.Length) return new string(letters);
        }

        return "A" + new string(letters);
    }
}
