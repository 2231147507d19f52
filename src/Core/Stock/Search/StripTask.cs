namespace Tangwright.Core;

/// <summary>What the searches share; changed only between their rounds.</summary>
internal sealed class StripTask(PieceFields fields, int[] kinds, StripRoom room, double leastLengthMm, PlacesKept first)
{
    public PieceFields Fields => fields;

    public int[] Kinds => kinds;

    /// <summary>The bars.</summary>
    public StripRoom Room => room;

    /// <summary>No layout can be shorter, mm.</summary>
    public double LeastLength => leastLengthMm;

    /// <summary>The shortest clear layout so far.</summary>
    public PlacesKept Best { get; set; } = first;

    /// <summary>Whether big changes are over.</summary>
    public bool IsCompressing { get; set; }

    /// <summary>How far compressing has come, 0 to 1.</summary>
    public double Compressed { get; set; }
}
