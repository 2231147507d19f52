using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads a quenchant file.</summary>
public static class QuenchReader
{
    private const double MostWPerM2K = 100_000;

    /// <summary>The quenchant, or every fault found. Any text gives one or the other.</summary>
    /// <param name="text">The whole text of the file.</param>
    /// <param name="fileName">Name of the file, for the faults.</param>
    public static Checked<QuenchMedium> Read(string text, string fileName)
    {
        var source = new SourceText(text, fileName);
        return TomlReading.Read(source).Then(root => Read(root, source));
    }

    private static Checked<QuenchMedium> Read(TomlTable root, SourceText source)
    {
        var faults = new List<Fault>();
        QuenchKeys.Table.Check(root, source, faults);
        Fields One(string heading) => new(source, heading.Length == 0 ? root : root.Find(heading)?.Value as TomlTable, heading, QuenchKeys.Table, 1, faults);
        var top = One("");
        if (top.Number("tangwright", 0, 1e9) is not (null or 1)) top.Fault("tangwright", "a quenchant file of another form", "this program reads tangwright = 1; use a newer program for newer files");
        var (name, kind) = (top.Text("name"), top.Word("kind"));
        var others = top.Texts("other_names", 50) ?? [];
        var description = top.Text("description") ?? "";
        var cautions = top.Texts("cautions", 50) ?? [];
        var (heat, severity, bath) = (One("heat_transfer"), One("severity"), One("bath"));
        var curve = Curve(heat);
        var range = severity.Node("range") is { } node ? Range(severity, node) : null;
        var window = SteelHeatReader.Two(bath, "window", QuantityText.Temperature, t => t.Celsius, "[\"40 C\", \"60 C\"]");
        var (heatKey, severityKey, bathKey) = (SteelReader.ReadSource(heat, SourceList.BuiltIn), SteelReader.ReadSource(severity, SourceList.BuiltIn), SteelReader.ReadSource(bath, SourceList.BuiltIn));
        if (kind >= 0 && (QuenchKind)kind != QuenchKind.Air && !heat.IsThere) top.Fault("kind", "a quenchant without the heat it takes", "add [heat_transfer] with its curve and source");
        if (faults.Count > 0 || name is null) return Checked<QuenchMedium>.Bad(faults.OrderBy(f => f.Line).ThenBy(f => f.Column).Take(50));
        return Checked<QuenchMedium>.Good(new QuenchMedium(
            name,
            [.. others.Select(o => o.Text)],
            (QuenchKind)kind,
            description,
            curve is { } c ? new Sourced<ImmutableArray<TransferPoint>>(c, heatKey!) : null,
            range is { } r ? new Sourced<(double, double)>(r, severityKey!) : null,
            window is { } w ? new Sourced<(Temperature, Temperature)>(w, bathKey!) : null,
            [.. cautions.Select(c => c.Text)]));
    }

    private static ImmutableArray<TransferPoint>? Curve(Fields f)
    {
        if (f.Node("curve") is not { } node) return null;
        if (node is TomlList list && list.Items.All(i => i is TomlList { Items: [TomlNumber { Value: >= -200 and <= 1400 }, TomlNumber { Value: > 0 and <= MostWPerM2K }] }) && list.Items.Count is > 0 and <= 100)
        {
            var points = list.Items.Cast<TomlList>().Select(p => new TransferPoint(((TomlNumber)p.Items[0]).Value, ((TomlNumber)p.Items[1]).Value)).ToImmutableArray();
            if (points.Zip(points.Skip(1)).All(p => p.First.SurfaceCelsius < p.Second.SurfaceCelsius)) return points;
        }

        f.Fault("curve", "the curve is not a list of pairs that grow hotter", "write pairs of temperature in C and heat in W/m2K, coldest first, as [[20, 300], [500, 5000]]");
        return null;
    }

    private static (double LowPerInch, double HighPerInch)? Range(Fields f, TomlNode node)
    {
        if (node is TomlList { Items: [TomlNumber { Value: > 0 and <= 20 } a, TomlNumber { Value: > 0 and <= 20 } b] } && a.Value <= b.Value) return (a.Value, b.Value);
        f.Fault("range", "the severity is not two numbers above 0 and at most 20, the lesser first", "write it as [0.5, 0.7]");
        return null;
    }
}

/// <summary>Quenchants, found by name or by another name; capitals do not matter.</summary>
/// <param name="media">The list; of two with the same name the first given is found.</param>
public sealed class QuenchList(IEnumerable<QuenchMedium> media) : ListByName<QuenchMedium>(media, m => m.Name, m => m.OtherNames)
{
    private static readonly Lazy<QuenchList> Own = new(() => new QuenchList(DataText.Names.Where(n => n.StartsWith("quenchants/", StringComparison.Ordinal)).Select(n => QuenchReader.Read(DataText.Of(n), "data/" + n).Value)));

    /// <summary>Those of data/quenchants.</summary>
    public static QuenchList BuiltIn => Own.Value;
}
