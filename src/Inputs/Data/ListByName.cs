using System.Collections.Immutable;

namespace Tangwright.Inputs;

/// <summary>Things from data files, found by name or by another name; capitals do not matter.</summary>
/// <typeparam name="T">The thing.</typeparam>
public abstract class ListByName<T>
    where T : class
{
    private readonly Dictionary<string, T> _byName = new(StringComparer.OrdinalIgnoreCase);

    private protected ListByName(IEnumerable<T> things, Func<T, string> name, Func<T, ImmutableArray<string>> otherNames)
    {
        All = [.. things];
        foreach (var t in All) _byName.TryAdd(name(t), t);
        foreach (var t in All)
        {
            foreach (var other in otherNames(t)) _byName.TryAdd(other, t);
        }
    }

    /// <summary>All of them.</summary>
    public ImmutableArray<T> All { get; }

    /// <summary>The one of a name; null when there is none.</summary>
    public T? Find(string name) => _byName.GetValueOrDefault(name.Trim());

    /// <summary>The known name nearest to one that is not known; null when none is near.</summary>
    public string? Nearest(string name) => KeyTable.Nearest(name.Trim(), _byName.Keys);
}
