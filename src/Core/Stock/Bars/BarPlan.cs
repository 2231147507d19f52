using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>From a count of good pieces to starts, bars and cuts: the rack first, then the least new steel.</summary>
public static class BarPlan
{
    private const int RowsBefore = 3;
    private const int MostRowsAfter = 6;
    private const double LongestBarMm = 20_000;

    /// <summary>The plan of bars, or why there is none.</summary>
    public static Checked<StockPlan> Of(Results r, StockWanted wanted)
    {
        if (Trouble(r, wanted) is { } trouble) return Checked<StockPlan>.Bad(trouble);
        var room = Room(r, wanted)!;
        var (starts, chance, yield) = Starts(r, wanted);
        if (starts > StockWanted.MostStarts) return Bad($"{starts} starts are more than the {StockWanted.MostStarts} worked out at once", "ask for fewer good pieces, and for the rest again");

        var piece = LanePiece.Of(r.Plan.Outline, mayTurnOver: wanted.MayTurnOver, straightSides: wanted.StraightCuts);
        var lengths = Lengths(r, wanted);
        var rack = r.Shop.Rack.Where(b => b.Steel == r.Plan.Stock.Steel && Math.Abs((b.Thickness - r.Plan.Stock.Thickness).Mm) < 0.01 && Fits(b.Width, b.Length)).ToArray();
        var (width, longest) = (r.Plan.Stock.Width!.Value, lengths.Concat(rack.Select(b => b.Length)).Max(l => l.Mm));
        var lanes = rack.Select(b => b.Width.Mm).Append(width.Mm).Distinct().ToDictionary(w => w, w => Lane.Of(piece, w - (2 * room.Edge.Mm), room.Clearance.Mm, longest - (2 * room.End.Mm))!);

        // the rack first: the smallest bar that holds all the rest, else the one that holds most
        var (rest, cuts) = (starts, new List<BarCut>());
        var left = rack.Select(b => (Bar: b, Holds: Most(lanes[b.Width.Mm], b.Length))).Where(b => b.Holds > 0).OrderBy(b => b.Holds).ThenBy(b => b.Bar.Length.Mm).ToList();
        while (rest > 0 && left.Count > 0)
        {
            var at = left.FindIndex(b => b.Holds >= rest);
            var (bar, holds) = left[at < 0 ? left.Count - 1 : at];
            left.RemoveAt(at < 0 ? left.Count - 1 : at);
            cuts.Add(Cut(bar, 1, bar.Width, bar.Length, Math.Min(rest, holds)));
            rest -= Math.Min(rest, holds);
        }

        // then new bars
        var fromRack = starts - rest;
        var prices = lengths.ToDictionary(l => l.Mm, l => BarPrices.Of(r.Shop, r.Plan.Stock, r.Steel?.Density?.Value, width, l));
        var isPriced = prices.Values.All(p => p is not null);
        var kinds = lengths.Select(l => (LengthMm: l.Mm, Holds: Most(lanes[width.Mm], l), Cost: isPriced ? (double)prices[l.Mm]!.Value : l.Mm)).Where(k => k.Holds > 0).OrderByDescending(k => k.LengthMm).ToImmutableArray();
        if (kinds.IsEmpty && rest > 0) return Bad($"not one piece, {Shown.Both(r.Outline.Length)} long with {Shown.Both(room.End)} at each end, comes out of the longest bar, {Shown.Both(Length.OfMm(longest))}", $"give bars at least {Shown.Both(r.Outline.Length + (room.End * 2))} long");
        var bars = FewestBars.Of(kinds, Math.Max(1, rest + MostRowsAfter));
        var counts = bars.Counts(rest);
        var spare = kinds.Select((k, i) => k.Holds * counts[i]).Sum() - rest;
        for (var i = 0; i < kinds.Length; i++)
        {
            if (counts[i] == 0) continue;
            var (length, full) = (Length.OfMm(kinds[i].LengthMm), counts[i] - (spare > 0 ? 1 : 0));
            if (full > 0) cuts.Add(Cut(null, full, width, length, kinds[i].Holds));
            if (spare > 0) cuts.Add(Cut(null, 1, width, length, kinds[i].Holds - spare));
            spare = 0;
        }

        var straight = kinds.IsEmpty ? 0 : Straight(Length.OfMm(kinds[0].LengthMm));
        var steel = Length.OfMm(bars.For(rest).LengthMm);
        ImmutableArray<BarsToBuy> buy = [.. kinds.Select((k, i) => new BarsToBuy(counts[i], Length.OfMm(k.LengthMm), k.Holds, Straight(Length.OfMm(k.LengthMm))) { Width = width, Steel = r.Plan.Stock.Steel, Thickness = r.Plan.Stock.Thickness, Price = prices[k.LengthMm] }).Where(b => b.Count > 0)];
        decimal? price = buy.All(b => b.Price is not null) && (buy.Length > 0 || !r.Shop.Bars.IsEmpty) ? buy.Sum(b => b.Count * b.Price!.Value) : null;
        var rows = Rows().ToImmutableArray();
        var row = rows.First(x => x.Starts == starts);
        return Checked<StockPlan>.Good(new StockPlan(
            wanted.Good,
            chance,
            yield,
            starts,
            rows,
            room,
            [.. cuts],
            buy,
            straight == 0 ? null : (rest + straight - 1) / straight,
            r.Steel?.Density is { } density ? Volume.OfMm3(width.Mm * r.Plan.Stock.Thickness.Mm * steel.Mm) * density.Value : null,
            [.. BarPrices.Missing(lengths.Select(l => new BarKind(null, width, l, prices[l.Mm]))), .. BarNotes.Of([new StockItem(r, wanted)], [yield], room, cuts)])
        {
            Patterns = [new StockPattern(r, wanted.Good, starts, yield, row.ChanceShare, row.LowChanceShare, row.HighChanceShare) { SteelPrice = price / wanted.Good }],
            Price = price,
            Money = r.Shop.Money,
            IsByStraightCuts = wanted.StraightCuts,
            Service = wanted.Service,
        });

        bool Fits(Length w, Length l) => w.Mm - (2 * room.Edge.Mm) >= r.Outline.Height.Mm - 1e-9 && l >= r.Outline.Length + (room.End * 2);

        int Most(Lane lane, Length bar) => lane.MostIn(bar.Mm - (2 * room.End.Mm))?.Places.Length ?? 0;

        int Straight(Length bar) => Math.Max(0, (int)Math.Floor(((bar.Mm - (2 * room.End.Mm) + room.Clearance.Mm) / (r.Outline.Length.Mm + room.Clearance.Mm)) + 1e-9));

        BarCut Cut(RackBar? from, int count, Length w, Length bar, int pieces)
        {
            // sawn apart, pieces end to end want square cuts only: taken where as many fit
            var row = wanted.StraightCuts && Straight(bar) >= pieces ? EndToEnd(pieces) : lanes[w.Mm].Lay(pieces);
            var gap = GapCheck.LeastMm(r.Plan.Outline, row.Places, room.Clearance.Mm);
            if (gap < room.Clearance.Mm) throw new InvalidOperationException($"a row of {pieces} came out {room.Clearance.Mm - gap} mm too tight");
            var taken = row.LengthMm + (2 * room.End.Mm);
            var drop = Length.OfMm(Math.Max(0, bar.Mm - taken - room.Kerf.Mm));
            return new BarCut(from, count, w, bar, [.. row.Places.Select(p => p with { AlongMm = p.AlongMm + room.End.Mm, UpMm = p.UpMm + room.Edge.Mm })], Length.OfMm(taken), Length.OfMm(gap), row.IsShortest, drop, drop >= r.Outline.Length + (room.End * 2))
            {
                Steel = r.Plan.Stock.Steel,
                Thickness = r.Plan.Stock.Thickness,
            }.Sawn([r.Plan.Outline], wanted.StraightCuts, room.Clearance);
        }

        LaneLayout EndToEnd(int pieces)
        {
            var step = r.Outline.Length.Mm + room.Clearance.Mm + 1e-6; // above the clearance in the check that follows
            var length = (pieces * step) - room.Clearance.Mm;
            return new LaneLayout([.. Enumerable.Range(0, pieces).Select(i => new LanePlace(Lie.Plain, i * step, 0))], length, length);
        }

        IEnumerable<StartsRow> Rows()
        {
            var before = (LengthMm: double.NaN, Bars: 0);
            for (var s = Math.Max(wanted.Good, starts - RowsBefore); s <= starts + MostRowsAfter; s++)
            {
                var now = bars.For(s - fromRack);
                yield return new StartsRow(
                    s,
                    GoodPieces.ChanceShare(s, wanted.Good, yield.Share),
                    GoodPieces.ChanceShare(s, wanted.Good, yield.LowShare),
                    GoodPieces.ChanceShare(s, wanted.Good, yield.HighShare),
                    now.Bars,
                    Length.OfMm(now.LengthMm),
                    Math.Abs(now.LengthMm - before.LengthMm) < 1e-6);
                before = now;
            }
        }
    }

    /// <summary>Starts, the chance asked for and the yield counted with.</summary>
    internal static (int Starts, double Chance, YieldGuess Yield) Starts(Results r, StockWanted wanted)
    {
        var yield = wanted.YieldShare is { } own ? YieldGuess.Said(own, "as asked for") : r.Shop.YieldShare is { } shop ? YieldGuess.Said(shop, "of the shop file") : YieldGuess.Prior;
        var chance = wanted.ChanceShare ?? r.Shop.ChanceShare ?? StockWanted.UsualChanceShare;
        return (wanted.Starts ?? GoodPieces.StartsFor(wanted.Good, yield.Share, chance), chance, yield);
    }

    /// <summary>Lengths that can be had: those asked for, else that of the plan and those of the shop's list.</summary>
    internal static ImmutableArray<Length> Lengths(Results r, StockWanted wanted)
    {
        if (!wanted.Bars.IsDefaultOrEmpty) return [.. wanted.Bars.Distinct()];
        var listed = BarPrices.Offered(r.Shop, r.Plan.Stock).Where(b => r.Plan.Stock.Width is { } w && BarPrices.Near(b.Width, w)).Select(b => b.Length);
        return [.. (r.Plan.Stock.Length is { } l ? listed.Prepend(l) : listed).DistinctBy(x => Math.Round(x.Mm, 2))];
    }

    /// <summary>How pieces are kept apart; null when the shop has no saw and no clearance is asked for.</summary>
    internal static BarRoom? Room(Results r, StockWanted wanted)
    {
        var saw = r.Shop.Saws.FirstOrDefault();
        var end = r.Plan.Layout.EndAllowance ?? r.Shop.EndAllowance;
        if (wanted.Service is { } service && wanted.Clearance is null) return new BarRoom(service.Clearance, service.MostKerf, end, Length.Max(r.Shop.BarEdge, service.Edge), $"kerf of {service.Words} up to {Shown.Both(service.MostKerf)}, and {Shown.Both(service.Edge)} of cut edge to grind off on each side of it");
        if (wanted.Clearance is { } c) return new BarRoom(c, saw?.Kerf ?? c, end, r.Shop.BarEdge, "as asked for");
        return saw is null ? null : new BarRoom(saw.Kerf + (r.Shop.EdgeMargin * 2), saw.Kerf, end, r.Shop.BarEdge, $"kerf of the {saw.Name}, {Shown.Both(saw.Kerf)}, and {Shown.Both(r.Shop.EdgeMargin)} to grind off on each side of it");
    }

    /// <summary>Why there can be no bars; null when there can.</summary>
    internal static Fault? Trouble(Results r, StockWanted wanted)
    {
        Fault? Say(string message, string remedy) => Fault.OfFile(r.Plan.Name, message, remedy);
        if (wanted.Good is < 1 or > GoodPieces.MostGood) return Say($"{wanted.Good} good pieces cannot be planned", $"ask for 1 to {GoodPieces.MostGood}");
        if (wanted.YieldShare is { } y && !(y >= GoodPieces.LeastYieldShare && y <= 1)) return Say("the yield is not between 5 and 100 %", "write the share that comes out good, as 95%");
        if (wanted.ChanceShare is { } p && !(p > 0 && p < 1)) return Say("the chance is not between 0 and 100 %", "write a chance under 100 %, as 90%: certain it never is");
        if (wanted.Starts is { } s && (s < wanted.Good || s > StockWanted.MostStarts)) return Say($"{s} starts cannot give {wanted.Good} good ones", $"start at least {wanted.Good}, at most {StockWanted.MostStarts}");
        if (r.Plan.Stock.Width is not { } width) return Say("the plan does not say how wide the bar is", "write width under [stock]");
        if (Lengths(r, wanted) is { IsEmpty: true }) return Say("nobody said how long the bars are", "write length under [stock], a [[bar]] in the shop file, or name the lengths to be had: --bar \"48 in\"");
        if (Lengths(r, wanted).Any(l => !(l.Mm > 0 && l.Mm <= LongestBarMm))) return Say("a bar is not between 0 and 20 m long", "name bars up to 20 m");
        if (r.Findings.Any(f => f.Code == FindingCodes.OutlineCrossesItself)) return Say("the outline crosses itself, so no piece can be laid out", "mend the outline first: tangwright check says where");
        if (Room(r, wanted) is not { } room) return Say("the shop has no saw, so the clearance between pieces is not known", "write the saw in the shop file, or the clearance: --clearance \"5 mm\"");
        if (room.Clearance.Mm < 0.05) return Say("the pieces would touch: no kerf and nothing to grind off", "give the kerf of the saw, or a clearance above 0");
        if (room.Clearance.Mm > 200) return Say($"a clearance of {Shown.Both(room.Clearance)} is more than can be meant", "give a clearance up to 200 mm");
        var needed = r.Outline.Height + (room.Edge * 2);
        if (needed.Mm > width.Mm + 1e-9) return Say($"the piece is {Shown.Both(r.Outline.Height)} high; with {Shown.Both(room.Edge)} at each long edge it does not come out of a {(wanted.Sheet is null ? "bar" : "sheet")} {Shown.Both(width)} wide", $"take a {(wanted.Sheet is null ? "bar" : "sheet")} at least {Shown.Both(needed)} wide");
        return null;
    }

    private static Checked<StockPlan> Bad(string message, string remedy) => Checked<StockPlan>.Bad(Fault.OfFile("bars", message, remedy));
}
