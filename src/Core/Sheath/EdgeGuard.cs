using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A strip folded over the edge, for bench and transport. Its own axes: x along the fold, the fold's middle at y 0, mm.</summary>
/// <param name="Long">Along the fold.</param>
/// <param name="Wide">Across it, both sides.</param>
/// <param name="Fold">Width of the strip that goes round the edge.</param>
/// <param name="Bow">How far the edge bends away from the straight fold.</param>
/// <param name="Material">Thickness of the material.</param>
/// <param name="Edge">The edge on the lower side, spread flat.</param>
public sealed record EdgeGuard(Length Long, Length Wide, Length Fold, Length Bow, Length Material, ImmutableArray<Point> Edge)
{
    private const double ChordMm = 0.002;

    /// <summary>The guard; null without an edge, or when the edge goes all round or bends back.</summary>
    public static EdgeGuard? Of(Plan plan, Region piece)
    {
        if (EdgeSpan.Of(plan, piece) is not { IsWholeLoop: false } edge) return null;
        var along = (edge.Path.End - edge.Path.Start).Unit;
        Point[] spread = [.. ChordsOf(edge.Path).Select(p => new Point((p - edge.Path.Start).Dot(along), (p - edge.Path.Start).Dot(along.Left)))];
        var box = Box.Around(spread);
        if (box.Width < 5 || box.Height > box.Width) return null;
        var material = plan.Sheath is { Kind: SheathKind.Sheet or SheathKind.TwoSheets } s ? SheathRules.Thickness(s) : Length.OfMm(SheathRules.SheetMm);
        var fold = FoldAllowance.Of(plan.Stock.Thickness, material);
        var side = box.Height + SheathRules.GuardUpMm;
        return new EdgeGuard(
            Length.OfMm(box.Width + (2 * SheathRules.GuardPastEdgeMm)),
            Length.OfMm(2 * side) + fold,
            fold,
            Length.OfMm(box.Height),
            material,
            [.. spread.Select(p => new Point(p.X - box.MinX + SheathRules.GuardPastEdgeMm, -(0.5 * fold.Mm) - (p.Y - box.MinY)))]);
    }

    private static IEnumerable<Point> ChordsOf(Path edge) => Chords.Of(edge, ChordMm).Append(edge.End);
}
