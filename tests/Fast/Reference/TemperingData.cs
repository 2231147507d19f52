using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Tests.Rules;

namespace Tangwright.Tests.Reference;

/// <summary>One published reading.</summary>
internal sealed record TemperRow(string Steel, Chemistry Bar, double Hours, Temperature At, double Hrc, string Source = "", bool IsSecondHand = false, double? AsQuenchedHrc = null);

/// <summary>How far computed and measured lie apart.</summary>
internal readonly record struct Misses(int Count, double Bias, double Rmse, double Worst, string WorstAt)
{
    public static Misses Of(IEnumerable<(string Name, double Off)> offs)
    {
        var all = offs.ToArray();
        var worst = all.MaxBy(o => Math.Abs(o.Off));
        return new Misses(all.Length, all.Average(o => o.Off), Math.Sqrt(all.Average(o => o.Off * o.Off)), worst.Off, worst.Name);
    }
}

/// <summary>Hardness after tempering as measured, from tests/fixtures/tempering.</summary>
internal static class TemperingData
{
    public static ImmutableArray<TemperRow> GrangeBaughman { get; } = Raw("grange-baughman-1956.csv", "");

    public static ImmutableArray<TemperRow> GrangeBaughmanOneHour { get; } = Raw("grange-baughman-1956-one-hour.csv", "");

    public static ImmutableArray<TemperRow> HollomonJaffe { get; } = Raw("hollomon-jaffe-1945.csv", "");

    public static ImmutableArray<TemperRow> Penha { get; } = Raw("penha-2010.csv", "");

    public static ImmutableArray<TemperRow> Sheets { get; } =
    [
        .. Lines("data-sheets.csv").Select(c => new TemperRow(c[0], Steel(c[0]).Chemistry!.Value, Number(c[4]), Temperature.OfFahrenheit(Number(c[5])), Number(c[6]), c[1], c[2] == "1", c[3].Length == 0 ? null : Number(c[3]))),
    ];

    public static Steel Steel(string name) => FindingExamples.SteelOf(TestShop.Hatchet with { Stock = TestShop.Hatchet.Stock with { Steel = name } })!;

    private static ImmutableArray<TemperRow> Raw(string file, string prefix) =>
    [
        .. Lines(file).Select(c => new TemperRow(
            prefix + c[0],
            new Chemistry { CarbonPercent = Number(c[1]), ManganesePercent = Number(c[2]), SiliconPercent = Number(c[3]), NickelPercent = Number(c[4]), ChromiumPercent = Number(c[5]), MolybdenumPercent = Number(c[6]), VanadiumPercent = Number(c[7]) },
            Number(c[8]) / 3600,
            Temperature.OfCelsius(Number(c[9])),
            Number(c[10]))),
    ];

    private static IEnumerable<string[]> Lines(string file) => System.IO.File.ReadLines(Repository.Path("tests", "fixtures", "tempering", file)).Skip(1).Where(l => l.Length > 0).Select(l => l.Split(','));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
