using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A shop with the text it was read from and the place of every value in it, so that a change can be written back into the text.</summary>
public sealed class ShopFile
{
    internal ShopFile(Shop shop, string fileName, string text, SourceText source, TomlTable root)
    {
        Shop = shop;
        FileName = fileName;
        Text = text;
        Source = source;
        Root = root;
    }

    /// <summary>The shop.</summary>
    public Shop Shop { get; }

    /// <summary>Name of the file as given.</summary>
    public string FileName { get; }

    /// <summary>The text exactly as given.</summary>
    public string Text { get; }

    /// <summary>Unit of bare numbers.</summary>
    public LengthUnit Units => Written("", 0, "units") == "in" ? LengthUnit.Inch : LengthUnit.Mm;

    internal SourceText Source { get; }

    internal TomlTable Root { get; }

    /// <summary>Unit of bare numbers, mm.</summary>
    internal double UnitMm => Units == LengthUnit.Inch ? Length.MmPerInch : 1;

    /// <summary>Whether a heading stands in the file, also as an empty list.</summary>
    public bool Has(string heading) => heading.Length == 0 || Root.Find(heading) is not null;

    /// <summary>How often a heading stands in the file.</summary>
    public int Count(string heading) => TablesOf(heading).Length;

    /// <summary>A value as it would be typed in, lists with commas between; null when it does not stand in the file.</summary>
    /// <param name="heading">Heading; empty for the top.</param>
    /// <param name="index">Which one, from 0, of a heading that repeats.</param>
    /// <param name="key">Key.</param>
    public string? Written(string heading, int index, string key) => Node(heading, index, key) is { } node ? ShopValue.Typed(node, Source) : null;

    /// <summary>The items of a list as they would be typed in; a single text is a list of one; none when it does not stand in the file.</summary>
    public ImmutableArray<string> Items(string heading, int index, string key) => Node(heading, index, key) switch
    {
        TomlList list => [.. list.Items.Select(i => ShopValue.Typed(i, Source))],
        TomlText one => [one.Value],
        _ => [],
    };

    internal TomlNode? Node(string heading, int index, string key) => Table(heading, index)?.Find(key)?.Value;

    internal TomlTable? Table(string heading, int index) => TablesOf(heading) is var tables && index >= 0 && index < tables.Length ? tables[index] : null;

    private ImmutableArray<TomlTable> TablesOf(string heading) => heading.Length == 0 ? [Root] : Root.Find(heading)?.Value switch
    {
        TomlTable one => [one],
        TomlTables many => [.. many.Items],
        _ => [],
    };
}
