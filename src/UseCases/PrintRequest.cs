using System.Globalization;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>How sheets are to be printed, as asked on the command line or the desk. What is null comes from the shop's first printer that holds the paper.</summary>
/// <param name="Paper">a4, letter, a3, roll; null: the printer's own.</param>
/// <param name="Measured">What the bars of the last print measured, "97.2x97.0"; null: the printer's own record.</param>
/// <param name="Mirror">Mirrored template.</param>
/// <param name="Units">mm, in or both; null: the shop's own.</param>
/// <param name="Date">Date on the sheets.</param>
public sealed record PrintRequest(string? Paper, string? Measured, bool Mirror, string? Units, DateOnly Date)
{
    /// <summary>The papers that can be asked for.</summary>
    public const string Papers = "a4, letter, a3 or roll";

    private const double DefaultRollMm = 610;

    /// <summary>The request the sheets are drawn for.</summary>
    internal Checked<SheetRequest> For(OpenedWork work, Results results)
    {
        var printer = Paper is null
            ? work.Shop.Printers[0]
            : work.Shop.Printers.FirstOrDefault(p => string.Equals(p.Paper, Paper, StringComparison.OrdinalIgnoreCase));
        var paper = (Paper ?? printer!.Paper).ToLowerInvariant() switch
        {
            "a4" => PaperSize.A4,
            "letter" => PaperSize.Letter,
            "a3" => PaperSize.A3,
            "roll" => PaperSize.Roll(printer?.RollWidth?.Mm ?? DefaultRollMm),
            _ => null,
        };
        if (paper is null) return Bad("--paper", $"\"{Paper}\" is not a paper this can print on", $"write {Papers}");
        var units = Units?.ToLowerInvariant() switch
        {
            null => work.Shop.Show,
            "mm" => UnitsShown.Mm,
            "in" => UnitsShown.Inch,
            "both" => UnitsShown.Both,
            _ => (UnitsShown?)null,
        };
        if (units is null) return Bad("--units", $"\"{Units}\" is not a choice of units", "write mm, in or both");
        var remembered = PrintScale.After(PrintScale.True, printer?.BarAcrossMm ?? 100, printer?.BarAlongMm ?? 100);
        var scale = remembered;
        if (Measured is not null)
        {
            if (ReadMeasured(Measured) is not { } m)
            {
                return Bad("--measured", $"\"{Measured}\" is not two measured bars", "write what the two 100 mm bars measured, across the sheet first: 97.2x97.0 (each from 85 to 115)");
            }

            scale = PrintScale.After(remembered, m.Across, m.Along);
        }

        return Checked<SheetRequest>.Good(new SheetRequest(results, paper, printer?.Margin.Mm ?? 10, scale, Mirror, Date, units.Value, work.ShopUsed));
    }

    private static (double Across, double Along)? ReadMeasured(string text)
    {
        var parts = text.Split('x', 'X');
        return parts.Length == 2 && Bar(parts[0]) is { } a && Bar(parts[1]) is { } b ? (a, b) : null;

        static double? Bar(string s)
            => double.TryParse(s.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var v) && v is >= 85 and <= 115 ? v : null;
    }

    private static Checked<SheetRequest> Bad(string option, string message, string remedy) => Checked<SheetRequest>.Bad(Fault.OfFile(option, message, remedy));
}
