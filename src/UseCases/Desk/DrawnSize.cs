using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A dimension as the screen draws it, plan's axes, mm.</summary>
/// <param name="X0">First place.</param>
/// <param name="Y0">First place.</param>
/// <param name="X1">Second place.</param>
/// <param name="Y1">Second place.</param>
/// <param name="Text">The figure, in the maker's unit.</param>
/// <param name="Kind">over: of the whole piece; x, y: along or across from the datum; web: steel left; measured: as pointed at.</param>
public sealed record DrawnSize(double X0, double Y0, double X1, double Y1, string Text, string Kind)
{
    /// <summary>Length and height over all, and those of the chosen thing.</summary>
    /// <param name="r">The plan as computed.</param>
    /// <param name="chosen">The chosen thing; null when none is.</param>
    public static ImmutableArray<DrawnSize> Of(Results r, DrawnThing? chosen)
    {
        var (b, units) = (r.Plan.Outline.Bounds, r.Plan.Units);
        return
        [
            new(b.MinX, b.MinY, b.MaxX, b.MinY, DeskFigures.Size(r.Outline.Length, units), "over"),
            new(b.MaxX, b.MinY, b.MaxX, b.MaxY, DeskFigures.Size(r.Outline.Height, units), "over"),
            .. chosen is null ? [] : OfThing(r, chosen),
        ];
    }

    private static IEnumerable<DrawnSize> OfThing(Results r, DrawnThing t)
    {
        if (t.Id.StartsWith("segment:", StringComparison.Ordinal)) yield break;
        var (at, zero, units) = (new Point(t.X, t.Y), FromDatum.Zero(r.Plan), r.Plan.Units);
        var (along, across) = FromDatum.Of(r.Plan, at);
        if (Math.Abs(at.X - zero.X) > 1e-6) yield return new(zero.X, zero.Y, at.X, at.Y, DeskFigures.Size(along, units), "x");
        if (Math.Abs(at.Y - zero.Y) > 1e-6) yield return new(zero.X, zero.Y, at.X, at.Y, DeskFigures.Size(across, units), "y");
        if (r.Holes.FirstOrDefault(h => t.Diameter > 0 && t.Id.EndsWith(":" + h.Name, StringComparison.Ordinal)) is not { } hole) yield break;
        var (from, to, web) = LeastWeb(r, hole);
        if (web > 1e-6) yield return new(from.X, from.Y, to.X, to.Y, DeskFigures.Size(Length.OfMm(web), units), "web");
    }

    /// <summary>The least steel beside a hole: to the outline or to another hole.</summary>
    private static (Point From, Point To, double WebMm) LeastWeb(Results r, PlacedHole hole)
    {
        var clear = HoleClearance.Of(r.Piece.Outer, [hole])[0];
        var best = (From: Rim(hole, clear.Foot), To: clear.Foot, clear.WebMm);
        foreach (var other in r.Holes)
        {
            if (other.Name == hole.Name) continue;
            var web = hole.At.To(other.At) - (0.5 * (hole.Diameter.Mm + other.Diameter.Mm));
            if (web < best.WebMm) best = (Rim(hole, other.At), Rim(other, hole.At), web);
        }

        return best;
    }

    private static Point Rim(PlacedHole h, Point toward)
    {
        var far = h.At.To(toward);
        return far < 1e-9 ? h.At : h.At.Toward(toward, 0.5 * h.Diameter.Mm / far);
    }
}
