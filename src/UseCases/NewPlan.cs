using System.Collections.Immutable;
using System.Text;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Writes a starter plan, a whole working example under a new name.</summary>
public static class NewPlan
{
    private static readonly ImmutableArray<(string Like, string File)> Starters =
    [
        ("hatchet", "skeleton-hatchet"),
        ("kitchen", "kitchen-knife"),
        ("paring", "paring-knife"),
    ];

    /// <summary>The starters there are.</summary>
    public static ImmutableArray<string> Likes => [.. Starters.Select(s => s.Like)];

    /// <summary>Writes NAME.plan.toml.</summary>
    /// <param name="name">Name or path, with or without the ending.</param>
    /// <param name="like">hatchet, kitchen or paring.</param>
    /// <param name="folder">Folder; null: as the name says.</param>
    /// <param name="overwrite">Whether an existing plan may be replaced.</param>
    /// <returns>Where it was written.</returns>
    public static Checked<string> Of(string name, string like, string? folder, bool overwrite)
    {
        var starter = Starters.FirstOrDefault(s => s.Like == like).File;
        if (starter is null) return Checked<string>.Bad(Fault.OfFile("--like", $"there is no starter called \"{like}\"", "choose from: " + string.Join(", ", Likes)));
        var bare = name.EndsWith(OpenWork.PlanEnding, StringComparison.OrdinalIgnoreCase) ? name[..^OpenWork.PlanEnding.Length] : name;
        var leaf = System.IO.Path.GetFileName(bare);
        if (leaf.Length == 0 || leaf[0] == '.' || leaf.IndexOfAny(System.IO.Path.GetInvalidFileNameChars()) >= 0)
        {
            return Checked<string>.Bad(Fault.OfFile("NAME", $"\"{name}\" cannot be a file name", "give a plain name, such as small-hatchet"));
        }

        var path = System.IO.Path.Combine(folder ?? "", bare + OpenWork.PlanEnding);
        return Starter(like)
            .Then(text => PlanReader.Read(text, starter + OpenWork.PlanEnding))
            .Then(plan => PlanEdit.SetText(plan, "", "name", Spoken(leaf)))
            .Then(plan =>
            {
                var faults = OutputFolder.Write([new OutputFile(path, Encoding.UTF8.GetBytes(plan.Text))], overwrite);
                return faults.Length > 0 ? Checked<string>.Bad(faults) : Checked<string>.Good(path);
            });
    }

    /// <summary>Text of a starter.</summary>
    internal static Checked<string> Starter(string like)
        => TextFile.Read(System.IO.Path.Combine(ProgramData.Starters, Starters.First(s => s.Like == like).File + OpenWork.PlanEnding));

    private static string Spoken(string leaf)
    {
        var words = leaf.Replace('-', ' ').Replace('_', ' ').Trim();
        return words.Length == 0 ? leaf : char.ToUpperInvariant(words[0]) + words[1..];
    }
}
