using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Something to be printed at true scale: a pattern, a half, a strip.</summary>
/// <param name="Name">What stands on it.</param>
/// <param name="Strokes">Its lines, mm in its own axes; at least one.</param>
/// <param name="Labels">Words at its spots, same axes.</param>
public sealed record TrueScaleShape(string Name, ImmutableArray<PlanStroke> Strokes, ImmutableArray<PlanLabel> Labels)
{
    /// <summary>Whether it may be turned a quarter turn to lie better on the paper.</summary>
    public bool MayTurn { get; init; }

    /// <summary>Where its name stands, own axes; null: in its middle.</summary>
    public Point? NameAt { get; init; }

    /// <summary>Box around its lines, own axes.</summary>
    public Box Bounds => Strokes.Aggregate(Box.Nothing, (b, s) => b.With(s.Path.Bounds));

    /// <summary>The shape moved or turned.</summary>
    internal TrueScaleShape Placed(Transform map) => this with
    {
        Strokes = [.. Strokes.Select(s => s with { Path = s.Path.Transformed(map) })],
        NameAt = NameAt is { } at ? map.Map(at) : null,
        Labels = [.. Labels.Select(l => l with { At = map.Map(l.At) })],
    };
}
