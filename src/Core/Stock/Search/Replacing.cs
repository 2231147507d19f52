using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Finds one piece a better place: many places tried by lot, the best of them slid to where it is best.</summary>
/// <remarks>Counts and steps after Gardeyn, Vanden Berghe and Wauters 2025, arXiv:2509.13329, section 8.</remarks>
internal sealed class Replacing(LayoutState state)
{
    private const int Anywhere = 50;
    private const int Nearby = 25;
    private const int Kept = 3;
    private const int MostSteps = 300;
    private const double UnlikeShare = 0.05;

    private readonly Tried[] _best = new Tried[Kept];
    private int _found;

    /// <summary>Moves a piece to the best place found; it is never worse off by the weights as they stand.</summary>
    public void Move(int i, ref SeededChance chance)
    {
        _found = 0;
        var now = new Tried(state.Ways[i], state.Xs[i], state.Ys[i], state.Value(i, state.Ways[i], state.Xs[i], state.Ys[i], double.PositiveInfinity));
        Keep(now);
        var ways = state.WaysOf(i);
        for (var k = 0; k < Anywhere; k++)
        {
            var way = ways[Pick(ways.Length, ref chance)];
            var x = state.Room.ByLot(way.Width, state.Length, ref chance);
            if (double.IsNaN(x)) continue;
            Try(i, way, x, chance.NextShare() * (state.Width - way.Height));
        }

        for (var k = 0; k < Nearby; k++)
        {
            var way = ways[Pick(ways.Length, ref chance)];
            if (way.Width > state.Length) continue;
            var x = now.X + ((chance.NextShare() - 0.5) * now.Way.Width);
            var y = now.Y + ((chance.NextShare() - 0.5) * now.Way.Height);
            Try(i, way, state.Room.Fit(x, way.Width, state.Length), Math.Clamp(y, 0, state.Width - way.Height));
        }

        var best = default(Tried);
        for (var k = 0; k < _found; k++)
        {
            var slid = Slide(i, _best[k], 0.25, 0.02, ref chance);
            if (k == 0 || slid.Value < best.Value) best = slid;
            if (best.Value == 0) break;
        }

        if (best.Value > 0) best = Slide(i, best, 0.01, 0.001, ref chance);
        if (best.Value > now.Value) return;
        state.Put(i, best.Way, best.X, best.Y);
        state.Reckon(i);
    }

    private static int Pick(int count, ref SeededChance chance) => count == 1 ? 0 : (int)(chance.NextShare() * count);

    private void Try(int i, TurnedPiece way, double x, double y)
    {
        var value = state.Value(i, way, x, y, _found < Kept ? double.PositiveInfinity : _best[Kept - 1].Value);
        if (double.IsPositiveInfinity(value)) return;
        Keep(new Tried(way, x, y, value));
    }

    private void Keep(Tried t)
    {
        for (var k = 0; k < _found; k++)
        {
            var near = UnlikeShare * Math.Min(t.Way.Width, t.Way.Height);
            if (_best[k].Way != t.Way || Math.Abs(_best[k].X - t.X) > near || Math.Abs(_best[k].Y - t.Y) > near) continue;
            if (_best[k].Value <= t.Value) return;
            for (var m = k + 1; m < _found; m++) _best[m - 1] = _best[m];
            _found--;
            break;
        }

        var at = Math.Min(_found, Kept - 1);
        if (_found == Kept && _best[at].Value <= t.Value) return;
        while (at > 0 && _best[at - 1].Value > t.Value)
        {
            _best[at] = _best[at - 1];
            at--;
        }

        _best[at] = t;
        if (_found < Kept) _found++;
    }

    private Tried Slide(int i, Tried t, double fromShare, double toShare, ref SeededChance chance)
    {
        const double Longer = 1.1, Shorter = 0.5;
        var side = Math.Min(t.Way.Width, t.Way.Height);
        var (step, least) = (fromShare * side, toShare * side);
        for (var k = 0; k < MostSteps && step >= least && t.Value > 0; k++)
        {
            var axis = chance.Next() >> 62;
            var (sx, sy) = axis switch
            {
                0 => (step, 0.0),
                1 => (0.0, step),
                2 => (step, step),
                _ => (step, -step),
            };
            var better = Slid(i, t, t.X + sx, t.Y + sy);
            var other = Slid(i, t, t.X - sx, t.Y - sy);
            if (other.Value < better.Value) better = other;
            if (better.Value <= t.Value && (better.X != t.X || better.Y != t.Y))
            {
                t = better;
                step = Math.Min(step * Longer, side);
            }
            else
            {
                step *= Shorter;
            }
        }

        return t;
    }

    private Tried Slid(int i, Tried t, double x, double y)
    {
        (x, y) = (state.Room.Fit(x, t.Way.Width, state.Length), Math.Clamp(y, 0, state.Width - t.Way.Height));
        return new(t.Way, x, y, state.Value(i, t.Way, x, y, Math.BitIncrement(t.Value)));
    }

    private readonly record struct Tried(TurnedPiece Way, double X, double Y, double Value);
}
