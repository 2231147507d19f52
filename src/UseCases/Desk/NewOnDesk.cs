using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>Puts new plans into the folder that lies open.</summary>
public static class NewOnDesk
{
    /// <summary>Largest drawing taken in, bytes.</summary>
    public const int LargestDrawing = 20_000_000;

    /// <summary>The examples to copy: key, and what it is.</summary>
    public static ImmutableArray<(string Like, string Says)> Examples =>
    [
        ("hatchet", "a skeleton hatchet, weighed and balanced by its holes"),
        ("kitchen", "a kitchen knife with a full bevel"),
        ("paring", "a paring knife"),
    ];

    /// <summary>Copies an example under the first free name.</summary>
    /// <returns>The plan's name without its ending.</returns>
    public static Checked<string> Copy(DeskFolder folder, string like)
    {
        var bare = "my-" + like;
        var stem = bare;
        for (var i = 2; folder.Plans().Any(p => p.Stem == stem); i++) stem = $"{bare}-{i}";
        return NewPlan.Of(stem, like, folder.Root, overwrite: false).Then(_ => Checked<string>.Good(stem));
    }

    /// <summary>Makes a plan from a drawing.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="fileName">Name of the drawing.</param>
    /// <param name="bytes">The drawing.</param>
    /// <param name="units">mm or in; empty: as the drawing says.</param>
    /// <param name="thickness">Thickness as a maker writes it.</param>
    /// <param name="steel">Steel; empty: left open.</param>
    /// <returns>The plan's name without its ending.</returns>
    public static Checked<string> Import(DeskFolder folder, string fileName, byte[] bytes, string units, string thickness, string steel)
    {
        if (string.IsNullOrWhiteSpace(thickness)) return Checked<string>.Bad(Fault.OfFile("thickness", "the thickness of the stock is missing; a drawing does not tell it", "write it as 3 mm or 1/8 in"));
        var stem = System.IO.Path.GetFileNameWithoutExtension(fileName);
        return folder.PathOf(stem)
            .Then(path => ImportDrawing.Of(new ImportRequest(fileName, path, units.Length == 0 ? null : units, thickness, string.IsNullOrWhiteSpace(steel) ? null : steel.Trim(), null, [], null, null, Overwrite: false), bytes))
            .Then(_ => Checked<string>.Good(stem));
    }
}
