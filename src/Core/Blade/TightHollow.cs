using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A hollow of the outline that a wheel cannot follow.</summary>
/// <param name="Place">Where it is tightest, mm.</param>
/// <param name="RadiusMm">Least radius, mm; 0 for a sharp corner.</param>
/// <param name="TurnRadians">How far the outline turns in it, radians.</param>
public readonly record struct TightHollow(Point Place, double RadiusMm, double TurnRadians)
{
    /// <summary>Steel a wheel of a larger radius leaves in the bottom of the hollow, mm: (R − r)(1/cos(θ/2) − 1), exact for an arc of radius r that turns by θ between straight flanks.</summary>
    public double LeftBy(double wheelRadiusMm)
        => TurnRadians >= Math.PI ? double.PositiveInfinity : Math.Max(0, wheelRadiusMm - RadiusMm) * ((1 / Math.Cos(0.5 * TurnRadians)) - 1);

    /// <summary>Sharp inside corners of a loop that has steel to its left.</summary>
    public static IEnumerable<TightHollow> Corners(Path outer)
    {
        var n = outer.Segments.Length;
        for (var i = 0; i < n; i++)
        {
            var (before, after) = (outer.Segments[i], outer.Segments[(i + 1) % n]);
            var (a, b) = (before.Tangent(1), after.Tangent(0));
            var turn = -Math.Atan2(a.Cross(b), a.Dot(b));
            if (turn > 1e-6) yield return new TightHollow(before.End, 0, turn);
        }
    }

    /// <summary>Stretches of a loop, steel to its left, that curve inwards tighter than a radius.</summary>
    public static IEnumerable<TightHollow> Curves(Path outer, double tighterThanMm)
    {
        var (radius, turn, place) = (double.PositiveInfinity, 0.0, default(Point));
        foreach (var s in outer.Segments)
        {
            if (s is Arc { IsCircle: true } arc)
            {
                var tight = !arc.IsCounterClockwise && arc.Radius < tighterThanMm;
                if (tight)
                {
                    turn += Math.Abs(arc.Sweep);
                    if (arc.Radius < radius) (radius, place) = (arc.Radius, arc.At(0.5));
                    continue;
                }
            }
            else if (MayCurveIn(s))
            {
                const int steps = 16;
                for (var k = 0; k <= steps; k++)
                {
                    var t = (double)k / steps;
                    var bend = -s.Curvature(t);
                    if (bend * tighterThanMm > 1)
                    {
                        turn += bend * s.Derivative(t).Length / steps * (k is 0 or steps ? 0.5 : 1);
                        if (1 / bend < radius) (radius, place) = (1 / bend, s.At(t));
                    }
                    else if (turn > 0)
                    {
                        yield return new TightHollow(place, radius, turn);
                        (radius, turn) = (double.PositiveInfinity, 0);
                    }
                }

                continue;
            }

            if (turn > 0) yield return new TightHollow(place, radius, turn);
            (radius, turn) = (double.PositiveInfinity, 0);
        }

        if (turn > 0) yield return new TightHollow(place, radius, turn);
    }

    private static bool MayCurveIn(Segment s) => s switch
    {
        Line => false,
        Arc a => !a.IsCounterClockwise,
        Bezier b => (b.Control1 - b.Start).Cross(b.Control2 - b.Control1) < 0 || (b.Control2 - b.Control1).Cross(b.End - b.Control2) < 0 || (b.Control1 - b.Start).Cross(b.End - b.Control2) < 0,
        _ => true,
    };
}
