using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What keeps more handles from going into one mix.</summary>
public enum GlueLimit
{
    /// <summary>Nothing: all go into one mix.</summary>
    None,

    /// <summary>The glue sets.</summary>
    PotLife,

    /// <summary>There are no more clamps.</summary>
    Clamps,
}

/// <summary>How handles are shared out among mixes of glue.</summary>
/// <param name="PiecesEach">Handles of each mix, the fuller ones first; empty when not even one can be glued.</param>
/// <param name="MostByPotLife">Most that one mix reaches for.</param>
/// <param name="MostByClamps">Most that the clamps hold at once; null when none are needed.</param>
/// <param name="Limit">What limits a mix.</param>
public sealed record GlueBatchPlan(ImmutableArray<int> PiecesEach, int MostByPotLife, int? MostByClamps, GlueLimit Limit)
{
    /// <summary>How many mixes.</summary>
    public int Mixes => PiecesEach.Length;

    /// <summary>Whether it can be done at all.</summary>
    public bool IsPossible => MostByPotLife > 0 && MostByClamps is not 0;

    /// <summary>How often clamps must first come free, after the cure of those before, for the next mix: 0 when there are clamps for all.</summary>
    public int WaitsForClamps
    {
        get
        {
            var (waits, free) = (0, MostByClamps ?? int.MaxValue);
            foreach (var pieces in PiecesEach)
            {
                if (pieces > free) (waits, free) = (waits + 1, MostByClamps!.Value);
                free -= pieces;
            }

            return waits;
        }
    }
}

/// <summary>How many mixes of glue a batch of handles takes, and how many handles go into each.</summary>
/// <remarks>Only 80 % of the pot life on the tin is counted with: a cup of more than the test's amount warms itself and sets sooner, and the last handle wants its time too.</remarks>
[Formula("mixes of glue and handles in each", "common practice", "pot life at the temperature of the shop and for about the amount mixed; 80 % of it is used; clamps stay on until the glue has cured; handles shared out evenly")]
public static class GlueBatches
{
    /// <summary>Share of the pot life that is counted with.</summary>
    public const double UsedShare = 0.8;

    private const double Rounding = 1e-9;

    /// <summary>The mixes.</summary>
    /// <param name="pieces">Handles to glue.</param>
    /// <param name="minutesPerPiece">Minutes for one, from the first glue to the last clamp.</param>
    /// <param name="potLifeMinutes">Pot life on the tin.</param>
    /// <param name="clampsPerPiece">Clamps for one; 0 when none are needed.</param>
    /// <param name="clampsOwned">Clamps there are.</param>
    public static GlueBatchPlan Of(int pieces, double minutesPerPiece, double potLifeMinutes, int clampsPerPiece, int clampsOwned)
    {
        var byPot = minutesPerPiece > 0 ? (int)Math.Clamp(Math.Floor((UsedShare * potLifeMinutes / minutesPerPiece) + Rounding), 0, int.MaxValue / 2) : int.MaxValue / 2;
        int? byClamps = clampsPerPiece > 0 ? Math.Max(0, clampsOwned) / clampsPerPiece : null;
        var most = Math.Min(byPot, byClamps ?? byPot);
        var limit = pieces <= most ? GlueLimit.None : byClamps is { } c && c < byPot ? GlueLimit.Clamps : GlueLimit.PotLife;
        if (pieces <= 0 || most == 0) return new GlueBatchPlan([], byPot, byClamps, limit);
        var mixes = ((pieces - 1) / most) + 1;
        var (each, over) = (pieces / mixes, pieces % mixes);
        return new GlueBatchPlan([.. Enumerable.Range(0, mixes).Select(i => i < over ? each + 1 : each)], byPot, byClamps, limit);
    }
}
