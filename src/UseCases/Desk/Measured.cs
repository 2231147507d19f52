using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>What was measured between two places of the drawing.</summary>
/// <param name="Says">Distance, along, across and angle, both units, in a sentence.</param>
/// <param name="Sizes">The dimension drawn.</param>
public sealed record Measured(string Says, ImmutableArray<DrawnSize> Sizes)
{
    /// <summary>Measures from one place to another; each holds on to a centre or point within reach, else to the outline within reach.</summary>
    /// <param name="r">The plan as computed.</param>
    /// <param name="a">First place pointed at.</param>
    /// <param name="b">Second place pointed at.</param>
    /// <param name="reach">How near counts, mm.</param>
    public static Measured Between(Results r, Point a, Point b, double reach)
    {
        var (from, to) = (At(r, a, reach), At(r, b, reach));
        var step = to.At - from.At;
        var far = Length.OfMm(step.Length);
        var angle = Math.Atan2(step.Y, step.X) * 180 / Math.PI;
        var says = $"From {from.Name} to {to.Name}: {Shown.Both(far)}; along {Shown.Both(Length.OfMm(step.X))}, across {Shown.Both(Length.OfMm(step.Y))}"
            + (far.Mm < 1e-9 ? "." : $"; {Shown.Trimmed(angle, 2)}° from the line along the piece.");
        return new(says, [new(from.At.X, from.At.Y, to.At.X, to.At.Y, DeskFigures.Size(far, r.Plan.Units), "measured")]);
    }

    /// <summary>The line of the outline under a place, and the nearest spot on it; null when none lies within reach.</summary>
    public static (int Segment, Point At)? LineAt(Results r, Point p, double reach)
    {
        if (!double.IsFinite(p.X) || !double.IsFinite(p.Y)) return null;
        var (spot, at, distance) = Nearest.On(r.Plan.Outline, p);
        return distance <= reach ? (spot.Segment, at) : null;
    }

    private static (string Name, Point At) At(Results r, Point p, double reach)
    {
        var best = (Name: "", At: p, Distance: reach);
        foreach (var t in DrawnThings.Holes(r).Concat(DrawnThings.RowHoles(r)).Concat(DrawnThings.Rest(r)).Concat(DrawnThings.OfOutline(r.Plan.Outline)))
        {
            var at = new Point(t.X, t.Y);
            if (t.Id.StartsWith("segment:", StringComparison.Ordinal) || t.Id.StartsWith("control:", StringComparison.Ordinal) || at.To(p) > best.Distance) continue;
            if (best.Name.Length == 0 || at.To(p) < best.Distance) best = (char.ToLowerInvariant(t.Name[0]) + t.Name[1..], at, at.To(p));
        }

        if (best.Name.Length > 0) return (best.Name, best.At);
        return LineAt(r, p, reach) is { } on ? ($"line {on.Segment + 1}", on.At) : ("a free place", p);
    }
}
