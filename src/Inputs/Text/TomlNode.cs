namespace Tangwright.Inputs;

/// <summary>A value of a TOML text with its place in the text.</summary>
/// <param name="Offset">First character.</param>
/// <param name="Length">Characters.</param>
internal abstract record TomlNode(int Offset, int Length)
{
    /// <summary>What it is, for messages.</summary>
    public abstract string Kind { get; }
}

/// <summary>Text in quotes.</summary>
/// <param name="Offset">First character.</param>
/// <param name="Length">Characters.</param>
/// <param name="Value">What it means.</param>
/// <param name="ContentOffset">Where its first character stands; -1 when escapes or line ends make the text differ from what it means.</param>
internal sealed record TomlText(int Offset, int Length, string Value, int ContentOffset) : TomlNode(Offset, Length)
{
    public override string Kind => "text";
}

/// <summary>A number.</summary>
/// <param name="Offset">First character.</param>
/// <param name="Length">Characters.</param>
/// <param name="Value">Its value.</param>
/// <param name="IsWhole">Written without point and exponent.</param>
internal sealed record TomlNumber(int Offset, int Length, double Value, bool IsWhole) : TomlNode(Offset, Length)
{
    public override string Kind => "a number";
}

/// <summary>true or false.</summary>
internal sealed record TomlFlag(int Offset, int Length, bool Value) : TomlNode(Offset, Length)
{
    public override string Kind => "true or false";
}

/// <summary>A date or time.</summary>
internal sealed record TomlDate(int Offset, int Length, string Value) : TomlNode(Offset, Length)
{
    public override string Kind => "a date";
}

/// <summary>A list in square brackets.</summary>
internal sealed record TomlList(int Offset, int Length, IReadOnlyList<TomlNode> Items) : TomlNode(Offset, Length)
{
    public override string Kind => "a list";
}

/// <summary>A key with its value.</summary>
/// <param name="Key">Name.</param>
/// <param name="KeyOffset">Where the name stands.</param>
/// <param name="Start">First character of the line or item it is written in.</param>
/// <param name="End">One past its last character, line end included.</param>
/// <param name="Value">Value.</param>
internal sealed record TomlEntry(string Key, int KeyOffset, int Start, int End, TomlNode Value);

/// <summary>A table: a header with its lines, an inline table, or the whole text.</summary>
internal sealed record TomlTable(int Offset, int Length) : TomlNode(Offset, Length)
{
    private readonly Dictionary<string, TomlEntry> _byKey = new(StringComparer.Ordinal);
    private readonly List<TomlEntry> _entries = [];

    public override string Kind => "a table";

    /// <summary>Whether it has a header of its own, <c>[name]</c> or <c>[[name]]</c>, or is the whole text.</summary>
    public bool IsBlock { get; init; }

    public IReadOnlyList<TomlEntry> Entries => _entries;

    public TomlEntry? Find(string key) => _byKey.GetValueOrDefault(key);

    /// <summary>Adds an entry; false when the key is there already.</summary>
    public bool Add(TomlEntry entry)
    {
        if (!_byKey.TryAdd(entry.Key, entry)) return false;
        _entries.Add(entry);
        return true;
    }
}

/// <summary>Tables under one repeated header, <c>[[name]]</c>, or a list of inline tables.</summary>
internal sealed record TomlTables(int Offset, int Length, List<TomlTable> Items) : TomlNode(Offset, Length)
{
    public override string Kind => "a list of tables";
}
