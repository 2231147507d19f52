using Tangwright.Core;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>The example plans worked up in their shops.</summary>
internal static class ExamplePieces
{
    public static Results Hatchet() => Of("skeleton-hatchet");

    public static Results Kitchen() => Of("kitchen-knife");

    public static Results Paring() => Of("paring-knife");

    public static Results SkeletonKnife() => Of("skeleton-knife");

    /// <summary>The paring knife in the shop that is built in.</summary>
    public static Results Assumed()
    {
        var plan = Paring().Plan;
        return WorkUp.Of(plan, ShopReader.BuiltIn, SteelList.BuiltIn.Find(plan.Stock.Steel));
    }

    private static Results Of(string name)
    {
        var plan = PlanReader.Read(Repository.Text("examples", name + ".plan.toml"), name).Value.Plan;
        var shop = ShopReader.Read(Repository.Text("examples", name + ".shop.toml"), name).Value;
        return WorkUp.Of(plan, shop, SteelList.BuiltIn.Find(plan.Stock.Steel));
    }
}
