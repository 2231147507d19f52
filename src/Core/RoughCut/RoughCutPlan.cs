using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What is asked of the rough cuts.</summary>
/// <param name="Cuts">How many saw cuts; null: as many as pay.</param>
/// <param name="SawName">Name of the saw, or a part of it; null: the one that is quickest in all.</param>
public sealed record RoughCutWanted(int? Cuts, string? SawName)
{
    /// <summary>Most cuts that can be asked for.</summary>
    public const int MostCuts = CutOrder.Most;
}

/// <summary>One saw cut, as it is made.</summary>
/// <param name="Number">From 1, in order.</param>
/// <param name="From">Where it begins on the piece as it then is, plan's axes, mm.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Normal">Square to it, towards the waste, length 1.</param>
/// <param name="IsFlush">Whether it lies along a straight side of the piece's hull.</param>
/// <param name="Marks">Where its line meets the rim of the uncut blank; one mark for a cut that stops in a pocket, the other end is the relief hole.</param>
/// <param name="AngleToEdge">Angle between its line and the blank's long edges, 0 to 90°.</param>
/// <param name="Waste">What comes off, kerf included, plan's axes; convex; empty for the first cut into a pocket.</param>
/// <param name="Offcut">What comes off in one piece; empty when the kerf takes it all.</param>
/// <param name="OffcutLength">Longer side of the smallest rectangle around it.</param>
/// <param name="OffcutWidth">Shorter side.</param>
/// <param name="KerfMm2">Area the kerf takes, mm².</param>
/// <param name="FromBothEnds">Sawn in from both ends.</param>
/// <param name="Minutes">Time, min.</param>
/// <param name="Pocket">Number of the pocket it goes into, from 1; null for a through cut.</param>
public sealed record SawCut(
    int Number,
    Point From,
    Point To,
    Point Normal,
    bool IsFlush,
    ImmutableArray<RimMark> Marks,
    Angle AngleToEdge,
    ImmutableArray<Point> Waste,
    ImmutableArray<Point> Offcut,
    Length OffcutLength,
    Length OffcutWidth,
    double KerfMm2,
    bool FromBothEnds,
    double Minutes,
    int? Pocket)
{
    /// <summary>Length sawn.</summary>
    public Length Chord => Length.OfMm(From.To(To));
}

/// <summary>A hole drilled first, in which the two cuts of a pocket meet.</summary>
/// <param name="Pocket">Number of the pocket, from 1.</param>
/// <param name="At">Its centre, plan's axes, mm.</param>
/// <param name="FromCorner">Along and across from the blank's corner.</param>
/// <param name="Drill">The drill; null for a torch, which pierces there.</param>
public sealed record ReliefHole(int Pocket, Point At, Point FromCorner, DrillSize? Drill);

/// <summary>A hollow that stays for the grinder, and what else could be done.</summary>
/// <param name="Pocket">The pocket.</param>
/// <param name="Middle">Middle of its lid, plan's axes, mm.</param>
/// <param name="Left">Steel in it under the allowance that the cuts leave.</param>
/// <param name="GrindMinutes">Time to grind that off, min.</param>
/// <param name="Chain">A chain of holes along it; null when the shop has no drill small enough.</param>
/// <param name="ReliefCuts">Saw cuts side by side down to the curve, so that the waste falls out in strips; 0 when no saw of the shop stops inside the steel.</param>
/// <param name="ReliefMinutes">Time for those, min.</param>
public sealed record HollowLeft(Pocket Pocket, Point Middle, Area Left, double GrindMinutes, ChainOfHoles? Chain, int ReliefCuts, double ReliefMinutes)
{
    /// <summary>Whether a chain of holes or relief cuts are quicker than the grinder alone.</summary>
    public bool IsWorthMore => Math.Min(Chain?.Minutes ?? double.PositiveInfinity, ReliefCuts > 0 ? ReliefMinutes : double.PositiveInfinity) < GrindMinutes;
}

/// <summary>Work at the grinder.</summary>
/// <param name="Area">Face area to grind off.</param>
/// <param name="Volume">Volume.</param>
/// <param name="Mass">Mass; null when the steel's density is not known.</param>
/// <param name="Minutes">Planned time, min.</param>
/// <param name="LowMinutes">When the belt takes off most, min.</param>
/// <param name="HighMinutes">When it takes off least, min.</param>
/// <param name="Belts">Belts worn.</param>
public sealed record GrindingWork(Area Area, Volume Volume, Mass? Mass, double Minutes, double LowMinutes, double HighMinutes, double Belts)
{
    /// <summary>Only turns g/min into mm³/min when the steel's own density is not known, g/cm³.</summary>
    public const double NominalDensity = 7.85;

    /// <summary>The work for an area of flat stock.</summary>
    public static GrindingWork Of(double areaMm2, Length thickness, Steel? steel, BeltRate belt)
    {
        var volume = Volume.OfMm3(Math.Max(0, areaMm2) * thickness.Mm);
        var mass = steel?.Density is { } d ? volume * d.Value : (Mass?)null;
        var grams = mass?.Grams ?? (volume.Mm3 * 0.001 * NominalDensity);
        return new GrindingWork(Area.OfMm2(Math.Max(0, areaMm2)), volume, mass, grams / belt.GramsPerMinute, grams / belt.HighGramsPerMinute, grams / belt.LowGramsPerMinute, grams / belt.GramsPerBelt);
    }
}

/// <summary>From sawn rectangle to what is left for the grinder.</summary>
/// <param name="Saw">The saw.</param>
/// <param name="Blank">The rectangle.</param>
/// <param name="Allowance">Steel left outside the line: finish and half the saw's wander.</param>
/// <param name="AllowanceSays">Where it comes from.</param>
/// <param name="Cuts">Cuts in order.</param>
/// <param name="Reliefs">Relief holes, drilled before the cuts that meet in them.</param>
/// <param name="BlankMm2">Area of the rectangle, mm².</param>
/// <param name="PieceMm2">Area of the outline, mm².</param>
/// <param name="RestMm2">Area left when all cuts are made, mm².</param>
/// <param name="Rest">The rest before pockets are taken out of it, convex.</param>
/// <param name="ShareByCuts">Share of the waste that the best 1, 2, ... through cuts can take, whatever the saw holds.</param>
/// <param name="HullShare">Share of the waste outside the convex hull: through cuts take no more.</param>
/// <param name="Sawn">Grinding after sawing.</param>
/// <param name="GrindOnly">Grinding without sawing.</param>
/// <param name="SawMinutes">Sawing, min.</param>
/// <param name="LowSawMinutes">When the saw is quick, min.</param>
/// <param name="HighSawMinutes">When it is slow, min.</param>
/// <param name="Belt">The belt.</param>
/// <param name="Hollows">What hollows keep.</param>
/// <param name="LeastGap">Least distance of a cut from the true outline, as checked apart from the search.</param>
/// <param name="NearestHole">Least distance of a cut from a hole's rim; null without holes.</param>
/// <param name="Notes">What to know, in words.</param>
public sealed record RoughCutPlan(
    Saw Saw,
    RoughBlank Blank,
    Length Allowance,
    string AllowanceSays,
    ImmutableArray<SawCut> Cuts,
    ImmutableArray<ReliefHole> Reliefs,
    double BlankMm2,
    double PieceMm2,
    double RestMm2,
    ImmutableArray<Point> Rest,
    ImmutableArray<double> ShareByCuts,
    double HullShare,
    GrindingWork Sawn,
    GrindingWork GrindOnly,
    double SawMinutes,
    double LowSawMinutes,
    double HighSawMinutes,
    BeltRate Belt,
    ImmutableArray<HollowLeft> Hollows,
    Length LeastGap,
    Length? NearestHole,
    ImmutableArray<string> Notes)
{
    /// <summary>What is said when no cut pays.</summary>
    public const string NoCut = "No saw cut saves more grinding than it costs: grind from the rectangle.";

    /// <summary>Saw and grinder together, min.</summary>
    public double Minutes => SawMinutes + Sawn.Minutes;

    /// <summary>Time saved against grinding only, min.</summary>
    public double SavedMinutes => GrindOnly.Minutes - Minutes;

    /// <summary>Share of the waste that the cuts take.</summary>
    public double TakenShare => BlankMm2 > PieceMm2 ? (BlankMm2 - RestMm2) / (BlankMm2 - PieceMm2) : 0;

    /// <summary>Teeth per inch to mount; null when the saw has none, or no blade owned fits.</summary>
    public double? TeethPerInch { get; init; }

    /// <summary>Which blade for this thickness, in words; empty for a saw without teeth.</summary>
    public string BladeSays { get; init; } = "";
}
