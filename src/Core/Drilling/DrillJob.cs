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

    /// <summary>Hardness of a blade when the plan does not say it, HRC; common practice.</summary>
    private const double UsualHrc = 57;

    private readonly Steel? _steel;
    private readonly Estimate<CuttingSpeed> _soft;
    private readonly double _hardHb;
    private readonly Dictionary<double, DrillSize> _pilots = [];

    public DrillJob(Plan plan, Shop shop, Steel? steel, Box stock, IEnumerable<PlacedHole> holes)
    {
        (Plan, Shop, _steel, Stock) = (plan, shop, steel, stock);
        _hardHb = BrinellHardness.OfRockwellC(plan.Target.Hardness is { } h ? (h.LowHrc + h.HighHrc) / 2 : UsualHrc);
        _soft = SpeedOf(shop.DrillGrind.Metal, hard: false);
        SharePilots(holes.Select(h => FinalDrill(h).Diameter));
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

    /// <summary>Band of cutting speed of a tool of some metal in the stock, as delivered or once hardened.</summary>
    public Estimate<CuttingSpeed> SpeedOf(DrillMetal metal, bool hard) => CuttingSpeeds.For(_steel, hard ? _hardHb : null, metal);

    /// <summary>The last drill of a hole: its own size, or what the reamer or the boring head leaves.</summary>
    public DrillSize FinalDrill(PlacedHole hole) => hole.Make switch
    {
        HoleMake.Ream => HoleTools.BeforeReaming(Shop, hole.Diameter).Size,
        HoleMake.Bore => DrillSeries.SmallerOrEqual(Shop.Drills, Length.OfMm(hole.Diameter.Mm - LeftToBoreMm)) ?? DrillSeries.OfMm(hole.Diameter.Mm - LeftToBoreMm),
        _ => HoleTools.Drill(Shop, hole.Diameter),
    };

    /// <summary>The pilot before a drill; null when it needs none or none is owned that clears its chisel edge and stays under half of it.</summary>
    public DrillSize? Pilot(Length drill) => _pilots.GetValueOrDefault(drill.Mm);

    /// <summary>As few pilots as will do: the drill with the narrowest room chooses the widest pilot it can take, and all that can take the same do.</summary>
    private void SharePilots(IEnumerable<Length> drills)
    {
        var left = drills.Where(d => d.Mm >= (Shop.DrillGrind.IsSplitPoint ? NoPilotSplitMm : NoPilotMm)).Distinct()
            .Select(d => (Drill: d, Band: PilotSize.For(d, Shop.DrillGrind.IsSplitPoint)))
            .OrderBy(p => p.Band.High.Mm).ToList();
        while (left.Count > 0)
        {
            var narrowest = left[0].Band;
            if (DrillSeries.SmallerOrEqual(Shop.Drills.Where(d => d.Diameter >= narrowest.Low), narrowest.High) is not { } pilot)
            {
                left.RemoveAt(0);
                continue;
            }

            foreach (var p in left.Where(p => pilot.Diameter >= p.Band.Low)) _pilots[p.Drill.Mm] = pilot;
            left.RemoveAll(p => pilot.Diameter >= p.Band.Low);
        }
    }

    /// <summary>Push and torque of a drill.</summary>
    public DrillLoad Load(PlacedHole hole, Length drill, Length? pilot, double feedMmPerTurn)
        => DrillLoad.Of(hole.IsDrilledHard ? _hardHb : _steel?.DeliveredHardnessHb?.Value ?? WorkFactor.UsualHb, drill, pilot, feedMmPerTurn, Shop.DrillGrind.IsSplitPoint);
}
