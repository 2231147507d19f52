using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The turn and shift that lay planned places on measured ones, with what is left over.</summary>
/// <param name="Turn">Turn about the origin, from x towards y.</param>
/// <param name="Shift">Shift after the turn, mm.</param>
/// <param name="Rest">Measured less planned after turn and shift, for each place, mm.</param>
public sealed record FittedMove(Angle Turn, Point Shift, ImmutableArray<Point> Rest)
{
    /// <summary>Root of the mean square of what is left over, mm.</summary>
    public double RmsMm => Rest.IsEmpty ? 0 : Math.Sqrt(Rest.Sum(r => r.Dot(r)) / Rest.Length);

    /// <summary>The most that is left over, mm.</summary>
    public double MostMm => Rest.IsEmpty ? 0 : Rest.Max(r => r.Length);

    /// <summary>The move by its turn and shift.</summary>
    internal static FittedMove Of(double radians, Point shift, ImmutableArray<Point> planned, ImmutableArray<Point> measured)
    {
        var turn = Transform.Turn(radians);
        return new(Angle.OfRadians(radians), shift, [.. planned.Zip(measured, (p, q) => q - (turn.Map(p) + shift))]);
    }
}

/// <summary>The move of the pattern that leaves the least sum of squares: turn and shift only, no stretching and no turning over.</summary>
/// <remarks>With a and b the places less their means, the turn is atan2(Σ a × b, Σ a · b).</remarks>
[Formula("Turn and shift of planned holes onto measured ones with the least sum of squares", "arun-1987", "Two holes or more in different places; one hole is shifted only. Exact")]
public static class RigidFit
{
    /// <summary>The move; none of nothing.</summary>
    /// <param name="planned">Planned places, mm.</param>
    /// <param name="measured">The same holes as measured, mm.</param>
    public static FittedMove Of(ImmutableArray<Point> planned, ImmutableArray<Point> measured)
    {
        if (planned.IsEmpty) return new FittedMove(default, default, []);
        var (p, q) = (Mean(planned), Mean(measured));
        var (cross, dot) = (0.0, 0.0);
        for (var i = 0; i < planned.Length; i++)
        {
            var (a, b) = (planned[i] - p, measured[i] - q);
            cross += a.Cross(b);
            dot += a.Dot(b);
        }

        var turn = Math.Atan2(cross, dot);
        return FittedMove.Of(turn, q - Transform.Turn(turn).Map(p), planned, measured);
    }

    /// <summary>Mean of some places, mm.</summary>
    internal static Point Mean(ImmutableArray<Point> places) => places.Aggregate((a, b) => a + b) * (1.0 / places.Length);
}
