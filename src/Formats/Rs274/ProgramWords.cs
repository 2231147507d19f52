using System.Globalization;
using System.Text;

namespace Tangwright.Formats;

/// <summary>Numbers and remarks as a controller reads them.</summary>
internal static class ProgramWords
{
    private const double MmPerInch = 25.4;

    /// <summary>Rounds a length as it will be written; mm in, mm out.</summary>
    public static double Rounded(double mm, bool inch) => inch ? Math.Round(mm / MmPerInch, 5) * MmPerInch : Math.Round(mm, 4);

    /// <summary>A letter with a length.</summary>
    public static string Length(char letter, double mm, bool inch) => letter + Number(inch ? mm / MmPerInch : mm, inch ? 5 : 4);

    /// <summary>A letter with a feed.</summary>
    public static string Feed(double mmPerMin, bool inch) => "F" + Number(inch ? mmPerMin / MmPerInch : mmPerMin, inch ? 3 : 1);

    /// <summary>A number without needless zeros; never "-0".</summary>
    public static string Number(double value, int decimals)
        => (Math.Round(value, decimals) + 0.0).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    /// <summary>A remark in brackets: plain letters only, so that no controller stumbles.</summary>
    public static string Remark(string text)
    {
        var b = new StringBuilder("(");
        foreach (var c in text) b.Append(c is >= ' ' and <= '~' and not ('(' or ')' or '%' or ';') ? c : ' ');
        return b.Append(')').ToString();
    }
}
