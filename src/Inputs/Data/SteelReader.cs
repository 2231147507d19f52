using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads a steel file.</summary>
public static class SteelReader
{
    /// <summary>The steel, or every fault found. Any text gives one or the other.</summary>
    /// <param name="text">The whole text of the file.</param>
    /// <param name="fileName">Name of the file, for the faults.</param>
    /// <param name="sources">Known source keys; null: those of data/sources.toml.</param>
    public static Checked<Steel> Read(string text, string fileName, SourceList? sources = null)
    {
        var source = new SourceText(text, fileName);
        return TomlReading.Read(source).Then(root => Read(root, source, sources ?? SourceList.BuiltIn));
    }

    private static Checked<Steel> Read(TomlTable root, SourceText source, SourceList sources)
    {
        var faults = new List<Fault>();
        SteelKeys.Table.Check(root, source, faults);
        Fields One(string heading) => new(source, heading.Length == 0 ? root : root.Find(heading)?.Value as TomlTable, heading, SteelKeys.Table, 1, faults);
        var top = One("");
        if (top.Number("tangwright", 0, 1e9) is not (null or 1)) top.Fault("tangwright", "a steel file of another form", "this program reads tangwright = 1; use a newer program for newer files");
        var name = top.Text("name");
        var others = top.Texts("other_names", 50) ?? [];
        var description = top.Text("description") ?? "";
        var cautions = top.Texts("cautions", 50) ?? [];
        var density = ReadSourced<Density>(One("density"), sources, f => f.Quantity("value", OtherTexts.GramsPerCm3) is { } d ? Density.OfGramsPerCm3(d) : null);
        var hardness = ReadSourced<double>(One("delivered_hardness"), sources, f => f.Quantity("value", OtherTexts.Brinell));
        var composition = One("composition");
        var elements = ReadComposition(composition);
        var compositionSource = ReadSource(composition, sources);
        var heat = SteelHeatReader.Read(One, heading => Many(root, heading).Select(t => new Fields(source, t, heading, SteelKeys.Table, 1, faults)), f => ReadSource(f, sources));
        if (faults.Count > 0 || name is null) return Checked<Steel>.Bad(faults.OrderBy(f => f.Line).ThenBy(f => f.Column).Take(50));
        return Checked<Steel>.Good(new Steel(
            name,
            [.. others.Select(o => o.Text)],
            description,
            density,
            compositionSource is null ? null : new Sourced<ImmutableArray<ElementContent>>(elements, compositionSource),
            hardness,
            [.. cautions.Select(c => c.Text)])
        { Heat = heat });
    }

    private static IEnumerable<TomlTable> Many(TomlTable root, string heading) => root.Find(heading)?.Value is TomlTables many ? many.Items : [];

    private static Sourced<T>? ReadSourced<T>(Fields f, SourceList sources, Func<Fields, T?> read)
        where T : struct
    {
        var value = read(f);
        var source = ReadSource(f, sources);
        return value is { } v && source is not null ? new Sourced<T>(v, source) : null;
    }

    internal static string? ReadSource(Fields f, SourceList sources)
    {
        var key = f.Text("source");
        if (key is null || key is SourceTag.FromMemory or SourceTag.CommonPractice || sources.Find(key) is not null) return key;
        f.Fault("source", $"'{NumberText.Clip(key)}' is no known source", "write a key of data/sources.toml, \"from memory\" or \"common practice\"");
        return null;
    }

    private static ImmutableArray<ElementContent> ReadComposition(Fields f)
    {
        var found = ImmutableArray.CreateBuilder<ElementContent>();
        foreach (var element in SteelKeys.Elements)
        {
            switch (f.Node(element))
            {
                case null:
                    continue;
                case TomlList { Items.Count: 2 or 3 } list when list.Items.All(i => i is TomlNumber { Value: >= 0 and <= 100 }):
                    var n = list.Items.Cast<TomlNumber>().Select(i => i.Value).ToArray();
                    if (n[0] <= n[1] && (n.Length == 2 || (n[2] >= n[0] && n[2] <= n[1])))
                    {
                        found.Add(new ElementContent(element, n[0], n[1], n.Length == 3 ? n[2] : null));
                        continue;
                    }

                    break;
            }

            f.Fault(element, $"{element} is not a range of mass per cent", $"write least and greatest, as {element} = [0.40, 0.60]; a third number between them is the nominal content");
        }

        return found.ToImmutable();
    }
}

/// <summary>Steels, found by name or by another name; capitals do not matter.</summary>
/// <param name="steels">The list; of two steels with the same name the first given is found.</param>
public sealed class SteelList(IEnumerable<Steel> steels) : ListByName<Steel>(steels, s => s.Name, s => s.OtherNames)
{
    private static readonly Lazy<SteelList> Own = new(() => new SteelList(DataText.Names.Where(n => n.StartsWith("steels/", StringComparison.Ordinal)).Select(n => SteelReader.Read(DataText.Of(n), "data/" + n).Value)));

    /// <summary>The steels of data/steels.</summary>
    public static SteelList BuiltIn => Own.Value;
}
