namespace Tangwright.Foundation;

/// <summary>Student's t: how many standard errors hold a share of the chance when the spread itself was guessed from few numbers.</summary>
[Formula("Student's t for a share within plus and minus t", "abramowitz-stegun", "Whole degrees of freedom from 1 to 1000 (26.7.3 and 26.7.4, finite sums); about 1e-10")]
public static class StudentT
{
    /// <summary>Share of the chance between −t and t, 0 to 1.</summary>
    /// <param name="t">t, from 0.</param>
    /// <param name="freedom">Degrees of freedom, 1 to 1000.</param>
    public static double Within(double t, int freedom)
    {
        var angle = Math.Atan(t / Math.Sqrt(freedom));
        var (sin, cos2) = (Math.Sin(angle), Math.Cos(angle) * Math.Cos(angle));
        double sum, term;
        if (freedom % 2 == 0)
        {
            (sum, term) = (1, 1);
            for (var k = 2; k < freedom; k += 2) sum += term *= cos2 * (k - 1) / k;
            return sin * sum;
        }

        if (freedom == 1) return 2 / Math.PI * angle;
        (sum, term) = (Math.Cos(angle), Math.Cos(angle));
        for (var k = 3; k < freedom; k += 2) sum += term *= cos2 * (k - 1) / k;
        return 2 / Math.PI * (angle + (sin * sum));
    }

    /// <summary>The t within which a share of the chance lies.</summary>
    /// <param name="share">Share, above 0 and under 1.</param>
    /// <param name="freedom">Degrees of freedom, 1 to 1000.</param>
    public static double For(double share, int freedom)
    {
        var (low, high) = (0.0, 1.0);
        while (Within(high, freedom) < share && high < 1e9) high *= 2;
        for (var i = 0; i < 80; i++)
        {
            var middle = 0.5 * (low + high);
            if (Within(middle, freedom) < share) low = middle;
            else high = middle;
        }

        return 0.5 * (low + high);
    }
}
