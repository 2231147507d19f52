using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A revision that was kept: an exact copy of the plan's text.</summary>
/// <param name="Revision">Its letter or word.</param>
/// <param name="Date">Day it was kept, as noted; empty when it is not.</param>
/// <param name="Why">What changed and why, as noted; empty when it is not.</param>
public sealed record KeptRevision(string Revision, string Date, string Why);

/// <summary>The revisions of one plan, kept as whole plans in <c>NAME-revisions/NAME.REV.plan.toml</c> with a list, <c>revisions.toml</c>, that says when and why. Nothing kept is ever written over.</summary>
/// <param name="Kept">Newest first.</param>
/// <param name="ListFaults">What is wrong with the list; the copies can be used all the same.</param>
public sealed record KeptRevisions(ImmutableArray<KeptRevision> Kept, ImmutableArray<Fault> ListFaults)
{
    private const int LongestName = 20;
    private const string ListName = "revisions.toml";

    /// <summary>Those of a plan.</summary>
    public static KeptRevisions Of(PlanOnDesk plan, DeskFolder folder)
    {
        var place = folder.RevisionsOf(plan);
        if (!place.IsGood) return new([], place.Faults);
        var list = ReadList(place.Value);
        var notes = list.Then(text => string.IsNullOrWhiteSpace(text) ? Checked<IReadOnlyList<RevisionNote>>.Good([]) : RevisionNotes.Read(text, ListName));
        var noted = notes.IsGood ? notes.Value : [];
        var order = noted.Select((n, i) => (n.Revision, i)).GroupBy(n => n.Revision, StringComparer.OrdinalIgnoreCase).ToDictionary(g => g.Key, g => g.Last().i, StringComparer.OrdinalIgnoreCase);
        return new(
            [
                .. Names(place.Value, plan.Stem)
                    .OrderByDescending(n => order.GetValueOrDefault(n, -1)).ThenByDescending(n => n.Length).ThenByDescending(n => n, StringComparer.Ordinal)
                    .Select(n => order.TryGetValue(n, out var i) ? new KeptRevision(n, noted[i].Date, noted[i].Why) : new KeptRevision(n, "", "")),
            ],
            notes.Faults);
    }

    /// <summary>The revision to offer for keeping: the plan's own, or the first after it that is not kept yet.</summary>
    public static string Offered(PlanOnDesk plan, KeptRevisions kept)
    {
        var own = plan.Results.Plan.Revision;
        var name = IsName(own) && own != "-" ? own : NextRevision.After("");
        while (kept.Kept.Any(k => string.Equals(k.Revision, name, StringComparison.OrdinalIgnoreCase))) name = NextRevision.After(name);
        return name;
    }

    /// <summary>Keeps the plan as it stands; its head is marked with the revision first when it says another.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="folder">The folder that lies open.</param>
    /// <param name="revision">Letter or word to keep it under.</param>
    /// <param name="why">What changed and why.</param>
    /// <param name="date">Today.</param>
    /// <returns>The faults; none when it was kept.</returns>
    public static ImmutableArray<Fault> Keep(PlanOnDesk plan, DeskFolder folder, string revision, string why, DateOnly date)
    {
        revision = revision.Trim();
        if (!IsName(revision)) return [Fault.OfFile("revision", $"a revision is named by up to {LongestName} letters, digits, - and _", "write a letter, as B")];
        var place = folder.RevisionsOf(plan);
        if (!place.IsGood) return place.Faults;
        if (Names(place.Value, plan.Stem).Contains(revision, StringComparer.OrdinalIgnoreCase)) return [Fault.OfFile("revision", $"revision {revision} is kept already and stays as it is", $"keep this one as {Offered(plan, Of(plan, folder))}")];
        var list = ReadList(place.Value);
        var marked = plan.Results.Plan.Revision == revision ? [] : plan.Make(new MarkRevision(revision));
        if (marked.Length > 0) return marked;
        var copied = OutputFolder.Write([new OutputFile(PathOf(place.Value, plan.Stem, revision), Encoding.UTF8.GetBytes(plan.Text))], overwrite: false);
        if (copied.Length > 0) return copied;
        if (!list.IsGood && System.IO.File.Exists(System.IO.Path.Combine(place.Value, ListName))) return list.Faults;
        var note = new RevisionNote(revision, date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), why);
        return OutputFolder.Write([new OutputFile(System.IO.Path.Combine(place.Value, ListName), Encoding.UTF8.GetBytes(RevisionNotes.Added(list.IsGood ? list.Value : "", note)))], overwrite: true);
    }

    /// <summary>The text of one that was kept.</summary>
    public static Checked<string> Text(PlanOnDesk plan, DeskFolder folder, string revision)
        => folder.RevisionsOf(plan).Then(place => Names(place, plan.Stem).Contains(revision, StringComparer.Ordinal)
            ? TextFile.Read(PathOf(place, plan.Stem, revision))
            : Checked<string>.Bad(Fault.OfFile(revision, "no such revision was kept", "choose one of those listed")));

    private static bool IsName(string revision) => revision.Length is > 0 and <= LongestName && revision.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_');

    private static string PathOf(string place, string stem, string revision) => System.IO.Path.Combine(place, $"{stem}.{revision}{OpenWork.PlanEnding}");

    /// <summary>The list as it lies there; an absent one is empty and good.</summary>
    private static Checked<string> ReadList(string place)
    {
        var file = new System.IO.FileInfo(System.IO.Path.Combine(place, ListName));
        if (file.LinkTarget is not null) return Checked<string>.Bad(Fault.OfFile(ListName, "leads out of the folder that lies open", "put the list itself there"));
        return file.Exists ? TextFile.Read(file.FullName) : Checked<string>.Good("");
    }

    /// <summary>Revisions whose copies lie there; links are not followed.</summary>
    private static ImmutableArray<string> Names(string place, string stem)
    {
        try
        {
            var folder = new System.IO.DirectoryInfo(place);
            if (!folder.Exists) return [];
            return
            [
                .. folder.EnumerateFiles("*" + OpenWork.PlanEnding)
                    .Where(f => f.LinkTarget is null && f.Name.StartsWith(stem + ".", StringComparison.Ordinal) && f.Name.Length > stem.Length + 1 + OpenWork.PlanEnding.Length)
                    .Select(f => f.Name[(stem.Length + 1)..^OpenWork.PlanEnding.Length])
                    .Where(IsName),
            ];
        }
        catch (Exception e) when (e is System.IO.IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
