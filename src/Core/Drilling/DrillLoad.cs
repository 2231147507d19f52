using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Push and torque of a drill as a band: the lower and the higher of two published models, their middle between.</summary>
/// <param name="Thrust">Push.</param>
/// <param name="Torque">Torque at the spindle.</param>
public sealed record DrillLoad(Estimate<Force> Thrust, Estimate<Torque> Torque)
{
    private const string BothModels = "machinerys-handbook-31";

    /// <summary>Power at the spindle at so many turns a minute.</summary>
    public Estimate<Power> PowerAt(double turnsPerMin)
        => new(Power.Of(Torque.Value, turnsPerMin), Power.Of(Torque.Low, turnsPerMin), Power.Of(Torque.High, turnsPerMin), Torque.SourceKey, Torque.OutsideRange);

    /// <summary>The band for one drill.</summary>
    /// <param name="hardnessHb">Hardness of the steel, HB.</param>
    /// <param name="drill">Diameter.</param>
    /// <param name="pilot">Pilot drilled before; null for none.</param>
    /// <param name="feedMmPerTurn">Feed, mm a turn.</param>
    /// <param name="isSplitPoint">Split point.</param>
    public static DrillLoad Of(double hardnessHb, Length drill, Length? pilot, double feedMmPerTurn, bool isSplitPoint)
    {
        var chisel = isSplitPoint ? ChiselFactors.SplitShare : ChiselFactors.StandardShare;
        var kd = WorkFactor.Of(hardnessHb);
        var thrust = DrillThrust.Of(kd, feedMmPerTurn, drill, chisel, DrillThrust.NormalWearFactor);
        var torque = DrillTorque.Of(kd, feedMmPerTurn, drill, chisel, DrillThrust.NormalWearFactor);
        var other = DrillThrustAlternative.Of(DrillThrustAlternative.MaterialFactor(hardnessHb), feedMmPerTurn, drill);
        var (push, turn) = (1.0, 1.0);
        if (pilot is { } p)
        {
            var c = ChiselFactors.Of(chisel);
            var terms = (0.05 * Math.Pow(feedMmPerTurn * drill.Mm, 0.8) * c.BFactor, 0.007 * drill.Mm * drill.Mm * c.JFactor);
            (push, turn) = (PilotRelief.ThrustShare(terms, p / drill, chisel), PilotRelief.TorqueShare(p / drill));
        }

        var outside = hardnessHb is < 174 or > 400 ? $"steel of {Shown.Number(hardnessHb, 0)} HB; the models hold for 174 to 400 HB" : "";
        var (t1, t2) = (push * thrust.Newtons, push * other.Thrust.Newtons);
        var (m1, m2) = (turn * torque.NewtonMetres, turn * other.Torque.NewtonMetres);
        return new(
            new(Force.OfNewtons((t1 + t2) / 2), Force.OfNewtons(Math.Min(t1, t2)), Force.OfNewtons(Math.Max(t1, t2)), BothModels, outside),
            new(Foundation.Torque.OfNewtonMetres((m1 + m2) / 2), Foundation.Torque.OfNewtonMetres(Math.Min(m1, m2)), Foundation.Torque.OfNewtonMetres(Math.Max(m1, m2)), BothModels, outside));
    }
}
