using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One of several searches for a shorter strip that tell each other only their best.</summary>
/// <remarks>Explore, then compress, after Gardeyn, Vanden Berghe and Wauters 2025, arXiv:2509.13329, section 9.</remarks>
internal sealed class StripWorker
{
    private const double SmallStep = 0.001;
    private const double GreatStep = 0.01;
    private const double FirstStep = 0.08;
    private const int QuickSweeps = 60;
    private const int AtOnceSweeps = 8;
    private const int MostIdle = 1000;
    private const double GreatShare = 0.75;

    private readonly StripTask _task;
    private readonly LayoutState _state;
    private readonly Separation _separation;
    private readonly ChanceHolder _chance;
    private readonly List<PlacesKept> _pool = [];
    private readonly int[] _great;
    private long _worked;
    private readonly IEnumerator<bool> _exploring;
    private readonly IEnumerator<bool> _compressing;

    /// <summary>A search of its own lots.</summary>
    public StripWorker(StripTask task, int number, ulong seed)
    {
        _task = task;
        _state = new LayoutState(task.Fields, task.Kinds, task.Room);
        (_separation, _chance) = (new Separation(_state), new ChanceHolder(SeededChance.OfTrial(seed, number)));
        _great = Great(task);
        (_exploring, _compressing) = (Explore().GetEnumerator(), Compress().GetEnumerator());
    }

    /// <summary>The shortest clear layout it found that was not yet told; null when none.</summary>
    public PlacesKept? Found { get; private set; }

    /// <summary>Placements weighed up.</summary>
    public long Work => _state.Work;

    /// <summary>Works on until so much work is done.</summary>
    public void Go(long until, CancellationToken stop)
    {
        var way = _task.IsCompressing ? _compressing : _exploring;
        for (var idle = 0; idle < MostIdle && _state.Work < until && !stop.IsCancellationRequested && way.MoveNext();)
        {
            idle = _state.Work == _worked ? idle + 1 : 0;
            _worked = _state.Work;
        }
    }

    /// <summary>Forgets what it told.</summary>
    public void Told() => Found = null;

    private double Best => Found is { } f ? Math.Min(f.Length, _task.Best.Length) : _task.Best.Length;

    private void Load() => _state.Take(Found is { } f && f.Length < _task.Best.Length ? f : _task.Best);

    private IEnumerable<bool> Explore()
    {
        var step = FirstStep;
        Load();
        Shorten(step);
        while (true)
        {
            var (target, overtaken) = (_state.Length, false);
            foreach (var _ in _separation.Run(200, 3, _chance))
            {
                yield return true;
                overtaken = _task.Best.Length < target - (1e-9 * target);
                if (overtaken) break;
            }

            if (overtaken)
            {
                // another was quicker: go on from its layout or from this unfinished one
                if (_chance.Chance.NextShare() < 0.5) Load();
                _pool.Clear();
                Shorten(SmallStep);
            }
            else if (_separation.IsClear)
            {
                Tell();
                step = NextStep(step);
                _pool.Clear();
                Shorten(step);
            }
            else if (step > SmallStep)
            {
                step = step > GreatStep ? GreatStep : SmallStep;
                Load();
                Shorten(step);
            }
            else
            {
                Pool();
                Disturb();
            }

            yield return true;
        }
    }

    private IEnumerable<bool> Compress()
    {
        const double First = 0.0005, Last = 0.00001;
        while (true)
        {
            Load();
            var ratio = First + ((Last - First) * Math.Clamp(_task.Compressed, 0, 1));
            Shorten(ratio);
            var target = _state.Length;
            foreach (var _ in _separation.Run(100, 5, _chance))
            {
                yield return true;
                if (_task.Best.Length < target) break;
            }

            if (_separation.IsClear) Tell();
            yield return true;
        }
    }

    private double NextStep(double step) => _separation.Sweeps switch
    {
        < AtOnceSweeps => Math.Min(2 * step, FirstStep),
        < QuickSweeps => Math.Min(2 * step, GreatStep),
        _ => SmallStep,
    };

    private void Shorten(double share)
    {
        var length = Math.Max(_task.LeastLength, _state.Room.Usable(Math.Min(_state.Length, Best) * (1 - share)));
        _state.Shrink(length, _chance.Chance.NextShare() * length);
    }

    private void Tell()
    {
        var used = 0.0;
        for (var i = 0; i < _state.Count; i++) used = Math.Max(used, _state.Xs[i] + _state.Ways[i].Width);
        _state.Length = Math.Max(used, _task.LeastLength);
        if (_state.Length < Best) Found = new PlacesKept(_state.Count).Keep(_state, 0);
    }

    private void Pool()
    {
        var kept = new PlacesKept(_state.Count).Keep(_state, _state.Total());
        var at = _pool.FindIndex(p => p.Loss > kept.Loss);
        _pool.Insert(at < 0 ? _pool.Count : at, kept);
    }

    private void Disturb()
    {
        var far = 0.25 * Math.Abs(Normal());
        _state.Take(_pool[Math.Min(_pool.Count - 1, (int)(far * _pool.Count))]);
        if (_great.Length < 2) return;
        var (a, b) = (0, 0);
        for (var k = 0; k < 20 && (a == b || _state.Kinds[a] == _state.Kinds[b]); k++) (a, b) = (OneOf(_great), OneOf(_great));
        if (a == b) return;
        var (atA, atB) = ((_state.Xs[a], _state.Ys[a]), (_state.Xs[b], _state.Ys[b]));
        Follow(a, atA, atB);
        Follow(b, atB, atA);
        PutAt(a, atB);
        PutAt(b, atA);
        _state.ReckonAll();
    }

    /// <summary>Small pieces whose middle the great one will cover go where it was.</summary>
    private void Follow(int great, (double X, double Y) from, (double X, double Y) to)
    {
        var way = _state.Ways[great];
        for (var i = 0; i < _state.Count; i++)
        {
            if (i == great || _great.Contains(i)) continue;
            var (cx, cy) = (_state.Xs[i] + (0.5 * _state.Ways[i].Width), _state.Ys[i] + (0.5 * _state.Ways[i].Height));
            if (cx < to.X || cx > to.X + way.Width || cy < to.Y || cy > to.Y + way.Height) continue;
            PutAt(i, (_state.Xs[i] + from.X - to.X, _state.Ys[i] + from.Y - to.Y));
        }
    }

    private void PutAt(int i, (double X, double Y) at)
    {
        var way = _state.Ways[i];
        _state.Put(i, way, _state.Room.Fit(at.X, way.Width, _state.Length), Math.Clamp(at.Y, 0, _state.Width - way.Height));
    }

    private int OneOf(int[] list) => list[(int)(_chance.Chance.NextShare() * list.Length)];

    private double Normal()
    {
        var (u, v) = (1 - _chance.Chance.NextShare(), _chance.Chance.NextShare());
        return Math.Sqrt(-2 * Math.Log(u)) * Math.Cos(2 * Math.PI * v);
    }

    private static int[] Great(StripTask task)
    {
        double Size(int i) => Math.Pow(task.Fields.Ways[task.Kinds[i]][0].RootHull, 4);
        var order = Enumerable.Range(0, task.Kinds.Length).OrderByDescending(Size).ToArray();
        var (whole, sum, count) = (order.Sum(Size), 0.0, 0);
        while (count < order.Length && sum < GreatShare * whole) sum += Size(order[count++]);
        return order[..count];
    }
}
