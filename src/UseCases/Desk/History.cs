using System.Diagnostics.CodeAnalysis;

namespace Tangwright.UseCases;

/// <summary>What was done and can be undone, and what was undone and can be done again.</summary>
/// <typeparam name="T">What is remembered: the whole of what it was.</typeparam>
internal sealed class History<T>
    where T : class
{
    private const int Most = 200;

    /// <summary>One way through what was done: from how it is now to how it was there, if there is such a place.</summary>
    public delegate bool Way(T now, [NotNullWhen(true)] out T? there);

    private readonly List<T> _done = [];
    private readonly Stack<T> _undone = new();

    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo => _done.Count > 0;

    /// <summary>Whether there is something to do again.</summary>
    public bool CanRedo => _undone.Count > 0;

    /// <summary>Remembers how it was before a change.</summary>
    public void Remember(T before)
    {
        _done.Add(before);
        if (_done.Count > Most) _done.RemoveAt(0);
        _undone.Clear();
    }

    /// <summary>How it was before; what it is now can be done again.</summary>
    public bool Back(T now, [NotNullWhen(true)] out T? before)
    {
        before = _done.Count > 0 ? _done[^1] : null;
        if (before is null) return false;
        _done.RemoveAt(_done.Count - 1);
        _undone.Push(now);
        return true;
    }

    /// <summary>How it was before it was undone.</summary>
    public bool Forward(T now, [NotNullWhen(true)] out T? after)
    {
        if (!_undone.TryPop(out after)) return false;
        _done.Add(now);
        return true;
    }
}
