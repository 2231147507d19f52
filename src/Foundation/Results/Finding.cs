using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>How grave a finding is. The three words are those of the open standard SARIF 2.1.0 (OASIS), §3.27.10.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Risky: look at it before cutting steel.</summary>
    Warning,

    /// <summary>The piece cannot be made, or will not hold, as planned.</summary>
    Error,
}

/// <summary>One thing that is wrong or risky about a plan, as data.</summary>
/// <param name="Code">Stable code, room and trouble: <c>hole.web-to-outline</c>.</param>
/// <param name="Severity">How grave.</param>
/// <param name="Where">The part of the plan in the maker's words: "hole L1", "outline".</param>
/// <param name="Place">The spot on the piece, plan's axes, mm; null when it has none.</param>
/// <param name="Message">One short sentence: what is wrong.</param>
/// <param name="Found">What was found, with unit: "6.21 mm (0.244 in)".</param>
/// <param name="Limit">The limit it was held against, with unit.</param>
/// <param name="Source">Where the limit comes from: a published source or "common practice".</param>
/// <param name="Remedy">The smallest change that would pass.</param>
/// <param name="AssumedShop">Whether it rests on the built-in shop, not on the maker's own file.</param>
public sealed record Finding(
    string Code,
    Severity Severity,
    string Where,
    Point? Place,
    string Message,
    string Found,
    string Limit,
    string Source,
    string Remedy,
    bool AssumedShop = false)
{
    /// <summary>Ways out that can be made for the maker, the best first; none when the remedy needs a hand or a head.</summary>
    public ImmutableArray<RemedyWay> Ways { get; init; } = [];
}

/// <summary>A mistake in a file or a request that stops the work, with its place and what to do.</summary>
/// <param name="File">Name of the file as the person gave it.</param>
/// <param name="Line">Line, from 1; 0 when the whole file is meant.</param>
/// <param name="Column">Column, from 1; 0 when the whole line is meant.</param>
/// <param name="LineText">The line itself, or empty.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Remedy">What to write or do instead.</param>
public sealed record Fault(string File, int Line, int Column, string LineText, string Message, string Remedy)
{
    /// <summary>A fault of a whole file.</summary>
    public static Fault OfFile(string file, string message, string remedy) => new(file, 0, 0, "", message, remedy);
}

/// <summary>A value, or the faults that kept it from being read.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
public sealed class Checked<T>
    where T : class
{
    private readonly T? _value;

    private Checked(T? value, ImmutableArray<Fault> faults)
    {
        _value = value;
        Faults = faults;
    }

    /// <summary>The faults; empty when the value is good.</summary>
    public ImmutableArray<Fault> Faults { get; }

    /// <summary>Whether there is a value.</summary>
    public bool IsGood => _value is not null;

    /// <summary>The value. Asking for it when there are faults is a bug.</summary>
    public T Value => _value ?? throw new InvalidOperationException("no value: " + string.Join("; ", Faults));

    /// <summary>A good value.</summary>
    public static Checked<T> Good(T value) => new(value, []);

    /// <summary>Faults instead of a value; at least one.</summary>
    public static Checked<T> Bad(params IEnumerable<Fault> faults) => new(null, [.. faults]);

    /// <summary>What comes of the value, or the same faults.</summary>
    public Checked<TOut> Then<TOut>(Func<T, Checked<TOut>> next)
        where TOut : class
        => _value is null ? Checked<TOut>.Bad(Faults) : next(_value);
}
