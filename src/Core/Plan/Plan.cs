using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The unit bare numbers of a plan are in.</summary>
public enum LengthUnit
{
    /// <summary>Millimetres.</summary>
    Mm,

    /// <summary>Inches.</summary>
    Inch,
}

/// <summary>One pattern as the maker wrote it. What was left out is null and what depends on it is left out too, never guessed.</summary>
/// <param name="Name">Name of the pattern.</param>
/// <param name="Revision">Revision letter or word; "-" when none is given.</param>
/// <param name="Units">Unit of bare numbers.</param>
/// <param name="Target">What the maker wants.</param>
/// <param name="Stock">Steel and bar.</param>
/// <param name="Outline">Closed outline in the plan's axes, in the direction written.</param>
/// <param name="Datum">Where measuring starts.</param>
/// <param name="Edge">The sharpened part of the outline.</param>
/// <param name="Bevel">The bevel.</param>
/// <param name="Grip">Where the hand holds.</param>
/// <param name="BrokenEdges">How much the sharp edges are broken.</param>
/// <param name="Layout">How the piece lies in the bar when it is laid out and drilled.</param>
/// <param name="Holes">Holes and rows in the order written.</param>
public sealed record Plan(
    string Name,
    string Revision,
    LengthUnit Units,
    Target Target,
    Stock Stock,
    Path Outline,
    Datum Datum,
    SharpenedPart? Edge,
    Bevel? Bevel,
    Grip? Grip,
    BrokenEdges? BrokenEdges,
    Layout Layout,
    ImmutableArray<HoleEntry> Holes)
{
    /// <summary>The scales and how they are put on; null when the plan says nothing of them.</summary>
    public ScalesPlan? Scales { get; init; }

    /// <summary>The cord wound round the handle; null when there is none.</summary>
    public CordPlan? Cord { get; init; }

    /// <summary>The hand it is made for; null: anyone's.</summary>
    public Hand? Hand { get; init; }

    /// <summary>The air the piece will live in; null when not said.</summary>
    public Air? UserAir { get; init; }

    /// <summary>How the faces thin toward the tip; null when they do not.</summary>
    public Taper? DistalTaper { get; init; }

    /// <summary>How the tang thins toward the butt; null when it does not.</summary>
    public Taper? TangTaper { get; init; }

    /// <summary>What is put on the steel, in the order written.</summary>
    public ImmutableArray<AddedMass> AddedMasses { get; init; } = [];

    /// <summary>How it is hardened and tempered; null when the plan says nothing of it.</summary>
    public HeatWish? Heat { get; init; }

    /// <summary>The finish wanted; null when the plan says nothing of it.</summary>
    public FinishWish? Finish { get; init; }
}

/// <summary>Both faces thinned evenly along the piece, from the bar's thickness to a thinner one.</summary>
/// <param name="Starts">x where it begins, the bar's thickness there.</param>
/// <param name="Ends">x where it has the thickness below; it stays so beyond.</param>
/// <param name="Thickness">Thickness at its end.</param>
public sealed record Taper(Length Starts, Length Ends, Length Thickness);

/// <summary>A mass put on the steel: scales, pins, a bolster. Its weight is said, or follows from density and thickness.</summary>
/// <param name="Name">Its name; unique in the plan.</param>
/// <param name="Weight">Weight of all of it; null when it follows from density and thickness.</param>
/// <param name="Density">Density; null when the weight is said.</param>
/// <param name="Thickness">Thickness on one side; null when not said.</param>
/// <param name="Sides">On how many sides, 1 or 2.</param>
/// <param name="At">Where its middle lies, plan's axes, mm; null when it covers a stretch.</param>
/// <param name="Over">The stretch of the outline it covers, from one x to the other; null when its middle is said.</param>
public sealed record AddedMass(string Name, Mass? Weight, Density? Density, Length? Thickness, int Sides, Point? At, (Length From, Length To)? Over);

/// <summary>What the maker wants, compared, never forced.</summary>
/// <param name="Weight">Finished weight.</param>
/// <param name="WeightTolerance">Plus or minus.</param>
/// <param name="BalanceFromDatum">Balance point, from the datum into the piece.</param>
/// <param name="BalanceTolerance">Plus or minus.</param>
/// <param name="Hardness">Hardness wanted.</param>
public sealed record Target(Mass? Weight, Mass? WeightTolerance, Length? BalanceFromDatum, Length? BalanceTolerance, HardnessBand? Hardness)
{
    /// <summary>Nothing asked for.</summary>
    public static Target None { get; } = new(null, null, null, null, null);
}

/// <summary>The bar it is cut from.</summary>
/// <param name="Steel">Name of the steel file.</param>
/// <param name="Thickness">Nominal thickness.</param>
/// <param name="Width">Width of the bar; null when not said.</param>
/// <param name="Length">Length of the bar; null when not said.</param>
/// <param name="Condition">Delivered condition: annealed, hot rolled, ground, ...; empty when not said.</param>
public sealed record Stock(string Steel, Length Thickness, Length? Width, Length? Length, string Condition);

/// <summary>Which extreme of the piece, or which coordinate, measuring starts from.</summary>
public enum DatumSide
{
    /// <summary>Least x.</summary>
    Left,

    /// <summary>Greatest x.</summary>
    Right,

    /// <summary>Least y.</summary>
    Bottom,

    /// <summary>Greatest y.</summary>
    Top,

    /// <summary>A coordinate of the plan.</summary>
    At,
}

/// <summary>One datum.</summary>
/// <param name="Side">Which extreme; <see cref="DatumSide.At"/> for a coordinate.</param>
/// <param name="At">The coordinate when <see cref="DatumSide.At"/>, plan's axes.</param>
public readonly record struct DatumMark(DatumSide Side, Length At);

/// <summary>Where measuring starts.</summary>
/// <param name="X">Along the piece.</param>
/// <param name="Y">Across the piece.</param>
/// <param name="Name">What the maker calls the point: "heel", "head end"; empty when not said.</param>
public sealed record Datum(DatumMark X, DatumMark Y, string Name)
{
    /// <summary>Left end, lower side.</summary>
    public static Datum LowerLeft { get; } = new(new(DatumSide.Left, default), new(DatumSide.Bottom, default), "");
}

/// <summary>The sharpened part of the outline, in the outline's own direction.</summary>
/// <param name="From">First point, within 0.05 mm of the outline.</param>
/// <param name="To">Last point, within 0.05 mm of the outline.</param>
public sealed record SharpenedPart(Point From, Point To);

/// <summary>Shape of the ground face.</summary>
public enum Grind
{
    /// <summary>Plane.</summary>
    Flat,

    /// <summary>Concave, off a wheel.</summary>
    Hollow,

    /// <summary>Bulged.</summary>
    Convex,
}

/// <summary>When the bevel is ground.</summary>
public enum GroundWhen
{
    /// <summary>In soft steel.</summary>
    BeforeHardening,

    /// <summary>In hard steel.</summary>
    AfterHardening,
}

/// <summary>The main bevel.</summary>
/// <param name="Grind">Shape.</param>
/// <param name="OneSided">One face only.</param>
/// <param name="Height">Height square to the edge; null for full, to the spine, and for a constant angle.</param>
/// <param name="Ground">Before or after hardening.</param>
/// <param name="EdgeBeforeHardening">Edge thickness left before hardening; null when not said or ground after.</param>
/// <param name="EdgeFinished">Edge thickness before sharpening, finished.</param>
/// <param name="SharpenPerSide">Sharpening angle per side; null when not said.</param>
/// <param name="Plunge">Line where the bevel ends; null when it runs out at the ends of the edge.</param>
public sealed record Bevel(
    Grind Grind,
    bool OneSided,
    Length? Height,
    GroundWhen Ground,
    Length? EdgeBeforeHardening,
    Length EdgeFinished,
    Angle? SharpenPerSide,
    PlungeLine? Plunge)
{
    /// <summary>Angle of one face of a flat bevel ground at the same angle everywhere, against the middle plane, for one face against the other face; null when the height is said: the height then follows the thickness from place to place.</summary>
    public Angle? AnglePerSide { get; init; }

    /// <summary>Diameter of the wheel a hollow bevel is ground on; null when not said: it is then taken as flat.</summary>
    public Length? Wheel { get; init; }

    /// <summary>Radius of the bulge of a convex bevel; null: it runs tangent into the flat.</summary>
    public Length? Radius { get; init; }

    /// <summary>Whether it runs to the spine.</summary>
    public bool IsFull => Height is null && AnglePerSide is null;
}

/// <summary>The straight line where the bevel ends, seen from the face; the bevel lies on the side of the middle of the edge.</summary>
/// <param name="A">A point on it.</param>
/// <param name="B">Another.</param>
public sealed record PlungeLine(Point A, Point B);

/// <summary>Where the hand holds.</summary>
/// <param name="From">Front end of the grip.</param>
/// <param name="To">Rear end of the grip.</param>
public sealed record Grip(Point From, Point To)
{
    /// <summary>Middle of the grip, about which a struck tool turns.</summary>
    public Point Middle => From.Toward(To, 0.5);
}

/// <summary>How sharp edges are broken; each value is the leg of a 45° chamfer, or the radius when <paramref name="Rounded"/>.</summary>
/// <param name="Rims">Rims of holes, both faces.</param>
/// <param name="Outline">Long edges of the outline save the sharpened part, both faces.</param>
/// <param name="Rounded">Rounded instead of chamfered.</param>
public sealed record BrokenEdges(Length? Rims, Length? Outline, bool Rounded);

/// <summary>What state the piece is in when it is laid out and drilled: it decides which edges can be measured from.</summary>
public enum DrilledIn
{
    /// <summary>The uncut bar: its long edge and its sawn end.</summary>
    Bar,

    /// <summary>A sawn rectangle.</summary>
    Rectangle,

    /// <summary>The profiled piece.</summary>
    Profile,
}

/// <summary>How the piece lies in the stock.</summary>
/// <param name="DrilledIn">State when drilled.</param>
/// <param name="EndAllowance">Steel between the sawn end and the piece; null: the shop's own.</param>
/// <param name="EdgeMargin">Steel between the bar's long edge and the piece; null: centred in the bar, or the shop's own for a rectangle.</param>
public sealed record Layout(DrilledIn DrilledIn, Length? EndAllowance, Length? EdgeMargin);
