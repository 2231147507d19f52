using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How deep the scratches of a grit go, as a share of its grain size: what the next grit has to take off each face.</summary>
[Formula("depth of a grit's scratches, µm: 0.1 to 0.3 of the grain size", SourceTag.CommonPractice, "Belts and papers on steel; P60 about 27 to 81 µm, P400 about 4 to 11")]
public static class ScratchDepth
{
    /// <summary>Least share of the grain size.</summary>
    public const double LowShare = 0.1;

    /// <summary>Share planned with.</summary>
    public const double UsualShare = 0.2;

    /// <summary>Greatest share of the grain size.</summary>
    public const double HighShare = 0.3;

    /// <summary>Depth with its band, µm.</summary>
    /// <param name="micron">Grain size, µm.</param>
    public static (double Low, double Usual, double High) Of(double micron) => (LowShare * micron, UsualShare * micron, HighShare * micron);
}
