using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a wooden scale does when it comes from the shop's air into the user's.</summary>
/// <param name="Wood">The wood.</param>
/// <param name="Faces">Which scales: "scales", "front scale", "back scale".</param>
/// <param name="Across">Width across the grain: the handle where it is highest.</param>
/// <param name="CoefficientPerPercent">Movement counted with, as a share for each per cent.</param>
/// <param name="IsAlongRings">Whether that is the movement along the rings, of a flat-sawn scale.</param>
/// <param name="GrainIsSaid">Whether the plan says how the rings lie; else the greater movement is counted with.</param>
/// <param name="FromPercent">Moisture it is fitted at; null when neither meter nor the shop's air is known.</param>
/// <param name="FromMeter">Whether that was measured in the wood.</param>
/// <param name="ToPercent">Moisture it comes to at the user's; null when not known.</param>
/// <param name="Change">Change of the width; null when one of the two is not known.</param>
public sealed record WoodChange(
    HandleMaterial Wood,
    string Faces,
    Length Across,
    double CoefficientPerPercent,
    bool IsAlongRings,
    bool GrainIsSaid,
    Estimate<double>? FromPercent,
    bool FromMeter,
    Estimate<double>? ToPercent,
    Estimate<Length>? Change)
{
    /// <summary>A step that a fingertip feels, mm; common practice 0.05.</summary>
    public const double FeltMm = 0.05;

    /// <summary>Wood damper than this glues badly with common epoxy, per cent; common practice.</summary>
    public const double WetForGluePercent = 12;

    /// <summary>Temperature of air that is not said, °C.</summary>
    public const double UsualAirC = 21;

    /// <summary>Change of one edge: half of it all.</summary>
    public Estimate<Length>? EachSide => Change is { } c ? new Estimate<Length>(c.Value * 0.5, c.Low * 0.5, c.High * 0.5, c.SourceKey, c.OutsideRange) : null;

    /// <summary>Whether a fingertip will feel the step.</summary>
    public bool IsFelt => EachSide is { } e && Math.Abs(e.Value.Mm) > FeltMm;

    /// <summary>How far each edge moves for one per cent of moisture.</summary>
    public Length EachSidePerPercent => Across * (0.5 * CoefficientPerPercent);

    /// <summary>Those of a plan: none without wood whose movement is known.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="made">What the handle is made of.</param>
    /// <param name="cuts">Cuts across the handle.</param>
    public static ImmutableArray<WoodChange> Of(Results r, HandleMaterials made, ImmutableArray<HandleCut> cuts)
    {
        if (cuts.IsEmpty || r.Plan.Scales is not { } scales) return [];
        var across = Length.OfMm(cuts.Max(c => c.Height.Mm));
        var changes = ImmutableArray.CreateBuilder<WoodChange>();
        if (made.Front == made.Back) Add(made.Front, "scales");
        else
        {
            Add(made.Front, "front scale");
            Add(made.Back, "back scale");
        }

        return changes.ToImmutable();

        void Add(HandleMaterial? wood, string faces)
        {
            if (wood is not { Kind: HandleKind.Wood, Movement: { } m } || Way(m, scales.Grain) is not var (coefficient, along)) return;
            var from = scales.MoisturePercent is { } metered ? Known(metered) : Moisture(r.Shop.Air);
            var to = Moisture(r.Plan.UserAir);
            var change = from is { } a && to is { } b ? Between(across, coefficient, a, b) : null;
            changes.Add(new WoodChange(wood, faces, across, coefficient.Value, along, scales.Grain != WoodGrain.Unknown, from, scales.MoisturePercent is not null, to, change));
        }
    }

    /// <summary>Moisture that wood comes to in some air; null when not enough is said of it.</summary>
    public static Estimate<double>? Moisture(Air? air) => air switch
    {
        { MoisturePercent: { } metered } => Known(metered),
        { HumidityPercent: { } humidity } => EquilibriumMoisture.Of(air.Temperature ?? Temperature.OfCelsius(UsualAirC), humidity),
        _ => null,
    };

    // the bands of both moistures and of the wood together, at their worst
    private static Estimate<Length> Between(Length across, Sourced<double> coefficient, Estimate<double> from, Estimate<double> to)
    {
        var middle = WoodMovement.Of(across, coefficient.Value, from.Value, to.Value);
        Estimate<Length>[] ends = [middle, WoodMovement.Of(across, coefficient.Value, from.High, to.Low), WoodMovement.Of(across, coefficient.Value, from.Low, to.High)];
        var outside = string.Join("; ", new[] { middle.OutsideRange, from.OutsideRange, to.OutsideRange }.Where(t => t.Length > 0).Distinct());
        return new Estimate<Length>(middle.Value, Length.OfMm(ends.Min(e => e.Low.Mm)), Length.OfMm(ends.Max(e => e.High.Mm)), coefficient.SourceKey, outside);
    }

    private static Estimate<double> Known(double percent) => new(percent, percent, percent, "measured");

    private static (Sourced<double> Coefficient, bool AlongRings)? Way(WoodMovementCoefficients m, WoodGrain grain) => (grain, m.TangentialPerPercent, m.RadialPerPercent) switch
    {
        (WoodGrain.Quarter, _, { } radial) => (radial, false),
        (WoodGrain.Quarter, _, null) => null,
        (_, { } tangential, _) => (tangential, true),
        (WoodGrain.Unknown, null, { } radial) => (radial, false),
        _ => null,
    };
}
