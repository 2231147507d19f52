using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Tangwright.Inputs;

/// <summary>One word of a program: a letter and its number.</summary>
internal readonly record struct ProgramLetter(char Letter, double Value)
{
    /// <summary>As it is written: G81, X4.5.</summary>
    public override string ToString() => Letter + Value.ToString("0.####", CultureInfo.InvariantCulture);
}

/// <summary>One line of a program, taken apart (NIST IR 6556, 3.3): words without comments and white space.</summary>
/// <param name="Line">Line number in the file, from 1.</param>
/// <param name="Words">Its words in order, N left out.</param>
/// <param name="IsTapeMark">Whether it is a single %.</param>
internal sealed record ProgramBlock(int Line, ImmutableArray<ProgramLetter> Words, bool IsTapeMark)
{
    /// <summary>The longest line every interpreter of the standard takes.</summary>
    public const int LongestLine = 256;

    private const string Letters = "DFGHIJKLMNPQRSTXYZ";

    /// <summary>Takes a line apart, or says what cannot be read.</summary>
    public static Reading<ProgramBlock> Of(string text, int line)
    {
        if (text.Length > LongestLine) return No($"the line is longer than {LongestLine} characters", "break it into shorter lines");
        if (text.Trim() == "%") return Reading<ProgramBlock>.Of(new(line, [], true));
        var bare = new StringBuilder();
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == ';') break;
            if (text[i] == ')') return No("a ')' without a '('", "write a remark as (remark)");
            if (text[i] != '(')
            {
                if (!char.IsWhiteSpace(text[i])) bare.Append(char.ToUpperInvariant(text[i]));
                continue;
            }

            var end = text.IndexOf(')', i);
            if (end < 0) return No("a remark that does not end", "close it with ')' on the same line");
            if (text.AsSpan(i + 1, end - i - 1).Contains('(')) return No("a remark inside a remark", "write no '(' inside a remark");
            i = end;
        }

        return Taken(bare.ToString(), line);
    }

    /// <summary>The value of the only word with this letter; null when there is none.</summary>
    public double? Get(char letter)
    {
        foreach (var w in Words)
        {
            if (w.Letter == letter) return w.Value;
        }

        return null;
    }

    private static Reading<ProgramBlock> Taken(string bare, int line)
    {
        if (bare.StartsWith('/')) return No("a line that a switch at the machine may skip", "leave the '/' out: what is checked must be what runs");
        var words = ImmutableArray.CreateBuilder<ProgramLetter>();
        for (var i = 0; i < bare.Length;)
        {
            var letter = bare[i++];
            if (letter == '#') return No("a parameter (#)", "write the number itself: a parameter may have any value at the machine");
            if (letter == 'O') return No("a subprogram or loop (O)", "write its lines out");
            if (letter is 'A' or 'B' or 'C' or 'U' or 'V' or 'W') return No($"an axis {letter}", "a mill for flat bar has X, Y and Z");
            if (!Letters.Contains(letter, StringComparison.Ordinal)) return No($"'{letter}' means nothing here", "leave it out");
            var from = i;
            while (i < bare.Length && (char.IsAsciiDigit(bare[i]) || bare[i] is '.' || (i == from && bare[i] is '+' or '-'))) i++;
            if (i < bare.Length && i == from && bare[i] is '[' or '#') return No("a value to be worked out ([ ] or #)", "write the number itself: a parameter may have any value at the machine");
            if (!double.TryParse(bare.AsSpan(from, i - from), NumberStyles.Float, CultureInfo.InvariantCulture, out var value)) return No($"no number after {letter}", $"write a number as {letter}12.5");
            if (letter == 'N') continue;
            if (letter is not ('G' or 'M') && words.Any(w => w.Letter == letter)) return No($"{letter} stands twice in one line", "keep one of the two");
            words.Add(new ProgramLetter(letter, value));
        }

        return Reading<ProgramBlock>.Of(new(line, words.ToImmutable(), false));
    }

    private static Reading<ProgramBlock> No(string what, string remedy) => Reading<ProgramBlock>.Bad(what, remedy);
}
