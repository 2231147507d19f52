using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>What the two 100 mm bars of a bar sheet measured, and what follows: new scale = old × 100 / measured.</summary>
/// <param name="Printer">The printer as it stood when the sheet was printed.</param>
/// <param name="AcrossMm">Bar across the sheet, mm.</param>
/// <param name="AlongMm">Bar along the feed, mm.</param>
public sealed record MeasuredBars(Printer Printer, double AcrossMm, double AlongMm)
{
    /// <summary>As near to 100 mm as needs no correction, mm: what calipers can be trusted to on a printed line (common practice).</summary>
    public const double NearEnoughMm = 0.1;

    /// <summary>Farthest from 100 mm that is still believed, mm.</summary>
    public const double FarthestMm = 15;

    /// <summary>Whether the print is true: both bars within 0.1 mm.</summary>
    public bool IsTrue => IsNear(AcrossMm) && IsNear(AlongMm);

    /// <summary>What an uncorrected bar across would measure, for the shop file, mm.</summary>
    public double BarAcrossMm => Printer.BarAcrossMm * AcrossMm / 100;

    /// <summary>What an uncorrected bar along would measure, for the shop file, mm.</summary>
    public double BarAlongMm => Printer.BarAlongMm * AlongMm / 100;

    /// <summary>The correction in words, a line each way.</summary>
    public ImmutableArray<string> Words => [Line("Across the sheet", AcrossMm, 100 / BarAcrossMm), Line("Along the feed", AlongMm, 100 / BarAlongMm)];

    /// <summary>Whether both bars are off by much the same, as "fit to page" leaves them.</summary>
    public bool LooksFitted => !IsTrue && Math.Abs(AcrossMm - 100) >= 2 && Math.Abs(AcrossMm - AlongMm) <= 0.5;

    /// <summary>Reads what was typed: 97.2, or with its unit as 3 27/32 in.</summary>
    /// <param name="printer">The printer.</param>
    /// <param name="across">Across, as typed.</param>
    /// <param name="along">Along, as typed.</param>
    public static Checked<MeasuredBars> Read(Printer printer, string across, string along)
    {
        var (a, b) = (Bar("across", across), Bar("along", along));
        return a.Mm is { } x && b.Mm is { } y
            ? Checked<MeasuredBars>.Good(new MeasuredBars(printer, x, y))
            : Checked<MeasuredBars>.Bad(new[] { a.Fault, b.Fault }.OfType<Fault>());
    }

    private static (double? Mm, Fault? Fault) Bar(string way, string typed)
    {
        var name = $"bar {way}";
        if (string.IsNullOrWhiteSpace(typed)) return (null, Fault.OfFile(name, $"the bar {way} is missing", "write what it measured, as 97.2 or 3 27/32 in"));
        var read = LengthText.Read(typed, unitMm: 1);
        if (!read.IsGood) return (null, Fault.OfFile(name, $"the bar {way}: \"{(typed.Length > 30 ? typed[..30] + "…" : typed.Trim())}\" is no length", read.Remedy));
        var mm = read.Value.Length.Mm;
        if (Math.Abs(mm - 100) <= FarthestMm) return (mm, null);
        var remedy = read.Value.Writing == LengthWriting.Bare && Math.Abs((mm * Length.MmPerInch) - 100) <= FarthestMm
            ? $"if that is inches, write {typed.Trim()} in"
            : "measure the 100 mm bar again, not the 4 in one; if it is so, the print was fitted to the page: print at 100 %";
        return (null, Fault.OfFile(name, $"the bar {way} cannot be {Shown.Trimmed(mm, 2)} mm: that is more than {FarthestMm:0} mm from 100", remedy));
    }

    private static bool IsNear(double mm) => Math.Abs(mm - 100) <= NearEnoughMm + 1e-9;

    private static string Line(string way, double mm, double scale)
        => $"{way}: {Shown.Trimmed(mm, 2)} mm instead of 100. " + (IsNear(mm) ? "Near enough: it stays as it is." : $"From now on drawn × {Shown.Number(scale, 4)}.");
}

/// <summary>Writes a printer's measured bars into the shop file, so that every later sheet on it is corrected.</summary>
/// <param name="Bars">What was measured.</param>
public sealed record CorrectPrinter(MeasuredBars Bars) : ShopChange
{
    /// <inheritdoc/>
    internal override Checked<ShopFile> Of(ShopFile file)
    {
        // printers that were only assumed are written down first
        var own = file.Count("printer") == 0 ? new WriteAssumed("printer").Of(file) : Checked<ShopFile>.Good(file);
        return own.Then(f =>
        {
            var index = f.Shop.Printers.IndexOf(Bars.Printer);
            if (index < 0) return Checked<ShopFile>.Bad(Fault.OfFile(f.FileName, $"the printer {Bars.Printer.Name} was changed meanwhile", "print the bar sheet again"));
            return ShopEdit.Set(f, "printer", index, "bar_across", Mm(Bars.BarAcrossMm)).Then(g => ShopEdit.Set(g, "printer", index, "bar_along", Mm(Bars.BarAlongMm)));
        });
    }

    private static string Mm(double mm) => Shown.Trimmed(mm, 2) + " mm";
}
