namespace Tangwright.Cli;

/// <summary>What the program ends with.</summary>
internal static class ExitCode
{
    /// <summary>Answered.</summary>
    public const int Answered = 0;

    /// <summary>Answered, and a finding of error severity was among the answers.</summary>
    public const int ErrorFound = 1;

    /// <summary>Unusable input or request.</summary>
    public const int Unusable = 2;

    /// <summary>A fault of ours.</summary>
    public const int OurFault = 3;
}
