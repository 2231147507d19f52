namespace Tangwright.Inputs;

/// <summary>A value read from a piece of text, or what is wrong with the text and what to write instead.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
/// <param name="IsGood">Whether there is a value.</param>
/// <param name="Value">The value when good.</param>
/// <param name="Message">What is wrong, when not good.</param>
/// <param name="Remedy">What to write instead, when not good.</param>
public readonly record struct Reading<T>(bool IsGood, T Value, string Message, string Remedy)
{
    internal static Reading<T> Of(T value) => new(true, value, "", "");

    internal static Reading<T> Bad(string message, string remedy) => new(false, default!, message, remedy);

    internal Reading<TOut> As<TOut>(Func<T, TOut> map) => IsGood ? Reading<TOut>.Of(map(Value)) : Reading<TOut>.Bad(Message, Remedy);
}
