using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>One row of the table of starts.</summary>
/// <param name="Starts">Pieces started.</param>
/// <param name="Chance">Chance in words.</param>
/// <param name="NewBars">New bars.</param>
/// <param name="Says">What is special about it; empty when nothing.</param>
public sealed record StartsShown(int Starts, string Chance, int NewBars, string Says);

/// <summary>One way of cutting a bar.</summary>
/// <param name="Says">Which bar, how many pieces, what is left.</param>
/// <param name="Svg">The bar to scale, an SVG element.</param>
/// <param name="Places">Where the pieces lie, a line each.</param>
public sealed record CutShown(string Says, string Svg, ImmutableArray<string> Places);

/// <summary>Bars as the page shows them.</summary>
/// <param name="Answer">How many to start and the chance; empty for several patterns.</param>
/// <param name="Free">Where one more start costs no more steel; empty when nowhere.</param>
/// <param name="Buy">What to buy, a line each.</param>
/// <param name="Starts">Starts, chance, bars.</param>
/// <param name="Cuts">How the bars are cut.</param>
/// <param name="Notes">What to know.</param>
public sealed record StockShown(string Answer, string Free, ImmutableArray<string> Buy, ImmutableArray<StartsShown> Starts, ImmutableArray<CutShown> Cuts, ImmutableArray<string> Notes)
{
    /// <summary>Starts and chance of each pattern; empty for one alone.</summary>
    public ImmutableArray<string> Patterns { get; init; } = [];

    /// <summary>Cautions, by who cuts.</summary>
    public string Caution { get; init; } = "";

    /// <summary>Why the count could not be kept in its file; empty when it was.</summary>
    public string NotKept { get; init; } = "";
}

/// <summary>The page of bars.</summary>
public static class DeskStock
{
    /// <summary>Most pieces of a bar listed on the page.</summary>
    private const int MostListed = 60;

    private static readonly ConditionalWeakTable<Results, LaidOut> Known = [];

    /// <summary>Works it out for the plan as it stands and keeps the question for the sheets, also in a file beside the plan.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="request">What is asked.</param>
    public static Checked<StockShown> Of(PlanOnDesk desk, StockRequest request)
    {
        desk.StockAsked = request with { Stop = default };
        var answer = PlanStock.Of(desk.Results, request);
        if (!answer.IsGood) return Checked<StockShown>.Bad(answer.Faults);
        Known.AddOrUpdate(desk.Results, new LaidOut(desk.StockAsked, Stamps(request), answer.Value.Stock));
        var kept = OrderBeside.Write(desk.Path, request);
        return Checked<StockShown>.Good(Shown(answer.Value) with { NotKept = kept.IsEmpty ? "" : $"{kept[0].Message}: the count is forgotten when the desk is closed." });
    }

    /// <summary>The other plans of the folder, that can be laid out together with this one.</summary>
    public static ImmutableArray<string> Others(DeskFolder folder, PlanOnDesk desk) => [.. folder.Plans().Select(p => p.Stem).Where(s => s != desk.Stem)];

    /// <summary>Whether a plan says how long its bars are.</summary>
    public static string BarSaid(PlanOnDesk desk) => desk.Results.Plan.Stock.Length is { } l ? Foundation.Shown.Both(l) : "";

    /// <summary>The print request with the bars last asked for, where they can be had.</summary>
    internal static PrintRequest Asked(PlanOnDesk desk, PrintRequest print)
    {
        if (print.Stock is not null || desk.StockAsked is not { } asked) return print;
        if (Known.TryGetValue(desk.Results, out var there) && ReferenceEquals(there.Asked, asked) && there.Stamps == Stamps(asked)) return print with { Stock = asked, Planned = there.Plan };
        var answer = PlanStock.Of(desk.Results, asked);
        if (!answer.IsGood) return print;
        Known.AddOrUpdate(desk.Results, new LaidOut(asked, Stamps(asked), answer.Value.Stock));
        return print with { Stock = asked, Planned = answer.Value.Stock };
    }

    /// <summary>When the other plans were last changed.</summary>
    private static string Stamps(StockRequest request) => string.Join(' ', request.With.Select(w => System.IO.File.GetLastWriteTimeUtc(w.PlanPath).Ticks));

    private sealed record LaidOut(StockRequest Asked, string Stamps, StockPlan Plan);

    /// <summary>Whether only sheets of bars are meant.</summary>
    internal static bool IsOfBars(ImmutableArray<string> sheets) => sheets.All(s => s is BuyList.Key or CutMap.Key or BarTags.Key);

    private static StockShown Shown(StockAnswer answer)
    {
        var (r, s) = answer;
        var units = r.Shop.Show;
        string Size(Length l) => StockText.Size(l, units);
        ImmutableArray<string> buy =
        [
            .. s.Cuts.Where(c => c.Rack is not null).Select(c => $"From the rack: {c.Rack!.Name}, {Size(c.Width)} × {Size(c.Length)}"),
            .. s.Buy.Select(b => StockText.Buy(s, b, units, "×")),
            .. s.Mass is { } m && s.Buy.Length > 0 ? [$"{StockText.Weight(m, units)} of new steel"] : Array.Empty<string>(),
            .. new[] { StockText.Price(s), StockText.Straight(answer, units) }.Where(l => l.Length > 0),
        ];
        return new StockShown(
            s.Patterns.Length == 1 ? StockText.Answer(s) : "",
            s.Patterns.Length == 1 ? StockText.Free(s) : "",
            buy,
            s.Patterns.Length == 1 && s.Rows.Length > 1 ? [.. s.Rows.Select(x => new StartsShown(x.Starts, StockText.Percent(x.ChanceShare), x.NewBars, x.Starts == s.Starts ? "laid out" : x.IsFree ? "no more steel" : ""))] : [],
            [.. s.Cuts.Select((c, i) => new CutShown(StockText.Bars(s, c, units), DrawnSheet.Of(BarPicture.Of(s, c), $"{(s.IsOnSheets ? "Sheet" : "Bar")} {i + 1} with {c.Places.Length} pieces").Svg, [.. c.Places.Take(MostListed).Select((p, j) => $"{j + 1}: {StockText.Place(s, p, units)}{(j < c.SawLines.Length ? "; then saw " + StockText.Cut(c.SawLines[j], s.Room.Kerf, units) : "")}")]))],
            s.Notes)
        {
            Caution = StockText.Caution(s),
            Patterns = s.Patterns.Length == 1 ? [] : [.. s.Patterns.Select(StockText.Answer)],
        };
    }
}
