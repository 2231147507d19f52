using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>A value as a person typed it into a field or an option.</summary>
internal static class TypedText
{
    /// <summary>The value; null when nothing was typed, or when it cannot be read, which becomes a fault.</summary>
    /// <param name="faults">Where faults go.</param>
    /// <param name="what">What it is called.</param>
    /// <param name="text">The text.</param>
    /// <param name="read">Reads it.</param>
    public static T? Value<T>(List<Fault> faults, string what, string? text, Func<string, Reading<T>> read)
        where T : struct
    {
        if (string.IsNullOrWhiteSpace(text)) return null;
        var got = read(text);
        if (got.IsGood) return got.Value;
        faults.Add(Fault.OfFile(what, got.Message, got.Remedy));
        return null;
    }
}
