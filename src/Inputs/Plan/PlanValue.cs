using System.Collections.Immutable;

namespace Tangwright.Inputs;

/// <summary>A value of a plan between the form it is typed in, <c>13 mm</c> or <c>100, 18.2</c>, and the form it stands in the file, <c>"13 mm"</c> or <c>[100, 18.2]</c>.</summary>
internal sealed record PlanValue
{
    private readonly string _leaf;
    private readonly bool _inQuotes;

    private PlanValue(string leaf, ImmutableArray<PlanValue> items, bool inQuotes) => (_leaf, Items, _inQuotes) = (leaf, items, inQuotes);

    private ImmutableArray<PlanValue> Items { get; }

    /// <summary>What was typed, ready to be written. What makes no sense becomes a text as it is, for the reader to refuse in its own words.</summary>
    /// <param name="row">The key.</param>
    /// <param name="typed">What was typed.</param>
    public static PlanValue Of(KeyRow row, string typed)
    {
        typed = row.Kind == "path data" ? typed.ReplaceLineEndings("\n") : typed.Trim();
        return row.Kind switch
        {
            "text" or "path data" => Leaf(typed, inQuotes: true),
            "word" => Leaf(typed.ToLowerInvariant(), inQuotes: true),
            "true or false" => Leaf(typed.ToLowerInvariant() switch { "yes" => "true", "no" => "false", var t => t }),
            "point" or "two lengths" => Point(typed) ?? Leaf(typed),
            "length or two points" or "two points or \"midline\"" => TwoPoints(typed) ?? Leaf(typed),
            "list of points" => Points(typed) ?? Leaf(typed),
            "length or drill, or a list" => Parts(typed) is { Length: > 1 } parts ? List(parts.Select(p => Leaf(p))) : Leaf(typed.Trim('[', ']', ' ')),
            _ => Leaf(typed),
        };
    }

    /// <summary>A value of a file as it would be typed in.</summary>
    public static string Typed(TomlNode node, SourceText source) => node switch
    {
        TomlText t => t.Value,
        TomlFlag f => f.Value ? "true" : "false",
        TomlList { Items: { Count: > 0 } items } when items.All(i => i is TomlList) => string.Join(" to ", items.Select(i => Typed(i, source))),
        TomlList list => string.Join(", ", list.Items.Select(i => Typed(i, source))),
        _ => source.Text.Substring(node.Offset, node.Length),
    };

    /// <summary>As it would be typed in.</summary>
    public override string ToString() => Items.IsDefault ? _leaf : string.Join(Items is [{ Items.IsDefault: false }, ..] ? " to " : ", ", Items);

    /// <summary>As it stands in the file: what is the same stays as it was written, lists of the same length keep their lines and remarks, texts their quotes.</summary>
    public string InFile(PlanFile file, TomlNode? old)
    {
        if (old is not null && Typed(old, file.Source) == ToString()) return PlanEdit.Raw(file, old);
        if (Items.IsDefault)
        {
            if (!_inQuotes && (NumberText.IsBare(_leaf) || _leaf is "true" or "false")) return _leaf;
            return _leaf.Contains('\n') && !_leaf.Contains('"') && !_leaf.Contains('\\') ? Long(file) : PlanEdit.Quoted(_leaf, old, file);
        }

        if (old is not TomlList list || list.Items.Count != Items.Length) return $"[{string.Join(", ", Items.Select(i => i.InFile(file, null)))}]";
        var (text, from) = ("", old.Offset);
        for (var i = 0; i < Items.Length; i++)
        {
            var was = list.Items[i];
            text += string.Concat(file.Source.Text.AsSpan(from, was.Offset - from), Items[i].InFile(file, was));
            from = was.Offset + was.Length;
        }

        return string.Concat(text, file.Source.Text.AsSpan(from, old.Offset + old.Length - from));
    }

    /// <summary>Several lines as TOML writes them: a line end after the opening quotes does not count.</summary>
    private string Long(PlanFile file) => ("\"\"\"\n" + _leaf + "\"\"\"").ReplaceLineEndings(file.Source.LineEnd);

    private static PlanValue Leaf(string typed, bool inQuotes = false) => new(typed, default, inQuotes);

    private static PlanValue List(IEnumerable<PlanValue> items) => new("", [.. items], inQuotes: false);

    private static PlanValue? Point(string typed) => Parts(typed) is [var x, var y] ? List([Leaf(x), Leaf(y)]) : null;

    private static PlanValue? Points(string typed)
    {
        var points = typed.Split(" to ").Select(Point).ToArray();
        return points.All(p => p is not null) ? List(points.Select(p => p!)) : null;
    }

    private static PlanValue? TwoPoints(string typed)
    {
        var halves = typed.Split(" to ", 3);
        var parts = Parts(typed);
        if (halves.Length == 2) return Point(halves[0]) is { } a && Point(halves[1]) is { } b ? List([a, b]) : null;
        return parts.Length == 4 ? List([List([Leaf(parts[0]), Leaf(parts[1])]), List([Leaf(parts[2]), Leaf(parts[3])])]) : null;
    }

    private static ImmutableArray<string> Parts(string typed)
        => [.. typed.Split([',', ';'], StringSplitOptions.TrimEntries).Select(p => p.Trim('[', ']', ' ')).Where(p => p.Length > 0)];
}
