using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The shortest ways of laying unlike pieces one behind the other in a bar of one width: exact dynamic programming over how many of each lie already, and over the last piece, how it lies and how high.</summary>
[Formula("shortest lane of unlike pieces on a bar of one width, mm", "bellman-1957", "Pieces along the bar, turned end for end and if allowed over, that can be slid apart along the bar and do not pass each other; heights on a grid with both ends; up to 12 patterns, 20 000 fillings looked at; more by the best few thousand, and then said not to be proven")]
public sealed class MixedLane
{
    /// <summary>Most patterns laid in one lane.</summary>
    public const int MostPatterns = 24;

    /// <summary>Most different fillings worked out.</summary>
    public const int MostFillings = 20_000;

    private const int KeptWhenTooMany = 1500;
    private const int MostStates = 200;
    private const double MostWork = 6e8;

    private readonly ImmutableArray<LanePiece> _pieces;
    private readonly double _widthMm;
    private readonly double _clearanceMm;
    private readonly double _shareOfRoom;
    private readonly MixedSteps _steps;

    private MixedLane(ImmutableArray<LanePiece> pieces, double widthMm, double clearanceMm, double shareOfRoom)
    {
        (_pieces, _widthMm, _clearanceMm, _shareOfRoom) = (pieces, widthMm, clearanceMm, shareOfRoom);

        // two that would pass each other are no longer one lane: heights stop short of that
        var lowest = 0.9 * pieces.Min(p => p.HeightMm);
        var slacks = pieces.Select(p => shareOfRoom * Math.Clamp(widthMm - p.HeightMm, 0, lowest)).ToArray();
        var lies = pieces.Sum(p => p.Flanks.Length);
        var most = Math.Min(pieces.Length == 1 ? 201 : 25, Math.Max(3, MostStates / lies));
        var heights = slacks.Max() <= 1e-9 ? 1 : Math.Min(most, (int)Math.Ceiling((slacks.Max() / Lane.GridMm) - 1e-9) + 1);
        _steps = MixedSteps.Of(pieces, slacks, heights, clearanceMm);
    }

    /// <summary>A lane, or null when a piece is higher than it.</summary>
    /// <param name="pieces">The patterns.</param>
    /// <param name="widthMm">Width of the lane, mm: the bar less what is left at its edges.</param>
    /// <param name="clearanceMm">Clearance between two pieces, mm; 0: they may touch.</param>
    public static MixedLane? Of(ImmutableArray<LanePiece> pieces, double widthMm, double clearanceMm)
    {
        if (pieces.IsEmpty || pieces.Length > MostPatterns || pieces.Any(p => p.HeightMm > widthMm + 1e-9)) return null;
        var off = pieces.Max(p => p.OffMm);
        return new MixedLane(pieces, widthMm, clearanceMm > 0 ? clearanceMm + (off > 0 ? (2 * off) + 1e-4 : 1e-7) : 2 * off, 1);
    }

    /// <summary>All fillings no longer than a length; null when they are too many to look at.</summary>
    /// <param name="most">Most pieces of each pattern.</param>
    /// <param name="longestMm">Length of the lane, mm.</param>
    /// <param name="mostTogether">Most different patterns in one lane.</param>
    /// <param name="isLast">Whether they must be looked at however many there are.</param>
    public LaneFillings? Fill(ImmutableArray<int> most, double longestMm, int mostTogether = MostPatterns, bool isLast = false)
        => LaneFillings.Of(_pieces, _steps, most, longestMm, mostTogether, isLast ? int.MaxValue : MostFillings, isLast ? double.PositiveInfinity : MostWork, keep: null);

    /// <summary>The shortest layout of so many of each.</summary>
    public LaneLayout Lay(ImmutableArray<int> counts) => Lay(counts, Fill(counts, double.PositiveInfinity));

    /// <summary>The same, where the fillings are worked out already.</summary>
    public LaneLayout Lay(ImmutableArray<int> counts, LaneFillings? known)
    {
        if (known?.Find(counts) is { } found)
        {
            var best = known.Lay(found);
            if (best.IsShortest) return best;

            // neighbours are not enough here: with less room across they may be
            foreach (var share in _shareOfRoom < 1 ? [] : new[] { 0.5, 0 })
            {
                var other = new MixedLane(_pieces, _widthMm, _clearanceMm, share).Lay(counts);
                if (other.LengthMm < best.LengthMm - 1e-9) best = other with { AtLeastMm = best.AtLeastMm };
            }

            return best;
        }

        // too many orders to look at them all: the most promising, and the steel as bound
        var area = 0.0;
        for (var i = 0; i < counts.Length; i++) area += counts[i] * Math.Abs(Moments.Of(_pieces[i].Outline).AreaMm2);
        var some = LaneFillings.Of(_pieces, _steps, counts, double.PositiveInfinity, MostPatterns, int.MaxValue, double.PositiveInfinity, keep: (KeptWhenTooMany, _widthMm))!;
        return some.Lay(some.Find(counts)!) with { AtLeastMm = area / _widthMm };
    }
}
