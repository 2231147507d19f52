using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>A drill cycle as it holds from line to line (NIST IR 6556, 3.5.16). Words of the program, in mm as written.</summary>
/// <param name="Code">81, 82, 83, 85 or 89.</param>
/// <param name="OldZ">Height from which it began, mm.</param>
/// <param name="Z">Word Z, mm.</param>
/// <param name="R">Word R, mm.</param>
/// <param name="Q">Word Q, mm; null when never said.</param>
/// <param name="P">Word P, s; null when never said.</param>
internal sealed record DrillCycle(int Code, double OldZ, double Z, double R, double? Q, double? P)
{
    /// <summary>How far above the last depth a pecking drill slows down again, mm: 0.010 in. The standard leaves it open ("backed off a bit"); this is what the widespread open interpreter does.</summary>
    public const double BackOffMm = 0.254;

    /// <summary>The steps of one hole from where the tip stands: places and whether it feeds.</summary>
    public IEnumerable<(SpacePoint To, bool IsFeed)> Steps(SpacePoint tip, Point over, double bottom, double retract, bool returnsToOldZ)
    {
        if (tip.Z < retract)
        {
            tip = tip with { Z = retract };
            yield return (tip, false);
        }

        tip = new SpacePoint(over.X, over.Y, tip.Z);
        yield return (tip, false);
        yield return (tip with { Z = retract }, false);
        if (Code == 83)
        {
            for (var depth = retract - Q!.Value; depth > bottom; depth -= Q.Value)
            {
                yield return (tip with { Z = depth }, true);
                yield return (tip with { Z = retract }, false);
                yield return (tip with { Z = Math.Min(retract, depth + BackOffMm) }, false);
            }
        }

        yield return (tip with { Z = bottom }, true);
        var clear = returnsToOldZ ? Math.Max(OldZ, retract) : retract;
        if (Code == 85) yield return (tip with { Z = retract }, true);
        yield return (tip with { Z = clear }, Code == 89);
    }
}
