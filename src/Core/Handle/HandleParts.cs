using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A pin, rod or tube through the handle.</summary>
/// <param name="Hole">Its hole in the steel.</param>
/// <param name="Diameter">Its diameter over all.</param>
/// <param name="Bore">Bore of a tube; zero for a rod.</param>
/// <param name="Length">Its length when flush with both scales.</param>
public sealed record HandlePin(PlacedHole Hole, Length Diameter, Length Bore, Length Length)
{
    /// <summary>Volume of its metal.</summary>
    public Volume Volume => Volume.OfMm3(Math.PI / 4 * ((Diameter.Mm * Diameter.Mm) - (Bore.Mm * Bore.Mm)) * Length.Mm);
}

/// <summary>What the handle puts on the steel, weighed: scales, liners, pins, glue, cord. A part whose material is not known is left out, never guessed.</summary>
public static class HandleParts
{
    /// <summary>Density of cured epoxy, g/cm³; common practice.</summary>
    public const double GlueGramsPerCm3 = GlueAmount.EpoxyGramsPerCm3;

    /// <summary>The parts of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="holes">Its holes.</param>
    /// <param name="shop">Its shop.</param>
    public static ImmutableArray<PlacedMass> Of(Plan plan, ImmutableArray<PlacedHole> holes, Shop shop)
    {
        if (plan.Scales is not { IsShaped: true } && plan.Cord is null) return [];
        var made = HandleMaterials.Of(plan, shop);
        var parts = ImmutableArray.CreateBuilder<PlacedMass>();
        if (ScaleShape.Of(plan) is { } shape)
        {
            var s = shape.Plan;
            var pins = Pins(plan, holes, shape);
            var through = Through(shape, holes, pins);
            var one = shape.Solid(through);
            Add(made.Front, made.Front == made.Back ? "scales" : "front scale", one * (made.Front == made.Back ? 2 : 1));
            if (made.Front != made.Back) Add(made.Back, "back scale", one);
            if (s.LinerThickness.Mm > 0) Add(made.Liner, "liners", Flat(shape, through) * (2 * s.LinerThickness.Mm));
            foreach (var pin in pins) Add(made.Rod, $"{(pin.Bore.Mm > 0 ? "tube" : "pin")} {pin.Hole.Name}", AtPoint(pin.Hole.At, pin.Volume.Mm3));
            AddGlue(Glue(plan, holes, shop, shape));
        }

        if (CordWrap.Of(plan, shop) is { Grams: { } grams } cord) parts.Add(new PlacedMass("cord", Mass.OfGrams(grams), cord.Middle, cord.Share * (1000 * grams)));
        return parts.ToImmutable();

        void Add(HandleMaterial? of, string name, Moments solid)
        {
            if (of?.Density is not { } density || solid.AreaMm2 <= 0) return;
            parts.Add(new PlacedMass(name, Volume.OfMm3(solid.AreaMm2) * density.Value, solid.Centroid, solid * density.Value.GramsPerCm3));
        }

        void AddGlue(Moments glue)
        {
            if (glue.AreaMm2 > 0) parts.Add(new PlacedMass("glue", Mass.OfGrams(glue.AreaMm2 * GlueGramsPerCm3 / 1000), glue.Centroid, glue * GlueGramsPerCm3));
        }
    }

    /// <summary>Pins, rods and tubes that go through both scales.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="holes">Its holes.</param>
    /// <param name="shape">Its scale.</param>
    public static ImmutableArray<HandlePin> Pins(Plan plan, ImmutableArray<PlacedHole> holes, ScaleShape shape)
    {
        var tang = FaceThickness.Of(plan);
        return [.. holes.Where(h => IsPinned(h) && Inside.Of(shape.Outline.Path, h.At)).Select(h =>
        {
            var diameter = h.Pin ?? DrillSeries.SmallerOrEqual(PinStock.Sizes, h.Diameter)?.Diameter ?? h.Diameter;
            return new HandlePin(h, diameter, h.Tube ?? default, Length.OfMm(tang.At(h.At.X) + (2 * (shape.Plan.LinerThickness.Mm + shape.At(h.At)))));
        })];
    }

    /// <summary>Whether a rod or tube goes through a hole.</summary>
    public static bool IsPinned(PlacedHole hole) => hole.Use == HoleUse.Pin || hole.Pin is not null;

    /// <summary>Glue that stays in the handle: a layer between all parts and the glue holes filled; volume and moments, mm³..mm⁵.</summary>
    public static Moments Glue(Plan plan, ImmutableArray<PlacedHole> holes, Shop shop, ScaleShape shape)
    {
        var under = holes.Where(h => Inside.Of(shape.Outline.Path, h.At)).ToArray();
        var faces = shape.Plan.LinerThickness.Mm > 0 ? 4 : 2;
        var layer = Flat(shape, under.Select(h => (h.At, h.Diameter))) * (faces * shop.Gluing.Line.Mm);
        var tang = FaceThickness.Of(plan);
        return under.Where(h => h.Use == HoleUse.Glue).Aggregate(layer, (sum, h) => sum + AtPoint(h.At, Math.PI / 4 * h.Diameter.Mm * h.Diameter.Mm * tang.At(h.At.X)));
    }

    /// <summary>Area and moments of a scale's flat face, holes left out.</summary>
    public static Moments Flat(ScaleShape shape, IEnumerable<(Point At, Length Diameter)> holes)
        => Moments.Of(new Region(shape.Outline.Path, [.. holes.Select(h => Path.Circle(h.At, h.Diameter.Mm / 2))]));

    private static (Point At, Length Diameter)[] Through(ScaleShape shape, ImmutableArray<PlacedHole> holes, ImmutableArray<HandlePin> pins)
        => [.. pins.Select(p => (p.Hole.At, p.Diameter)), .. holes.Where(h => h.Use is HoleUse.Lanyard or HoleUse.Hanging && !IsPinned(h) && Inside.Of(shape.Outline.Path, h.At)).Select(h => (h.At, h.Diameter))];

    private static Moments AtPoint(Point at, double volume) => new Moments(1, at.X, at.Y, at.X * at.X, at.X * at.Y, at.Y * at.Y) * volume;
}
