using Tangwright.Foundation;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Tangwright.Inputs;

/// <summary>Reads TOML text (TOML 1.1, toml.io) into a tree that knows the place of every value.</summary>
internal static class TomlReading
{
    /// <summary>Longest text read, characters.</summary>
    public const int MostCharacters = 1_000_000;
    private const int MostLines = 50_000;
    private const int DeepestKey = 6;
    private const int MostFaults = 20;
    private const int LongestReadAgain = 200_000;

    /// <summary>The tree, or the faults of the spelling: one a line, the first twenty.</summary>
    public static Checked<TomlTable> Read(SourceText source)
    {
        if (source.Text.Length > MostCharacters) return Bad($"the file has {source.Text.Length} characters; at most {MostCharacters} are read", "check that this is the right file");
        if (source.LineOf(source.Text.Length) > MostLines) return Bad($"the file has more than {MostLines} lines", "check that this is the right file");
        DocumentSyntax? document;
        try
        {
            document = Parse(source.Text);
        }
        catch (TomlException e)
        {
            return Bad(e.Message.Contains("depth", StringComparison.OrdinalIgnoreCase) ? "lists or tables are nested more than 64 deep" : "the text cannot be read", "write plain keys and values");
        }

        return document.HasErrors ? Checked<TomlTable>.Bad(SpellingFaults(source, document)) : new Builder(source).Build(document);

        Checked<TomlTable> Bad(string message, string remedy) => Checked<TomlTable>.Bad(Fault.OfFile(source.FileName, message, remedy));
    }

    private static DocumentSyntax Parse(string text) => SyntaxParser.Parse(text, "", validate: true);

    /// <summary>One fault a line. One mistake makes the parser stumble over good lines after it, so only its first complaint is kept, the lines it is about are blanked out and the rest is read again.</summary>
    private static List<Fault> SpellingFaults(SourceText source, DocumentSyntax document)
    {
        var faults = new List<Fault>();
        var text = source.Text.ToCharArray();
        while (true)
        {
            var first = document.Diagnostics.Where(d => d.Kind == DiagnosticMessageKind.Error).MinBy(d => d.Span.Offset);
            if (first is null) return faults;
            var found = TomlSpelling.Explain(source, Math.Clamp(first.Span.Offset, 0, source.Text.Length), first.Message);
            if (faults.Any(f => f.Line == source.LineOf(found.From))) return faults;
            faults.Add(source.Fault(found.Offset, found.Message, found.Remedy));
            if (faults.Count == MostFaults || text.Length > LongestReadAgain) return faults;

            // keys under a heading that cannot be read would seem to belong to the one before
            if (source.Text.AsSpan(found.From).TrimStart().StartsWith("[")) return faults;
            for (var i = found.From; i < found.To; i++)
            {
                if (text[i] is not ('\r' or '\n')) text[i] = ' ';
            }

            try
            {
                document = Parse(new string(text));
            }
            catch (TomlException)
            {
                return faults;
            }
        }
    }

    private sealed class Builder(SourceText source)
    {
        private readonly List<Fault> _faults = [];

        public Checked<TomlTable> Build(DocumentSyntax document)
        {
            var root = new TomlTable(0, source.Text.Length) { IsBlock = true };
            foreach (var kv in document.KeyValues) Put(root, kv);
            foreach (var t in document.Tables)
            {
                if (t.Name is null) continue;
                var path = Names(t.Name);
                if (path is null) continue;
                var parent = root;
                foreach (var name in path.Take(path.Count - 1)) parent = parent is null ? null : Under(parent, name, t.Span.Offset);
                if (parent is null) continue;
                var table = new TomlTable(t.Span.Offset, t.Span.Length) { IsBlock = true };
                var last = path[^1];
                if (t is TableArraySyntax)
                {
                    var there = parent.Find(last)?.Value;
                    if (there is null) parent.Add(new TomlEntry(last, t.Name.Span.Offset, t.Span.Offset, End(t.Span), new TomlTables(t.Span.Offset, t.Span.Length, [table])));
                    else if (there is TomlTables many) many.Items.Add(table);
                    else _faults.Add(source.Fault(t.Span.Offset, $"{last} is already {there.Kind}", "use one form only"));
                }
                else if (parent.Find(last)?.Value is TomlTable { IsBlock: false } implied)
                {
                    table = implied;
                }
                else if (!parent.Add(new TomlEntry(last, t.Name.Span.Offset, t.Span.Offset, End(t.Span), table)))
                {
                    _faults.Add(source.Fault(t.Span.Offset, $"[{last}] stands twice", "put all its lines under one heading"));
                }

                foreach (var kv in t.Items) Put(table, kv);
            }

            return _faults.Count > 0 ? Checked<TomlTable>.Bad(_faults.Take(MostFaults)) : Checked<TomlTable>.Good(root);
        }

        private void Put(TomlTable table, KeyValueSyntax kv)
        {
            if (kv.Key is null || Names(kv.Key) is not { } path) return;
            var parent = table;
            for (var i = 0; i + 1 < path.Count; i++)
            {
                if (Under(parent, path[i], kv.Span.Offset) is not { } next) return;
                parent = next;
            }

            var value = Value(kv.Value, 0);
            if (value is null) return;
            if (!parent.Add(new TomlEntry(path[^1], kv.Key.Span.Offset, kv.Span.Offset, End(kv.Span), value)))
            {
                _faults.Add(source.Fault(kv.Span.Offset, $"{path[^1]} stands twice", "keep one of the two lines"));
            }
        }

        private TomlTable? Under(TomlTable parent, string name, int offset)
        {
            switch (parent.Find(name)?.Value)
            {
                case null:
                    var table = new TomlTable(offset, 0);
                    parent.Add(new TomlEntry(name, offset, offset, offset, table));
                    return table;
                case TomlTable t:
                    return t;
                case TomlTables many:
                    return many.Items[^1];
                case var other:
                    _faults.Add(source.Fault(offset, $"{name} is already {other.Kind}", "use one form only"));
                    return null;
            }
        }

        private List<string>? Names(KeySyntax key)
        {
            var names = new List<string> { Name(key.Key) };
            if (key.DotKeys is not null)
            {
                foreach (var dot in key.DotKeys)
                {
                    names.Add(Name(dot.Key));
                    if (names.Count <= DeepestKey) continue;
                    _faults.Add(source.Fault(key.Span.Offset, $"a key of more than {DeepestKey} parts", "write it under its own heading"));
                    return null;
                }
            }

            return names;
        }

        private static string Name(BareKeyOrStringValueSyntax? key) => key switch
        {
            BareKeySyntax bare => bare.Key?.Text ?? "",
            StringValueSyntax text => text.Value ?? "",
            _ => "",
        };

        private TomlNode? Value(ValueSyntax? value, int depth)
        {
            if (value is null || depth > 64) return null;
            var (offset, length) = (value.Span.Offset, value.Span.Length);
            switch (value)
            {
                case StringValueSyntax s:
                    return Text(offset, length, s.Value ?? "");
                case IntegerValueSyntax n:
                    return new TomlNumber(offset, length, n.Value, IsWhole: true);
                case FloatValueSyntax n:
                    return new TomlNumber(offset, length, n.Value, IsWhole: false);
                case BooleanValueSyntax b:
                    return new TomlFlag(offset, length, b.Value);
                case DateTimeValueSyntax:
                    return new TomlDate(offset, length, source.Text.Substring(offset, length));
                case ArraySyntax a:
                    var items = new List<TomlNode>();
                    foreach (var item in a.Items)
                    {
                        if (Value(item.Value, depth + 1) is { } node) items.Add(node);
                    }

                    return items.Count > 0 && items.TrueForAll(i => i is TomlTable)
                        ? new TomlTables(offset, length, [.. items.Cast<TomlTable>()])
                        : new TomlList(offset, length, items);
                case InlineTableSyntax t:
                    var table = new TomlTable(offset, length);
                    foreach (var item in t.Items)
                    {
                        if (item.KeyValue is { } kv) Put(table, kv);
                    }

                    return table;
                default:
                    return null;
            }
        }

        private TomlText Text(int offset, int length, string value)
        {
            var raw = source.Text.AsSpan(offset, length);
            var quotes = raw.StartsWith("\"\"\"") || raw.StartsWith("'''") ? 3 : 1;
            var skip = quotes;
            if (quotes == 3 && raw.Length > 3 && raw[3] is '\r' or '\n') skip += raw[3] == '\r' ? 2 : 1;
            var plain = raw.Length >= skip + quotes && raw[skip..^quotes].SequenceEqual(value);
            return new TomlText(offset, length, value, plain ? offset + skip : -1);
        }

        private static int End(SourceSpan span) => span.Offset + span.Length;
    }
}
