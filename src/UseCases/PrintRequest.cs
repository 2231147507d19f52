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

    /// <summary>Name of a printer of the shop, whatever paper is asked for; null: the shop's first that holds the paper.</summary>
    public string? Printer { get; init; }

    /// <summary>Pieces wanted, for a buy list and a cut map; null: neither.</summary>
    public StockRequest? Stock { get; init; }

    /// <summary>The bars where they are laid out already; null: they are laid out from <see cref="Stock"/>.</summary>
    internal StockPlan? Planned { get; init; }

    /// <summary>Rough cuts asked for; null: as many as pay, with the quickest saw.</summary>
    public RoughCutWanted? RoughCut { get; init; }

    /// <summary>The bevels asked for; null: the bar as sold, eight stations.</summary>
    public BevelsRequest? Bevels { get; init; }

    /// <summary>The finish asked for; null: the plan's.</summary>
    public FinishRequest? Finish { get; init; }

    /// <summary>The paper of a name; null when there is none.</summary>
    internal static PaperSize? PaperOf(string name, Length? rollWidth) => name.ToLowerInvariant() switch
    {
        "a4" => PaperSize.A4,
        "letter" => PaperSize.Letter,
        "a3" => PaperSize.A3,
        "roll" => PaperSize.Roll(rollWidth?.Mm ?? DefaultRollMm),
        _ => null,
    };

    /// <summary>The correction a printer's measured bars ask for.</summary>
    internal static PrintScale ScaleOf(Printer? printer) => PrintScale.After(PrintScale.True, printer?.BarAcrossMm ?? 100, printer?.BarAlongMm ?? 100);

    /// <summary>The printer of the shop that is meant; null when none holds the paper or none has the name.</summary>
    internal Printer? PrinterOf(Shop shop)
        => Printer is not null ? shop.Printers.FirstOrDefault(p => p.Name == Printer)
            : Paper is null ? shop.Printers[0]
            : shop.Printers.FirstOrDefault(p => string.Equals(p.Paper, Paper, StringComparison.OrdinalIgnoreCase));

    /// <summary>The request the sheets are drawn for.</summary>
    internal Checked<SheetRequest> For(OpenedWork work, Results results)
    {
        var printer = PrinterOf(work.Shop);
        if (printer is null && Printer is not null) return Bad("printer", $"the shop has no printer called \"{Printer}\"", "choose one of: " + string.Join(", ", work.Shop.Printers.Select(p => p.Name)));
        var paper = PaperOf(Paper ?? printer!.Paper, printer?.RollWidth);
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
        var remembered = ScaleOf(printer);
        var scale = remembered;
        if (Measured is not null)
        {
            if (ReadMeasured(Measured) is not { } m)
            {
                return Bad("--measured", $"\"{Measured}\" is not two measured bars", "write what the two 100 mm bars measured, across the sheet first: 97.2x97.0 (each from 85 to 115)");
            }

            scale = PrintScale.After(remembered, m.Across, m.Along);
        }

        var cuts = RoughCut ?? new(null, null);
        var finish = PlanFinish.Read(Finish ?? new FinishRequest(null, null));
        if (!finish.IsGood) return Checked<SheetRequest>.Bad(finish.Faults);
        var bevels = PlanBevels.Read(Bevels ?? new BevelsRequest(), results.Plan.Units);
        if (!bevels.IsGood) return Checked<SheetRequest>.Bad(bevels.Faults);
        var request = new SheetRequest(results, paper, printer?.Margin.Mm ?? 10, scale, Mirror, Date, units.Value, work.ShopUsed) { Programs = new(() => MakeProgram.Reports(results, OpenWork.Stem(work.PlanPath))), RoughCut = cuts, SawnFirst = new(() => RoughCuts.Of(results, cuts)), Finish = finish.Value, Bevels = bevels.Value };
        if (Planned is not null) return Started(Planned);
        return Stock is null ? Started(null) : PlanStock.Of(work, results, Stock).Then(s => Started(s.Stock));

        Checked<SheetRequest> Started(StockPlan? stock) => Checked<SheetRequest>.Good(request with { Stock = stock, HardenedOnce = new(() => SheetRequest.HardeningOf(results, stock?.Starts ?? 1)), HandleOnce = new(() => HandlePlan.Of(results, new HandleWanted(stock?.Starts ?? 1, null))) });
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
