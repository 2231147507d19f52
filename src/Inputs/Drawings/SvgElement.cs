namespace Tangwright.Inputs;

/// <summary>An element of an SVG file.</summary>
internal sealed class SvgElement(string name, int line, int depth)
{
    public string Name { get; } = name;

    public int Line { get; } = line;

    public int Depth { get; } = depth;

    public Dictionary<string, string> Attributes { get; } = new(StringComparer.Ordinal);

    public List<SvgElement> Children { get; } = [];

    public string? this[string attribute] => Attributes.GetValueOrDefault(attribute);

    /// <summary>A property given as an attribute or within <c>style</c>, which wins (SVG 1.1 §6.4).</summary>
    public string? Property(string property)
    {
        foreach (var part in (this["style"] ?? "").Split(';'))
        {
            var colon = part.IndexOf(':', StringComparison.Ordinal);
            if (colon > 0 && part.AsSpan(0, colon).Trim().SequenceEqual(property)) return part[(colon + 1)..].Replace("!important", "", StringComparison.Ordinal).Trim();
        }

        return this[property]?.Trim();
    }
}
