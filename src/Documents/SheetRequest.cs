using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>A paper, upright, mm.</summary>
/// <param name="Key">a4, letter, a3 or roll.</param>
/// <param name="Name">As people call it: "A4".</param>
/// <param name="WidthMm">Short side; the width of a roll.</param>
/// <param name="HeightMm">Long side; for a roll the longest stretch printed in one piece.</param>
public sealed record PaperSize(string Key, string Name, double WidthMm, double HeightMm)
{
    /// <summary>ISO 216 A4.</summary>
    public static PaperSize A4 { get; } = new("a4", "A4", 210, 297);

    /// <summary>ANSI/ASME Y14.1 size A, 8.5 × 11 in.</summary>
    public static PaperSize Letter { get; } = new("letter", "US Letter", 215.9, 279.4);

    /// <summary>ISO 216 A3.</summary>
    public static PaperSize A3 { get; } = new("a3", "A3", 297, 420);

    /// <summary>A roll of a given width; printed up to 3 m in one piece.</summary>
    public static PaperSize Roll(double widthMm) => new("roll", "roll", widthMm, 3000);
}

/// <summary>Factors by which a true-scale drawing is stretched so that this printer puts it down at true size; 1 when the printer is true.</summary>
/// <param name="Across">Across the sheet: the paper's short side.</param>
/// <param name="Along">Along the feed: the paper's long side.</param>
public readonly record struct PrintScale(double Across, double Along)
{
    /// <summary>No correction.</summary>
    public static PrintScale True => new(1, 1);

    /// <summary>The next scale when the 100 mm bars, printed at <paramref name="current"/>, measured so many mm: old × 100 / measured.</summary>
    public static PrintScale After(PrintScale current, double measuredAcrossMm, double measuredAlongMm)
        => new(current.Across * 100 / measuredAcrossMm, current.Along * 100 / measuredAlongMm);
}

/// <summary>What the sheets are drawn for.</summary>
/// <param name="Results">What was computed.</param>
/// <param name="Paper">Paper.</param>
/// <param name="MarginMm">Margin the printer cannot print, mm.</param>
/// <param name="Scale">Correction for the printer; only true-scale sheets use it.</param>
/// <param name="Mirror">Mirrored template, for the back face.</param>
/// <param name="Date">Date printed on every sheet.</param>
/// <param name="Units">Units shown.</param>
/// <param name="ShopUsed">Which shop file was used, in words: "shop.toml beside the plan", "assumed shop".</param>
public sealed record SheetRequest(
    Results Results,
    PaperSize Paper,
    double MarginMm,
    PrintScale Scale,
    bool Mirror,
    DateOnly Date,
    UnitsShown Units,
    string ShopUsed)
{
    /// <summary>What is asked of the bevels.</summary>
    public BevelsWanted Bevels { get; init; } = new((Length?)null);

    /// <summary>What is asked of the finish.</summary>
    public FinishWanted Finish { get; init; } = new(null, null);

    /// <summary>Sheet numbers by key of the kind; the packet fills them in once it has counted the sheets.</summary>
    public ImmutableDictionary<string, SheetSpan> SheetNumbers { get; init; } = ImmutableDictionary<string, SheetSpan>.Empty;

    /// <summary>Programs for a mill under computer control, made when first looked at; empty when the shop has none.</summary>
    public Lazy<ImmutableArray<ProgramReport>> Programs { get; init; } = new([]);

    /// <summary>Bars for a count of pieces; null when no count was given.</summary>
    public StockPlan? Stock { get; init; }

    /// <summary>What is asked of the rough cuts.</summary>
    public RoughCutWanted RoughCut { get; init; } = new(null, null);

    /// <summary>The rough cuts, worked out when first looked at; null: by each sheet that needs them.</summary>
    public Lazy<Checked<RoughCutPlan>>? SawnFirst { get; init; }

    /// <summary>The rough cuts asked for.</summary>
    internal Checked<RoughCutPlan> RoughCuts => SawnFirst?.Value ?? Core.RoughCuts.Of(Results, RoughCut);

    /// <summary>Pieces to harden: those started of the bars, else 1.</summary>
    internal int HeatPieces => Stock?.Starts ?? 1;

    /// <summary>Hardening, worked out when first looked at; null: by each sheet that needs it.</summary>
    public Lazy<HeatPlan?>? HardenedOnce { get; init; }

    /// <summary>Hardening; null when nothing is known of the steel's.</summary>
    internal HeatPlan? Heat => HardenedOnce is { } once ? once.Value : HardeningOf(Results, HeatPieces);

    /// <summary>Tempering; null when nothing is known of the steel's hardening.</summary>
    internal TemperPlan? Temper => Heat is var heat && heat is { IsSoft: true } ? null : TemperPlan.Of(Results, heat?.AsQuenchedHrc?.Value);

    /// <summary>The handle, worked out when first looked at; null: by each sheet that needs it.</summary>
    public Lazy<HandlePlan>? HandleOnce { get; init; }

    /// <summary>The handle of as many pieces as are started of the bars, else of one.</summary>
    internal HandlePlan Handle => HandleOnce?.Value ?? HandlePlan.Of(Results, new HandleWanted(Stock?.Starts ?? 1, null));

    /// <summary>Hardening of so many pieces; null when nothing is known of the steel's.</summary>
    public static HeatPlan? HardeningOf(Results results, int pieces) => HeatSubject.Of(results, pieces) is { } subject ? HeatPlan.Of(subject) : null;

    /// <summary>Sheets in the packet; 0 until they are counted.</summary>
    public int SheetCount { get; init; }
}

/// <summary>The numbers of the sheets of one kind in the packet, from 1.</summary>
/// <param name="First">First sheet.</param>
/// <param name="Last">Last sheet.</param>
public readonly record struct SheetSpan(int First, int Last)
{
    /// <summary>"sheet 4" or "sheets 5–8".</summary>
    public string InWords => (First == Last ? "sheet " : "sheets ") + this;

    /// <summary>"4" or "5–8".</summary>
    public override string ToString() => First == Last ? $"{First}" : $"{First}–{Last}";
}
