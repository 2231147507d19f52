using System.Text.Json;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Changes the unit of bare numbers of a shop file; no size changes: bare ones get their old unit written to them.</summary>
internal static class ShopUnits
{
    public static Checked<ShopFile> Set(ShopFile file, string units)
    {
        var value = ShopValue.Quoted(units);
        if (file.Written("", 0, "units") == units) return Checked<ShopFile>.Good(file);
        var unit = file.UnitMm == 1 ? "mm" : "in";
        if (unit == units) return ShopEdit.Put(file, "", 0, "units", value, f => Same(f, file));
        var splices = new List<Splice>();
        foreach (var row in ShopKeys.Table.Keys)
        {
            for (var i = 0; i < file.Count(row.Table); i++)
            {
                foreach (var node in Bare(file.Node(row.Table, i, row.Key), row)) splices.Add(new Splice(node.Offset, node.Length, ShopValue.Quoted($"{ShopValue.Typed(node, file.Source)} {unit}")));
            }
        }

        // text first, then the word itself: both must read, and the shop must stay the same to the last figure
        return ShopSplice.Apply(file, splices, (h, k) => ShopKeys.Table.Find(h, k) is { } r && IsLength(r), f => Same(f, file))
            .Then(pinned => ShopEdit.Put(pinned, "", 0, "units", value, f => Same(f, file)));
    }

    private static IEnumerable<TomlNode> Bare(TomlNode? node, KeyRow row) => !IsLength(row) ? [] : node switch
    {
        TomlNumber n => [n],
        TomlText { Value: var v } t when LengthText.Read(v, 1) is { IsGood: true, Value.Writing: LengthWriting.Bare } => [t],
        TomlList list => list.Items.SelectMany(i => Bare(i, row)),
        _ => [],
    };

    private static bool IsLength(KeyRow row) => row.Kind is "length" or "two lengths" or "list of sizes";

    private static bool Same(ShopFile a, ShopFile b) => JsonSerializer.Serialize(a.Shop) == JsonSerializer.Serialize(b.Shop);
}
