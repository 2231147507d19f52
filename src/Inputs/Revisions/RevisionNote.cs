using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>What is noted about a revision that was kept.</summary>
/// <param name="Revision">The revision: "B".</param>
/// <param name="Date">Day it was kept, as 2026-11-25; empty when not said.</param>
/// <param name="Why">What changed and why; empty when not said.</param>
public sealed record RevisionNote(string Revision, string Date, string Why);

/// <summary>The list of revisions, <c>revisions.toml</c>: plain text a maker can read and write too.</summary>
public static class RevisionNotes
{
    private static readonly KeyTable Table = new(
        [
            new("", false, false, "What the file is."),
            new("kept", true, false, "One revision that was kept."),
        ],
        [
            new("", "tangwright", "whole number", true, "Version of the file's form; 1", "", "1", []),
            new("kept", "revision", "text", true, "The revision", "", "\"B\"", []),
            new("kept", "date", "text", false, "Day it was kept", "", "\"2026-11-25\"", []),
            new("kept", "why", "text", false, "What changed and why", "", "\"more steel round L1\"", []),
        ]);

    /// <summary>The notes in the order written, or every fault found.</summary>
    /// <param name="text">The whole text of the file.</param>
    /// <param name="fileName">Name of the file, for the faults.</param>
    public static Checked<IReadOnlyList<RevisionNote>> Read(string text, string fileName)
    {
        var source = new SourceText(text, fileName);
        return TomlReading.Read(source).Then(root =>
        {
            var faults = new List<Fault>();
            Table.Check(root, source, faults);
            var tables = (root.Find("kept")?.Value as TomlTables)?.Items ?? [];
            ImmutableArray<RevisionNote> notes = [.. tables.Select(t => new Fields(source, t, "kept", Table, 1, faults)).Select(f => new RevisionNote(f.Text("revision") ?? "", f.Text("date") ?? "", f.Text("why") ?? ""))];
            return faults.Count > 0 ? Checked<IReadOnlyList<RevisionNote>>.Bad(faults) : Checked<IReadOnlyList<RevisionNote>>.Good(notes);
        });
    }

    /// <summary>The list with one more note at its end; what stands in it stays as it is.</summary>
    /// <param name="text">The list; empty: a new one.</param>
    /// <param name="note">The note.</param>
    public static string Added(string text, RevisionNote note)
    {
        var head = text.Length > 0 ? text : "# Revisions that were kept. Each lies beside this list as a whole plan.\ntangwright = 1\n";
        var why = note.Why.Trim();
        return head.TrimEnd('\n') + $"\n\n[[kept]]\nrevision = {Quoted(note.Revision)}\ndate = {Quoted(note.Date)}\n{(why.Length > 0 ? $"why = {Quoted(why)}\n" : "")}";
    }

    private static string Quoted(string text)
        => "\"" + string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c)).Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";
}
