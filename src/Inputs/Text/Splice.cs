namespace Tangwright.Inputs;

/// <summary>One change of a text: some characters replaced by others.</summary>
/// <param name="Offset">First character replaced.</param>
/// <param name="Length">How many.</param>
/// <param name="Text">What takes their place.</param>
internal readonly record struct Splice(int Offset, int Length, string Text);
