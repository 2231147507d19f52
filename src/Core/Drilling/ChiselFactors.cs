using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How much the chisel edge of a drill adds to torque and push.</summary>
/// <param name="AFactor">Of the torque.</param>
/// <param name="BFactor">Of the push by feed.</param>
/// <param name="JFactor">Of the push by indenting.</param>
[Formula("factors A, B and J of the chisel edge", "shaw-oxford-1957", "chisel edge 0.03 to 0.40 of the diameter; printed tables within 1 % save A at 0.15, a misprint")]
public readonly record struct ChiselFactors(double AFactor, double BFactor, double JFactor)
{
    /// <summary>Chisel edge of a standard drill as a share of its diameter.</summary>
    public const double StandardShare = 0.18;

    /// <summary>Of a split point.</summary>
    public const double SplitShare = 0.03;

    /// <summary>The factors for a chisel edge of a share of the diameter.</summary>
    public static ChiselFactors Of(double chiselShare)
    {
        var x = chiselShare;
        return new(
            ((1 - (x * x)) / Math.Pow(1 + x, 0.2)) + (3.2 * Math.Pow(x, 1.8)),
            LipsOnlyFactor(x) + (2.2 * Math.Pow(x, 0.8)),
            x * x);
    }

    /// <summary>The part of B that the lips alone make.</summary>
    public static double LipsOnlyFactor(double chiselShare) => (1 - chiselShare) / Math.Pow(1 + chiselShare, 0.2);
}
