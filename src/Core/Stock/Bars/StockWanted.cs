using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What is to be cut from bars.</summary>
/// <param name="Good">Good pieces wanted.</param>
public sealed record StockWanted(int Good)
{
    /// <summary>Most pieces started at once.</summary>
    public const int MostStarts = 20_000;

    /// <summary>Chance wanted when nobody says another.</summary>
    public const double UsualChanceShare = 0.9;

    /// <summary>Chance of enough good ones, above 0 and under 1; null: the shop's, else <see cref="UsualChanceShare"/>.</summary>
    public double? ChanceShare { get; init; }

    /// <summary>Share that comes out good; null: the shop's, else <see cref="YieldGuess.Prior"/>.</summary>
    public double? YieldShare { get; init; }

    /// <summary>Pieces to start whatever the chance; null: as many as the chance asks for.</summary>
    public int? Starts { get; init; }

    /// <summary>Lengths of bars that can be bought; empty: that of the plan.</summary>
    public ImmutableArray<Length> Bars { get; init; } = [];

    /// <summary>Clearance between pieces; null: the kerf of the shop's first saw and twice the shop's allowance beside a piece.</summary>
    public Length? Clearance { get; init; }

    /// <summary>Pieces must lie so that straight cuts part them.</summary>
    public bool StraightCuts { get; init; }

    /// <summary>Lay the pieces on sheets by search; null: in rows along bars.</summary>
    public SheetSearch? Sheet { get; init; }

    /// <summary>Who cuts instead of a saw; null: a saw.</summary>
    public HiredCut? Service { get; init; }

    /// <summary>Pieces may lie with the back face up.</summary>
    public bool MayTurnOver { get; init; }
}

/// <summary>A plan and what is wanted of it.</summary>
/// <param name="Results">The plan worked up.</param>
/// <param name="Wanted">What is wanted.</param>
public sealed record StockItem(Results Results, StockWanted Wanted);
