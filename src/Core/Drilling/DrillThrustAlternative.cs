using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Push and torque of a drill by the second published model.</summary>
[Formula("push, N: 570 K D f^0.85, and torque, N m: K D^2 (0.630 + 16.84 f) / 100, of a drill", "drill-catalogue-2020", "steel of 174 to 390 HB; K by straight lines in hardness between three rows of the maker's table (common practice)")]
public static class DrillThrustAlternative
{
    private static readonly (double Hb, double K)[] Table = [(174, 2.08), (255, 2.22), (390, 3.44)];

    /// <summary>Material factor K from the hardness; held at the ends of the table.</summary>
    public static double MaterialFactor(double hardnessHb)
    {
        for (var i = 1; i < Table.Length; i++)
        {
            if (hardnessHb > Table[i].Hb) continue;
            var share = Math.Max(0, (hardnessHb - Table[i - 1].Hb) / (Table[i].Hb - Table[i - 1].Hb));
            return Table[i - 1].K + (share * (Table[i].K - Table[i - 1].K));
        }

        return Table[^1].K;
    }

    /// <summary>Push and torque.</summary>
    /// <param name="materialFactor">K.</param>
    /// <param name="feedMmPerTurn">Feed, mm a turn.</param>
    /// <param name="drill">Diameter.</param>
    public static (Force Thrust, Torque Torque) Of(double materialFactor, double feedMmPerTurn, Length drill)
        => (Force.OfNewtons(570 * materialFactor * drill.Mm * Math.Pow(feedMmPerTurn, 0.85)),
            Torque.OfNewtonMetres(materialFactor * drill.Mm * drill.Mm * (0.63 + (16.84 * feedMmPerTurn)) / 100));
}
