using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What comes out of a board.</summary>
/// <param name="Blanks">Blanks of scales.</param>
/// <param name="Pairs">Pairs of them; book-matched ones when that was asked for.</param>
/// <param name="Singles">Blanks without a mate.</param>
/// <param name="Cuts">The cuts in their order: to length, to width, to thickness.</param>
/// <param name="Kerf">Wood the saw turns to dust.</param>
/// <param name="YieldShare">Share of the board that ends in finished blanks, 0 to 1.</param>
public sealed record BlankYield(int Blanks, int Pairs, int Singles, ImmutableArray<BlankCut> Cuts, Volume Kerf, double YieldShare);

/// <summary>How many blanks of handle scales come out of a board, the grain along them, side by side and resawn through the thickness.</summary>
/// <remarks>
/// One after another along, across and through: n = ⌊(S + k)/(s + k)⌋ of a size s out of S with kerf k. A slab is sawn thicker by what planing takes.
/// The two of a book-matched pair lie one above the other in the board, with one saw cut between them; opened like a book their figures mirror each other. Stock is then planed from the outer faces only.
/// </remarks>
[Formula("blanks and pairs out of a board", "common practice", "square-edged board, saw cuts right through and straight; no knots or splits cut round; not the best of all ways when length and width could be exchanged")]
public static class ScaleBlanks
{
    private const double Rounding = 1e-9;

    /// <summary>The blanks.</summary>
    /// <param name="board">The board.</param>
    /// <param name="blank">A blank, ready: planed thickness, sawn length and width.</param>
    /// <param name="kerf">Width of the saw's cut.</param>
    /// <param name="planing">What planing takes off a slab, both faces together.</param>
    /// <param name="bookMatched">Whether the two of a pair come from the same place.</param>
    public static BlankYield Of(BlockSize board, BlockSize blank, Length kerf, Length planing, bool bookMatched)
    {
        var slab = blank.Thick + planing;
        if (!(blank.Long.Mm > 0 && blank.Wide.Mm > 0 && slab.Mm > 0 && kerf.Mm >= 0)) return new BlankYield(0, 0, 0, [], Volume.OfMm3(0), 0);
        var lengths = Cut(BlankCutWay.ToLength, board.Long, blank.Long, kerf, 1);
        var widths = Cut(BlankCutWay.ToWidth, board.Wide, blank.Wide, kerf, lengths.Pieces);
        var slabs = Cut(BlankCutWay.ToThickness, board.Thick, slab, kerf, lengths.Pieces * widths.Pieces);
        var places = lengths.Pieces * widths.Pieces;
        var blanks = places * slabs.Pieces;
        if (blanks == 0) return new BlankYield(0, 0, 0, [], Volume.OfMm3(0), 0);
        var pairs = bookMatched ? places * (slabs.Pieces / 2) : blanks / 2;
        var dust = (Sawn(lengths, board.Long, kerf) * board.Wide.Mm * board.Thick.Mm) + (Sawn(widths, board.Wide, kerf) * blank.Long.Mm * board.Thick.Mm) + (Sawn(slabs, board.Thick, kerf) * blank.Long.Mm * blank.Wide.Mm);
        return new BlankYield(blanks, pairs, blanks - (2 * pairs), [.. new[] { lengths, widths, slabs }.Where(c => c.Cuts > 0)], Volume.OfMm3(dust), blanks * blank.Volume.Mm3 / board.Volume.Mm3);
    }

    private static BlankCut Cut(BlankCutWay way, Length from, Length each, Length kerf, int onEachOf)
    {
        var pieces = Math.Max(0, (int)Math.Floor(((from.Mm + kerf.Mm) / (each.Mm + kerf.Mm)) + Rounding));
        var rest = from.Mm - (pieces * each.Mm) - (Math.Max(0, pieces - 1) * kerf.Mm);
        var cuts = pieces == 0 ? 0 : rest > Rounding * from.Mm ? pieces : pieces - 1;
        return new BlankCut(way, each, [.. Enumerable.Range(1, cuts).Select(i => Length.OfMm((i * each.Mm) + ((i - 1) * kerf.Mm)))], onEachOf, Length.OfMm(cuts == pieces ? Math.Max(0, rest - kerf.Mm) : 0)) { Pieces = pieces };
    }

    // mm of board the saw takes, over all cuts of one way; the last cut may run out of the board
    private static double Sawn(BlankCut c, Length from, Length kerf) => c.OnEachOf * c.At.Sum(at => Math.Min(kerf.Mm, from.Mm - at.Mm));
}
