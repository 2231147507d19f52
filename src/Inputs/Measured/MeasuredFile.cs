using System.Collections.Immutable;
using Tangwright.Core;

namespace Tangwright.Inputs;

/// <summary>A file of measured values as it was read: its text, and the holes in it. Lines on other things than holes stay as they are.</summary>
public sealed class MeasuredFile
{
    internal MeasuredFile(SourceText source, ImmutableArray<MeasuredHole> holes, ImmutableArray<(int Offset, int End)> places)
    {
        Source = source;
        Holes = holes;
        Places = places;
    }

    /// <summary>Its first line.</summary>
    public static string Heading { get; } = string.Join(',', MeasuredReader.Columns);

    /// <summary>A file with nothing in it yet.</summary>
    public static MeasuredFile Empty { get; } = MeasuredReader.Read(Heading + "\n", "measured").Value;

    /// <summary>The text.</summary>
    public string Text => Source.HasMark ? "\uFEFF" + Source.Text : Source.Text;

    /// <summary>The measured holes in the order written; the last for a hole counts.</summary>
    public ImmutableArray<MeasuredHole> Holes { get; }

    /// <summary>The edges that a line added for a piece would be measured from; null: not said.</summary>
    /// <param name="piece">Which piece.</param>
    public MeasuredEdges? EdgesOf(string piece) => Edges.GetValueOrDefault(piece);

    internal SourceText Source { get; }

    /// <summary>Where the line of each hole stands.</summary>
    internal ImmutableArray<(int Offset, int End)> Places { get; }

    /// <summary>The edges in force at the end, for each piece.</summary>
    internal ImmutableDictionary<string, MeasuredEdges> Edges { get; init; } = ImmutableDictionary<string, MeasuredEdges>.Empty;
}
