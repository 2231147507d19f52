using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>One key of a file: the row that checks it, explains it and documents it.</summary>
/// <param name="Table">Heading it stands under; empty at the top of the file.</param>
/// <param name="Key">Name.</param>
/// <param name="Kind">Kind of value, in plain words.</param>
/// <param name="Required">Whether it must be there when its heading is.</param>
/// <param name="Meaning">One line on what it is.</param>
/// <param name="Default">What holds when it is absent; empty when nothing does.</param>
/// <param name="Example">An example of the value.</param>
/// <param name="Words">Words it may be; none when it is not a word.</param>
public sealed record KeyRow(string Table, string Key, string Kind, bool Required, string Meaning, string Default, string Example, ImmutableArray<string> Words);

/// <summary>A heading of a file.</summary>
/// <param name="Name">Name; empty for the top of the file.</param>
/// <param name="Repeats">Written <c>[[name]]</c>, as often as wanted.</param>
/// <param name="Required">Whether it must be there.</param>
/// <param name="Meaning">One line on what it is.</param>
public sealed record HeadingRow(string Name, bool Repeats, bool Required, string Meaning);

/// <summary>All headings and keys of one kind of file.</summary>
/// <param name="Headings">Headings in the order they are best written.</param>
/// <param name="Keys">Keys, by heading, in the order they are best written.</param>
public sealed record KeyTable(ImmutableArray<HeadingRow> Headings, ImmutableArray<KeyRow> Keys)
{
    /// <summary>After so many faults a file is not looked at further.</summary>
    private const int EnoughFaults = 200;

    /// <summary>The keys under one heading.</summary>
    public IEnumerable<KeyRow> Under(string heading) => Keys.Where(k => k.Table == heading);

    /// <summary>The row of a key; null when there is none.</summary>
    public KeyRow? Find(string heading, string key) => Keys.FirstOrDefault(k => k.Table == heading && k.Key == key);

    /// <summary>Unknown headings and keys, wrong forms of headings and missing required ones.</summary>
    internal void Check(TomlTable root, SourceText source, List<Fault> faults)
    {
        foreach (var e in root.Entries)
        {
            if (faults.Count > EnoughFaults) return;
            var heading = Headings.FirstOrDefault(h => h.Name.Length > 0 && h.Name == e.Key);
            if (heading is null)
            {
                if (Find("", e.Key) is null) faults.Add(Unknown(source, e, e.Value is TomlTable or TomlTables, ""));
                continue;
            }

            switch (e.Value)
            {
                case TomlTable one when !heading.Repeats:
                    CheckKeys(one, heading, source, faults);
                    break;
                case TomlTables many when heading.Repeats:
                    foreach (var one in many.Items) CheckKeys(one, heading, source, faults);
                    break;
                case TomlList { Items.Count: 0 } when heading.Repeats:
                    break;
                case TomlTables many:
                    faults.Add(source.Fault(many.Items.Count > 1 ? many.Items[1].Offset : e.Start, $"[[{e.Key}]] in double brackets", $"write [{e.Key}], once"));
                    break;
                case TomlTable:
                    faults.Add(source.Fault(e.Start, $"[{e.Key}] in single brackets", $"write [[{e.Key}]], one for each"));
                    break;
                default:
                    faults.Add(source.Fault(e.Value.Offset, $"{e.Key} is {e.Value.Kind} where a heading is wanted", heading.Repeats ? $"write [[{e.Key}]] on a line of its own and its keys below" : $"write [{e.Key}] on a line of its own and its keys below"));
                    break;
            }
        }

        foreach (var k in Under(""))
        {
            if (k.Required && root.Find(k.Key) is null) faults.Add(Fault.OfFile(source.FileName, $"{k.Key} is missing", $"write {k.Key} = {k.Example} at the top ({Lower(k.Meaning)})"));
        }

        foreach (var h in Headings)
        {
            if (h.Required && h.Name.Length > 0 && root.Find(h.Name) is null) faults.Add(Fault.OfFile(source.FileName, $"[{h.Name}] is missing", $"add it with {string.Join(", ", Under(h.Name).Where(k => k.Required).Select(k => $"{k.Key} = {Short(k.Example)}"))}"));
        }
    }

    private void CheckKeys(TomlTable table, HeadingRow heading, SourceText source, List<Fault> faults)
    {
        if (faults.Count > EnoughFaults) return;
        foreach (var e in table.Entries)
        {
            if (faults.Count > EnoughFaults) return;
            if (Find(heading.Name, e.Key) is null) faults.Add(Unknown(source, e, isHeading: false, heading.Name));
        }

        foreach (var k in Under(heading.Name))
        {
            if (k.Required && table.Find(k.Key) is null) faults.Add(source.Fault(table.Offset, $"{Shown(heading)} has no {k.Key}", $"add {k.Key} = {Short(k.Example)} ({Lower(k.Meaning)})"));
        }
    }

    private Fault Unknown(SourceText source, TomlEntry e, bool isHeading, string heading)
    {
        var known = isHeading ? Headings.Where(h => h.Name.Length > 0).Select(h => h.Name) : Under(heading).Select(k => k.Key);
        var name = NumberText.Clip(e.Key);
        var elsewhere = isHeading ? null : Keys.FirstOrDefault(k => k.Key == e.Key && k.Table != heading);
        var near = Nearest(e.Key, known);
        var remedy = near is not null ? $"did you mean {near}?"
            : elsewhere is not null ? $"{e.Key} belongs under {(elsewhere.Table.Length == 0 ? "no heading, at the top" : Shown(Headings.First(h => h.Name == elsewhere.Table)))}"
            : $"known here: {string.Join(", ", known)}";
        var place = heading.Length == 0 ? "" : $" in {Shown(Headings.First(h => h.Name == heading))}";
        return source.Fault(e.KeyOffset, isHeading ? $"[{name}] is not known" : $"{name} is not known{place}", remedy);
    }

    internal static string Shown(HeadingRow h) => h.Repeats ? $"[[{h.Name}]]" : $"[{h.Name}]";

    /// <summary>The nearest of some words by number of changed letters (Levenshtein 1966), when at most a third of them differ.</summary>
    internal static string? Nearest(string word, IEnumerable<string> known)
    {
        if (word.Length > 40) return null;
        var best = known.Select(k => (Word: k, Distance: EditDistance(word.ToLowerInvariant(), k.ToLowerInvariant()))).OrderBy(x => x.Distance).FirstOrDefault();
        return best.Word is not null && best.Distance <= Math.Max(1, Math.Max(word.Length, best.Word.Length) / 3) ? best.Word : null;
    }

    private static int EditDistance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var next = Math.Min(Math.Min(row[j], row[j - 1]) + 1, diagonal + (a[i - 1] == b[j - 1] ? 0 : 1));
                (diagonal, row[j]) = (row[j], next);
            }
        }

        return row[b.Length];
    }

    private static string Short(string example) => example.Length <= 48 ? example : "...";

    private static string Lower(string meaning) => meaning.Length > 1 && char.IsLower(meaning[1]) ? char.ToLowerInvariant(meaning[0]) + meaning[1..].TrimEnd('.') : meaning.TrimEnd('.');
}
