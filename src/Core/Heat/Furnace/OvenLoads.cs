using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How pieces stand in the oven.</summary>
/// <param name="AtOnce">Pieces in one load.</param>
/// <param name="Loads">Pieces in each load, as even as can be.</param>
/// <param name="PitchMm">From one piece to the next, mm.</param>
/// <param name="Limit">What sets the number, in words.</param>
/// <param name="Fits">Whether a piece goes into the chamber at all.</param>
public sealed record OvenLoads(int AtOnce, ImmutableArray<int> Loads, double PitchMm, string Limit, bool Fits)
{
    /// <summary>From one piece to the next on the rack, and room left at the walls, mm; common practice.</summary>
    public const double UsualPitchMm = 30, WallMm = 15;

    /// <summary>Sorts pieces into loads. Pieces stand on edge side by side across the chamber.</summary>
    /// <param name="oven">The oven.</param>
    /// <param name="length">Length of the piece.</param>
    /// <param name="height">Height of the piece.</param>
    /// <param name="thickness">Thickness of the piece.</param>
    /// <param name="pieces">How many there are.</param>
    public static OvenLoads Of(Oven? oven, Length length, Length height, Length thickness, int pieces)
    {
        if (oven?.Width is not { } width) return new(1, [.. Enumerable.Repeat(1, pieces)], UsualPitchMm, oven is null ? "one at a time in a forge" : "the oven's size is not in the shop file", true);
        var fits = (oven.Depth is not { } depth || length.Mm <= depth.Mm) && (oven.Height is not { } high || height.Mm <= high.Mm);
        if (!fits) return new(0, [], UsualPitchMm, $"{Shown.Both(length)} long and {Shown.Both(height)} high: it does not go into the chamber", false);
        var free = width.Mm - (2 * WallMm) - thickness.Mm;
        var most = free < 0 ? 1 : (int)Math.Floor((free / UsualPitchMm) + 1e-9) + 1;
        var loads = (pieces + most - 1) / most;
        return new(most, [.. Enumerable.Range(0, loads).Select(i => (pieces / loads) + (i < pieces % loads ? 1 : 0))], UsualPitchMm, $"on edge, {UsualPitchMm:0} mm from one to the next, {WallMm:0} mm free at the walls ({SourceTag.CommonPractice})", true);
    }
}
