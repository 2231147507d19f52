using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The gluing of a batch.</summary>
/// <param name="Pieces">Pieces to glue.</param>
/// <param name="Joint">Area of one glue joint, holes of the tang left out.</param>
/// <param name="Joints">Joints a piece has: two, or four with liners.</param>
/// <param name="Holes">Glue that fills the glue holes of one piece.</param>
/// <param name="Each">Glue for one piece, the holes included.</param>
/// <param name="Batches">Mixes and pieces in each.</param>
/// <param name="Shop">How the shop glues.</param>
/// <param name="Bond">What the two joints at the steel hold in shear.</param>
/// <param name="Pins">What the pins hold before they shear, least and greatest; null when the rod's strength is not known or there is none.</param>
public sealed record GlueUp(int Pieces, Area Joint, int Joints, Volume Holes, GlueNeeded Each, GlueBatchPlan Batches, Gluing Shop, Estimate<Force> Bond, (Force Low, Force High)? Pins)
{
    /// <summary>That of a plan with scales.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="shape">Its scale.</param>
    /// <param name="pins">Its pins.</param>
    /// <param name="rod">What they are made of.</param>
    /// <param name="pieces">Pieces to glue.</param>
    public static GlueUp Of(Results r, ScaleShape shape, ImmutableArray<HandlePin> pins, HandleMaterial? rod, int pieces)
    {
        var shop = r.Shop.Gluing;
        var under = r.Holes.Where(h => Inside.Of(shape.Outline.Path, h.At)).ToArray();
        var joint = Area.OfMm2(HandleParts.Flat(shape, under.Select(h => (h.At, h.Diameter))).AreaMm2);
        var joints = shape.Plan.LinerThickness.Mm > 0 ? 4 : 2;
        var tang = FaceThickness.Of(r.Plan);
        var holes = Volume.OfMm3(under.Where(h => h.Use == HoleUse.Glue).Sum(h => Math.PI / 4 * h.Diameter.Mm * h.Diameter.Mm * tang.At(h.At.X)));
        var layer = GlueAmount.Of(Area.OfMm2(joint.Mm2 * joints), shop.Line);
        var net = Volume.OfMm3(layer.Net.Mm3 + holes.Mm3);
        var density = Density.OfGramsPerCm3(GlueAmount.EpoxyGramsPerCm3);
        var mix = Volume.OfMm3(net.Mm3 * GlueAmount.MixFactor);
        var batches = GlueBatches.Of(pieces, shop.PieceMinutes, shop.PotLifeMinutes, shop.Clamps is null ? 0 : shop.ClampsPerPiece, shop.Clamps ?? 0);
        (Force, Force)? shear = rod?.ShearMPa is { } tau && !pins.IsEmpty ? (Sum(tau.Value.LowMPa), Sum(tau.Value.HighMPa)) : null;
        return new GlueUp(pieces, joint, joints, holes, new GlueNeeded(net, net * density, mix, mix * density), batches, shop, GlueBond.Of(Area.OfMm2(2 * joint.Mm2)), shear);

        Force Sum(double mpa) => Force.OfNewtons(pins.Sum(p => PinDoubleShear.Tube(p.Diameter, p.Bore, mpa).Newtons));
    }
}
