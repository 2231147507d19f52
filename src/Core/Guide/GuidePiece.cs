using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What a hole of the guide piece is for when a blank is drilled through it.</summary>
public enum GuideTurn
{
    /// <summary>Drilled first and pinned.</summary>
    First,

    /// <summary>Drilled second and pinned.</summary>
    Second,

    /// <summary>Drilled when both pins are in.</summary>
    Rest,
}

/// <summary>A hole drilled through the guide piece.</summary>
/// <param name="Hole">The hole.</param>
/// <param name="Turn">When.</param>
/// <param name="Drill">The drill that runs in the guide hole; null when none of the shop does without shaking.</param>
/// <param name="Speed">Its speed on the machine; null when there is none.</param>
/// <param name="Clearance">Guide hole less drill, on the diameter: as measured, else the most a drilled hole is over.</param>
/// <param name="IsMeasured">Whether the size of the guide hole was measured.</param>
/// <param name="Walk">How far beside the guide hole the drill comes out of the blank at most.</param>
/// <param name="Shift">How far the blank can lie beside the guide there at most; null where the pins are not yet in.</param>
public sealed record GuideHole(PlacedHole Hole, GuideTurn Turn, DrillSize? Drill, SpeedChoice? Speed, Length Clearance, bool IsMeasured, Length Walk, Length? Shift);

/// <summary>Blanks drilled through a finished piece: which holes, in what order, which two take the pins.</summary>
/// <param name="Machine">The drilling vise.</param>
/// <param name="Holes">The holes in the order they are drilled.</param>
/// <param name="Elsewhere">Holes this machine cannot drill.</param>
/// <param name="PinsApart">Distance between the two pins; null when fewer than two holes can be pinned.</param>
public sealed record GuidePiece(Machine Machine, ImmutableArray<GuideHole> Holes, ImmutableArray<PlacedHole> Elsewhere, Length? PinsApart)
{
    /// <summary>A drill with more play in its guide hole shakes and spoils it, mm; common practice.</summary>
    public const double MostPlayMm = 0.3;

    /// <summary>A rod of a hole enters with the play of a drill at most; a measured hole may be a little under its drill's name, mm.</summary>
    private const double SlackMm = 0.01;

    /// <summary>Through the guide on every drilling vise of the shop; none without one or without a hole it can drill.</summary>
    public static ImmutableArray<GuidePiece> Of(Results r)
        => [.. r.Shop.Machines.Where(m => m.Kind == MachineKind.DrillingVise).Select(m => On(r, m)).OfType<GuidePiece>()];

    private static GuidePiece? On(Results r, Machine machine)
    {
        var can = r.Drilling.Holes.Where(h => !h.Hole.IsDrilledHard && h.Refusals.All(x => x.Machine != machine.Name)).Select(h => h.Hole).ToImmutableArray();
        if (can.IsEmpty) return null;
        var job = new DrillJob(r.Plan, r.Shop, r.Steel, r.Bench.StockBox, r.Holes);
        var thickness = r.Plan.Stock.Thickness;
        var drills = can.ToDictionary(h => h.Name, h => DrillIn(r.Shop, h), StringComparer.Ordinal);
        var pins = Pins([.. can.Where(h => drills[h.Name] is not null)], r.Bench);
        var order = InOrder(can, pins, r.Bench);
        return new(
            machine,
            [.. order.Select((h, i) => Made(h, pins.Length < 2 || i > 1 ? GuideTurn.Rest : i == 0 ? GuideTurn.First : GuideTurn.Second))],
            [.. r.Holes.Where(h => can.All(c => c.Name != h.Name))],
            pins.Length == 2 ? Length.OfMm(pins[0].MadeAt.To(pins[1].MadeAt)) : null);

        GuideHole Made(PlacedHole hole, GuideTurn turn)
        {
            var drill = drills[hole.Name];
            var clearance = Play(hole, drill);
            var speed = drill is null ? null : SpindleSpeed.Of(machine, job.DrillSpeed(hole), drill.Diameter);
            Length? shift = turn == GuideTurn.Rest && pins.Length == 2
                ? PinnedPlay.Of(pins[0].MadeAt, pins[1].MadeAt, Play(pins[0], drills[pins[0].Name]) * 2, Play(pins[1], drills[pins[1].Name]) * 2, hole.MadeAt)
                : null;
            return new(hole, turn, drill, speed, clearance, hole.AsBuilt?.Diameter is not null, BushingTilt.Of(clearance, thickness, Length.Zero, thickness), shift);
        }
    }

    // in the guide as in the blank: as measured, else the most a drilled hole is over
    private static Length Play(PlacedHole hole, DrillSize? drill)
        => hole.AsBuilt?.Diameter is { } d && drill is not null ? Length.Max(d - drill.Diameter, Length.Zero) : DrilledSize.MostOver(hole.Diameter);

    private static DrillSize? DrillIn(Shop shop, PlacedHole hole)
        => DrillSeries.SmallerOrEqual(shop.Drills, Length.OfMm(hole.MadeDiameter.Mm + SlackMm)) is { } drill && hole.MadeDiameter.Mm - drill.Diameter.Mm <= MostPlayMm ? drill : null;

    // the two farthest apart; of those the one nearer to the corner measured from goes first
    private static ImmutableArray<PlacedHole> Pins(ImmutableArray<PlacedHole> holes, BenchDatum bench)
    {
        if (holes.Length < 2) return [];
        var (a, b) = HolePairs.FarthestApart(holes);
        return bench.ToBench(a.MadeAt).Length <= bench.ToBench(b.MadeAt).Length ? [a, b] : [b, a];
    }

    private static ImmutableArray<PlacedHole> InOrder(ImmutableArray<PlacedHole> holes, ImmutableArray<PlacedHole> pins, BenchDatum bench)
    {
        var rest = holes.Where(h => pins.All(p => p.Name != h.Name)).ToImmutableArray();
        var from = pins.Length == 2 ? bench.ToBench(pins[1].MadeAt) : default;
        return [.. pins, .. ShortestWay.Over(from, [.. rest.Select(h => bench.ToBench(h.MadeAt))]).Select(i => rest[i])];
    }
}
