using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Puts a changed text in place of a shop file's, reads it again and makes sure that nothing else changed.</summary>
internal static class ShopSplice
{
    /// <summary>The changed shop file. Every value whose place is not meant must be written as before, and what was meant must have come about; else, or when the text no longer reads, the change is refused.</summary>
    /// <param name="file">The file.</param>
    /// <param name="splices">The changes of its text.</param>
    /// <param name="isMeant">Whether a value may differ, by its heading and key.</param>
    /// <param name="isWanted">Whether the result is what was meant.</param>
    public static Checked<ShopFile> Apply(ShopFile file, IEnumerable<Splice> splices, Func<string, string, bool> isMeant, Func<ShopFile, bool> isWanted)
    {
        var text = file.Source.With(splices);
        if (text == file.Text) return Checked<ShopFile>.Good(file);
        return ShopReader.ReadFile(text, file.FileName).Then(changed => Values(file, isMeant).SequenceEqual(Values(changed, isMeant)) && isWanted(changed)
            ? Checked<ShopFile>.Good(changed)
            : Checked<ShopFile>.Bad(Fault.OfFile(file.FileName, "the change could not be written at its place", "change the file by hand")));
    }

    private static List<string> Values(ShopFile file, Func<string, string, bool> isMeant)
    {
        var list = new List<string>();
        Put("", file.Root);
        foreach (var heading in ShopKeys.Table.Headings.Where(h => h.Name.Length > 0))
        {
            for (var i = 0; i < file.Count(heading.Name); i++) Put(heading.Name, file.Table(heading.Name, i)!);
        }

        return list;

        void Put(string heading, TomlTable table)
        {
            foreach (var e in table.Entries.Where(e => e.Value is not (TomlTable or TomlTables) && !isMeant(heading, e.Key)))
                list.Add($"{heading}.{e.Key} = {file.Source.Text.AsSpan(e.Value.Offset, e.Value.Length)}");
        }
    }
}
