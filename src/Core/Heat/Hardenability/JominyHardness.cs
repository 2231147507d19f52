using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Hardness along an end-quenched bar: initial hardness over the divisor of ASTM A255 at each distance. Past the diameter where a divisor first comes to 1 its polynomial has left its range, and 1 holds.</summary>
[Formula("hardness at a distance from the quenched end, HRC: IH / divisor", "astm-a255", "Ideal diameter 25 to 178 mm; steep part good to some 2 to 4 HRC (from memory)")]
public static class JominyHardness
{
    private static readonly Lazy<ImmutableArray<(double Mm, double[] A)>> Rows = new(() => [.. DataRows.Of("jominy-divisors.csv").Select(r => (Number(r[0]), r.Skip(1).Select(Number).ToArray()))]);

    private static readonly Lazy<ImmutableArray<double>> Ends = new(() => [.. Rows.Value.Select(r => FirstOneMm(r.A))]);

    /// <summary>Distances the divisors are printed for, mm.</summary>
    public static ImmutableArray<double> DistancesMm => [.. Rows.Value.Select(r => r.Mm)];

    /// <summary>The divisor.</summary>
    /// <param name="row">Which distance.</param>
    /// <param name="idealMm">Ideal diameter, mm.</param>
    public static double DivisorRatio(int row, double idealMm) => idealMm >= Ends.Value[row] ? 1 : Math.Max(1, Value(Rows.Value[row].A, idealMm));

    /// <summary>Hardness at each distance, HRC.</summary>
    /// <param name="initialHrc">Initial hardness, HRC.</param>
    /// <param name="idealMm">Ideal diameter, mm.</param>
    public static ImmutableArray<double> Along(double initialHrc, double idealMm) => [.. Enumerable.Range(0, Rows.Value.Length).Select(i => initialHrc / DivisorRatio(i, idealMm))];

    // the first ideal diameter at which the polynomial, falling, reaches 1 or turns up again
    private static double FirstOneMm(double[] a)
    {
        const double step = 0.25;
        for (var d = 25.0; d < 180; d += step)
        {
            if (Value(a, d) <= 1) return d;
            if (Value(a, d + step) > Value(a, d) && Value(a, d) < 1.2) return d;
        }

        return double.PositiveInfinity;
    }

    private static double Value(double[] a, double x)
    {
        var sum = 0.0;
        for (var i = a.Length - 1; i >= 0; i--) sum = (sum * x) + a[i];
        return sum;
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
