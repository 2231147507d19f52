namespace Tangwright.Core;

/// <summary>A round over places that is being made shorter: two steps exchanged (a stretch turned round) or up to three places moved elsewhere, looked for among near neighbours only.</summary>
internal sealed class RoundOfPlaces
{
    private const int Neighbours = 8;
    private const double Least = 1e-9;

    private readonly double[,] _steps;
    private readonly int _n;
    private readonly int[][] _near;
    private readonly int[] _order;
    private readonly int[] _place;
    private readonly Queue<int> _ask = new();
    private readonly bool[] _asked;

    /// <summary>A round in a first order.</summary>
    public RoundOfPlaces(double[,] steps, int[] order)
    {
        (_steps, _n, _order) = (steps, order.Length, order);
        _place = new int[_n];
        _asked = new bool[_n];
        for (var k = 0; k < _n; k++) _place[order[k]] = k;
        _near = [.. Enumerable.Range(0, _n).Select(i => Enumerable.Range(0, _n).Where(k => k != i).OrderBy(k => steps[i, k]).Take(Neighbours).ToArray())];
    }

    /// <summary>The order now.</summary>
    public ReadOnlySpan<int> Order => _order;

    /// <summary>Until no small change helps.</summary>
    public void Improve()
    {
        foreach (var i in _order) Ask(i);
        Settle();
    }

    /// <summary>Exchanges two neighbouring stretches at a place of chance, settles, and takes it back when the round has become longer.</summary>
    public void Kick(int times, int stretch)
    {
        var kept = (int[])_order.Clone();
        var seed = 20261125u;
        var longest = Math.Min(stretch, (_n / 2) - 1);
        for (var t = 0; t < times; t++)
        {
            var (at, a, b) = (Next(_n), 1 + Next(longest), 1 + Next(longest));
            var change = Exchange(at, a, b) + Settle();
            if (change <= Least)
            {
                _order.CopyTo(kept, 0);
                continue;
            }

            kept.CopyTo(_order, 0);
            for (var k = 0; k < _n; k++) _place[_order[k]] = k;
        }

        // xorshift of 32 bits (Marsaglia 2003, shifts 13, 17, 5)
        int Next(int below)
        {
            seed ^= seed << 13;
            seed ^= seed >> 17;
            seed ^= seed << 5;
            return (int)(seed % (uint)below);
        }
    }

    private int At(int k) => _order[k >= _n ? k - _n : k < 0 ? k + _n : k];

    private void Ask(int i)
    {
        if (_asked[i]) return;
        _asked[i] = true;
        _ask.Enqueue(i);
    }

    private double Exchange(int at, int a, int b)
    {
        var (p, q, r, s, t, u) = (At(at), At(Wrap(at + 1)), At(Wrap(at + a)), At(Wrap(at + a + 1)), At(Wrap(at + a + b)), At(Wrap(at + a + b + 1)));
        var moved = new int[a + b];
        for (var k = 0; k < b; k++) moved[k] = At(Wrap(at + a + 1 + k));
        for (var k = 0; k < a; k++) moved[b + k] = At(Wrap(at + 1 + k));
        for (var k = 0; k < moved.Length; k++) Put(Wrap(at + 1 + k), moved[k]);
        foreach (var i in (ReadOnlySpan<int>)[p, q, r, s, t, u]) Ask(i);
        return _steps[p, s] + _steps[t, q] + _steps[r, u] - _steps[p, q] - _steps[r, s] - _steps[t, u];
    }

    private int Wrap(int k) => k >= _n ? k - _n : k;

    private void Put(int k, int i)
    {
        _order[k] = i;
        _place[i] = k;
    }

    /// <summary>Change of the round's length.</summary>
    private double Settle()
    {
        var change = 0.0;
        while (_ask.TryDequeue(out var i))
        {
            _asked[i] = false;
            while (Turned(i, ref change) || Moved(i, ref change))
            {
            }
        }

        return change;
    }

    // steps a–b and c–d become a–c and b–d
    private bool Turned(int a, ref double change)
    {
        foreach (var way in (ReadOnlySpan<int>)[1, -1])
        {
            var b = At(_place[a] + way);
            foreach (var c in _near[a])
            {
                var gain = _steps[a, b] - _steps[a, c];
                if (gain <= Least) break;
                var d = At(_place[c] + way);
                gain += _steps[c, d] - _steps[b, d];
                if (gain <= Least) continue;
                if (way > 0) Turn(_place[b], _place[c]);
                else Turn(_place[c], _place[b]);
                change -= gain;
                foreach (var i in (ReadOnlySpan<int>)[a, b, c, d]) Ask(i);
                return true;
            }
        }

        return false;
    }

    // turns round the stretch from one position to another, or what is outside it when that is shorter: the same round
    private void Turn(int from, int to)
    {
        var inside = Wrap(to - from + 1 + (to < from ? _n : 0));
        if (inside == 0) inside = _n;
        if (2 * inside > _n) (from, to, inside) = (Wrap(to + 1), from == 0 ? _n - 1 : from - 1, _n - inside);
        for (var k = 0; k < inside / 2; k++)
        {
            var (i, j) = (_order[from], _order[to]);
            Put(from, j);
            Put(to, i);
            from = Wrap(from + 1);
            to = to == 0 ? _n - 1 : to - 1;
        }
    }

    // one to three places beginning with a, going either way, put between a near neighbour and the one beside it
    private bool Moved(int a, ref double change)
    {
        foreach (var way in (ReadOnlySpan<int>)[1, -1])
        {
            var before = At(_place[a] - way);
            var last = a;
            for (var count = 1; count <= 3; count++, last = At(_place[last] + way))
            {
                var after = At(_place[last] + way);
                if (after == before) break;
                var freed = _steps[before, a] + _steps[last, after] - _steps[before, after];
                foreach (var c in _near[a])
                {
                    var gain = freed - _steps[a, c];
                    if (gain <= Least) break;
                    if (Within(c, a, way, count)) continue;
                    foreach (var side in (ReadOnlySpan<int>)[1, -1])
                    {
                        var d = At(_place[c] + side);
                        if (Within(d, a, way, count)) continue;
                        var whole = gain + _steps[c, d] - _steps[last, d];
                        if (whole <= Least) continue;
                        Move(a, last, way, c, side);
                        change -= whole;
                        foreach (var i in (ReadOnlySpan<int>)[a, last, before, after, c, d]) Ask(i);
                        return true;
                    }
                }
            }
        }

        return false;
    }

    private bool Within(int i, int a, int way, int count)
    {
        var k = (_place[i] - _place[a]) * way;
        return (k < 0 ? k + _n : k) < count;
    }

    // a..last taken out and put between c and the one at its side, a next to c: two turns or three
    private void Move(int a, int last, int way, int c, int side)
    {
        var d = At(_place[c] + side);
        var (first, end) = way > 0 ? (a, last) : (last, a);
        var length = Wrap(_place[end] - _place[first] + (_place[end] < _place[first] ? _n : 0)) + 1;
        Span<int> kept = stackalloc int[3];
        for (var k = 0; k < length; k++) kept[k] = At(Wrap(_place[first] + k));

        // close the gap by shifting what lies between it and its new place
        var target = side > 0 ? c : d;
        var ahead = _place[target] - _place[end];
        if (ahead < 0) ahead += _n;
        var behind = _n - length - ahead;
        int at;
        if (ahead <= behind)
        {
            at = _place[first];
            for (var k = 0; k < ahead; k++, at = Wrap(at + 1)) Put(at, At(Wrap(at + length)));
        }
        else
        {
            var to = _place[end];
            for (var k = 0; k < behind; k++, to = to == 0 ? _n - 1 : to - 1) Put(to, At(to - length));
            at = to - length + 1;
            if (at < 0) at += _n;
        }

        // in the round, target comes just before the new place; a lies next to c
        var aFirst = side > 0;
        var straight = (kept[0] == a) == aFirst;
        for (var k = 0; k < length; k++, at = Wrap(at + 1)) Put(at, straight ? kept[k] : kept[length - 1 - k]);
    }
}
