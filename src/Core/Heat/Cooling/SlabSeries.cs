using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Exact cooling of a plate with one heat transfer and fixed properties: the series of the plane wall. The measure the step-by-step solver is held against.</summary>
[Formula("temperature of a plane wall: Σ C exp(-ζ² Fo) cos(ζ x), ζ tan ζ = Bi, C = 4 sin ζ / (2ζ + sin 2ζ)", "carslaw-jaeger", "Constant properties and heat transfer; exact")]
public static class SlabSeries
{
    /// <summary>Root of ζ tan ζ = Bi.</summary>
    /// <param name="biot">h L / k of the half thickness.</param>
    /// <param name="order">0 for the first.</param>
    public static double RootRadians(double biot, int order = 0)
    {
        var (low, high) = ((order * Math.PI) + 1e-12, ((order + 0.5) * Math.PI) - 1e-12);
        return Bracket.Root(z => (z * Math.Sin(z)) - (biot * Math.Cos(z)), low, high, 1e-13);
    }

    /// <summary>Factor C of a root.</summary>
    /// <param name="root">ζ.</param>
    public static double Factor(double root) => 4 * Math.Sin(root) / ((2 * root) + Math.Sin(2 * root));

    /// <summary>(T − T∞) / (T0 − T∞), 0 to 1.</summary>
    /// <param name="biot">h L / k of the half thickness.</param>
    /// <param name="fourier">Time over L² ρ c / k.</param>
    /// <param name="place">0 in the middle, 1 at the face.</param>
    public static double Share(double biot, double fourier, double place)
    {
        var sum = 0.0;
        for (var n = 0; n < 200; n++)
        {
            var z = RootRadians(biot, n);
            var term = Math.Exp(-z * z * fourier);
            if (n > 0 && term < 1e-14) break;
            sum += Factor(z) * term * Math.Cos(z * place);
        }

        return sum;
    }
}
