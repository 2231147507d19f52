using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What one tool does on its way.</summary>
/// <param name="Round">The tool and its holes.</param>
/// <param name="Stops">Where it stops, in order.</param>
public sealed record ToolWay(ToolRound Round, ImmutableArray<WayStop> Stops)
{
    /// <summary>Length of the way from the place before, mm.</summary>
    public double LengthMm(Point from)
    {
        var (at, sum) = (from, 0.0);
        foreach (var stop in Stops)
        {
            sum += at.To(stop.At);
            at = stop.At;
        }

        return sum;
    }
}

/// <summary>What is done between two times the work is moved under its clamps.</summary>
/// <param name="Pins">Two holes, made before, that are found again after the work was moved; empty for the first, fewer than two when none can be reached from both.</param>
/// <param name="SlideMm">How far the work is slid along, towards the first edge, since the clamping before, mm.</param>
/// <param name="Tools">The tools in order.</param>
public sealed record WayClamping(ImmutableArray<PlacedHole> Pins, double SlideMm, ImmutableArray<ToolWay> Tools);

/// <summary>The whole way of one machine over its holes: clampings, tools, stops.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Past">How far to go past a place that is come to from the wrong side; null when the machine has no play.</param>
/// <param name="Clampings">The clampings; one when the table travels far enough.</param>
public sealed record MachineWay(Machine Machine, Length? Past, ImmutableArray<WayClamping> Clampings)
{
    /// <summary>The way of a group of holes; null without a machine.</summary>
    public static MachineWay? Of(HoleGroup made, BenchDatum bench)
    {
        if (made.Machine is not { } machine) return null;
        var past = GoPast.Of(machine);
        var reach = Reclamp.Along(made.Holes.Select(h => h.Hole), machine.TravelX?.Mm ?? double.PositiveInfinity, bench.AlongSign);
        var clampings = ImmutableArray.CreateBuilder<WayClamping>();
        var start = 0.0;
        for (var i = 0; i < reach.Clampings.Length; i++)
        {
            ImmutableArray<PlacedHole> pins = i == 0 ? [] : reach.Pins[i - 1];
            var here = (pins.Length == 2 ? pins : reach.Clampings[i]).Min(h => bench.ToBench(h.MadeAt).X);
            var from = i == 0 ? default : bench.ToBench((pins.Length == 2 ? pins[1] : reach.Clampings[i][0]).MadeAt);
            clampings.Add(new(pins, i == 0 ? 0 : here - start, Tools(made.Holes.Where(h => reach.Clampings[i].Contains(h.Hole)), bench, from, past)));
            start = here;
        }

        return new(machine, past, clampings.ToImmutable());
    }

    /// <summary>Every hole once, seen from the back face: the work is turned over about its length, so that y counts the other way.</summary>
    public ImmutableArray<WayStop> Back(BenchDatum bench)
    {
        var holes = Clampings.SelectMany(c => c.Tools.SelectMany(t => t.Round.Holes)).DistinctBy(h => h.Name);
        var order = ShortestWay.Over(default, [.. holes.Select(Mirrored)]);
        var all = holes.ToImmutableArray();
        return WayStop.Along(default, order.Select(i => all[i]), Mirrored, Past);

        Point Mirrored(PlacedHole h) => bench.ToBench(h.MadeAt) is var p ? new Point(p.X, -p.Y) : default;
    }

    private static ImmutableArray<ToolWay> Tools(IEnumerable<HolePlan> holes, BenchDatum bench, Point from, Length? past)
    {
        var (at, tools) = (from, ImmutableArray.CreateBuilder<ToolWay>());
        foreach (var round in ToolRounds.Of(holes, bench, from))
        {
            tools.Add(new(round, WayStop.Along(at, round.Holes, h => bench.ToBench(h.MadeAt), past)));
            at = tools[^1].Stops[^1].At;
        }

        return tools.ToImmutable();
    }
}
