using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Writes changes back into a shop file's text at the place of the value: remarks, order, line ends and the units of the other values stay. The result is read again and compared before it is given; what the reader refuses is refused in its words.</summary>
public static class ShopEdit
{
    /// <summary>Sets a value as a maker types it, <c>13 mm</c>, <c>500, 900</c>; an empty one takes the key out.</summary>
    /// <param name="file">The shop file.</param>
    /// <param name="heading">Heading; empty for the top.</param>
    /// <param name="index">Which one, from 0, of a heading that repeats.</param>
    /// <param name="key">Key.</param>
    /// <param name="typed">What was typed.</param>
    public static Checked<ShopFile> Set(ShopFile file, string heading, int index, string key, string typed)
    {
        if (ShopKeys.Table.Find(heading, key) is not { } row) return Refused(file, $"{heading}.{key} is no key of a shop file", "name a key of docs/shop-file.md");
        if (row.Kind is "list of sizes" or "list of grits") return ShopLists.Set(file, heading, index, key, ShopValue.Items(typed));
        if (string.IsNullOrWhiteSpace(typed)) return TakeOut(file, heading, index, key);
        if (row == ShopKeys.Table.Find("", "units")) return ShopUnits.Set(file, typed.Trim());
        var value = ShopValue.InFile(row, typed);
        return Put(file, heading, index, key, value, f => f.Node(heading, index, key) is { } n && f.Source.Text.AsSpan(n.Offset, n.Length).SequenceEqual(value));
    }

    /// <summary>Takes a key out; what holds when it is absent holds then.</summary>
    public static Checked<ShopFile> TakeOut(ShopFile file, string heading, int index, string key)
    {
        if (file.Table(heading, index)?.Find(key) is not { } entry) return Checked<ShopFile>.Good(file);
        if (heading.Length > 0 && !file.Table(heading, index)!.IsBlock) return InOneLine(file, heading);
        if (heading.Length == 0 && key == "units" && file.Units == LengthUnit.Inch) return ShopUnits.Set(file, "mm").Then(mm => TakeOut(mm, heading, index, key));
        var from = file.Source.LineAt(entry.Start).Start;
        return ShopSplice.Apply(file, [new Splice(from, file.Source.AfterLine(entry.Value.Offset + entry.Value.Length - 1) - from, "")], Is(heading, key), f => f.Node(heading, index, key) is null);
    }

    /// <summary>Adds one more under a heading that repeats, after the last of them, or the heading itself at the end.</summary>
    /// <param name="file">The shop file.</param>
    /// <param name="heading">Heading, as "machine".</param>
    /// <param name="typed">Keys and what was typed; empty ones are left out.</param>
    public static Checked<ShopFile> Add(ShopFile file, string heading, IReadOnlyList<(string Key, string Typed)> typed)
    {
        if (ShopKeys.Table.Headings.FirstOrDefault(h => h.Name == heading && heading.Length > 0) is not { } row) return Refused(file, $"{heading} is no heading of a shop file", "name one of docs/shop-file.md");
        var there = file.Count(heading);
        if (there > 0 && !row.Repeats) return Refused(file, $"{KeyTable.Shown(row)} stands in the file already", "change it there");
        if (there > 0 && !file.Table(heading, there - 1)!.IsBlock) return InOneLine(file, heading);
        var end = file.Source.LineEnd;
        var lines = ShopKeys.Table.Under(heading)
            .Select(k => (k.Key, Typed: typed.FirstOrDefault(t => t.Key == k.Key).Typed ?? "", Row: k))
            .Where(k => !string.IsNullOrWhiteSpace(k.Typed))
            .Select(k => $"{k.Key} = {ShopValue.InFile(k.Row, k.Typed)}");
        var block = string.Join(end, [KeyTable.Shown(row), .. lines]) + end;
        var splices = new List<Splice>();

        // "I have none" gives way
        if (file.Root.Find(heading) is { Value: TomlList } none)
        {
            var from = file.Source.LineAt(none.Start).Start;
            splices.Add(new Splice(from, file.Source.AfterLine(none.Value.Offset + none.Value.Length - 1) - from, ""));
        }

        var text = file.Source.Text;
        var at = there > 0 ? file.Source.EndOfBlock(file.Table(heading, there - 1)!) : text.Length;
        splices.Add(new Splice(at, 0, (at > 0 && text[at - 1] != '\n' ? end + end : end) + block));
        return ShopSplice.Apply(file, splices, (h, k) => h == heading || (h.Length == 0 && k == heading), f => f.Count(heading) == there + 1);
    }

    /// <summary>Takes one out: its heading, its lines and the empty lines after them; remarks above its heading stay. When it was the last of a list, the file then says that there is none.</summary>
    public static Checked<ShopFile> Remove(ShopFile file, string heading, int index)
    {
        if (file.Table(heading, index) is not { } table || heading.Length == 0) return Checked<ShopFile>.Good(file);
        if (!table.IsBlock) return InOneLine(file, heading);
        var text = file.Source.Text;
        var from = file.Source.LineAt(table.Offset).Start;
        var to = file.Source.EndOfBlock(table);
        while (to < text.Length && file.Source.LineAt(to) is var (_, blank) && blank.Trim().Length == 0) to = Math.Min(text.Length, text.IndexOf('\n', to) is var n && n < 0 ? text.Length : n + 1);
        var wasLast = file.Count(heading) == 1 && ShopKeys.Table.Headings.First(h => h.Name == heading).Repeats;
        var splices = new List<Splice> { new(from, to - from, "") };
        if (wasLast && heading != "printer") splices.Add(Top(file, $"{heading} = []"));
        return ShopSplice.Apply(file, splices, (h, k) => h == heading || (h.Length == 0 && k == heading), f => f.Count(heading) == file.Count(heading) - 1);
    }

    /// <summary>Writes that there is none of a kind.</summary>
    public static Checked<ShopFile> HaveNone(ShopFile file, string heading)
    {
        var row = ShopKeys.Table.Headings.First(h => h.Name == heading);
        if (!row.Repeats) return Set(file, heading, 0, "name", "none");
        if (file.Has(heading)) return Refused(file, $"the file lists some under {KeyTable.Shown(row)}", "take them out one by one");
        return ShopSplice.Apply(file, [Top(file, $"{heading} = []")], (h, k) => h.Length == 0 && k == heading, f => f.Has(heading));
    }

    /// <summary>Puts a value, written as it stands in the file, at its key: in place of the old one, as a new line under its heading, or under a new heading at the end.</summary>
    internal static Checked<ShopFile> Put(ShopFile file, string heading, int index, string key, string value, Func<ShopFile, bool> isWanted)
    {
        var table = file.Table(heading, index);
        if (table?.Find(key) is { } entry) return ShopSplice.Apply(file, [new Splice(entry.Value.Offset, entry.Value.Length, value)], Is(heading, key), isWanted);
        var (end, line) = (file.Source.LineEnd, $"{key} = {value}");
        var text = file.Source.Text;
        if (heading.Length == 0) return ShopSplice.Apply(file, [Top(file, line)], Is(heading, key), isWanted);
        if (table is null && index > 0) return Refused(file, "that one is no longer in the file", "choose another");
        if (table is null) return ShopSplice.Apply(file, [new Splice(text.Length, 0, (text.Length == 0 || text.EndsWith('\n') ? end : end + end) + $"{KeyTable.Shown(ShopKeys.Table.Headings.First(h => h.Name == heading))}{end}{line}{end}")], Is(heading, key), isWanted);
        if (!table.IsBlock) return InOneLine(file, heading);
        var after = file.Source.EndOfBlock(table);
        return ShopSplice.Apply(file, [new Splice(after, 0, (after > 0 && text[after - 1] != '\n' ? end : "") + line + end)], Is(heading, key), isWanted);
    }

    /// <summary>A new line after the last of those before the first heading.</summary>
    private static Splice Top(ShopFile file, string line)
    {
        var (end, text) = (file.Source.LineEnd, file.Source.Text);
        var own = file.Root.Entries.Where(e => e.Value is not (TomlTable { IsBlock: true } or TomlTables { Items: [{ IsBlock: true }, ..] })).ToArray();
        var at = own.Length > 0 ? file.Source.AfterLine(own[^1].Value.Offset + own[^1].Value.Length - 1) : 0;
        return new Splice(at, 0, (at > 0 && text[at - 1] != '\n' ? end : "") + line + end);
    }

    internal static Func<string, string, bool> Is(string heading, string key) => (h, k) => h == heading && k == key;

    private static Checked<ShopFile> InOneLine(ShopFile file, string heading) => Refused(file, $"{heading} is written in one line", "change it by hand, or write it under its own heading");

    private static Checked<ShopFile> Refused(ShopFile file, string message, string remedy) => Checked<ShopFile>.Bad(Fault.OfFile(file.FileName, message, remedy));
}
