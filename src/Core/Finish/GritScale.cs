using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Ways of naming how coarse an abrasive is.</summary>
public enum GritSeries
{
    /// <summary>FEPA P for belts and papers, the same as ISO 6344.</summary>
    FepaP,

    /// <summary>CAMI, the American numbers.</summary>
    Cami,

    /// <summary>JIS, the Japanese numbers.</summary>
    Jis,

    /// <summary>Grain size itself, µm.</summary>
    Micron,
}

/// <summary>How coarse an abrasive is, as it is marked.</summary>
/// <param name="Series">Which way of naming.</param>
/// <param name="Number">The number; for <see cref="GritSeries.Micron"/> the size in µm.</param>
public readonly record struct Grit(GritSeries Series, double Number)
{
    /// <summary>As it is marked: "P400", "CAMI 320", "JIS 400", "65 µm".</summary>
    public string Words => Series switch
    {
        GritSeries.FepaP => "P" + Shown.Trimmed(Number, 0),
        GritSeries.Cami => "CAMI " + Shown.Trimmed(Number, 0),
        GritSeries.Jis => "JIS " + Shown.Trimmed(Number, 0),
        _ => Shown.Trimmed(Number, 1) + " µm",
    };
}

/// <summary>Middle grain size of a grit, from data/tooling/grits.csv: FEPA P and ISO 6344 by their standard, CAMI and JIS by comparison charts.</summary>
/// <remarks>Between two numbers of a series the size is taken on straight lines of the logarithms of number and size; sizes are compared, never numbers of different series. FEPA F, for wheels and stones, is another series.</remarks>
[Formula("middle grain size of a grit, µm", "iso-6344", "FEPA P12 to P3000, CAMI 16 to 1200, JIS 50 to 3000; P12 to P220 by sieves, P240 and finer by settling, some 5 % between lists")]
public static class GritScale
{
    private static readonly Lazy<ImmutableArray<(double Number, double? P, double? Cami, double? Jis)>> Table = new(Read);

    /// <summary>Numbers a series has, coarse to fine, with their sizes, µm.</summary>
    public static ImmutableArray<(double Number, double Micron)> Of(GritSeries series)
        => [.. Table.Value.Select(r => (r.Number, Size: series switch { GritSeries.FepaP => r.P, GritSeries.Cami => r.Cami, GritSeries.Jis => r.Jis, _ => null })).Where(r => r.Size is not null).Select(r => (r.Number, r.Size!.Value))];

    /// <summary>Size, µm; null when the number lies outside the list.</summary>
    public static double? Micron(Grit grit)
    {
        if (grit.Series == GritSeries.Micron) return grit.Number > 0 ? grit.Number : null;
        return Between(Of(grit.Series).Select(r => (r.Number, r.Micron)).ToArray(), grit.Number);
    }

    /// <summary>The number of a series that would have a size, between its numbers too; null outside the list.</summary>
    public static double? Number(GritSeries series, double micron)
    {
        if (series == GritSeries.Micron) return micron;
        return Between(Of(series).Select(r => (r.Micron, r.Number)).OrderBy(r => r.Micron).ToArray(), micron);
    }

    /// <summary>The marked grit of a series nearest in size by ratio; null when more than a third coarser or finer.</summary>
    public static Grit? Nearest(GritSeries series, double micron)
    {
        var near = Of(series).MinBy(r => Math.Abs(Math.Log(r.Micron / micron)));
        return near.Micron > 0 && Math.Abs(Math.Log(near.Micron / micron)) <= Math.Log(4.0 / 3) ? new Grit(series, near.Number) : null;
    }

    // straight between the logarithms; the first of each pair ascends
    private static double? Between((double At, double Value)[] rows, double at)
    {
        if (!(at >= rows[0].At * (1 - 1e-9) && at <= rows[^1].At * (1 + 1e-9))) return null;
        var i = 1;
        while (i < rows.Length - 1 && rows[i].At < at) i++;
        var (a, b) = (rows[i - 1], rows[i]);
        var share = Math.Log(at / a.At) / Math.Log(b.At / a.At);
        return Math.Exp(Math.Log(a.Value) + (share * Math.Log(b.Value / a.Value)));
    }

    private static ImmutableArray<(double, double?, double?, double?)> Read()
    {
        return [.. DataRows.Of("grits.csv").Select(c => (Number(c[0])!.Value, Number(c[1]), Number(c[2]), Number(c[3])))];

        static double? Number(string text) => text.Length == 0 ? null : double.Parse(text, CultureInfo.InvariantCulture);
    }
}
