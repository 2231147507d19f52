using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>A limit set for the air of a working day, 8 h weighted mean unless the words say otherwise.</summary>
/// <param name="Words">The limit without its unit, as it is set: "15 total / 5 respirable". Empty when there is none.</param>
/// <param name="SourceKey">Key in <c>data/sources.toml</c> or "from memory".</param>
public sealed record SetLimit(string Words, string SourceKey);

/// <summary>What may be in the air one breathes, from <c>data/handles/exposure-limits.csv</c>.</summary>
/// <param name="Key">Short key a material names it by.</param>
/// <param name="Agent">The dust or vapour in words.</param>
/// <param name="Unit">Unit of all three: mg/m3 or ppm.</param>
/// <param name="Osha">Permissible exposure limit of the United States (OSHA PEL).</param>
/// <param name="Niosh">Recommended limit (NIOSH REL).</param>
/// <param name="Acgih">Threshold limit value (ACGIH TLV).</param>
/// <param name="Note">What else is to be known; may be empty.</param>
public sealed record ExposureLimit(string Key, string Agent, string Unit, SetLimit Osha, SetLimit Niosh, SetLimit Acgih, string Note)
{
    /// <summary>What is said with every limit.</summary>
    public const string LocalRulesFirst = "your local rules come first";

    private const int Columns = 10;

    /// <summary>All of them in the order of the file.</summary>
    public static ImmutableArray<ExposureLimit> All { get; } = [.. DataRows.Of("exposure-limits.csv").Select(Row)];

    /// <summary>The one of a key; null when there is none.</summary>
    public static ExposureLimit? Find(string key) => All.FirstOrDefault(l => l.Key == key);

    /// <summary>The limits in one line: "wood dust: OSHA 15 total / 5 respirable, NIOSH 1, ACGIH 1 mg/m3; your local rules come first".</summary>
    public string Line
    {
        get
        {
            var set = new[] { ("OSHA", Osha), ("NIOSH", Niosh), ("ACGIH", Acgih) }.Where(l => l.Item2.Words.Length > 0).Select(l => $"{l.Item1} {l.Item2.Words}");
            return $"{Agent}: {string.Join(", ", set)} {Unit}{(Note.Length > 0 ? "; " + Note : "")}; {LocalRulesFirst}";
        }
    }

    private static ExposureLimit Row(string[] c) => c.Length == Columns
        ? new ExposureLimit(c[0], c[1], c[2], new SetLimit(c[3], c[4]), new SetLimit(c[5], c[6]), new SetLimit(c[7], c[8]), c[9])
        : throw new InvalidOperationException($"exposure-limits.csv: {c[0]} has {c.Length} columns");
}
