namespace Tangwright.Core;

/// <summary>Something wrong with a machine program, found before it is written.</summary>
/// <param name="Kind">What sort of trouble, in a few words: "clamp", "rapid through stock", "hole place".</param>
/// <param name="Line">Line of the program, from 1; 0 when no single line is meant.</param>
/// <param name="Message">What happens, in one short sentence with the numbers.</param>
/// <param name="Remedy">What to change.</param>
public sealed record ProgramTrouble(string Kind, int Line, string Message, string Remedy);
