using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What the handle of a plan is made of, each as far as a file is found for it.</summary>
/// <param name="Front">Scale of the front face; null when none or not known.</param>
/// <param name="Back">Scale of the back face.</param>
/// <param name="Liner">Liner.</param>
/// <param name="Rod">Pins and tubes.</param>
/// <param name="Cord">Cord.</param>
public sealed record HandleMaterials(HandleMaterial? Front, HandleMaterial? Back, HandleMaterial? Liner, HandleMaterial? Rod, HandleMaterial? Cord)
{
    /// <summary>Those of a plan, found among the materials of a shop.</summary>
    public static HandleMaterials Of(Plan plan, Shop shop)
    {
        var s = plan.Scales;
        var front = Find(shop, s?.Material);
        return new(front, s is { BackMaterial.Length: > 0 } ? Find(shop, s.BackMaterial) : front, Find(shop, s?.Liner), Find(shop, s?.Rod), Find(shop, plan.Cord?.Material, isCord: true));
    }

    /// <summary>Names the plan uses that no file has, with the key they stand under.</summary>
    public static IEnumerable<(string Heading, string Key, string Name)> Unknown(Plan plan, Shop shop)
    {
        var (s, cord) = (plan.Scales, plan.Cord);
        (string Heading, string Key, string? Name)[] all = [("scales", "material", s?.Material), ("scales", "back_material", s?.BackMaterial), ("scales", "liner", s?.Liner), ("scales", "rod", s?.Rod), ("cord", "material", cord?.Material)];
        return all.Where(a => a.Name is { Length: > 0 } && Find(shop, a.Name, a.Heading == "cord") is null).Select(a => (a.Heading, a.Key, a.Name!));
    }

    // a cord is no scale, and a plank is no cord
    private static HandleMaterial? Find(Shop shop, string? name, bool isCord = false) => name is { Length: > 0 } ? shop.KnownHandles.FirstOrDefault(m => m.IsCalled(name) && m.Kind == HandleKind.Cord == isCord) : null;
}
