using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How the piece swings.</summary>
public static class Striking
{
    /// <summary>How the piece swings.</summary>
    public static StrikingFigures? Of(Plan plan, StageFigures finished, Steel? steel) => throw new NotSupportedException("not built yet");
}
