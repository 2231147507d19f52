using Tangwright.Core;

namespace Tangwright.Inputs;

/// <summary>A grit as it is marked: <c>P400</c>, <c>CAMI 320</c>, <c>JIS 400</c>, <c>65 um</c>.</summary>
public static class GritText
{
    private const string Ways = "write it as P400, CAMI 320, JIS 400 or 65 um";

    /// <summary>Reads it; a bare number is refused, because the series differ.</summary>
    public static Reading<Grit> Read(string text)
    {
        var t = text.Trim();
        var digits = new string([.. t.Where(c => char.IsAsciiDigit(c) || c is '.' or ',')]);
        var word = new string([.. t.Where(c => !char.IsAsciiDigit(c) && c is not ('.' or ',') && !char.IsWhiteSpace(c))]).ToUpperInvariant();
        var number = NumberText.Read(digits, "", out _);
        if (digits.Length == 0 || !number.IsGood) return Reading<Grit>.Bad($"'{NumberText.Clip(t)}' is no grit", Ways);
        GritSeries? series = word switch
        {
            "P" or "FEPAP" => GritSeries.FepaP,
            "CAMI" or "US" => GritSeries.Cami,
            "JIS" or "J" => GritSeries.Jis,
            "UM" or "µM" or "ΜM" or "MICRON" => GritSeries.Micron,
            _ => null,
        };
        if (series is null) return Reading<Grit>.Bad(word.Length == 0 ? "a grit without its series" : $"'{NumberText.Clip(word)}' is no series of grits", $"write P{digits}, CAMI {digits} or JIS {digits}: they are not the same grain");
        var grit = new Grit(series.Value, number.Value);
        return GritScale.Micron(grit) is { } um and > 0.1 and < 2500 ? Reading<Grit>.Of(grit) : Reading<Grit>.Bad($"{grit.Words} is not in the lists of grits", Ways);
    }
}
