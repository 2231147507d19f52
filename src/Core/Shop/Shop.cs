using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Which units sheets and answers show.</summary>
public enum UnitsShown
{
    /// <summary>mm only.</summary>
    Mm,

    /// <summary>Inches only.</summary>
    Inch,

    /// <summary>Both side by side.</summary>
    Both,
}

/// <summary>What a shop has.</summary>
/// <param name="Name">Name of the shop.</param>
/// <param name="IsAssumed">Whether it is the built-in one, not the maker's own.</param>
/// <param name="Show">Units to show.</param>
/// <param name="Machines">Machines that make holes or mill.</param>
/// <param name="Drills">Drills owned, by size, ascending.</param>
/// <param name="Reamers">Reamers owned, by size, ascending.</param>
/// <param name="Saws">Saws.</param>
/// <param name="Wheels">Contact and small wheels of the belt grinder, by radius, ascending.</param>
/// <param name="Oven">Hardening oven; null when none.</param>
/// <param name="TemperOven">Tempering oven; null when the hardening oven is used.</param>
/// <param name="Quenchant">Quenchant; null when none.</param>
/// <param name="Printers">Printers; never empty.</param>
/// <param name="EndAllowance">Steel left beyond the piece at a sawn end.</param>
/// <param name="EdgeMargin">Steel left beside the piece in a sawn rectangle.</param>
public sealed record Shop(
    string Name,
    bool IsAssumed,
    UnitsShown Show,
    ImmutableArray<Machine> Machines,
    ImmutableArray<DrillSize> Drills,
    ImmutableArray<DrillSize> Reamers,
    ImmutableArray<Saw> Saws,
    ImmutableArray<Wheel> Wheels,
    Oven? Oven,
    Oven? TemperOven,
    Quenchant? Quenchant,
    ImmutableArray<Printer> Printers,
    Length EndAllowance,
    Length EdgeMargin)
{
    /// <summary>How the drills are ground and made.</summary>
    public DrillGrind DrillGrind { get; init; } = DrillGrind.Usual;

    /// <summary>Spot drills, by diameter, ascending.</summary>
    public ImmutableArray<PointedTool> SpotDrills { get; init; } = [];

    /// <summary>Countersinks, by diameter, ascending.</summary>
    public ImmutableArray<PointedTool> Countersinks { get; init; } = [];

    /// <summary>End mills, by diameter, ascending.</summary>
    public ImmutableArray<EndMill> EndMills { get; init; } = [];

    /// <summary>Clamps of the mill.</summary>
    public ImmutableArray<Clamp> Clamps { get; init; } = [];

    /// <summary>How well holes are placed, for every way at least one; the maker's own first.</summary>
    public ImmutableArray<PlacingCapability> Placings { get; init; } = [];

    /// <summary>Whether the shop file names no saw and the built-in one stands in.</summary>
    public bool SawsAreAssumed { get; init; }

    /// <summary>Whether the shop file names no belt and those of the built-in shop stand in.</summary>
    public bool BeltsAreAssumed { get; init; }

    /// <summary>Quenchants that are known, the shop's own kinds first.</summary>
    public ImmutableArray<QuenchMedium> KnownMedia { get; init; } = [];

    /// <summary>Materials of handles that are known, the shop's own first.</summary>
    public ImmutableArray<HandleMaterial> KnownHandles { get; init; } = [];

    /// <summary>The air of the shop; null when not said.</summary>
    public Air? Air { get; init; }

    /// <summary>How handles are glued.</summary>
    public Gluing Gluing { get; init; } = Gluing.Usual;

    /// <summary>Bars in the rack.</summary>
    public ImmutableArray<RackBar> Rack { get; init; } = [];

    /// <summary>Bars that can be bought, with what they cost.</summary>
    public ImmutableArray<PricedBar> Bars { get; init; } = [];

    /// <summary>What prices are counted in; empty when not said.</summary>
    public string Money { get; init; } = "";

    /// <summary>Steel left between a piece and a long edge of the bar; common practice 0.5 mm.</summary>
    public Length BarEdge { get; init; } = Length.OfMm(0.5);

    /// <summary>Steel left outside the line at a rough saw cut, for the grinder; common practice 0.5 to 1.5 mm.</summary>
    public Length RoughAllowance { get; init; } = Length.OfMm(1);

    /// <summary>How far the width of the profiled piece may be off, either way; common practice 0.3 mm.</summary>
    public Length ProfileTolerance { get; init; } = Length.OfMm(0.3);

    /// <summary>Belts of the grinder, coarsest first.</summary>
    public ImmutableArray<Belt> Belts { get; init; } = [];

    /// <summary>Motor power of the belt grinder, W; null when not said.</summary>
    public double? GrinderPowerW { get; init; }

    /// <summary>Width of its belts; common practice 50 mm.</summary>
    public Length BeltWidth { get; init; } = Length.OfMm(50);

    /// <summary>Slowest and fastest belt speed it has; null when not said.</summary>
    public (CuttingSpeed Low, CuttingSpeed High)? BeltSpeeds { get; init; }

    /// <summary>Papers and stones for finishing by hand, coarsest first.</summary>
    public ImmutableArray<Grit> Papers { get; init; } = [];

    /// <summary>What belts and papers did on batches before; empty without a log.</summary>
    public ImmutableArray<GrindingEntry> GrindingLog { get; init; } = [];

    /// <summary>Hardness tester; null when none.</summary>
    public HardnessTester? HardnessTester { get; init; }

    /// <summary>Hardness read on pieces before; empty without a log.</summary>
    public ImmutableArray<HardnessEntry> HardnessLog { get; init; } = [];

    /// <summary>Share of started pieces that come out good, above 0 to 1; null until counted.</summary>
    public double? YieldShare { get; init; }

    /// <summary>Chance of enough good pieces that is asked for, above 0 and under 1; null: by rule.</summary>
    public double? ChanceShare { get; init; }
}

/// <summary>Kind of machine or way of making holes.</summary>
public enum MachineKind
{
    /// <summary>Punch and drill press.</summary>
    DrillPress,

    /// <summary>Drill press with a drilling vise and a finished piece as guide.</summary>
    DrillingVise,

    /// <summary>Manual mill or mill-drill.</summary>
    MillDrill,

    /// <summary>Mill under computer control.</summary>
    CncMill,
}

/// <summary>A machine that makes holes.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Kind">Kind.</param>
/// <param name="SpeedsRpm">Spindle speeds in rpm, ascending: the steps of a pulley or gear head, or just the least and the greatest when <paramref name="SpeedIsStepless"/>.</param>
/// <param name="SpeedIsStepless">Any speed between the first and the last.</param>
/// <param name="Chuck">Largest drill the chuck holds; null when not said.</param>
/// <param name="Throat">Spindle to column; null when not said.</param>
/// <param name="TravelX">Table travel along x; null when none.</param>
/// <param name="TravelY">Table travel along y; null when none.</param>
/// <param name="PowerW">Motor power, W; null when not said.</param>
/// <param name="HasReadout">Digital readout of the table.</param>
public sealed record Machine(
    string Name,
    MachineKind Kind,
    ImmutableArray<double> SpeedsRpm,
    bool SpeedIsStepless,
    Length? Chuck,
    Length? Throat,
    Length? TravelX,
    Length? TravelY,
    double? PowerW,
    bool HasReadout)
{
    /// <summary>Table along and across; null when not said.</summary>
    public (Length X, Length Y)? Table { get; init; }

    /// <summary>How wide its vise opens; null when not said or none.</summary>
    public Length? ViseOpens { get; init; }

    /// <summary>Travel of the spindle; null when not said.</summary>
    public Length? TravelZ { get; init; }

    /// <summary>Push on the drill that it bears; null when not said.</summary>
    public Force? MostThrust { get; init; }

    /// <summary>Play of the table screws; null when not said.</summary>
    public Length? Backlash { get; init; }

    /// <summary>Share of the motor's power that reaches the spindle, above 0 to 1; null: by rule.</summary>
    public double? EfficiencyShare { get; init; }

    /// <summary>Time to change a tool, s; null: by rule.</summary>
    public double? ToolChangeSeconds { get; init; }

    /// <summary>Speed of a move that does not cut, mm/min; null when not said.</summary>
    public double? RapidMmPerMin { get; init; }

    /// <summary>What its program may use; matters only to a mill under computer control.</summary>
    public ProgramWays ProgramWays { get; init; } = ProgramWays.Usual;
}

/// <summary>A drill or reamer by its size.</summary>
/// <param name="Name">As the trade calls it: "6 mm", "1/4 in", "#30", "F".</param>
/// <param name="Diameter">Nominal diameter.</param>
public sealed record DrillSize(string Name, Length Diameter);

/// <summary>A wheel of the belt grinder.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Diameter">Diameter over the belt.</param>
public sealed record Wheel(string Name, Length Diameter);

/// <summary>A belt of the grinder.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Grit">P grade of its grain.</param>
/// <param name="GramsPerMinute">Steel it takes off, average over its life, g/min; null: by common practice for its grit.</param>
/// <param name="GramsPerBelt">Steel it takes off in its life, g; null: by common practice for its grit.</param>
public sealed record Belt(string Name, double Grit, double? GramsPerMinute, double? GramsPerBelt)
{
    /// <summary>Its grain as it is marked, when that is no P grade; null: P and the grit.</summary>
    public Grit? Marked { get; init; }

    /// <summary>Its grain as marked.</summary>
    public Grit Grain => Marked ?? new Grit(GritSeries.FepaP, Grit);
}

/// <summary>An oven.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Width">Chamber width; null when not said.</param>
/// <param name="Height">Chamber height; null when not said.</param>
/// <param name="Depth">Chamber depth; null when not said.</param>
/// <param name="ReadsHighByC">How much too high it reads, °C; negative when it reads low; null when never measured.</param>
public sealed record Oven(string Name, Length? Width, Length? Height, Length? Depth, double? ReadsHighByC)
{
    /// <summary>What keeps air from the steel in it.</summary>
    public SkinGuard Guard { get; init; }

    /// <summary>How far it swings to either side of its setting, °C; null when not said.</summary>
    public double? SwingC { get; init; }
}

/// <summary>What keeps air from hot steel.</summary>
public enum SkinGuard
{
    /// <summary>Nothing: it scales and loses carbon.</summary>
    None,

    /// <summary>An anti-scale coating.</summary>
    Coating,

    /// <summary>Wrapped in stainless foil.</summary>
    Foil,

    /// <summary>A protective gas or a box with little air.</summary>
    Gas,
}

/// <summary>What the piece is quenched in.</summary>
/// <param name="Name">Kind in the trade's words: "medium oil", "fast oil", "plates".</param>
/// <param name="Litres">Volume, L; null for plates.</param>
public sealed record Quenchant(string Name, double? Litres)
{
    /// <summary>What is known of that kind; null when no file names it.</summary>
    public QuenchMedium? Medium { get; init; }

    /// <summary>Temperature it is used at; null when not said.</summary>
    public Temperature? At { get; init; }

    /// <summary>Flash point by its maker's sheet; null when not said.</summary>
    public Temperature? FlashPoint { get; init; }

    /// <summary>Warmest it is let get; null when not said.</summary>
    public Temperature? Warmest { get; init; }
}

/// <summary>A printer and what its check bars measured.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Paper">Paper it holds: a4, letter, a3 or roll.</param>
/// <param name="RollWidth">Width of the roll; null for cut sheets.</param>
/// <param name="Margin">Margin it cannot print.</param>
/// <param name="BarAcrossMm">What the 100 mm bar across the sheet measured, mm; 100 when never measured.</param>
/// <param name="BarAlongMm">What the 100 mm bar along the feed measured, mm; 100 when never measured.</param>
public sealed record Printer(string Name, string Paper, Length? RollWidth, Length Margin, double BarAcrossMm, double BarAlongMm);
