using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One hardness on other scales, and the strength that goes with it, from data/hardness/astm-e140.csv.</summary>
[Formula("Vickers and Brinell hardness and tensile strength of a Rockwell C hardness, and back", "astm-e140", "20 to 68 HRC, Brinell to 65 (a carbide ball over 60), strength to 59; steel other than austenitic, two reprints of table 1 agree; a straight line between rows, nothing outside; strength over 58 HRC is not to be relied on; round what is converted")]
public static class RockwellTable
{
    /// <summary>1 ksi in MPa, from the international inch and pound.</summary>
    public const double MpaOfKsi = 6.894757293168361;

    private static readonly Lazy<ImmutableArray<Row>> Rows = new(() => [.. DataRows.Of("astm-e140.csv").Select(c => new Row(Value(c[0])!.Value, Value(c[1])!.Value, Value(c[2]), Value(c[3]) * MpaOfKsi)).OrderBy(r => r.Hrc)]);

    /// <summary>Softest and hardest in the table, HRC.</summary>
    public static HardnessBand Reach => new(Rows.Value[0].Hrc, Rows.Value[^1].Hrc);

    /// <summary>Vickers hardness, HV; null outside the table.</summary>
    /// <param name="hrc">Rockwell C hardness.</param>
    public static double? Hv(double hrc) => Between(hrc, r => r.Hrc, r => r.Hv);

    /// <summary>Brinell hardness, HB; null outside the table.</summary>
    /// <param name="hrc">Rockwell C hardness.</param>
    public static double? Hb(double hrc) => Between(hrc, r => r.Hrc, r => r.Hb);

    /// <summary>Tensile strength, MPa; null outside the table.</summary>
    /// <param name="hrc">Rockwell C hardness.</param>
    public static double? StrengthMpa(double hrc) => Between(hrc, r => r.Hrc, r => r.StrengthMpa);

    /// <summary>Rockwell C hardness of a Vickers hardness; null outside the table.</summary>
    /// <param name="hv">Vickers hardness, HV.</param>
    public static double? HrcOfHv(double hv) => Between(hv, r => r.Hv, r => r.Hrc);

    private static double? Between(double at, Func<Row, double?> from, Func<Row, double?> to)
    {
        var rows = Rows.Value;
        for (var i = 1; i < rows.Length; i++)
        {
            if (from(rows[i - 1]) is not { } low || from(rows[i]) is not { } high || at < low || at > high) continue;
            return at == low ? to(rows[i - 1]) : at == high ? to(rows[i]) : to(rows[i - 1]) + ((at - low) / (high - low) * (to(rows[i]) - to(rows[i - 1])));
        }

        return null;
    }

    private static double? Value(string text) => text.Length == 0 ? null : double.Parse(text, CultureInfo.InvariantCulture);

    private readonly record struct Row(double Hrc, double Hv, double? Hb, double? StrengthMpa);
}
