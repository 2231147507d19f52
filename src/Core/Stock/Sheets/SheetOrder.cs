using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>From patterns and counts to sheets and places on them, by search: sheets of the rack first, then as few new ones as are found, with the longest drop.</summary>
public static class SheetOrder
{
    /// <summary>The sheets, or why there are none.</summary>
    /// <param name="items">The plans, all of one steel and thickness; shop, clearance and sheet are those of the first.</param>
    /// <param name="better">Told of every layout found that uses less than the one before: sheets, and the length used of the last.</param>
    /// <param name="stop">Ends the search; the best so far is kept.</param>
    public static Checked<StockPlan> Of(ImmutableArray<StockItem> items, Action<int, Length>? better = null, CancellationToken stop = default)
    {
        var sheet = items[0].Wanted.Sheet!;
        if (!(sheet.Width.Mm is > 0 and <= MostMm && sheet.Length.Mm is > 0 and <= MostMm)) return Bad($"a sheet of {Shown.Both(sheet.Width)} × {Shown.Both(sheet.Length)} cannot be", "give both sides above 0 and up to 20 m");
        items = [.. items.Select(i => OnSheet(i, sheet))];
        var stock = items[0].Results.Plan.Stock;
        if (items.FirstOrDefault(i => i.Results.Plan.Stock.Steel != stock.Steel || !BarPrices.Near(i.Results.Plan.Stock.Thickness, stock.Thickness)) is { } other) return Bad($"{other.Results.Plan.Name} is of {other.Results.Plan.Stock.Steel}, {Shown.Both(other.Results.Plan.Stock.Thickness)} thick, and cannot come out of the same sheet", "ask for it by itself");
        var faults = items.Select(i => BarPlan.Trouble(i.Results, i.Wanted)).OfType<Fault>().ToArray();
        if (faults.Length > 0) return Checked<StockPlan>.Bad(faults);
        if (items[0].Wanted.StraightCuts) return Bad("layouts found by search on a sheet are not made for straight cuts", "leave --sheet out, or --straight-cuts");
        var started = items.Select(i => BarPlan.Starts(i.Results, i.Wanted)).ToArray();
        if (started.Sum(s => s.Starts) > StockWanted.MostStarts) return Bad($"{started.Sum(s => s.Starts)} starts are more than the {StockWanted.MostStarts} worked out at once", "ask for fewer good pieces, and for the rest again");
        if (items.Length > 1 && started.Sum(s => s.Starts) > SheetFill.MostUnlike) return Bad($"{started.Sum(s => s.Starts)} pieces of {items.Length} patterns are more than the {SheetFill.MostUnlike} laid out at once", "ask for a part of the order at a time, or for each pattern by itself");

        var room = BarPlan.Room(items[0].Results, items[0].Wanted)! with { End = items.Max(i => BarPlan.Room(i.Results, i.Wanted)!.End) };
        ImmutableArray<SheetPattern> patterns = [.. items.Select((item, i) => new SheetPattern(item.Results.Plan.Outline, started[i].Starts, item.Wanted.MayTurnOver, sheet.MayLieAcross))];
        var shop = items[0].Results.Shop;
        var rack = shop.Rack.Where(b => b.Steel == stock.Steel && BarPrices.Near(b.Thickness, stock.Thickness) && BarPrices.Near(b.Width, sheet.Width)).OrderBy(b => b.Length.Mm).Where(b => patterns.All(p => Fits(p, b.Length))).ToImmutableArray();
        if (items.FirstOrDefault(i => !Fits(patterns[items.IndexOf(i)], sheet.Length)) is { } great) return Bad($"{great.Results.Plan.Name}, {Shown.Both(great.Results.Outline.Length)} × {Shown.Both(great.Results.Outline.Height)}, does not come out of a sheet {Shown.Both(sheet.Width)} × {Shown.Both(sheet.Length)}", $"take a sheet at least {Shown.Both(great.Results.Outline.Height + (room.Edge * 2))} × {Shown.Both(great.Results.Outline.Length + (room.End * 2))}");

        // many alike are cut like one full new sheet; the rack would have to be laid out by itself
        var isMany = patterns.Length == 1 && patterns[0].Count > SheetFill.MostAtOnce;
        if (isMany) rack = [];

        double Inner(Length l) => l.Mm - (2 * room.End.Mm);
        var steel = new StripStock(sheet.Width.Mm - (2 * room.Edge.Mm), [.. rack.Select(b => Inner(b.Length))], Inner(sheet.Length));
        var best = ImmutableArray<FilledSheet>.Empty;
        foreach (var filled in SheetFill.Run(patterns, steel, room.Clearance.Mm, sheet.Effort, stop))
        {
            best = filled;
            better?.Invoke(filled.Sum(f => f.Count), Length.OfMm(filled[^1].UsedMm));
        }

        ImmutableArray<BarCut> cuts = [.. best.Select(Cut)];
        var (news, price) = (cuts.Where(c => c.Rack is null).Sum(c => c.Count), BarPrices.Of(shop, stock, items[0].Results.Steel?.Density?.Value, sheet.Width, sheet.Length));
        decimal? paid = price is { } p ? news * p : null;
        var area = Enumerable.Range(0, items.Length).Sum(i => started[i].Starts * Area(i));
        ImmutableArray<StockPattern> all = [.. items.Select((item, i) => OrderPlan.Pattern(item, started[i].Starts, started[i].Yield, paid * (decimal)(started[i].Starts * Area(i) / area / item.Wanted.Good)))];
        var row = new StartsRow(started[0].Starts, all[0].ChanceShare, all[0].LowChanceShare, all[0].HighChanceShare, news, sheet.Length * news, IsFree: false);
        var most = cuts.Max(c => c.Places.Length);
        ImmutableArray<BarsToBuy> buy = news == 0 ? [] : [new BarsToBuy(news, sheet.Length, most, 0) { Width = sheet.Width, Steel = stock.Steel, Thickness = stock.Thickness, Price = price }];
        return Checked<StockPlan>.Good(new StockPlan(items[0].Wanted.Good, started[0].Chance, started[0].Yield, started[0].Starts, [row], room, cuts, buy, null, Weight(news), [.. SheetNotes.Of(items, [.. started.Select(s => s.Yield)], room, cuts, sheet, area, stop.IsCancellationRequested), .. Unused()])
        {
            Patterns = all,
            Price = paid,
            Money = shop.Money,
            IsLeast = false,
            IsOnSheets = true,
            Service = items[0].Wanted.Service,
        });

        IEnumerable<string> Unused() => shop.Rack.Where(b => b.Steel == stock.Steel && BarPrices.Near(b.Thickness, stock.Thickness) && !rack.Contains(b)).Select(b => $"{b.Name} of the rack is not used here: {(isMany ? "so many alike are all cut like one new sheet" : BarPrices.Near(b.Width, sheet.Width) ? "a piece of the order does not fit it" : "it is of another width")}.");

        double Area(int i) => Math.Abs(Moments.Of(patterns[i].Outline).AreaMm2);

        Mass? Weight(int sheets) => items[0].Results.Steel?.Density is { } d ? Volume.OfMm3(sheets * sheet.Width.Mm * sheet.Length.Mm * stock.Thickness.Mm) * d.Value : null;

        bool Fits(SheetPattern p, Length length)
        {
            bool In(double along, double up) => along <= Inner(length) + 1e-9 && up <= sheet.Width.Mm - (2 * room.Edge.Mm) + 1e-9;
            return In(p.Outline.Bounds.Width, p.Outline.Bounds.Height) || (p.MayLieAcross && In(p.Outline.Bounds.Height, p.Outline.Bounds.Width));
        }

        BarCut Cut(FilledSheet f)
        {
            var from = f.Number < rack.Length ? rack[f.Number] : null;
            var (length, taken) = (from?.Length ?? sheet.Length, f.UsedMm + (2 * room.End.Mm));
            var drop = Length.OfMm(Math.Max(0, length.Mm - taken - room.Kerf.Mm));
            return new BarCut(from, f.Count, sheet.Width, length, [.. f.Places.Select(p => p.Place with { Pattern = p.Pattern, AlongMm = p.Place.AlongMm + room.End.Mm, UpMm = p.Place.UpMm + room.Edge.Mm })], Length.OfMm(taken), Length.OfMm(f.LeastGapMm), IsShortest: false, drop, patterns.Any(p => Fits(p, drop)))
            {
                Steel = stock.Steel,
                Thickness = stock.Thickness,
            };
        }
    }

    private const double MostMm = 20_000;

    /// <summary>The plan as if its bar were the sheet.</summary>
    private static StockItem OnSheet(StockItem item, SheetSearch sheet)
    {
        var plan = item.Results.Plan;
        var high = sheet.MayLieAcross ? Math.Max(sheet.Width.Mm, item.Results.Outline.Height.Mm + 100) : sheet.Width.Mm;
        return item with { Results = item.Results with { Plan = plan with { Stock = plan.Stock with { Width = Length.OfMm(high), Length = sheet.Length } } } };
    }

    private static Checked<StockPlan> Bad(string message, string remedy) => Checked<StockPlan>.Bad(Fault.OfFile("sheet", message, remedy));
}
