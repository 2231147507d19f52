using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Cuts of one saw that were chosen.</summary>
/// <param name="Through">Through cuts in order.</param>
/// <param name="Wedges">Pockets taken out after them.</param>
/// <param name="Minutes">Saw and grinder together, min.</param>
/// <param name="SawMinutes">Saw, min.</param>
/// <param name="Refused">What the saw could not do, in words; empty when nothing was in the way.</param>
internal sealed record ChosenCuts(ImmutableArray<SupportCut> Through, ImmutableArray<PocketWedge> Wedges, double Minutes, double SawMinutes, string Refused);

/// <summary>Chooses through cuts and pockets of one saw so that saw and grinder together take least.</summary>
internal sealed class RoughCutSearch
{
    /// <summary>Time for a relief hole: mark, punch, drill; min, common practice.</summary>
    public const double ReliefMinutes = 2;

    private const int MostPockets = 3;
    private const int MostDropped = 40;
    private const double LeastCutMm2 = 4;

    private readonly ImmutableArray<Point> _blank;
    private readonly GrownHull _hull;
    private readonly SawLimits _limits;
    private readonly double _minutesPerMm2;
    private readonly double _pieceMm2;
    private readonly double _thicknessMm;
    private readonly double _mostOff;

    public RoughCutSearch(ImmutableArray<Point> blank, GrownHull hull, SawLimits limits, double minutesPerMm2, double pieceMm2, double thicknessMm)
    {
        (_blank, _hull, _limits, _minutesPerMm2, _pieceMm2, _thicknessMm) = (blank, hull, limits, minutesPerMm2, pieceMm2, thicknessMm);
        _mostOff = SawPractice.MostOffSquareDegrees(limits.Saw);
    }

    /// <summary>The best cuts.</summary>
    /// <param name="pockets">Pockets of the piece.</param>
    /// <param name="keepMm">How far the apex of a wedge keeps off, mm.</param>
    /// <param name="wanted">How many saw cuts; null: as many as pay.</param>
    public ChosenCuts Of(ImmutableArray<Pocket> pockets, double keepMm, int? wanted)
    {
        var candidates = _hull.Candidates(mostOffSquareDegrees: _mostOff);
        candidates = [.. candidates.Where(c => ConvexClip.AreaMm2(ConvexClip.Beyond(_blank, c.Normal, c.OffsetMm).AsSpan()) > LeastCutMm2)];
        var wedges = Worthwhile(pockets, keepMm, _blank);
        ChosenCuts? best = null;
        for (var set = 0; set < 1 << wedges.Length; set++)
        {
            ImmutableArray<PocketWedge> some = [.. wedges.Where((_, i) => (set & (1 << i)) != 0)];
            if (Disjoint(some) && With(some, candidates, wanted) is { } found && (best is null || Better(found, best, wanted))) best = found;
        }

        // or: pockets taken out of what the best through cuts leave
        if (!SawPractice.CanStopInside(_limits.Saw.Kind) || With([], candidates, wanted is null ? null : Math.Max(0, wanted.Value - 2)) is not { } through) return best!;
        var piece = Left(through.Through);
        foreach (var wedge in Worthwhile(pockets, keepMm, piece))
        {
            if (Disjoint(through.Wedges.Add(wedge)) && Done(through.Through, through.Wedges.Add(wedge), through.Refused) is { } more && Better(more, through, wanted)) through = more;
        }

        return best is null || Better(through, best, wanted) ? through : best;
    }

    private ImmutableArray<Point> Left(ImmutableArray<SupportCut> cuts) => cuts.Aggregate(_blank, (p, c) => ConvexClip.Beyond(p, -c.Normal, -c.OffsetMm));

    private static int Count(ChosenCuts c) => c.Through.Length + (2 * c.Wedges.Length);

    // the count asked for first, then the time
    private static bool Better(ChosenCuts a, ChosenCuts b, int? wanted)
        => wanted is { } w && Math.Abs(Count(a) - w) != Math.Abs(Count(b) - w) ? Math.Abs(Count(a) - w) < Math.Abs(Count(b) - w) : a.Minutes < b.Minutes - 1e-9;

    private ImmutableArray<PocketWedge> Worthwhile(ImmutableArray<Pocket> pockets, double keepMm, ImmutableArray<Point> piece)
    {
        if (!SawPractice.CanStopInside(_limits.Saw.Kind)) return [];
        var found = ImmutableArray.CreateBuilder<PocketWedge>();
        foreach (var pocket in pockets)
        {
            if (found.Count == MostPockets) break;
            if (pocket.DepthMm < _hull.GrowMm + keepMm || PocketWedge.Best(pocket, piece, _hull.GrowMm, keepMm, w => Refused(w, piece) is null) is not { } wedge) continue;
            if (wedge.AreaMm2 * _minutesPerMm2 > WedgeMinutes(wedge, piece)) found.Add(wedge);
        }

        return found.ToImmutable();
    }

    private static bool Disjoint(ImmutableArray<PocketWedge> wedges)
    {
        for (var i = 0; i < wedges.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (ConvexClip.AreaMm2(wedges[i].In(wedges[j].Waste).AsSpan()) > 1e-6) return false;
            }
        }

        return true;
    }

    private string? Refused(PocketWedge wedge, ImmutableArray<Point> piece)
        => Runs(wedge, piece) is not { } runs
            ? "nothing is left of it"
            : _limits.RefusesInside(piece, wedge.First.Left, runs.First, wedge.Apex) ?? _limits.RefusesInside(piece, -wedge.Second.Left, runs.Second, wedge.Apex);

    /// <summary>Where the two cuts of a wedge begin on the rim of a piece; null when the wedge is gone.</summary>
    internal static (Point First, Point Second)? Runs(PocketWedge wedge, ImmutableArray<Point> piece)
        => End(wedge.Apex, wedge.First, piece) is { } a && End(wedge.Apex, wedge.Second, piece) is { } b ? (a, b) : null;

    private static Point? End(Point apex, Point way, ImmutableArray<Point> piece)
    {
        if (ConvexClip.Chord(piece, way.Left, way.Left.Dot(apex)) is not { } chord) return null;
        var end = way.Dot(chord.From) > way.Dot(chord.To) ? chord.From : chord.To;
        return way.Dot(end - apex) > 0.5 ? end : null;
    }

    private double WedgeMinutes(PocketWedge wedge, ImmutableArray<Point> piece)
        => Runs(wedge, piece) is not { } runs ? 0 : Minutes(runs.First.To(wedge.Apex)) + Minutes(runs.Second.To(wedge.Apex)) + (_limits.Saw.Kind == SawKind.Plasma ? 0 : ReliefMinutes);

    private double Minutes(double cutMm) => SawTime.Minutes(cutMm, _thicknessMm, SawPractice.RateCm2PerMin(_limits.Saw).Rate, SawPractice.SetUpMinutes(_limits.Saw));

    private ChosenCuts? With(ImmutableArray<PocketWedge> wedges, ImmutableArray<SupportCut> candidates, int? wanted)
    {
        ImmutableArray<ImmutableArray<Point>> gone = [.. wedges.Select(w => w.Waste)];
        var through = wanted - (2 * wedges.Length);
        if (through < 0) return null;
        var most = Math.Min(through ?? CutOrder.Most, CutOrder.Most);
        var best = Done([], wedges, "");
        var (free, refused, dropped) = (candidates, "", 0);
        while (most > 0 && free.Length > 0)
        {
            var worth = CutWorth.Of(_blank, gone, free);
            var one = worth.One.Select((a, i) => (a * _minutesPerMm2) - Minutes(worth.ChordMm[i])).ToArray();
            var both = new double[free.Length, free.Length];
            for (var i = 0; i < free.Length; i++)
            {
                for (var j = i + 1; j < free.Length; j++) both[i, j] = worth.Both[i, j] * _minutesPerMm2;
            }

            var cuts = BestCuts.Of(free, one, both, most);
            SupportCut? offending = null;
            for (var k = through is { } asked ? Math.Min(asked, cuts.Most) : 1; k <= cuts.Most && offending is null; k++)
            {
                if (cuts.Cuts(k).IsEmpty) break;
                var set = CutPolish.Of(_hull, _blank, gone, [.. cuts.Cuts(k).Select(i => free[i])], _mostOff);
                set = CutPolish.Squared(_hull, _blank, gone, set);
                var order = CutOrder.Of(_blank, set, _limits.Refuses);
                if (order.Offending is { } no)
                {
                    (offending, refused) = (no, order.Why);
                    break;
                }

                if (Done(order.Cuts, wedges, refused) is { } done && (best is null || Better(done, best, wanted))) best = done;
                if (through is null && k > 1 && cuts.Worth(k) < cuts.Worth(k - 1)) break;
            }

            if (offending is not { } drop || ++dropped > MostDropped) break;
            var nearest = free.MinBy(c => Math.Abs(c.AngleRadians - drop.AngleRadians));
            free = free.Remove(nearest);
        }

        return best is null ? null : best with { Refused = refused };
    }

    // all of it: what is left, how long it takes; null when a wedge cannot be made in what the through cuts leave
    private ChosenCuts? Done(ImmutableArray<SupportCut> through, ImmutableArray<PocketWedge> wedges, string refused)
    {
        var (piece, minutes) = (_blank, 0.0);
        foreach (var c in through)
        {
            if (ConvexClip.Chord(piece, c.Normal, c.OffsetMm) is not { } chord) return null;
            minutes += Minutes(chord.From.To(chord.To));
            piece = ConvexClip.Beyond(piece, -c.Normal, -c.OffsetMm);
        }

        var left = ConvexClip.AreaMm2(piece.AsSpan()) - _pieceMm2;
        foreach (var w in wedges)
        {
            if (Refused(w, piece) is not null) return null;
            var area = ConvexClip.AreaMm2(w.In(piece).AsSpan());
            if (area < LeastCutMm2) return null;
            minutes += WedgeMinutes(w, piece);
            left -= area;
        }

        return new ChosenCuts(through, wedges, minutes + (left * _minutesPerMm2), minutes, refused);
    }
}
