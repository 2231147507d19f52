using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A class of a hole or a pin, "H7" or "m6": where its tolerance lies, and how wide it is. Capitals are holes.</summary>
public sealed record ToleranceClass
{
    private ToleranceClass(string letters, int grade) => (Letters, Grade) = (letters, grade);

    /// <summary>Letters of a pin in the order of more and more metal; in capitals those of a hole.</summary>
    private const string Known = "f g h js k m n p r s";

    /// <summary>Where it lies: "H", "m".</summary>
    public string Letters { get; }

    /// <summary>How wide: the number of the grade.</summary>
    public int Grade { get; }

    /// <summary>Whether it is the class of a hole.</summary>
    public bool IsHole => char.IsAsciiLetterUpper(Letters[0]);

    /// <summary>Reads the class of a hole.</summary>
    public static Checked<ToleranceClass> Hole(string text) => Read(text, isHole: true);

    /// <summary>Reads the class of a pin.</summary>
    public static Checked<ToleranceClass> Pin(string text) => Read(text, isHole: false);

    /// <inheritdoc/>
    public override string ToString() => Letters + Grade.ToString(CultureInfo.InvariantCulture);

    private static Checked<ToleranceClass> Read(string text, bool isHole)
    {
        text = text.Trim();
        var digits = text.AsSpan().TrimStart("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ");
        var letters = text[..^digits.Length];
        var known = letters.Length > 0 && Array.IndexOf(Letter(isHole), letters) >= 0;
        var isGrade = int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var grade) && grade is >= ToleranceGrade.Finest and <= ToleranceGrade.Coarsest;
        if (known && isGrade) return Checked<ToleranceClass>.Good(new(letters, grade));
        var (what, example, other) = isHole ? ("hole", "H7", "small letters are for pins") : ("pin", "h6", "capitals are for holes");
        return Checked<ToleranceClass>.Bad(Fault.OfFile(
            text.Length == 0 ? "no class" : text.Length > 12 ? text[..12] + "..." : text,
            $"is no class of a {what} that is known here",
            $"write one of {string.Join(" ", Letter(isHole))} with a grade from {ToleranceGrade.Finest} to {ToleranceGrade.Coarsest}, as {example}; {other}"));
    }

    private static string[] Letter(bool isHole) => isHole ? [.. Known.ToUpperInvariant().Split(' ')[..8]] : Known.Split(' ');
}
