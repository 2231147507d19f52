using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The least steel left between a hole and the outline or between two holes, mm; negative when a hole breaks through or two run into one another.</summary>
public static class LeastWeb
{
    /// <summary>Of a piece; null without holes.</summary>
    public static Length? Of(Results r)
    {
        if (r.Holes.IsEmpty) return null;
        var toOutline = HoleClearance.Of(r.Piece.Outer, r.Holes).Min(c => c.WebMm);
        return Length.OfMm(HolePairs.CloserThan(r.Holes, toOutline).Select(p => p.WebMm).Append(toOutline).Min());
    }
}
