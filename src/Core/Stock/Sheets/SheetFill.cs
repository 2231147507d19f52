using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A pattern to be laid on sheets.</summary>
/// <param name="Outline">The true outline, plan's axes.</param>
/// <param name="Count">How many.</param>
/// <param name="MayTurnOver">It may lie with the back face up.</param>
/// <param name="MayLieAcross">It may lie across the sheet, where the grain does not matter.</param>
public sealed record SheetPattern(Path Outline, int Count, bool MayTurnOver, bool MayLieAcross);

/// <summary>A bar or sheet with pieces of several patterns.</summary>
/// <param name="Count">How many are cut so.</param>
/// <param name="Number">Which it is: 0 the first of those there are, and so on.</param>
/// <param name="Places">Where the pieces lie: pattern, lie, along and up, mm from the corner of the room less its margins.</param>
/// <param name="UsedMm">Length used, mm.</param>
/// <param name="LeastGapMm">Least gap between two pieces, checked on the true outlines, mm; looked for up to twice the clearance.</param>
public sealed record FilledSheet(int Count, int Number, ImmutableArray<(int Pattern, LanePlace Place)> Places, double UsedMm, double LeastGapMm);

/// <summary>Lays patterns on bars or sheets of one width by search, never nearer than a clearance, and looks at every layout again on the true outlines.</summary>
public static class SheetFill
{
    /// <summary>Most pieces of unlike patterns laid out at once.</summary>
    public const int MostUnlike = 300;

    /// <summary>More pieces of one pattern than this: one sheet is filled as well as can be, the others like it.</summary>
    public const int MostAtOnce = 150;

    private const double FullerThanAny = 0.97;

    /// <summary>Lays them; every layout given uses less steel than the one before.</summary>
    /// <param name="patterns">The patterns; each fits the steel.</param>
    /// <param name="stock">The steel, less its margins.</param>
    /// <param name="clearanceMm">Clearance, mm, more than 0.</param>
    /// <param name="effort">How long to search.</param>
    /// <param name="stop">Stops it; the best so far is kept.</param>
    public static IEnumerable<ImmutableArray<FilledSheet>> Run(ImmutableArray<SheetPattern> patterns, StripStock stock, double clearanceMm, SearchEffort effort, CancellationToken stop = default)
    {
        var grown = patterns.Select(p => GrownOutline.Of(p.Outline, clearanceMm)).ToImmutableArray();
        var reach = grown.Min(g => g.ReachMm);
        var room = stock with { WidthMm = stock.WidthMm + (2 * reach), FirstMm = [.. stock.FirstMm.Select(l => l + (2 * reach))], ThenMm = stock.ThenMm + (2 * reach) };
        SheetPiece Piece(int i, int count) => new(grown[i].Corners, count, [.. Turns(patterns[i])]);
        if (patterns.Sum(p => p.Count) <= (patterns.Length == 1 ? MostAtOnce : MostUnlike) || patterns.Length > 1)
        {
            foreach (var layout in StripSearch.Run([.. patterns.Select((p, i) => Piece(i, p.Count))], room, effort, stop)) yield return Checked(layout, patterns, grown, clearanceMm);
            yield break;
        }

        // very many alike: fill one sheet, cut the others like it, and search again for what is left
        var half = effort with { Work = effort.Work / 2, ClockShare = effort.ClockShare is { } clock ? () => 2 * clock() : null };
        var area = PlanarKernels.Area(grown[0].Corners.AsSpan());
        var many = (int)Math.Clamp(FullerThanAny * room.WidthMm * (double.IsFinite(room.ThenMm) ? room.ThenMm : 4000) / area, 1, Math.Min(MostAtOnce, patterns[0].Count));
        var full = default(FilledSheet);
        foreach (var layout in StripSearch.Run([Piece(0, many)], room with { FirstMm = [room.ThenMm], ThenMm = double.PositiveInfinity }, half, stop))
        {
            var sheet = Checked(layout, patterns, grown, clearanceMm)[0];
            if (full is null || sheet.Places.Length > full.Places.Length) full = sheet;
        }

        var (alike, rest) = (patterns[0].Count / full!.Places.Length, patterns[0].Count % full.Places.Length);
        full = full with { Count = alike };
        if (rest == 0)
        {
            yield return [full];
            yield break;
        }

        var again = effort with { Work = effort.Work / 2, ClockShare = effort.ClockShare is { } c ? () => (2 * c()) - 1 : null };
        foreach (var layout in StripSearch.Run([Piece(0, rest)], room with { FirstMm = [] }, again, stop))
        {
            yield return [full, .. Checked(layout, patterns, grown, clearanceMm).Select(s => s with { Number = s.Number + alike })];
        }
    }

    private static IEnumerable<PieceTurn> Turns(SheetPattern p)
        => from over in p.MayTurnOver ? new[] { false, true } : [false]
           from degrees in p.MayLieAcross ? new[] { 0, 180, 90, 270 } : [0, 180]
           select new PieceTurn(degrees, over);

    private static Lie LieOf(PieceTurn turn) => (turn.IsOver, turn.Degrees) switch
    {
        (false, 0) => Lie.Plain,
        (false, 180) => Lie.Turned,
        (false, 90) => Lie.Across,
        (false, _) => Lie.AcrossTurned,
        (true, 0) => Lie.Over,
        (true, 180) => Lie.OverTurned,
        (true, 90) => Lie.OverAcross,
        _ => Lie.OverAcrossTurned,
    };

    private static ImmutableArray<FilledSheet> Checked(StripLayout layout, ImmutableArray<SheetPattern> patterns, ImmutableArray<GrownOutline> grown, double clearanceMm)
    {
        var reach = grown.Min(g => g.ReachMm);
        return
        [
            .. layout.Places.GroupBy(p => p.Bar).OrderBy(g => g.Key).Select(g =>
            {
                var places = g.OrderBy(p => p.AlongMm).ThenBy(p => p.UpMm).Select(Place).ToImmutableArray();
                var used = places.Max(p => p.Place.AlongMm + Lies.Size(p.Place.Lie, patterns[p.Pattern].Outline.Bounds).Along);
                var gap = LeastGapOf(patterns, places, clearanceMm);
                if (gap < clearanceMm) throw new InvalidOperationException($"pieces came out {clearanceMm - gap} mm too near");
                if (places.Any(p => p.Place.AlongMm < -1e-6 || p.Place.UpMm < -1e-6 || p.Place.UpMm + Lies.Size(p.Place.Lie, patterns[p.Pattern].Outline.Bounds).Up > layout.WidthMm - (2 * reach) + 1e-6) || used > layout.UsedMm[g.Key] - (2 * reach) + 1e-6) throw new InvalidOperationException("a piece stands out of its sheet");
                return new FilledSheet(1, g.Key, places, used, gap);
            }),
        ];

        // the grown piece's box stands out beyond the true one's by a hair more or less than on the other sides
        (int Pattern, LanePlace Place) Place(SheetPlace p)
        {
            var turn = p.Turn.Transform;
            var (inner, outer) = (Turned(patterns[p.Piece].Outline.Bounds, turn), Box.Around([.. grown[p.Piece].Corners.Select(turn.Map)]));
            return (p.Piece, new LanePlace(LieOf(p.Turn), p.AlongMm + inner.MinX - outer.MinX - reach, p.UpMm + inner.MinY - outer.MinY - reach));
        }
    }

    private static Box Turned(Box b, Transform turn) => Box.Around(turn.Map(new Point(b.MinX, b.MinY)), turn.Map(new Point(b.MaxX, b.MaxY)));

    /// <summary>Least gap between any two pieces on the true outlines, mm; 0 when two overlap; looked for up to twice the clearance.</summary>
    public static double LeastGapOf(ImmutableArray<SheetPattern> patterns, ImmutableArray<(int Pattern, LanePlace Place)> places, double clearanceMm)
    {
        var least = 2 * clearanceMm;
        var paths = places.Select(p => patterns[p.Pattern].Outline.Transformed(Lies.Turn(p.Place.Lie, patterns[p.Pattern].Outline.Bounds).Then(Transform.Shift(new Point(p.Place.AlongMm, p.Place.UpMm))))).ToArray();
        for (var i = 0; i < paths.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (!paths[i].Bounds.Grown(least).Touches(paths[j].Bounds)) continue;
                least = Inside.Of(paths[i], paths[j].Start) || Inside.Of(paths[j], paths[i].Start) ? 0 : Math.Min(least, LeastGap.Of(paths[i], paths[j], least));
            }
        }

        return least;
    }
}
