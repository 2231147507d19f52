using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Puts changes into a plan's text, reads it again and makes sure that nothing else changed.</summary>
internal static class PlanSplice
{
    /// <summary>The changed plan. Every value whose name does not begin with one of <paramref name="may"/> must be written as before and <paramref name="isWanted"/> must hold; else, or when the text no longer reads, the change is refused.</summary>
    public static Checked<PlanFile> Apply(PlanFile file, IEnumerable<Splice> splices, Func<PlanFile, bool> isWanted, params string[] may)
    {
        var text = file.Source.With(splices);
        if (text == file.Text) return Checked<PlanFile>.Good(file);
        return PlanReader.Read(text, file.FileName).Then(changed =>
        {
            var before = Values(file, may);
            var after = Values(changed, may);
            return before.SequenceEqual(after) && isWanted(changed)
                ? Checked<PlanFile>.Good(changed)
                : Checked<PlanFile>.Bad(Fault.OfFile(file.FileName, "the change could not be written at its place", "change the file by hand"));
        });
    }

    private static List<string> Values(PlanFile file, string[] may)
    {
        var list = new List<string>();
        Walk(file.Root, "");
        return list;

        void Walk(TomlTable table, string path)
        {
            foreach (var e in table.Entries)
            {
                var name = path + e.Key;
                if (may.Any(m => name == m || name.StartsWith(m + ".", StringComparison.Ordinal))) continue;
                switch (e.Value)
                {
                    case TomlTable t:
                        Walk(t, name + ".");
                        break;
                    case TomlTables many:
                        foreach (var one in many.Items)
                        {
                            var label = (one.Find("name")?.Value as TomlText)?.Value ?? "";
                            if (!may.Contains($"{name}[{label}]")) Walk(one, $"{name}[{label}].");
                        }

                        break;
                    default:
                        list.Add($"{name} = {file.Source.Text.AsSpan(e.Value.Offset, e.Value.Length)}");
                        break;
                }
            }
        }
    }
}
