using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Pieces one after the other in a bar, all the same way round: how far from one to the next.</summary>
/// <param name="Pitch">From a place on one piece to the same place on the next.</param>
/// <param name="Overall">Length of a piece along the bar.</param>
/// <param name="End">Steel left beyond the piece at each sawn end.</param>
/// <param name="Saw">The saw that parts them; null when the shop has none, and no kerf is counted then.</param>
/// <param name="Fit">How many the bar takes; null when its length is not said.</param>
public sealed record PieceRow(Length Pitch, Length Overall, Length End, Saw? Saw, int? Fit)
{
    /// <summary>The row of a plan; null when it is not laid out in the uncut bar.</summary>
    public static PieceRow? Of(Plan plan, Shop shop, BenchDatum bench)
    {
        if (bench.State != DrilledIn.Bar) return null;
        var end = plan.Layout.EndAllowance ?? shop.EndAllowance;
        var overall = Length.OfMm(plan.Outline.Bounds.Width);
        var saw = shop.Saws.IsDefaultOrEmpty ? null : shop.Saws[0];
        var (kerf, needed) = (saw?.Kerf ?? Length.Zero, overall + (end * 2));
        var pitch = needed + kerf;
        int? fit = plan.Stock.Length is { } bar ? (int)Math.Floor(((bar + kerf).Mm / pitch.Mm) + 1e-9) : null;
        return new(pitch, overall, end, saw, fit);
    }
}
