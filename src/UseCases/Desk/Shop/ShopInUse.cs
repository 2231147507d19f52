using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Which shop file counts, and whether it can be changed here.</summary>
/// <param name="Words">Which one, in words.</param>
/// <param name="FileName">Its name when it lies in the folder; null when it lies elsewhere or is built in.</param>
/// <param name="Elsewhere">Its text when it lies elsewhere or is built in: to be looked at and copied.</param>
public sealed record ShopInUse(string Words, string? FileName, string Elsewhere)
{
    /// <summary>The one a plan uses, or that plans of the folder use when they have none of their own.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="stem">The plan; null: any plan without its own.</param>
    public static ShopInUse Of(DeskFolder folder, string? stem)
    {
        foreach (var (path, words) in Places(folder, stem))
        {
            if (folder.ShopPath(System.IO.Path.GetFileName(path)) is { IsGood: true, Value: var own } && own == path) return new(words, System.IO.Path.GetFileName(path), "");
            if (TextFile.Read(path) is { IsGood: true, Value: var text }) return new(words, null, text);
        }

        return new("assumed shop, built in", null, ShopStart.FirstText());
    }

    /// <summary>What it holds, for reading only.</summary>
    public Checked<Shop> Read() => ShopReader.Read(Elsewhere, OpenWork.ShopName);

    /// <summary>Time and size of the files a plan's shop and steel may come from; differs when one was changed, put there or taken away.</summary>
    internal static string Stamp(string planPath) => string.Join("|", OpenWork.ShopPlaces(planPath).Select(p => p.Path).Concat(OpenWork.SteelFiles(planPath)).Append(MeasuredBeside.PathOf(planPath)).Select(path =>
    {
        try
        {
            var f = new System.IO.FileInfo(path);
            return f.Exists ? $"{path} {f.LastWriteTimeUtc.Ticks} {f.Length}" : "";
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }));

    private static IEnumerable<(string Path, string Words)> Places(DeskFolder folder, string? stem)
        => OpenWork.ShopPlaces(System.IO.Path.Combine(folder.Root, (stem ?? "") + OpenWork.PlanEnding)).Skip(stem is null ? 1 : 0).Where(p => System.IO.File.Exists(p.Path)).ToImmutableArray();
}
