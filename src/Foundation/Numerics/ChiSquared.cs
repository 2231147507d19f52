namespace Tangwright.Foundation;

/// <summary>The chi-squared distribution: what a sum of so many squared standard deviates comes to.</summary>
/// <remarks>Its share below x is the regularised lower incomplete gamma function P(n/2, x/2): by its power series (NIST Digital Library of Mathematical Functions, 8.11.4) up to x/2 = n/2 + 1, by the continued fraction of its complement (8.9.2, Lentz's method) above.</remarks>
[Formula("Share of chances below a value of the chi-squared distribution, and the value for a share", "dlmf-8", "1 to 20 000 degrees of freedom, shares from 1e-6 to 1 - 1e-6; 1e-10 of the share")]
public static class ChiSquared
{
    /// <summary>Chance that a sum of squares with so many degrees of freedom stays below x.</summary>
    /// <param name="x">The value, 0 or more.</param>
    /// <param name="freedom">Degrees of freedom, at least 1.</param>
    public static double ShareBelow(double x, int freedom)
    {
        if (x <= 0) return 0;
        var (a, half) = (0.5 * freedom, 0.5 * x);
        var front = Math.Exp((a * Math.Log(half)) - half - LogGamma(freedom));
        return half < a + 1 ? front * Series(a, half) : 1 - (front * Fraction(a, half));
    }

    /// <summary>The value that the sum stays below with a chance.</summary>
    /// <param name="share">The chance, above 0 and under 1.</param>
    /// <param name="freedom">Degrees of freedom, at least 1.</param>
    public static double Value(double share, int freedom)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(freedom, 1);
        if (share is not (> 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(share));
        var (low, high) = (0.0, freedom + 10.0);
        while (ShareBelow(high, freedom) < share) high *= 2;
        for (var i = 0; i < 200 && high - low > 1e-13 * high; i++)
        {
            var middle = 0.5 * (low + high);
            if (ShareBelow(middle, freedom) < share) low = middle;
            else high = middle;
        }

        return 0.5 * (low + high);
    }

    private static double Series(double a, double x)
    {
        var (term, sum) = (1 / a, 1 / a);
        for (var n = 1; n < 100_000 && term > 1e-17 * sum; n++)
        {
            term *= x / (a + n);
            sum += term;
        }

        return sum;
    }

    private static double Fraction(double a, double x)
    {
        var b = x + 1 - a;
        var c = 1e300;
        var d = 1 / b;
        var h = d;
        for (var i = 1; i < 100_000; i++)
        {
            var an = i * (a - i);
            b += 2;
            d = 1 / ((an * d) + b);
            c = b + (an / c);
            h *= d * c;
            if (Math.Abs((d * c) - 1) < 1e-16) break;
        }

        return h;
    }

    // of half a whole number, from gamma(1/2) = sqrt(pi) and gamma(1) = 1 upward
    private static double LogGamma(int twice)
    {
        var sum = twice % 2 == 0 ? 0 : 0.5 * Math.Log(Math.PI);
        for (var k = twice - 2; k > 0; k -= 2) sum += Math.Log(0.5 * k);
        return sum;
    }
}
