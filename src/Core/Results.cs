using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Everything computed from one plan and one shop: one property per room.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Shop">The shop.</param>
/// <param name="Steel">The steel; null when no file was found for it.</param>
/// <param name="Holes">All holes, rows spread out, in the plan's order.</param>
/// <param name="Piece">The flat piece: outline less holes.</param>
/// <param name="Outline">Figures of the outline.</param>
/// <param name="Stages">Mass and balance by stage; the last is what the maker holds in the end.</param>
/// <param name="Striking">How it swings; null without a grip.</param>
/// <param name="Bench">The edges that can be measured from at the bench.</param>
/// <param name="Order">The order of work.</param>
/// <param name="Findings">What is wrong or risky, gravest first.</param>
public sealed record Results(
    Plan Plan,
    Shop Shop,
    Steel? Steel,
    ImmutableArray<PlacedHole> Holes,
    Region Piece,
    OutlineFigures Outline,
    ImmutableArray<StageFigures> Stages,
    StrikingFigures? Striking,
    BenchDatum Bench,
    ImmutableArray<WorkStep> Order,
    ImmutableArray<Finding> Findings)
{
    /// <summary>Mass and balance at one stage; null for one the plan does not come to.</summary>
    public StageFigures? At(Stage stage) => Stages.FirstOrDefault(s => s.Stage == stage);

    /// <summary>What each hole takes on which machine.</summary>
    public DrillPlan Drilling { get; init; } = DrillPlan.None;

    /// <summary>Measured pieces beside the plan, the guide piece first.</summary>
    public ImmutableArray<PositionReport> Measured { get; init; } = [];
}

/// <summary>A hole where it is made.</summary>
/// <param name="Name">Name, unique.</param>
/// <param name="At">Centre, plan's axes, mm.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="DiameterAsWritten">As the maker wrote it, or "" when it comes from a row.</param>
/// <param name="Use">What for.</param>
/// <param name="Make">How.</param>
/// <param name="Row">Name of the row it belongs to; null when single.</param>
public sealed record PlacedHole(string Name, Point At, Length Diameter, string DiameterAsWritten, HoleUse Use, HoleMake Make, string? Row)
{
    /// <summary>Diameter of the rod or tube that goes through the hole; null when not said.</summary>
    public Length? Pin { get; init; }

    /// <summary>Bore of the tube that goes through the hole; null: a rod.</summary>
    public Length? Tube { get; init; }

    /// <summary>Drilled after hardening, not before.</summary>
    public bool IsDrilledHard { get; init; }

    /// <summary>Where it came out as measured on the guide piece; null when not measured. Sheets, programs and scales that come after the guide piece go by it.</summary>
    public AsBuilt? AsBuilt { get; init; }

    /// <summary>Centre as built when measured, else as planned; plan's axes, mm.</summary>
    public Point MadeAt => AsBuilt?.At ?? At;

    /// <summary>Diameter as built when measured, else as planned.</summary>
    public Length MadeDiameter => AsBuilt?.Diameter ?? Diameter;
}

/// <summary>A hole as measured.</summary>
/// <param name="At">Centre, plan's axes, mm.</param>
/// <param name="Diameter">Diameter; null when only the centre was measured.</param>
public sealed record AsBuilt(Point At, Length? Diameter);

/// <summary>Figures of the outline and the holes.</summary>
/// <param name="Area">Area inside the outline, holes not taken off.</param>
/// <param name="Perimeter">Length of the outline.</param>
/// <param name="Length">Size along x.</param>
/// <param name="Height">Size along y.</param>
/// <param name="Centroid">Centre of the area, plan's axes, mm.</param>
/// <param name="HoleCount">Number of holes.</param>
/// <param name="HoleArea">Area of all holes.</param>
public sealed record OutlineFigures(Area Area, Length Perimeter, Length Length, Length Height, Point Centroid, int HoleCount, Area HoleArea);

/// <summary>Where the piece is on its way.</summary>
public enum Stage
{
    /// <summary>As sawn: the rectangle.</summary>
    Blank,

    /// <summary>Ground to the outline.</summary>
    Profiled,

    /// <summary>All holes made.</summary>
    Drilled,

    /// <summary>Ready for the oven.</summary>
    BeforeHardening,

    /// <summary>Finished steel, sharpened.</summary>
    Finished,

    /// <summary>Finished steel with what the plan puts on it.</summary>
    Assembled,
}

/// <summary>Mass and balance at one stage.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Volume">Volume of steel.</param>
/// <param name="Mass">Mass; null when the steel's density is not known.</param>
/// <param name="Balance">Balance point, plan's axes, mm.</param>
/// <param name="BalanceFromDatum">Along the piece, from the datum into it.</param>
/// <param name="BalanceAcrossFromDatum">Across the piece, from the datum into it.</param>
/// <param name="Solid">Moments of the solid's thickness over the plane, about the origin: volume, first and second moments, mm³..mm⁵; what is put on the steel counts as as much steel.</param>
public sealed record StageFigures(Stage Stage, Volume Volume, Mass? Mass, Point Balance, Length BalanceFromDatum, Length BalanceAcrossFromDatum, Moments Solid);

/// <summary>How the finished piece swings about the middle of the grip.</summary>
/// <param name="Pivot">Middle of the grip, plan's axes, mm.</param>
/// <param name="InertiaKgM2">Moment of inertia about the pivot, axis square to the face, kg·m².</param>
/// <param name="Percussion">Centre of percussion, plan's axes, mm.</param>
/// <param name="PivotToBalance">Distance from pivot to balance point.</param>
/// <param name="PivotToPercussion">Distance from pivot to centre of percussion.</param>
public sealed record StrikingFigures(Point Pivot, double InertiaKgM2, Point Percussion, Length PivotToBalance, Length PivotToPercussion);

/// <summary>The two edges measured from at the bench, and the way from plan to bench coordinates.</summary>
/// <param name="State">State of the work when drilled.</param>
/// <param name="AlongFrom">What x is measured from: "sawn end at the left".</param>
/// <param name="AcrossFrom">What y is measured from: "lower long edge of the bar".</param>
/// <param name="Corner">Where the two edges meet, plan's axes, mm.</param>
/// <param name="AlongSign">+1 when bench x grows with plan x, −1 when against it.</param>
/// <param name="AcrossSign">+1 when bench y grows with plan y, −1 when against it.</param>
/// <param name="StockBox">The bar or rectangle around the piece, plan's axes, mm; for an uncut bar its far end is one end allowance past the piece.</param>
/// <param name="Remark">What was assumed, in words; empty when nothing.</param>
public sealed record BenchDatum(DrilledIn State, string AlongFrom, string AcrossFrom, Point Corner, int AlongSign, int AcrossSign, Box StockBox, string Remark)
{
    /// <summary>Bench coordinates of a point of the plan, mm from the two edges.</summary>
    public Point ToBench(Point plan) => new((plan.X - Corner.X) * AlongSign, (plan.Y - Corner.Y) * AcrossSign);
}

/// <summary>One step of the order of work.</summary>
/// <param name="Number">From 1.</param>
/// <param name="What">What is done, short.</param>
/// <param name="On">On which machine or with what; empty when by hand.</param>
/// <param name="SheetKind">Kind of the sheet that goes with it; empty when none.</param>
/// <param name="Gate">A tick that must be made before going on; empty when none.</param>
/// <param name="Why">Why here and not later.</param>
public sealed record WorkStep(int Number, string What, string On, string SheetKind, string Gate, string Why);
