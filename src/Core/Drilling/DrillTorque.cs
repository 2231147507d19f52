using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Torque of a drill by the handbook formula; mm, mm a turn, N·m.</summary>
[Formula("torque of a drill, N m: Kd Ff FM A W / 40 000", "machinerys-handbook-31", "high-speed steel drills of 1 to 50 mm; the second model lies 30 to 40 % lower at bench sizes")]
public static class DrillTorque
{
    /// <summary>The torque.</summary>
    /// <param name="workFactor">Kd.</param>
    /// <param name="feedMmPerTurn">Feed, mm a turn.</param>
    /// <param name="drill">Diameter.</param>
    /// <param name="chiselShare">Chisel edge as a share of the diameter.</param>
    /// <param name="wearFactor">W, 1 for sharp.</param>
    public static Torque Of(double workFactor, double feedMmPerTurn, Length drill, double chiselShare, double wearFactor)
        => Torque.OfNewtonMetres(workFactor * wearFactor * Math.Pow(feedMmPerTurn, 0.8) * Math.Pow(drill.Mm, 1.8) * ChiselFactors.Of(chiselShare).AFactor / 40000);
}
