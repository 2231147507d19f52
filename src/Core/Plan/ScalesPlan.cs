using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Shape of a handle cut across.</summary>
public enum HandleSection
{
    /// <summary>Flat faces, long edges rounded.</summary>
    Slab,

    /// <summary>Faces bulged like half an ellipse.</summary>
    Oval,

    /// <summary>Eight facets.</summary>
    Octagon,
}

/// <summary>How the rings of the wood lie in a scale.</summary>
public enum WoodGrain
{
    /// <summary>Not said: the greater movement is counted with.</summary>
    Unknown,

    /// <summary>Flat-sawn: rings along the face; it moves most across the handle.</summary>
    Flat,

    /// <summary>Quarter-sawn: rings square to the face.</summary>
    Quarter,
}

/// <summary>Thickness of a scale at one place along the handle.</summary>
/// <param name="X">Where along the piece.</param>
/// <param name="Thickness">How thick.</param>
public readonly record struct ScaleStation(Length X, Length Thickness);

/// <summary>The scales and how they are put on.</summary>
/// <param name="HolesBy">How the holes of the scales are placed; null when not said.</param>
/// <param name="HoleDiameter">Diameter of the holes in the scales; null: the smallest reamer or drill owned that the rod enters.</param>
/// <param name="WantedChanceShare">Chance that all pins go through, above 0 and under 1.</param>
public sealed record ScalesPlan(PlacingWay? HolesBy, Length? HoleDiameter, double WantedChanceShare)
{
    /// <summary>Oval scales: thickness left at the edges of the tang when the plan does not say; common practice.</summary>
    public const double UsualSideMm = 2;

    /// <summary>Radius of the long edges of flat scales when the plan does not say; common practice.</summary>
    public const double UsualRoundMm = 3;

    /// <summary>Name of what the scales are made of; empty when not said.</summary>
    public string Material { get; init; } = "";

    /// <summary>Name of what the scale of the back is made of; empty: the same.</summary>
    public string BackMaterial { get; init; } = "";

    /// <summary>Name of the liner's material; empty when there is none.</summary>
    public string Liner { get; init; } = "";

    /// <summary>Thickness of each liner; zero without one.</summary>
    public Length LinerThickness { get; init; }

    /// <summary>Name of the rod's material; empty when not said.</summary>
    public string Rod { get; init; } = "";

    /// <summary>Finished thickness of each scale at its thickest across the handle; null when not said.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Thickness by place, ascending x; empty: the same everywhere.</summary>
    public ImmutableArray<ScaleStation> Stations { get; init; } = [];

    /// <summary>Thickness of the board or blank it starts from; null when not said.</summary>
    public Length? Board { get; init; }

    /// <summary>Line of the front end, as seen from the face; null: square to the grip at its front end.</summary>
    public PlungeLine? Front { get; init; }

    /// <summary>Line of the rear end; null: they go as far as the steel.</summary>
    public PlungeLine? Rear { get; init; }

    /// <summary>How far the front end bulges toward the blade between its ends, backward when negative, mm.</summary>
    public Length FrontBulge { get; init; }

    /// <summary>Shape across.</summary>
    public HandleSection Section { get; init; }

    /// <summary>Radius of the long edges of flat scales; null: as usual.</summary>
    public Length? Round { get; init; }

    /// <summary>Oval scales: thickness at the edges of the tang; null: as usual.</summary>
    public Length? Side { get; init; }

    /// <summary>How the rings lie.</summary>
    public WoodGrain Grain { get; init; }

    /// <summary>Moisture of the wood as measured, per cent of its dry weight; null: that of the shop's air.</summary>
    public double? MoisturePercent { get; init; }

    /// <summary>Whether enough is said to make them: material, thickness and where they begin.</summary>
    public bool IsShaped => Material.Length > 0 && Thickness is not null;

    /// <summary>The same plan, stations compared one by one.</summary>
    public bool Equals(ScalesPlan? other)
        => other is not null && (HolesBy, HoleDiameter, WantedChanceShare, Material, BackMaterial, Liner, LinerThickness) == (other.HolesBy, other.HoleDiameter, other.WantedChanceShare, other.Material, other.BackMaterial, other.Liner, other.LinerThickness)
            && (Rod, Thickness, Board, Front, Rear, FrontBulge) == (other.Rod, other.Thickness, other.Board, other.Front, other.Rear, other.FrontBulge)
            && (Section, Round, Side, Grain, MoisturePercent) == (other.Section, other.Round, other.Side, other.Grain, other.MoisturePercent)
            && Stations.SequenceEqual(other.Stations);

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Material, Thickness, Section, HolesBy, Stations.Length);
}

/// <summary>A cord wound round the bare handle.</summary>
public sealed record CordPlan
{
    /// <summary>Name of the cord, as in its file.</summary>
    public string Material { get; init; } = "";

    /// <summary>Its diameter; null: that of its file.</summary>
    public Length? Diameter { get; init; }

    /// <summary>Where it begins, plan's axes, mm; null: the grip's front end.</summary>
    public Point? From { get; init; }

    /// <summary>Where it ends, plan's axes, mm; null: the grip's rear end.</summary>
    public Point? To { get; init; }

    /// <summary>Room between one turn and the next.</summary>
    public Length Gap { get; init; }

    /// <summary>Length left over at both ends together; null: 0.5 m.</summary>
    public Length? Tails { get; init; }
}

/// <summary>A hand.</summary>
/// <param name="Length">From the crease of the wrist to the tip of the middle finger; null when not said.</param>
/// <param name="Breadth">Across the four knuckles, thumb left out; null when not said.</param>
/// <param name="IsGloved">Whether it wears a glove.</param>
public sealed record Hand(Length? Length, Length? Breadth, bool IsGloved);

/// <summary>Air that wood comes to rest in.</summary>
/// <param name="Temperature">Its temperature; null when not said.</param>
/// <param name="HumidityPercent">Relative humidity, per cent; null when not said.</param>
/// <param name="MoisturePercent">Moisture the wood comes to there, as measured, per cent of its dry weight; null: it follows from the air.</param>
public sealed record Air(Temperature? Temperature, double? HumidityPercent, double? MoisturePercent);
