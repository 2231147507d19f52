using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Which way a board is cut.</summary>
public enum BlankCutWay
{
    /// <summary>Across the grain, to length.</summary>
    ToLength,

    /// <summary>Along the grain, to width.</summary>
    ToWidth,

    /// <summary>Through the thickness, into slabs.</summary>
    ToThickness,
}

/// <summary>Cuts of one way, made alike on each of so many pieces.</summary>
/// <param name="Way">Which way.</param>
/// <param name="Each">Size of a piece that comes off, as sawn.</param>
/// <param name="At">Where the saw enters, from the end, edge or face one starts at, nearest first.</param>
/// <param name="OnEachOf">How many pieces are cut so.</param>
/// <param name="Left">What is left over behind the last cut; none when nothing is.</param>
public sealed record BlankCut(BlankCutWay Way, Length Each, ImmutableArray<Length> At, int OnEachOf, Length Left)
{
    /// <summary>How many pieces come off each.</summary>
    public int Pieces { get; init; }

    /// <summary>How often one saws, all told.</summary>
    public int Cuts => At.Length * OnEachOf;
}
