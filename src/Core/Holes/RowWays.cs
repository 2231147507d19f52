using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Smaller holes for a whole row on a straight line, so that the steel between them passes.</summary>
public static class RowWays
{
    /// <summary>The whole row in smaller sizes, in the same proportion, until neighbours have so much steel between them; none when the row lies on the midline or its holes would be under half of the planned ones.</summary>
    /// <remarks>Equal webs: n webs share L − Σ(d₁ + d₂)/2. Equal pitch: the web is L/n − (d₁ + d₂)/2. Both are linear in the diameters.</remarks>
    public static ImmutableArray<RemedyWay> Smaller(Results r, PlacedHole hole, double webMm)
    {
        if (HoleWays.Row(r.Plan, hole) is not { OnMidline: false, From: { } from, To: { } to } row) return [];
        var holes = r.Holes.Where(h => h.Row == row.Name).ToArray();
        var pairs = holes.Zip(holes.Skip(1), (a, b) => 0.5 * (a.Diameter + b.Diameter).Mm).ToArray();
        var left = from.To(to) - (pairs.Length * webMm);
        var share = row.Spacing == RowSpacing.EqualWebs ? left / pairs.Sum() : left / (pairs.Length * pairs.Max());
        if (share >= 1) return [];
        var sizes = holes.Select(h => (Hole: h, Size: HoleWays.AtMost(r.Shop, r.Plan.Units, h, share * h.Diameter.Mm))).ToArray();
        return sizes.Any(s => s.Size is null) ? [] : [HoleWays.InSizes(r.Plan, sizes.Select(s => (s.Hole, s.Size!)))];
    }

    /// <summary>One hole of a row in a smaller size, when it then has so much steel to the outline where its row puts it; none on the midline.</summary>
    public static ImmutableArray<RemedyWay> SmallerToOutline(Results r, PlacedHole hole, DrillSize? size, double webMm)
    {
        if (size is null || HoleWays.Row(r.Plan, hole) is not { } row) return [];
        if (row.Spacing == RowSpacing.EqualPitch) return HoleWays.Resized(r.Plan, (hole, size));
        if (row.OnMidline) return [];
        var diameters = HolePlacement.Diameters(row).Select(Length.OfMm).ToArray();
        diameters[HoleWays.Place(hole)] = size.Diameter;
        var there = HolePlacement.Of(r.Plan with { Holes = [row with { Diameters = [.. diameters] }] })[HoleWays.Place(hole)];
        var web = Nearest.Distance(r.Piece.Outer, there.At) - (0.5 * size.Diameter.Mm);
        return web >= webMm - 1e-6 ? [HoleWays.InSizes(r.Plan, [(hole, size)])] : [];
    }
}
