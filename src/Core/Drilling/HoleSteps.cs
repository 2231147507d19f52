using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The steps of one hole on one machine: spot, pilot, drill, ream or bore, chamfer.</summary>
public sealed class HoleSteps
{
    /// <summary>A spot as wide as this share of its drill leaves a chamfer; common practice.</summary>
    private const double SpotShare = 1.05;

    /// <summary>A flatter spot only centres; share of the drill, common practice.</summary>
    private const double CentreShare = 0.5;

    /// <summary>Chamfering both rims by hand, s; common practice.</summary>
    private const double ByHandSeconds = 20;

    /// <summary>Chamfer of a rim when the plan says nothing, mm; common practice.</summary>
    private const double UsualRimMm = 0.3;

    /// <summary>A countersink turns at this share of the speed of a drill of its size, lest it chatters; common practice.</summary>
    private const double CountersinkShare = 0.5;

    /// <summary>A speed under this share of the band's lower end is worth a word; common practice.</summary>
    private const double SlowShare = 0.9;

    private readonly DrillJob _job;
    private readonly Machine _machine;
    private readonly PlacedHole _hole;
    private readonly ImmutableArray<HoleOperation>.Builder _steps = ImmutableArray.CreateBuilder<HoleOperation>(5);

    private HoleSteps(DrillJob job, Machine machine, PlacedHole hole) => (_job, _machine, _hole) = (job, machine, hole);

    /// <summary>Whether a machine finds its places by itself or by readout, so that a spot drill starts the hole and not a punch mark.</summary>
    public static bool Spots(Machine machine) => machine.Kind == MachineKind.CncMill || (machine.Kind == MachineKind.MillDrill && machine.HasReadout);

    /// <summary>The steps in order.</summary>
    internal static ImmutableArray<HoleOperation> Of(DrillJob job, Machine machine, PlacedHole hole)
    {
        var steps = new HoleSteps(job, machine, hole);
        steps.All();
        return steps._steps.ToImmutable();
    }

    /// <summary>The pilot of a hole that no machine can finish, on the machine that places best of those that can drill it; null when there is none.</summary>
    internal static PilotElsewhere? PilotOf(DrillJob job, ImmutableArray<Machine> machines, PlacedHole hole)
    {
        if (hole.Make == HoleMake.Bore || (hole.IsDrilledHard && job.Shop.DrillGrind.Metal != DrillMetal.Carbide) || job.Pilot(job.FinalDrill(hole).Diameter) is not { } pilot) return null;
        var small = hole with { Diameter = pilot.Diameter, Make = HoleMake.Drill };
        foreach (var machine in machines)
        {
            if (MachineGates.Of(job, machine, small).Any()) continue;
            return new PilotElsewhere(machine, new HoleSteps(job, machine, hole).Drilled(HoleStep.Pilot, pilot, null));
        }

        return null;
    }

    private void All()
    {
        if (_hole.Make == HoleMake.Bore && _machine.Kind == MachineKind.CncMill)
        {
            _steps.Add(Helix(HoleTools.ForBore(_job.Shop, _hole.Diameter)!));
            _steps.Add(Chamfer());
            return;
        }

        var drill = _job.FinalDrill(_hole);
        var pilot = _job.Pilot(drill.Diameter);
        if (Spots(_machine)) _steps.Add(Spot(pilot ?? drill));
        if (pilot is not null) _steps.Add(Drilled(HoleStep.Pilot, pilot, null));
        _steps.Add(Drilled(HoleStep.Drill, drill, pilot));
        if (_hole.Make == HoleMake.Ream) _steps.Add(Ream());
        if (_hole.Make == HoleMake.Bore) _steps.Add(BoringHead());
        _steps.Add(Chamfer());
    }

    private HoleOperation Spot(DrillSize first)
    {
        var owned = HoleTools.Spot(_job.Shop);
        var point = owned?.Point ?? Angle.OfDegrees(90);
        var body = owned?.Diameter.Mm ?? Math.Min(6, first.Diameter.Mm);
        var cone = Length.OfMm(Math.Min(body, (point.Degrees <= 90.01 ? SpotShare : CentreShare) * first.Diameter.Mm));

        // by the whole body where the machine turns so slowly, else by what of it cuts
        var band = _job.DrillSpeed(_hole);
        var speed = SpindleSpeed.Of(_machine, band, Length.OfMm(body)) ?? SpindleSpeed.Of(_machine, band, cone) ?? SpindleSpeed.Of(_machine, band, first.Diameter);
        var feed = DrillFeed.For(cone).Low;
        var depth = PointLength.Of(cone, point).Mm;
        return new(HoleStep.Spot, owned?.Name ?? "spot drill", Length.OfMm(body), speed, feed, null, null, null, depth, null, Seconds(depth, feed, speed), owned is null ? "none in the shop file: a short stiff drill or a centre drill" : "");
    }

    private HoleOperation Drilled(HoleStep step, DrillSize drill, DrillSize? pilot)
    {
        var speed = SpindleSpeed.Of(_machine, _job.DrillSpeed(_hole), drill.Diameter)!;
        var effort = DrillEffort.Of(_job, _machine, _hole, drill.Diameter, pilot?.Diameter, speed.SetRpm);
        var depth = ThroughDepth.Of(_job.Thickness, drill.Diameter, _job.Point).Mm;
        var peck = PeckRule.For(_job.Thickness, drill.Diameter)?.Mm;
        var power = effort.Load.PowerAt(speed.SetRpm);
        return new(step, $"{drill.Name} drill", drill.Diameter, speed, effort.FeedMmPerTurn, effort.Load.Thrust, effort.Load.Torque, power, depth, peck, Seconds(depth, effort.FeedMmPerTurn, speed), Remark(step, drill, speed, effort));
    }

    private string Remark(HoleStep step, DrillSize drill, SpeedChoice speed, DrillEffort effort)
    {
        var says = new List<string>();
        if (step == HoleStep.Drill && _hole.IsDrilledHard) says.Add("hardened: steady feed, no dwell, coolant");
        if (!_job.Shop.Drills.Any(d => d.Diameter == drill.Diameter)) says.Add("NOT OWNED");
        if (effort.IsLight) says.Add("light feed: the machine has no more");
        if (speed.SetRpm < SlowShare * speed.LowRpm) says.Add("slower than it could be: feed by feel");
        if (_job.Thickness < PointLength.Of(drill.Diameter, _job.Point)) says.Add("grabs as it breaks through: board under it, clamp, ease off");
        return string.Join("; ", says);
    }

    private HoleOperation Ream()
    {
        var band = ReamingSpeeds.For(_job.SpeedOf(DrillMetal.HighSpeedSteel, hard: false));
        var speed = SpindleSpeed.Of(_machine, band, _hole.Diameter);
        var feed = speed is null ? 0 : ReamingSpeeds.FeedFactor * DrillFeed.For(_hole.Diameter).Value;
        var depth = _job.Thickness.Mm + _hole.Diameter.Mm;
        var owned = _job.Shop.Reamers.FirstOrDefault(r => Math.Abs((r.Diameter - _hole.Diameter).Mm) <= DrillFindings.SameSizeMm);
        var remark = speed is null ? "by hand: the machine turns too fast; never turn it backwards" : "oil; never turn it backwards";
        return new(HoleStep.Ream, $"{owned?.Name ?? Shown.Trimmed(_hole.Diameter.Mm, 2) + " mm"} reamer", _hole.Diameter, speed, feed, null, null, null, depth, null, speed is null ? ByHandSeconds : Seconds(depth, feed, speed), owned is null ? "NOT OWNED; " + remark : remark);
    }

    private HoleOperation BoringHead()
    {
        var speed = SpindleSpeed.Of(_machine, _job.SpeedOf(DrillMetal.HighSpeedSteel, hard: false), _hole.Diameter);
        const double Feed = 0.05;
        var depth = _job.Thickness.Mm + 1;
        return new(HoleStep.Bore, "boring head", _hole.Diameter, speed, Feed, null, null, null, depth, null, Seconds(depth, Feed, speed), "three or four light cuts; measure before the last");
    }

    private HoleOperation Helix(EndMill mill)
    {
        var speed = SpindleSpeed.Of(_machine, _job.SpeedOf(mill.IsCarbide ? DrillMetal.Carbide : DrillMetal.HighSpeedSteel, hard: _hole.IsDrilledHard), mill.Diameter);
        var feed = (mill.FeedPerTooth?.Mm ?? 0.005 * mill.Diameter.Mm) * mill.Flutes;
        var (pitch, depth) = (0.1 * mill.Diameter.Mm, _job.Thickness.Mm + 0.5);
        var travel = Math.PI * (_hole.Diameter - mill.Diameter).Mm * (1 + (depth / pitch));
        return new(HoleStep.Bore, mill.Name, mill.Diameter, speed, feed, null, null, null, depth, null, speed is null ? 0 : Seconds(travel, feed, speed), "on a helix, last round at depth");
    }

    private HoleOperation Chamfer()
    {
        var rim = (_job.Plan.BrokenEdges?.Rims ?? Length.OfMm(UsualRimMm)).Mm;
        var tool = HoleTools.Countersink(_job.Shop, _hole.Diameter);
        var all = _job.SpeedOf(DrillMetal.HighSpeedSteel, hard: false);
        CuttingSpeed Slow(CuttingSpeed v) => CuttingSpeed.OfMetresPerMin(CountersinkShare * v.MetresPerMin);
        var band = new Estimate<CuttingSpeed>(Slow(all.Value), Slow(all.Low), Slow(all.High), SourceTag.CommonPractice);
        if (_hole.IsDrilledHard) return new(HoleStep.Chamfer, "diamond or carbide burr", _hole.Diameter, null, 0, null, null, null, rim, null, ByHandSeconds, "both faces, by hand: hardened");
        var speed = tool is null ? null : SpindleSpeed.Of(_machine, band, Length.OfMm(_hole.Diameter.Mm + (2 * rim)));
        var byHand = tool is null || speed is null;
        return new(HoleStep.Chamfer, tool?.Name ?? "deburring tool", tool?.Diameter ?? _hole.Diameter, speed, 0, null, null, null, rim, null, ByHandSeconds, byHand ? "both faces, by hand" : "both faces");
    }

    private static double Seconds(double mm, double feedMmPerTurn, SpeedChoice? speed)
        => speed is null || feedMmPerTurn <= 0 ? 0 : 60 * mm / (feedMmPerTurn * speed.SetRpm);
}
