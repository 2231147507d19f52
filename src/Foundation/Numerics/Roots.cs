namespace Tangwright.Foundation;

/// <summary>Real roots of polynomials on a stretch, all of them, to the last few bits.</summary>
/// <remarks>
/// Between two neighbouring roots of its derivative a polynomial is monotone, so a change of sign there brackets exactly one root:
/// the roots of the second derivative, third, ... are found first, from the linear one upward, and each bracket is closed by Newton steps
/// kept inside by bisection (Press et al., Numerical Recipes, §9.4). A double root that touches zero without crossing is reported only when it is hit exactly.
/// </remarks>
public static class Roots
{
    private const int MaxDegree = 8;

    /// <summary>Roots of c0 + c1 x + c2 x² + ... in [a, b], ascending. Degree at most 8.</summary>
    /// <param name="coefficients">Coefficients, constant first.</param>
    /// <param name="a">Lower end.</param>
    /// <param name="b">Upper end.</param>
    /// <param name="roots">Room for as many roots as the degree.</param>
    /// <returns>How many were found.</returns>
    public static int Between(ReadOnlySpan<double> coefficients, double a, double b, Span<double> roots)
    {
        var n = coefficients.Length - 1;
        while (n > 0 && coefficients[n] == 0) n--;
        if (n <= 0) return 0;
        ArgumentOutOfRangeException.ThrowIfGreaterThan(n, MaxDegree, nameof(coefficients));
        var c = coefficients[..(n + 1)];
        if (n == 1) return Linear(c, a, b, roots);
        if (n == 2) return Quadratic(c, a, b, roots);

        Span<double> derivative = stackalloc double[MaxDegree];
        for (var i = 1; i <= n; i++) derivative[i - 1] = i * c[i];
        Span<double> turns = stackalloc double[MaxDegree + 1];
        var count = Between(derivative[..n], a, b, turns);
        turns[count] = b;
        var (lo, fLo, found) = (a, Value(c, a), 0);
        if (fLo == 0) roots[found++] = a;
        for (var i = 0; i <= count; i++)
        {
            var hi = turns[i];
            if (hi <= lo) continue;
            var fHi = Value(c, hi);
            if (fHi == 0) roots[found++] = hi;
            else if (fLo * fHi < 0) roots[found++] = Bracketed(c, lo, hi, fLo);
            (lo, fLo) = (hi, fHi);
        }

        return found;
    }

    /// <summary>The polynomial's value at x.</summary>
    public static double Value(ReadOnlySpan<double> c, double x)
    {
        var v = 0.0;
        for (var i = c.Length - 1; i >= 0; i--) v = (v * x) + c[i];
        return v;
    }

    private static double Bracketed(ReadOnlySpan<double> c, double lo, double hi, double fLo)
    {
        var x = 0.5 * (lo + hi);
        for (var k = 0; k < 100; k++)
        {
            double f = 0, d = 0;
            for (var i = c.Length - 1; i >= 0; i--)
            {
                d = (d * x) + f;
                f = (f * x) + c[i];
            }

            if (f == 0) return x;
            if (f > 0 == fLo > 0) lo = x;
            else hi = x;
            var next = x - (f / d);
            if (!(next > lo && next < hi)) next = 0.5 * (lo + hi);
            if (Math.Abs(next - x) <= 4e-16 * Math.Max(1e-3, Math.Abs(next))) return next;
            x = next;
        }

        return x;
    }

    private static int Linear(ReadOnlySpan<double> c, double a, double b, Span<double> roots)
    {
        var x = -c[0] / c[1];
        if (!(x >= a && x <= b)) return 0;
        roots[0] = x;
        return 1;
    }

    private static int Quadratic(ReadOnlySpan<double> c, double a, double b, Span<double> roots)
    {
        // the stable pair q / c2 and c0 / q (Press et al., Numerical Recipes, eq. 5.6.4)
        var disc = (c[1] * c[1]) - (4 * c[2] * c[0]);
        if (disc < 0) return 0;
        var q = -0.5 * (c[1] + Math.CopySign(Math.Sqrt(disc), c[1]));
        var (x, y) = (q / c[2], q != 0 ? c[0] / q : q / c[2]);
        if (x > y) (x, y) = (y, x);
        var n = 0;
        if (x >= a && x <= b) roots[n++] = x;
        if (y >= a && y <= b && y > x) roots[n++] = y;
        return n;
    }
}
