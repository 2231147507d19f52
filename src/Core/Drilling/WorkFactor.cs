using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Work material factor Kd of the handbook's drilling formulas for steel, from its Brinell hardness.</summary>
[Formula("work material factor Kd of drilling, the handbook's inch number", SourceTag.FromMemory, "steel of 200 to 400 HB by straight lines between 24 000, 31 000 and 34 000; 23 300 at 200 HB in SME, Fundamentals of Tool Design")]
public static class WorkFactor
{
    /// <summary>Annealed high-carbon bar when its hardness is not known, HB; common practice.</summary>
    public const double UsualHb = 200;

    private static readonly (double Hb, double Kd)[] Table = [(200, 24000), (300, 31000), (400, 34000)];

    /// <summary>The factor; held at the ends of the table.</summary>
    public static double Of(double hardnessHb)
    {
        for (var i = 1; i < Table.Length; i++)
        {
            if (hardnessHb > Table[i].Hb) continue;
            var share = Math.Max(0, (hardnessHb - Table[i - 1].Hb) / (Table[i].Hb - Table[i - 1].Hb));
            return Table[i - 1].Kd + (share * (Table[i].Kd - Table[i - 1].Kd));
        }

        return Table[^1].Kd;
    }
}
