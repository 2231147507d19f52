using System.Collections.Immutable;

namespace Tangwright.Inputs;

/// <summary>Values of a shop file between the form they are typed in, <c>13 mm</c>, and the form they stand in the file, <c>"13 mm"</c>.</summary>
internal static class ShopValue
{
    /// <summary>A value as it would be typed in.</summary>
    public static string Typed(TomlNode node, SourceText source) => node switch
    {
        TomlText t => t.Value,
        TomlFlag f => f.Value ? "true" : "false",
        TomlList list => string.Join(", ", list.Items.Select(i => Typed(i, source))),
        _ => source.Text.Substring(node.Offset, node.Length),
    };

    /// <summary>What is typed in as it stands in the file: numbers bare, lists in brackets, the rest in quotes. What makes no sense goes into quotes as it is, for the reader to refuse in its own words.</summary>
    /// <param name="row">The key.</param>
    /// <param name="typed">What was typed.</param>
    public static string InFile(KeyRow row, string typed)
    {
        typed = typed.Trim();
        return row.Kind switch
        {
            "true or false" when typed is "true" or "false" => typed,
            "two lengths" => List(typed),
            "list of sizes" or "list of grits" => "[" + string.Join(", ", Items(typed).Select(Quoted)) + "]",
            _ when row.Kind.StartsWith("list of numbers", StringComparison.Ordinal) => typed.Contains("to", StringComparison.Ordinal) ? Quoted(typed) : List(typed),
            "text" or "word" or "volume" or "temperature difference" or "hardness difference" => Quoted(typed),
            _ => OneOf(typed),
        };
    }

    /// <summary>The items of a list as typed: one a line, or with commas or semicolons between.</summary>
    public static ImmutableArray<string> Items(string typed)
        => [.. typed.Split(['\n', ',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Distinct(StringComparer.Ordinal)];

    /// <summary>A text in double quotes.</summary>
    public static string Quoted(string text) => "\"" + string.Concat(text.Select(c => c switch
    {
        '\\' => "\\\\",
        '"' => "\\\"",
        _ when char.IsControl(c) || char.IsSurrogate(c) => " ",
        _ => c.ToString(),
    })) + "\"";

    private static string List(string typed) => "[" + string.Join(", ", typed.Trim('[', ']').Split([',', ';', '\n'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(OneOf)) + "]";

    private static string OneOf(string typed) => NumberText.IsBare(typed) ? typed : Quoted(typed);
}
