using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How the piece is to be hardened and tempered, as far as the maker says it.</summary>
public sealed record HeatWish
{
    /// <summary>Temperature of the last temper; null when not said.</summary>
    public Temperature? Temper { get; init; }

    /// <summary>Hardening temperature; null: the middle of the steel's window.</summary>
    public Temperature? Harden { get; init; }

    /// <summary>Time at heat, min; null: as long as the steel's file says.</summary>
    public double? SoakMinutes { get; init; }

    /// <summary>What it is quenched in; null: the shop's.</summary>
    public Quenchant? Quenchant { get; init; }

    /// <summary>Cooled on to this before the temper; null when it is not.</summary>
    public Temperature? SubZero { get; init; }

    /// <summary>Time at heat of one temper, min; null: 2 h.</summary>
    public double? HoldMinutes { get; init; }

    /// <summary>Number of tempers; null: as the steel's file says.</summary>
    public int? Tempers { get; init; }
}
