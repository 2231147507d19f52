using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads a handle material's file.</summary>
public static class HandleReader
{
    private const double MostGPa = 1000, MostMPa = 5000, MostMovement = 0.02;

    /// <summary>The material, or every fault found. Any text gives one or the other.</summary>
    /// <param name="text">The whole text of the file.</param>
    /// <param name="fileName">Name of the file, for the faults.</param>
    public static Checked<HandleMaterial> Read(string text, string fileName)
    {
        var source = new SourceText(text, fileName);
        return TomlReading.Read(source).Then(root => Read(root, source));
    }

    private static Checked<HandleMaterial> Read(TomlTable root, SourceText source)
    {
        var faults = new List<Fault>();
        HandleKeys.Table.Check(root, source, faults);
        Fields One(string heading) => new(source, heading.Length == 0 ? root : root.Find(heading)?.Value as TomlTable, heading, HandleKeys.Table, 1, faults);
        var top = One("");
        if (top.Number("tangwright", 0, 1e9) is not (null or 1)) top.Fault("tangwright", "a handle material's file of another form", "this program reads tangwright = 1; use a newer program for newer files");
        var (name, kind) = (top.Text("name"), top.Word("kind"));
        var others = top.Texts("other_names", 50) ?? [];
        var description = top.Text("description") ?? "";
        var cautions = top.Texts("cautions", 50) ?? [];
        var dust = Dust(top);
        Sourced<double>? Number(string heading, double most) => With<double>(One(heading), f => Above0(f, most));
        var density = One("density");
        var (tangential, radial) = (Number("tangential", MostMovement), Number("radial", MostMovement));
        var made = new HandleMaterial(name ?? "", [.. others.Select(o => o.Text.Trim())], (HandleKind)Math.Max(kind, 0), description, [.. cautions.Select(c => c.Text)])
        {
            Density = With<Density>(density, f => f.Quantity("value", OtherTexts.GramsPerCm3) is { } d ? Density.OfGramsPerCm3(d) : null),
            OwnDensityBandShare = density.Number("band", 0.1, 50) / 100,
            SpecificGravity = Number("specific_gravity", 1.6),
            Stiffness = With(One("stiffness"), Stiffness),
            ExpansionMillionthsPerK = Number("expansion", 500),
            Movement = tangential is null && radial is null ? null : new WoodMovementCoefficients(tangential, radial),
            ShearMPa = With<StrengthBand>(One("shear"), f => SteelHeatReader.Two(f, "range", t => OtherTexts.Megapascals(t, MostMPa), p => p, "[\"180 MPa\", \"235 MPa\"]") is { } b ? new StrengthBand(b.Low, b.High) : null),
            WaterPercent = Number("water", 200),
            Drilling = With<DrillSpeedBand>(One("drilling"), f => SteelHeatReader.Two(f, "range", OtherTexts.SurfaceSpeed, s => s.MetresPerMin, "[\"200 ft/min\", \"300 ft/min\"]") is { } b ? new DrillSpeedBand(b.Low, b.High) : null),
            CordDiameter = With<Length>(One("diameter"), f => f.Length("value")),
            GramsPerMetre = Number("mass_per_m", 1000),
            Dust = dust,
        };
        foreach (var heading in new[] { "tangential", "radial", "specific_gravity" })
        {
            if (kind > 0 && One(heading) is { IsThere: true } wood) faults.Add(source.Fault(wood.Offset, $"[{heading}] of what is no wood", "leave it out, or write kind = \"wood\""));
        }

        foreach (var heading in new[] { "diameter", "mass_per_m" })
        {
            if (kind >= 0 && (HandleKind)kind != HandleKind.Cord && One(heading) is { IsThere: true } cord) faults.Add(source.Fault(cord.Offset, $"[{heading}] of what is no cord", "leave it out, or write kind = \"cord\""));
        }

        return faults.Count > 0 || name is null ? Checked<HandleMaterial>.Bad(faults.OrderBy(f => f.Line).ThenBy(f => f.Column).Take(50)) : Checked<HandleMaterial>.Good(made);
    }

    // without its source a value is not read: the key table has made it a fault
    private static Sourced<T>? With<T>(Fields f, Func<Fields, T?> read)
        where T : struct
    {
        var (value, key) = (read(f), SteelReader.ReadSource(f, SourceList.BuiltIn));
        return value is { } v && key is not null ? new Sourced<T>(v, key) : null;
    }

    private static double? Above0(Fields f, double most)
    {
        if (f.Number("value", 0, most) is not { } n) return null;
        if (n > 0) return n;
        f.Fault("value", "value is not above 0", "write how much it is, or leave the heading out");
        return null;
    }

    private static HandleStiffness? Stiffness(Fields f)
    {
        var along = f.Quantity("lengthwise", t => OtherTexts.Gigapascals(t, MostGPa));
        var across = f.Quantity("crosswise", t => OtherTexts.Gigapascals(t, MostGPa));
        return along is { } a ? new HandleStiffness(a, across) : null;
    }

    private static ImmutableArray<string> Dust(Fields top)
    {
        var keys = top.Texts("dust", 10) ?? [];
        foreach (var (key, offset) in keys)
        {
            if (ExposureLimit.Find(key) is not null) continue;
            var near = KeyTable.Nearest(key, ExposureLimit.All.Select(l => l.Key));
            top.FaultAt(offset, $"'{NumberText.Clip(key)}' is no dust with a limit", near is not null ? $"did you mean {near}?" : $"known are {string.Join(", ", ExposureLimit.All.Select(l => l.Key))}");
        }

        return [.. keys.Select(k => k.Text)];
    }
}

/// <summary>Handle materials, found by name or by another name; capitals do not matter.</summary>
/// <param name="materials">The list; of two with the same name the first given is found.</param>
public sealed class HandleList(IEnumerable<HandleMaterial> materials) : ListByName<HandleMaterial>(materials, m => m.Name, m => m.OtherNames)
{
    private static readonly Lazy<HandleList> Own = new(() => new HandleList(DataText.Names.Where(n => n.StartsWith("handles/", StringComparison.Ordinal)).Select(n => HandleReader.Read(DataText.Of(n), "data/" + n).Value)));

    /// <summary>Those of data/handles.</summary>
    public static HandleList BuiltIn => Own.Value;
}
