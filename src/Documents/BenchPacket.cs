using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Binds sheets into a packet and gives each its title block and number.</summary>
public static class BenchPacket
{
    /// <summary>The packet.</summary>
    /// <param name="request">What the sheets are drawn for.</param>
    /// <param name="kinds">Keys of the kinds wanted; empty: all.</param>
    public static SheetSet Of(SheetRequest request, ImmutableArray<string> kinds) => throw new NotSupportedException("not built yet");
}
