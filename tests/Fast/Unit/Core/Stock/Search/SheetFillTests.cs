using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Bars;

/// <summary>Patterns with curved outlines on bars and sheets: gaps on the true outline, rows against the exact row.</summary>
public class SheetFillTests
{
    private const double Clearance = 5.5;

    private static readonly Tangwright.Foundation.Path _hatchet = Worked.Hatchet.Outline;

    [Fact]
    public void Hatchets_in_one_row_come_near_the_exact_row()
    {
        // the same six that the exact program lays: the search may not be shorter by more than its slide-apart class allows, nor much longer
        var lane = Lane.Of(LanePiece.Of(_hatchet), 75.2, Clearance, 1219.2)!.Lay(6);
        var filled = Last([new SheetPattern(_hatchet, 6, false, false)], StripStock.Endless(75.2), 1_500_000);
        Assert.Single(filled);
        Assert.InRange(filled[0].UsedMm, lane.LengthMm - 0.5, lane.LengthMm + 3);
        Clear(filled, [_hatchet], 75.2);
    }

    [Fact]
    public void Two_rows_of_hatchets_need_less_length_than_one()
    {
        var filled = Last([new SheetPattern(_hatchet, 8, false, false)], StripStock.Endless(160), 2_000_000);
        var lane = Lane.Of(LanePiece.Of(_hatchet), 75.2, Clearance, 4000)!.Lay(8);
        Assert.InRange(filled[0].UsedMm, 0, 0.62 * lane.LengthMm);
        Clear(filled, [_hatchet], 160);
    }

    [Fact]
    public void A_hundred_and_sixty_alike_fill_sheets_alike()
    {
        var filled = Last([new SheetPattern(_hatchet, 160, true, true)], new StripStock(298, [], 998), 1_000_000);
        Assert.Equal(160, filled.Sum(f => f.Count * f.Places.Length));
        Assert.True(filled[0].Count > 3);
        Clear(filled, [_hatchet], 298);
        Assert.All(filled, f => Assert.InRange(f.UsedMm, 1, 998));
    }

    [Fact]
    public void Discs_keep_their_clearance_from_each_other()
    {
        var disc = Tangwright.Foundation.Path.Circle(new(7, -3), 20);
        var filled = Last([new SheetPattern(disc, 9, false, false)], new StripStock(150, [], 400), 600_000);
        Clear(filled, [disc], 150);

        // rows shifted by half, as round things lie closest: 3 rows of 40 mm and 2 clearances stand in 150 mm, 3 columns in no less than two thirds of straight ones
        Assert.InRange(filled[0].UsedMm, 100, (3 * 40) + (2 * Clearance) + 12);
    }

    private static ImmutableArray<FilledSheet> Last(ImmutableArray<SheetPattern> patterns, StripStock stock, long work)
        => SheetFill.Run(patterns, stock, Clearance, new SearchEffort(work, 2, 1)).Last();

    private static void Clear(ImmutableArray<FilledSheet> filled, ImmutableArray<Tangwright.Foundation.Path> outlines, double width)
    {
        foreach (var f in filled)
        {
            Assert.True(f.LeastGapMm >= Clearance);
            var polygons = f.Places.Select(p => BarCase.Placed(outlines[p.Pattern], new LaneLayout([p.Place], 0, 0))[0]).ToArray();
            Assert.True(BarCase.LeastGap(polygons) >= Clearance - 1e-3);
            foreach (var box in polygons.Select(p => p.EnvelopeInternal))
            {
                Assert.InRange(box.MinX, -1e-6, f.UsedMm);
                Assert.InRange(box.MaxX, 0, f.UsedMm + 1e-6);
                Assert.InRange(box.MinY, -1e-6, width);
                Assert.InRange(box.MaxY, 0, width + 1e-6);
            }
        }
    }
}
