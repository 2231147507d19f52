using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What all holes of one plan have in common: the shop's tools, the stock and how its steel is cut.</summary>
internal sealed class DrillJob
{
    /// <summary>A split point starts by itself up to this size, any other only under the smaller; common practice.</summary>
    private const double NoPilotMm = 6;
    private const double NoPilotSplitMm = 10;

    /// <summary>A boring head takes this much of the diameter at the end, mm; common practice.</summary>
    private const double LeftToBoreMm = 0.5;

    /// <summary>Hardness of a blade when drilled hard, HB: 55 HRC on the conversion of ISO 18265, from memory.</summary>
    private const double HardHb = 560;

    private readonly Steel? _steel;
    private readonly Estimate<CuttingSpeed> _soft;
    private readonly Dictionary<double, DrillSize?> _pilots = [];

    public DrillJob(Plan plan, Shop shop, Steel? steel, Box stock)
    {
        (Plan, Shop, _steel, Stock) = (plan, shop, steel, stock);
        _soft = SpeedOf(shop.DrillGrind.Metal, hard: false);
    }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>The shop.</summary>
    public Shop Shop { get; }

    /// <summary>The bar or rectangle, plan's axes, mm.</summary>
    public Box Stock { get; }

    /// <summary>Thickness of the stock.</summary>
    public Length Thickness => Plan.Stock.Thickness;

    /// <summary>Point angle of the drills.</summary>
    public Angle Point => Shop.DrillGrind.Point;

    /// <summary>Band of cutting speed of a drill in a hole.</summary>
    public Estimate<CuttingSpeed> DrillSpeed(PlacedHole hole) => hole.IsDrilledHard ? SpeedOf(Shop.DrillGrind.Metal, hard: true) : _soft;

    /// <summary>Band of cutting speed of a tool of some metal in the stock as delivered.</summary>
    public Estimate<CuttingSpeed> SpeedOf(DrillMetal metal, bool hard) => CuttingSpeeds.For(_steel, hard ? "hardened" : Plan.Stock.Condition, hard ? HardHb : _steel?.DeliveredHardnessHb?.Value, metal);

    /// <summary>The last drill of a hole: its own size, or what the reamer or the boring head leaves.</summary>
    public DrillSize FinalDrill(PlacedHole hole) => hole.Make switch
    {
        HoleMake.Ream => HoleTools.BeforeReaming(Shop, hole.Diameter).Size,
        HoleMake.Bore => DrillSeries.SmallerOrEqual(Shop.Drills, Length.OfMm(hole.Diameter.Mm - LeftToBoreMm)) ?? DrillSeries.OfMm(hole.Diameter.Mm - LeftToBoreMm),
        _ => HoleTools.Drill(Shop, hole.Diameter),
    };

    /// <summary>The pilot before a drill: of those owned that clear its chisel edge and stay under half of it, the one nearest to what is wanted; null when it needs none or there is none.</summary>
    public DrillSize? Pilot(Length drill)
    {
        if (drill.Mm < (Shop.DrillGrind.IsSplitPoint ? NoPilotSplitMm : NoPilotMm)) return null;
        if (!_pilots.TryGetValue(drill.Mm, out var pilot))
        {
            var wanted = PilotSize.For(drill, Shop.DrillGrind.IsSplitPoint);
            pilot = HoleTools.Nearest(Shop.Drills.Where(d => d.Diameter >= wanted.Low && d.Diameter <= wanted.High), wanted.Value);
            _pilots[drill.Mm] = pilot;
        }

        return pilot;
    }

    /// <summary>Push and torque of a drill.</summary>
    public DrillLoad Load(PlacedHole hole, Length drill, Length? pilot, double feedMmPerTurn)
        => DrillLoad.Of(_steel, hole.IsDrilledHard ? HardHb : _steel?.DeliveredHardnessHb?.Value, drill, pilot, feedMmPerTurn, Shop.DrillGrind.IsSplitPoint);
}
