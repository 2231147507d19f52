using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Takes typed values out of one table of a file and collects the faults. A value that is absent or faulty is null.</summary>
/// <param name="source">The file.</param>
/// <param name="table">The table; null when the heading is absent, then every value is.</param>
/// <param name="heading">Name of the heading.</param>
/// <param name="keys">The file's key table.</param>
/// <param name="unitMm">Unit of bare numbers, mm.</param>
/// <param name="faults">Where faults go.</param>
internal sealed class Fields(SourceText source, TomlTable? table, string heading, KeyTable keys, double unitMm, List<Fault> faults)
{
    private const int LongestText = 200;

    public bool IsThere => table is not null;

    public int Offset => table?.Offset ?? 0;

    public bool Has(string key) => table?.Find(key) is not null;

    public TomlNode? Node(string key)
    {
        if (keys.Find(heading, key) is null) throw new InvalidOperationException($"{heading}.{key} is in no row of the key table");
        return table?.Find(key)?.Value;
    }

    public void Fault(string key, string message, string remedy) => faults.Add(source.Fault(Node(key)?.Offset ?? Offset, message, remedy));

    public void FaultAt(int offset, string message, string remedy) => faults.Add(source.Fault(offset, message, remedy));

    /// <summary>A short text in one line.</summary>
    public string? Text(string key)
    {
        switch (Node(key))
        {
            case null:
                return null;
            case TomlText t when t.Value.Length <= LongestText && !t.Value.Any(char.IsControl) && t.Value.Trim().Length > 0:
                return t.Value.Trim();
            case TomlText t:
                Fault(key, t.Value.Trim().Length == 0 ? $"{key} is empty" : $"{key} is longer than {LongestText} characters or has control characters", $"write a short text, as {keys.Find(heading, key)!.Example}");
                return null;
            case var other:
                return Wrong(key, other, "text in quotes");
        }
    }

    /// <summary>One of the words of the key's row; -1 when absent or faulty.</summary>
    public int Word(string key)
    {
        var row = keys.Find(heading, key)!;
        switch (Node(key))
        {
            case null:
                return -1;
            case TomlText t:
                var i = row.Words.IndexOf(t.Value.Trim().ToLowerInvariant(), 0, StringComparer.Ordinal);
                if (i < 0)
                {
                    var near = KeyTable.Nearest(t.Value, row.Words);
                    Fault(key, $"{key} is '{NumberText.Clip(t.Value)}', which is not known", near is null ? $"write one of {string.Join(", ", row.Words)}" : $"did you mean {near}? Known are {string.Join(", ", row.Words)}");
                }

                return i;
            case var other:
                Wrong(key, other, $"one of the words {string.Join(", ", row.Words)}");
                return -1;
        }
    }

    public bool? Flag(string key)
    {
        if (Node(key) is not { } node) return null;
        if (node is TomlFlag f) return f.Value;
        Wrong(key, node, "true or false");
        return null;
    }

    public double? Number(string key, double low, double high)
    {
        if (Node(key) is not { } node) return null;
        if (node is TomlNumber n)
        {
            if (n.Value >= low && n.Value <= high) return n.Value;
            Fault(key, $"{key} is outside {low} to {high}", $"write a number in that range, as {keys.Find(heading, key)!.Example}");
            return null;
        }

        Wrong(key, node, "a plain number");
        return null;
    }

    public int? Whole(string key, int low, int high)
    {
        if (Number(key, low, high) is not { } n) return null;
        if (Node(key) is TomlNumber { IsWhole: true }) return (int)n;
        Fault(key, $"{key} is not a whole number", $"write {Math.Round(n)}");
        return null;
    }

    /// <summary>A length in any writing; with <paramref name="positive"/> it must be above 0.</summary>
    public Length? Length(string key, bool positive = true, bool drills = false) => Node(key) is { } node ? Length(node, key, positive, drills)?.Length : null;

    public WrittenLength? Length(TomlNode node, string key, bool positive, bool drills)
    {
        var read = node switch
        {
            TomlText t => LengthText.Read(t.Value, unitMm, drills),
            TomlNumber { Value: var v } when !double.IsFinite(v) => Reading<WrittenLength>.Bad("a number that is not finite", "write a length as 6.35"),
            TomlNumber n => Math.Abs(n.Value * unitMm) <= LengthText.GreatestMm
                ? Reading<WrittenLength>.Of(new(Foundation.Length.OfMm(n.Value * unitMm), LengthWriting.Bare))
                : Reading<WrittenLength>.Bad("a length of more than 100 m", "check the number and the unit"),
            _ => Reading<WrittenLength>.Bad($"{node.Kind} where a length is wanted", "write a number, or a text as \"6.35 mm\" or \"1/4 in\""),
        };
        if (read.IsGood && positive && read.Value.Length.Mm <= 0) read = Reading<WrittenLength>.Bad("a length that is not above 0", "write how much it is");
        if (read.IsGood) return read.Value;
        faults.Add(source.Fault(node.Offset, $"{key}: {read.Message}", read.Remedy));
        return null;
    }

    /// <summary>A text read by a quantity's own reader; a bare number is handed over as its text.</summary>
    public T? Quantity<T>(string key, Func<string, Reading<T>> reader)
        where T : struct
    {
        var node = Node(key);
        if (node is null) return null;
        if (node is not (TomlText or TomlNumber))
        {
            Wrong(key, node, $"a value as {keys.Find(heading, key)!.Example}");
            return null;
        }

        var read = reader(node is TomlText t ? t.Value : source.Text.Substring(node.Offset, node.Length));
        if (read.IsGood) return read.Value;
        Fault(key, $"{key}: {read.Message}", read.Remedy);
        return null;
    }

    public Point? Point(string key) => Node(key) is { } node ? Point(node, key) : null;

    /// <summary>A pair of lengths.</summary>
    public Point? Point(TomlNode node, string key)
    {
        if (node is not TomlList { Items.Count: 2 } pair)
        {
            faults.Add(source.Fault(node.Offset, $"{key} is not a point", "write two lengths in brackets, as [100, 18.2]"));
            return null;
        }

        var x = Length(pair.Items[0], key, positive: false, drills: false);
        var y = Length(pair.Items[1], key, positive: false, drills: false);
        return x is { } a && y is { } b ? new Point(a.Length.Mm, b.Length.Mm) : null;
    }

    /// <summary>Two points that are apart.</summary>
    public (Point A, Point B)? TwoPoints(TomlNode node, string key)
    {
        if (node is not TomlList { Items.Count: 2 } pair || !pair.Items.All(i => i is TomlList))
        {
            faults.Add(source.Fault(node.Offset, $"{key} is not a pair of points", "write two points in brackets, as [[124, 18], [229, 18]]"));
            return null;
        }

        if (Point(pair.Items[0], key) is not { } a || Point(pair.Items[1], key) is not { } b) return null;
        if (a.To(b) > 1e-6) return (a, b);
        faults.Add(source.Fault(node.Offset, $"{key}: both points are the same", "write two points that are apart"));
        return null;
    }

    /// <summary>The items of a list of texts; a single text is a list of one.</summary>
    public ImmutableArray<(string Text, int Offset)>? Texts(string key, int most)
    {
        var node = Node(key);
        if (node is null) return null;
        if (node is TomlText one) return [(one.Value, one.Offset)];
        if (node is not TomlList list || !list.Items.All(i => i is TomlText))
        {
            Wrong(key, node, "a list of texts in quotes");
            return null;
        }

        if (list.Items.Count > most)
        {
            Fault(key, $"{key} has {list.Items.Count} items; at most {most} are read", "leave some out");
            return null;
        }

        return [.. list.Items.Cast<TomlText>().Select(t => (t.Value, t.Offset))];
    }

    private string? Wrong(string key, TomlNode node, string wanted)
    {
        faults.Add(source.Fault(node.Offset, $"{key} is {node.Kind} where {wanted} is wanted", $"write {key} = {keys.Find(heading, key)!.Example}"));
        return null;
    }
}
