using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Diameter of a round handle that a hand grips hardest.</summary>
/// <remarks>Of the handles of 25 to 50 mm tried, grip force and comfort were best at 19.7 % of the length of the hand.</remarks>
[Formula("diameter of a round handle for the hardest grip, mm", "kong-lowe-2005", "Grown hands, round handles of 25 to 50 mm, a pull in line with the forearm; a knife held with the fingertips is thinner")]
public static class BestGrip
{
    /// <summary>Share of the length of the hand.</summary>
    public const double Share = 0.197;

    /// <summary>The diameter.</summary>
    /// <param name="hand">Length of the hand.</param>
    public static Length Diameter(Length hand) => hand * Share;
}
