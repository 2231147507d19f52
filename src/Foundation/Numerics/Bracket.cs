namespace Tangwright.Foundation;

/// <summary>The root of a function between two places where it has opposite signs.</summary>
public static class Bracket
{
    /// <summary>The root to within <paramref name="width"/>, by the Illinois form of regula falsi (Dowell and Jarratt, BIT 11 (1971) 168–174), halved whenever three steps did not halve the bracket. The nearer end when the signs are the same.</summary>
    public static double Root(Func<double, double> f, double a, double b, double width)
    {
        var (fa, fb) = (f(a), f(b));
        if (fa == 0) return a;
        if (fb == 0) return b;
        if (fa > 0 == fb > 0) return Math.Abs(fa) <= Math.Abs(fb) ? a : b;
        var (since, atMark) = (0, Math.Abs(b - a));
        for (var k = 0; k < 200 && Math.Abs(b - a) > width; k++)
        {
            var x = b - (fb * (b - a) / (fb - fa));
            if (++since == 3)
            {
                if (Math.Abs(b - a) > 0.5 * atMark) x = 0.5 * (a + b);
                (since, atMark) = (0, Math.Abs(b - a));
            }

            var fx = f(x);
            if (fx == 0) return x;
            if (fx > 0 == fb > 0)
            {
                (b, fb) = (x, fx);
                fa *= 0.5;
            }
            else
            {
                (a, fa) = (b, fb);
                (b, fb) = (x, fx);
            }
        }

        return Math.Abs(fa) < Math.Abs(fb) ? a : b;
    }
}
