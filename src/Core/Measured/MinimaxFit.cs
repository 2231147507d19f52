using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The move of the pattern that leaves the worst hole the least off: when even that is too much, no way of laying the piece makes it pass.</summary>
/// <remarks>
/// For a given turn the best shift is exact; the worst share it leaves is, for the small turns of real pieces, convex in the turn, so a golden section closes in on it.
/// It begins at the turn of least squares: no better move can be turned farther from it than both leave the two holes farthest apart, 2 asin(2 r / d).
/// </remarks>
[Formula("Turn and shift of planned holes onto measured ones with the least worst error, as a share of what each hole is allowed", "chebyshev-fit", "Two holes or more; errors small against the pattern. 1e-6 mm")]
public static class MinimaxFit
{
    private const double Golden = 0.6180339887498949;
    private const int Steps = 44;

    /// <summary>The move.</summary>
    /// <param name="planned">Planned places, mm.</param>
    /// <param name="measured">The same holes as measured, mm.</param>
    /// <param name="allowed">How far off each may be, mm, above 0; all 1 to make the worst error least.</param>
    public static FittedMove Of(ImmutableArray<Point> planned, ImmutableArray<Point> measured, ImmutableArray<Length> allowed)
    {
        var first = RigidFit.Of(planned, measured);
        if (planned.IsEmpty) return first;
        var (p, q) = (RigidFit.Mean(planned), RigidFit.Mean(measured));
        double[] room = [.. allowed.Select(a => a.Mm)];
        var worst = first.Rest.Select((r, i) => r.Length / room[i]).Max();
        var farthest = planned.Max(a => planned.Max(b => a.To(b)));
        var left = new Point[planned.Length];
        var leastTurn = first.Turn.Radians;
        if (farthest > 0)
        {
            var reach = 2 * Math.Asin(Math.Min(1, 2 * worst * room.Max() / farthest));
            leastTurn = Least(leastTurn - reach, leastTurn + reach, turn => Left(turn).WorstShare);
        }

        var shift = Left(leastTurn).Shift;
        return FittedMove.Of(leastTurn, q + shift - Transform.Turn(leastTurn).Map(p), planned, measured);

        (Point Shift, double WorstShare) Left(double radians)
        {
            var turn = Transform.Turn(radians);
            for (var i = 0; i < left.Length; i++) left[i] = measured[i] - q - turn.Map(planned[i] - p);
            return LeastWorstShift.Of(left, room);
        }
    }

    private static double Least(double low, double high, Func<double, double> f)
    {
        var (a, b) = (high - (Golden * (high - low)), low + (Golden * (high - low)));
        var (fa, fb) = (f(a), f(b));
        for (var i = 0; i < Steps && high > low; i++)
        {
            if (fa <= fb)
            {
                (high, b, fb) = (b, a, fa);
                a = high - (Golden * (high - low));
                fa = f(a);
            }
            else
            {
                (low, a, fa) = (a, b, fb);
                b = low + (Golden * (high - low));
                fb = f(b);
            }
        }

        return fa <= fb ? a : b;
    }
}
