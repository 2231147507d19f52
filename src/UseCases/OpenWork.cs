using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A plan opened together with the shop and the steel it names.</summary>
/// <param name="PlanPath">Where the plan lies.</param>
/// <param name="Plan">The plan.</param>
/// <param name="Shop">The shop.</param>
/// <param name="ShopUsed">Which shop file was used, in words.</param>
/// <param name="Steel">The steel; null when no file names it.</param>
public sealed record OpenedWork(string PlanPath, Plan Plan, Shop Shop, string ShopUsed, Steel? Steel)
{
    /// <summary>What was measured on finished pieces, from the file beside the plan; empty when there is none.</summary>
    public MeasuredFile Measured { get; init; } = MeasuredFile.Empty;

    /// <summary>Folder of the shop's log.</summary>
    internal string LogFolder { get; init; } = "";

    /// <summary>Everything computed from it.</summary>
    public Results WorkUp() => Core.WorkUp.Of(Plan, Shop, Steel, Measured.Holes);
}

/// <summary>Opens a plan, finds its shop (the one named, else NAME.shop.toml or shop.toml beside the plan, else the person's own, else the built-in one) and its steel (the shop's own folder first).</summary>
public static class OpenWork
{
    /// <summary>Ending of a plan file.</summary>
    public const string PlanEnding = ".plan.toml";

    /// <summary>Name of a shop file; NAME.shop.toml is that of one plan.</summary>
    public const string ShopName = "shop.toml";

    /// <summary>Opens it.</summary>
    /// <param name="planPath">The plan file.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    public static Checked<OpenedWork> Of(string planPath, string? shopPath)
    {
        var plan = TextFile.Read(planPath).Then(text => PlanReader.Read(text, planPath));
        var shop = FindShop(planPath, shopPath);
        return plan.IsGood && shop.IsGood ? With(plan.Value.Plan, planPath, shop.Value) : Checked<OpenedWork>.Bad(plan.Faults.AddRange(shop.Faults));
    }

    /// <summary>Opens shop and steel for a plan that has been read already.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="planPath">Where it lies.</param>
    internal static Checked<OpenedWork> For(Plan plan, string planPath) => FindShop(planPath, named: null).Then(shop => With(plan, planPath, shop));

    /// <summary>A shop by itself: the one named, else shop.toml of the folder one stands in, else the person's own, else the built-in one.</summary>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    internal static Checked<Shop> ShopAlone(string? shopPath) => FindShop("", shopPath).Then(found => Checked<Shop>.Good(found.Shop));

    /// <summary>A shop and a steel by itself, with the log of the shop; with the known name nearest to a steel that has no file.</summary>
    /// <param name="steelName">The steel.</param>
    /// <param name="shopPath">The shop file; null: looked for.</param>
    internal static Checked<ShopSteel> ShopAndSteel(string steelName, string? shopPath)
        => FindShop("", shopPath).Then(shop => FindSteel(steelName, shop.Folder).Then(steel => Checked<ShopSteel>.Good(new ShopSteel(shop.Shop, steel.Steel, steel.Steel is null ? SteelList.BuiltIn.Nearest(steelName) : null))));

    private static Checked<OpenedWork> With(Plan named, string planPath, FoundShop shop)
    {
        var plan = named.Heat?.Quenchant is { Medium: null } q ? named with { Heat = named.Heat with { Quenchant = q with { Medium = shop.Shop.KnownMedia.FirstOrDefault(m => m.IsCalled(q.Name)) } } } : named;
        return FindSteel(plan.Stock.Steel, shop.Folder).Then(steel => MeasuredBeside.Read(planPath).Then(measured => GrindingLogBeside.Read(shop.Folder).Then(log => HardnessLogBeside.Read(shop.Folder).Then(readings => Checked<OpenedWork>.Good(new OpenedWork(planPath, plan, shop.Shop with { GrindingLog = log.Entries, HardnessLog = readings.Entries }, shop.Words, steel.Steel) { Measured = measured, LogFolder = shop.Folder })))));
    }

    /// <summary>The plan's name without folder and ending, for naming what is made from it.</summary>
    public static string Stem(string planPath)
    {
        var name = System.IO.Path.GetFileName(planPath);
        return name.EndsWith(PlanEnding, StringComparison.OrdinalIgnoreCase) ? name[..^PlanEnding.Length] : System.IO.Path.GetFileNameWithoutExtension(name);
    }

    /// <summary>Where a plan's shop file is looked for, the first that is there counts; with what is said of it.</summary>
    internal static ImmutableArray<(string Path, string Words)> ShopPlaces(string planPath)
    {
        var folder = System.IO.Path.GetDirectoryName(planPath) ?? "";
        return
        [
            (System.IO.Path.Combine(folder, Stem(planPath) + "." + ShopName), $"{Stem(planPath)}.{ShopName} beside the plan"),
            (System.IO.Path.Combine(folder, ShopName), ShopName + " beside the plan"),
            (System.IO.Path.Combine(ProgramData.OwnFolder, ShopName), "your own " + ShopName),
        ];
    }

    /// <summary>Steel files beside the plan and the person's own.</summary>
    internal static ImmutableArray<string> SteelFiles(string planPath)
    {
        try
        {
            return [.. new[] { System.IO.Path.GetDirectoryName(planPath) ?? "", ProgramData.OwnFolder }.Select(f => System.IO.Path.Combine(f, "steels")).Where(System.IO.Directory.Exists).SelectMany(f => System.IO.Directory.EnumerateFiles(f, "*.toml")).Order(StringComparer.Ordinal)];
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static Checked<FoundShop> FindShop(string planPath, string? named) => ShopFile(planPath, named).Then(WithOwnMedia).Then(WithOwnHandles);

    // materials of handles likewise
    private static Checked<FoundShop> WithOwnHandles(FoundShop found)
        => OwnFiles(found.Folder, "handles", HandleReader.Read).Then(own => Checked<FoundShop>.Good(own.Length == 0 ? found : found with { Shop = found.Shop with { KnownHandles = new HandleList(own.Concat(HandleList.BuiltIn.All)).All } }));

    // quenchants of the shop's own folder, then of the person's, stand before those that come with the program
    private static Checked<FoundShop> WithOwnMedia(FoundShop found)
    {
        var own = OwnFiles(found.Folder, "quenchants", QuenchReader.Read);
        if (!own.IsGood) return Checked<FoundShop>.Bad(own.Faults);
        if (own.Value.Length == 0) return Checked<FoundShop>.Good(found);
        var list = new QuenchList(own.Value.Concat(QuenchList.BuiltIn.All));
        var quenchant = found.Shop.Quenchant is { } q ? q with { Medium = list.Find(q.Name) } : null;
        return Checked<FoundShop>.Good(found with { Shop = found.Shop with { KnownMedia = list.All, Quenchant = quenchant } });
    }

    private static Checked<FoundShop> ShopFile(string planPath, string? named)
    {
        var folder = System.IO.Path.GetDirectoryName(planPath) ?? "";
        foreach (var (path, words) in named is not null ? [(named, "the shop file named: " + named)] : ShopPlaces(planPath))
        {
            if (named is null && !System.IO.File.Exists(path)) continue;
            return TextFile.Read(path)
                .Then(text => ShopReader.Read(text, path))
                .Then(s => Checked<FoundShop>.Good(new FoundShop(s, words, System.IO.Path.GetDirectoryName(path) ?? "")));
        }

        return Checked<FoundShop>.Good(new FoundShop(ShopReader.BuiltIn, "assumed shop (built in; no shop file of your own was found)", folder));
    }

    private static Checked<FoundSteel> FindSteel(string name, string shopFolder)
        => OwnSteels(shopFolder).Then(own => Checked<FoundSteel>.Good(new FoundSteel(own.Find(name) ?? SteelList.BuiltIn.Find(name))));

    /// <summary>Names of the steels that a plan can name: one's own first, then those that come with the program.</summary>
    /// <param name="planPath">Where the plan lies.</param>
    internal static ImmutableArray<string> SteelsKnown(string planPath)
    {
        var shop = FindShop(planPath, named: null);
        var own = shop.IsGood ? OwnSteels(shop.Value.Folder) : Checked<SteelList>.Bad(shop.Faults);
        return [.. (own.IsGood ? own.Value.All : []).Concat(SteelList.BuiltIn.All).Select(s => s.Name).Distinct(StringComparer.OrdinalIgnoreCase)];
    }

    private static Checked<SteelList> OwnSteels(string shopFolder) => OwnFiles(shopFolder, "steels", (text, file) => SteelReader.Read(text, file)).Then(own => Checked<SteelList>.Good(new SteelList(own)));

    private static Checked<T[]> OwnFiles<T>(string shopFolder, string kind, Func<string, string, Checked<T>> reader)
        where T : class
    {
        var own = new List<T>();
        foreach (var folder in new[] { System.IO.Path.Combine(shopFolder, kind), System.IO.Path.Combine(ProgramData.OwnFolder, kind) })
        {
            if (!System.IO.Directory.Exists(folder)) continue;
            foreach (var file in System.IO.Directory.EnumerateFiles(folder, "*.toml").Order(StringComparer.Ordinal))
            {
                var read = TextFile.Read(file).Then(text => reader(text, file));
                if (!read.IsGood) return Checked<T[]>.Bad(read.Faults);
                own.Add(read.Value);
            }
        }

        return Checked<T[]>.Good([.. own]);
    }

    private sealed record FoundShop(Shop Shop, string Words, string Folder);

    /// <summary>A shop and a steel by itself.</summary>
    internal sealed record ShopSteel(Shop Shop, Steel? Steel, string? Near);

    private sealed record FoundSteel(Steel? Steel);
}
