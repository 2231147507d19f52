using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Changes of the lists of sizes in a shop file, item by item.</summary>
public static class ShopLists
{
    /// <summary>Sets a list: items no longer wanted are taken out, new ones come at its end, the others stay as they are. An empty list says that there is none.</summary>
    public static Checked<ShopFile> Set(ShopFile file, string heading, int index, string key, ImmutableArray<string> items)
    {
        if (file.Node(heading, index, key) is not TomlList list)
        {
            var value = "[" + string.Join(", ", items.Select(ShopValue.Quoted)) + "]";
            return ShopEdit.Put(file, heading, index, key, value, IsWanted);
        }

        var (text, end) = (file.Source.Text, file.Source.LineEnd);
        for (var i = list.Items.Count - 1; i >= 0; i--)
        {
            if (list.Items[i] is TomlText t && items.Contains(t.Value) && !list.Items.Take(i).Any(o => o is TomlText same && same.Value == t.Value)) continue;
            text = ListSplice.Without(text, list, i);
            if (Again() is { } shorter) list = shorter;
        }

        foreach (var item in items.Where(n => !list.Items.Any(o => o is TomlText t && t.Value == n)).ToArray())
        {
            text = ListSplice.With(text, list, ShopValue.Quoted(item), end);
            if (Again() is { } longer) list = longer;
        }

        return ShopSplice.Apply(file, [new Splice(0, file.Source.Text.Length, text)], ShopEdit.Is(heading, key), IsWanted);

        TomlList? Again() => TomlReading.Read(new SourceText(text, file.FileName)) is { IsGood: true, Value: var root } ? (root.Find(heading)?.Value as TomlTable)?.Find(key)?.Value as TomlList : null;

        bool IsWanted(ShopFile f) => f.Items(heading, index, key).ToHashSet(StringComparer.Ordinal).SetEquals(items);
    }

    /// <summary>Says that a size is owned, or that it is not: a range it stands in is then written as the parts before and after it.</summary>
    /// <param name="file">The shop file.</param>
    /// <param name="key">drills or reamers.</param>
    /// <param name="size">The size.</param>
    /// <param name="isOwned">Whether it is owned.</param>
    public static Checked<ShopFile> Tick(ShopFile file, string key, DrillSize size, bool isOwned)
    {
        var items = file.Node("tooling", 0, key) is null
            ? [.. (key == "drills" ? file.Shop.Drills : file.Shop.Reamers).Select(d => d.Name)]
            : file.Items("tooling", 0, key);
        if (isOwned)
            return items.Any(i => Sizes(i).Any(d => d.Name == size.Name)) ? Checked<ShopFile>.Good(file) : Set(file, "tooling", 0, key, items.Add(size.Name));
        return Set(file, "tooling", 0, key, [.. items.SelectMany(i => Without(i, size)).Distinct(StringComparer.Ordinal)]);

        ImmutableArray<DrillSize> Sizes(string item) => DrillList.Read(item, file.UnitMm) is { IsGood: true, Value: var sizes } ? sizes : [];

        IEnumerable<string> Without(string item, DrillSize size)
        {
            var sizes = Sizes(item);
            var at = sizes.IndexOf(sizes.FirstOrDefault(d => d.Name == size.Name) ?? size);
            if (at < 0) return [item];
            var by = item.Split(" by ", 2) is [_, var step] ? " by " + step : "";
            return new[] { Range(sizes[..at], by), Range(sizes[(at + 1)..], by) }.Where(r => r.Length > 0);
        }
    }

    private static string Range(ImmutableArray<DrillSize> sizes, string by) => sizes switch
    {
        [] => "",
        [var one] => one.Name,
        [var a, .., var b] => $"{a.Name} to {b.Name}{by}",
    };
}
