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
}
