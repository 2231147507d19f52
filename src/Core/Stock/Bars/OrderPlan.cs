using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>From several patterns and counts to starts, bars and cuts: what is of one steel and thickness shares bars; the rack first, then the least cost.</summary>
public static class OrderPlan
{
    /// <summary>Most patterns planned at once.</summary>
    public const int MostPatterns = 12;

    /// <summary>The plan of bars, or why there is none.</summary>
    /// <param name="items">The plans and what is wanted of each; shop, clearance and lengths of bars are those of the first.</param>
    /// <param name="solver">What chooses among fillings.</param>
    /// <param name="stop">Ends the search early; the best found by then is kept.</param>
    public static Checked<StockPlan> Of(ImmutableArray<StockItem> items, IBarSolver solver, CancellationToken stop = default)
    {
        items = [.. items.Select(i => i with { Results = i.Results with { Shop = items[0].Results.Shop } })];
        var faults = items.Select(i => BarPlan.Trouble(i.Results, i.Wanted)).OfType<Fault>().ToArray();
        if (faults.Length > 0) return Checked<StockPlan>.Bad(faults);
        if (items.Length > MostPatterns) return Bad($"{items.Length} patterns are more than are planned at once", $"give up to {MostPatterns}, and the rest in another order");
        var started = items.Select(i => BarPlan.Starts(i.Results, i.Wanted)).ToArray();
        if (Array.FindIndex(started, s => s.Starts > StockWanted.MostStarts) is var far and >= 0) return Bad($"{started[far].Starts} starts of {items[far].Results.Plan.Name} are more than the {StockWanted.MostStarts} worked out at once", "ask for fewer good pieces, and for the rest again");

        var rooms = items.Select(i => BarPlan.Room(i.Results, i.Wanted)!).ToArray();
        var room = rooms[0];
        ImmutableArray<LanePiece> pieces = [.. items.Select(i => LanePiece.Of(i.Results.Plan.Outline, mayTurnOver: i.Wanted.MayTurnOver, straightSides: i.Wanted.StraightCuts))];
        ImmutableArray<Path> outlines = [.. items.Select(i => i.Results.Plan.Outline)];
        var (cuts, buy, notes) = (new List<BarCut>(), new List<BarsToBuy>(), new List<string>());
        var (mass, price, isLeast) = ((Mass?)Mass.OfGrams(0), (decimal?)0, true);
        var prices = new decimal?[items.Length];
        var straight = (int?)0;
        foreach (var group in Groups(items))
        {
            var first = items[group[0]].Results;
            ImmutableArray<int> wanted = [.. Enumerable.Range(0, items.Length).Select(i => group.Contains(i) ? started[i].Starts : 0)];
            var kinds = Kinds(items, group, first.Shop);
            room = rooms[group[0]] with { End = group.Select(i => rooms[i].End).Max() };
            if (room.End != rooms[0].End) notes.Add($"Bars for {string.Join(", ", group.Select(i => items[i].Results.Plan.Name))} keep {Shown.Both(room.End)} at each end.");
            var choice = new BarChoice(pieces, room);
            var (bars, nowhere) = choice.Choose(wanted, kinds, solver, stop);
            if (nowhere.Length > 0) return Nowhere(items[nowhere[0]].Results, room, kinds);
            isLeast &= choice.IsLeast;
            notes.AddRange(BarPrices.Missing(kinds));
            if (choice.MostTogether < group.Length) notes.Add($"There are so many ways of filling a bar that bars with more than {choice.MostTogether} different patterns were not looked at.");
            foreach (var alike in bars.GroupBy(b => (b.Kind, string.Join(',', b.Counts))).OrderBy(g => g.Key.Kind.Rack is null).ThenByDescending(g => g.First().Kind.Length.Mm).ThenByDescending(g => g.Count())) cuts.Add(Cut(alike.First(), alike.Count(), group));
            var bought = bars.Where(b => b.Kind.Rack is null).GroupBy(b => b.Kind).OrderByDescending(g => g.Key.Length.Mm).ToArray();
            foreach (var g in bought) buy.Add(new BarsToBuy(g.Count(), g.Key.Length, g.Max(b => b.Counts.Sum()), 0) { Width = g.Key.Width, Steel = first.Plan.Stock.Steel, Thickness = first.Plan.Stock.Thickness, Price = g.Key.Price });
            decimal? paid = bought.All(g => g.Key.Price is not null) && (bought.Length > 0 || !first.Shop.Bars.IsEmpty) ? bought.Sum(g => g.Count() * g.Key.Price!.Value) : null;
            price = paid is { } p ? price + p : null;
            mass = first.Steel?.Density is { } density ? mass + (Volume.OfMm3(bought.Sum(g => g.Count() * g.Key.Width.Mm * g.Key.Length.Mm) * first.Plan.Stock.Thickness.Mm) * density.Value) : null;
            straight += EndToEnd(bars, group, wanted);
            var all = group.Sum(i => wanted[i] * Area(i));
            foreach (var i in group) prices[i] = paid * (decimal)(wanted[i] * Area(i) / all) / items[i].Wanted.Good;
        }

        if (!isLeast) notes.Add("The search ended before it was sure that no bars cost less.");
        var one = started[0];
        ImmutableArray<StockPattern> patterns = [.. items.Select((item, i) => Pattern(item, started[i].Starts, started[i].Yield, prices[i]))];
        var row = new StartsRow(one.Starts, patterns[0].ChanceShare, patterns[0].LowChanceShare, patterns[0].HighChanceShare, buy.Sum(b => b.Count), Length.OfMm(buy.Sum(b => b.Count * b.Length.Mm)), IsFree: false);
        return Checked<StockPlan>.Good(new StockPlan(items[0].Wanted.Good, one.Chance, one.Yield, one.Starts, [row], rooms[0], [.. cuts], [.. buy], straight, mass, [.. notes, .. BarNotes.Of(items, [.. started.Select(s => s.Yield)], rooms[0], cuts)])
        {
            Patterns = patterns,
            Price = price,
            Money = items[0].Results.Shop.Money,
            IsLeast = isLeast,
            IsByStraightCuts = items[0].Wanted.StraightCuts,
            Service = items[0].Wanted.Service,
        });

        // of the one length bought, each piece with the clearance behind it, to a quarter of a millimetre
        int? EndToEnd(ImmutableArray<ChosenBar> bars, ImmutableArray<int> group, ImmutableArray<int> wanted)
        {
            if (bars.Any(b => b.Kind.Rack is not null) || bars.Select(b => b.Kind).Distinct().Count() != 1) return null;
            var bar = bars[0].Kind.Length.Mm - (2 * room.End.Mm) + room.Clearance.Mm;
            var unit = Math.Max(0.25, bar / StraightCuts.MostUnits);
            return StraightCuts.Of([.. group.Select(i => (int)Math.Ceiling(((items[i].Results.Outline.Length + room.Clearance).Mm / unit) - 1e-9))], [.. group.Select(i => wanted[i])], (int)Math.Floor((bar / unit) + 1e-9), solver, stop: stop)?.Bars;
        }

        double Area(int i) => Math.Abs(Moments.Of(outlines[i]).AreaMm2);

        BarCut Cut(ChosenBar bar, int count, ImmutableArray<int> group)
        {
            var (kind, layout) = (bar.Kind, bar.Layout);
            var gap = GapCheck.LeastMm(outlines, layout.Places, room.Clearance.Mm);
            if (gap < room.Clearance.Mm) throw new InvalidOperationException($"a row of {layout.Places.Length} came out {room.Clearance.Mm - gap} mm too tight");
            var taken = layout.LengthMm + (2 * room.End.Mm);
            var drop = Length.OfMm(Math.Max(0, kind.Length.Mm - taken - room.Kerf.Mm));
            var least = group.Where(i => items[i].Results.Outline.Height + (room.Edge * 2) <= kind.Width).Min(i => items[i].Results.Outline.Length.Mm);
            var stock = items[group[0]].Results.Plan.Stock;
            return new BarCut(kind.Rack, count, kind.Width, kind.Length, [.. layout.Places.OrderBy(p => p.AlongMm).Select(p => p with { AlongMm = p.AlongMm + room.End.Mm, UpMm = p.UpMm + room.Edge.Mm })], Length.OfMm(taken), Length.OfMm(gap), layout.IsShortest, drop, drop.Mm >= least + (2 * room.End.Mm))
            {
                Steel = stock.Steel,
                Thickness = stock.Thickness,
            }.Sawn(outlines, items[0].Wanted.StraightCuts, room.Clearance);
        }
    }

    /// <summary>A pattern with its starts and chances.</summary>
    internal static StockPattern Pattern(StockItem item, int starts, YieldGuess yield, decimal? price)
    {
        double Chance(double share) => GoodPieces.ChanceShare(starts, item.Wanted.Good, share);
        return new StockPattern(item.Results, item.Wanted.Good, starts, yield, Chance(yield.Share), Chance(yield.LowShare), Chance(yield.HighShare)) { SteelPrice = price };
    }

    /// <summary>Which patterns share bars: those of one steel and thickness.</summary>
    private static IEnumerable<ImmutableArray<int>> Groups(ImmutableArray<StockItem> items)
        => Enumerable.Range(0, items.Length).GroupBy(i => (items[i].Results.Plan.Stock.Steel, Math.Round(items[i].Results.Plan.Stock.Thickness.Mm, 2))).Select(g => g.ToImmutableArray());

    /// <summary>Bars of the rack, then those that can be bought: the widths and lengths of the plans and of the shop's list, or the lengths asked for.</summary>
    private static ImmutableArray<BarKind> Kinds(ImmutableArray<StockItem> items, ImmutableArray<int> group, Shop shop)
    {
        var (stock, density) = (items[group[0]].Results.Plan.Stock, items[group[0]].Results.Steel?.Density?.Value);
        var offered = BarPrices.Offered(shop, stock).ToArray();
        var widths = group.Select(i => items[i].Results.Plan.Stock.Width!.Value).Concat(offered.Select(b => b.Width)).DistinctBy(w => Math.Round(w.Mm, 2));
        var asked = items[0].Wanted.Bars;
        var news = asked.IsDefaultOrEmpty
            ? group.SelectMany(i => BarPlan.Lengths(items[i].Results, items[i].Wanted).Select(l => (Width: items[i].Results.Plan.Stock.Width!.Value, Length: l))).Concat(offered.Select(b => (b.Width, b.Length)))
            : widths.SelectMany(w => asked.Select(l => (Width: w, Length: l)));
        var rack = shop.Rack.Where(b => b.Steel == stock.Steel && BarPrices.Near(b.Thickness, stock.Thickness)).Select(b => new BarKind(b, b.Width, b.Length, null));
        return [.. rack, .. news.DistinctBy(n => (Math.Round(n.Width.Mm, 2), Math.Round(n.Length.Mm, 2))).Select(n => new BarKind(null, n.Width, n.Length, BarPrices.Of(shop, stock, density, n.Width, n.Length)))];
    }

    private static Checked<StockPlan> Nowhere(Results r, BarRoom room, ImmutableArray<BarKind> kinds)
    {
        var longest = kinds.Max(k => k.Length);
        return Bad($"not one {r.Plan.Name}, {Shown.Both(r.Outline.Length)} long and {Shown.Both(r.Outline.Height)} high, comes out of any bar; the longest is {Shown.Both(longest)}", $"give bars at least {Shown.Both(r.Outline.Length + (room.End * 2))} long and {Shown.Both(r.Outline.Height + (room.Edge * 2))} wide");
    }

    private static Checked<StockPlan> Bad(string message, string remedy) => Checked<StockPlan>.Bad(Fault.OfFile("bars", message, remedy));
}
