using NetTopologySuite.Geometries;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Tests;
using Length = Tangwright.Foundation.Length;
using Path = Tangwright.Foundation.Path;
using Point = Tangwright.Foundation.Point;

namespace Tangwright.Tests.Sawing;

/// <summary>Whole plans of rough cuts, looked at again by another library on chords inside the true outline.</summary>
public class RoughCutPlanTests
{
    private static readonly string[] Pieces = ["skeleton-hatchet", "kitchen-knife", "paring-knife", "skeleton-knife", "recurved", "double edge to a point", "round all sharp", "notch narrower than the bevel", "saw teeth"];

    public static TheoryData<string, SawKind> Cases()
    {
        var data = new TheoryData<string, SawKind>();
        foreach (var p in Pieces)
        {
            foreach (var k in Enum.GetValues<SawKind>()) data.Add(p, k);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void No_cut_comes_nearer_than_the_allowance_and_every_millimetre_is_accounted_for(string piece, SawKind kind)
    {
        var r = OddBlades.Of(piece);
        r = r with { Shop = r.Shop with { Saws = [new Saw("saw", Length.OfMm(1.5), null) { Kind = kind }] } };
        foreach (var wanted in new int?[] { null, 3 })
        {
            var p = RoughCuts.Of(r, new RoughCutWanted(wanted, null)).Value;
            var outline = Polygon([.. Chords.Of(r.Plan.Outline, 1e-4)]);
            foreach (var c in p.Cuts)
            {
                var line = new LineString([At(c.From), At(c.To)]);
                Assert.True(outline.Distance(line) >= p.Allowance.Mm - 1e-3, $"{piece} {kind} {wanted}: cut {c.Number} {outline.Distance(line)}");
                if (c.Waste.Length < 3) continue;
                Assert.True(Polygon([.. c.Waste]).Intersection(outline).Area < 1e-6);
                Assert.Equal(Area(c.Waste), Area(c.Offcut) + c.KerfMm2, 1e-6);
                Assert.True(c.OffcutLength.Mm * c.OffcutWidth.Mm >= Area(c.Offcut) - 1e-6);
            }

            Assert.All(p.Reliefs, h => Assert.True(outline.Distance(new NetTopologySuite.Geometries.Point(At(h.At))) >= p.Allowance.Mm + (0.5 * (h.Drill?.Diameter.Mm ?? 0)) - 1e-3));

            // offcuts + kerf + what is left = blank
            Assert.Equal(p.BlankMm2, p.RestMm2 + p.Cuts.Sum(c => Area(c.Offcut) + c.KerfMm2), 1e-6 * p.BlankMm2);
            Assert.True(p.RestMm2 >= p.PieceMm2 - 1e-6);
            Assert.True(p.LeastGap.Mm >= p.Allowance.Mm - 1e-4);
            Assert.Equal(p.Minutes, p.SawMinutes + p.Sawn.Minutes, 1e-9);
            if (wanted is null) Assert.True(p.Minutes <= p.GrindOnly.Minutes + 1e-9);
            if (wanted is { } w) Assert.True(p.Cuts.Length <= w);
        }
    }

    [Fact]
    public void The_marks_give_the_line_again()
    {
        foreach (var piece in Pieces)
        {
            var p = RoughCuts.Of(OddBlades.Of(piece), new RoughCutWanted(4, null)).Value;
            foreach (var c in p.Cuts)
            {
                Assert.Equal(c.Pocket is null ? 2 : 1, c.Marks.Length);
                foreach (var m in c.Marks)
                {
                    Assert.Equal(0, c.Normal.Dot(m.At - c.From), 1e-6);
                    var b = p.Blank.Box;
                    var laid = (m.On, m.Measured) switch
                    {
                        ("lower edge", "left end") => new Point(b.MinX + m.Distance.Mm, b.MinY),
                        ("lower edge", "right end") => new Point(b.MaxX - m.Distance.Mm, b.MinY),
                        ("upper edge", "left end") => new Point(b.MinX + m.Distance.Mm, b.MaxY),
                        ("upper edge", "right end") => new Point(b.MaxX - m.Distance.Mm, b.MaxY),
                        ("left end", "lower edge") => new Point(b.MinX, b.MinY + m.Distance.Mm),
                        ("left end", "upper edge") => new Point(b.MinX, b.MaxY - m.Distance.Mm),
                        ("right end", "lower edge") => new Point(b.MaxX, b.MinY + m.Distance.Mm),
                        _ => new Point(b.MaxX, b.MaxY - m.Distance.Mm),
                    };
                    Assert.Equal(0, laid.To(m.At), 1e-6);
                }
            }
        }
    }

    /// <summary>The figures of docs/accuracy.md. Grind only, by hand: (blank − area) × thickness × density / 17 g a minute; hatchet (281 × 76.2 − 11 010) × 6.35 × 7.85 = 519 g, 30.5 min.</summary>
    [Theory]
    [InlineData("skeleton-hatchet", 2, 519, 30.5, 191, 17.1)]
    [InlineData("skeleton-knife", 3, 215, 12.6, 82, 9.1)]
    [InlineData("kitchen-knife", 0, 102, 6.0, 102, 6.0)]
    [InlineData("paring-knife", 0, 22, 1.3, 22, 1.3)]
    public void What_sawing_saves_on_the_examples(string piece, int cuts, double onlyGrams, double onlyMinutes, double leftGrams, double minutes)
    {
        var p = RoughCuts.Of(OddBlades.Of(piece), new RoughCutWanted(null, null)).Value;
        Assert.Equal(cuts, p.Cuts.Length);
        Assert.Equal(onlyGrams, p.GrindOnly.Mass!.Value.Grams, 0.6);
        Assert.Equal(onlyMinutes, p.GrindOnly.Minutes, 0.06);
        Assert.Equal(leftGrams, p.Sawn.Mass!.Value.Grams, 1.0);
        Assert.Equal(minutes, p.Minutes, 0.1);
    }

    [Fact]
    public void What_cannot_be_planned_is_said()
    {
        var r = OddBlades.Of("skeleton-hatchet");
        Assert.Contains("0 to 8", RoughCuts.Of(r, new RoughCutWanted(9, null)).Faults[0].Remedy);
        Assert.Contains("portable band saw", RoughCuts.Of(r, new RoughCutWanted(null, "plasma")).Faults[0].Remedy);
        Assert.Contains("no saw", RoughCuts.Of(r with { Shop = r.Shop with { Saws = [] } }, new RoughCutWanted(null, null)).Faults[0].Message);
        var wide = Path.Polygon(new(0, 0), new(200, 0), new(200, 90), new(0, 90));
        var tooWide = WorkUp.Of(r.Plan with { Outline = wide, Holes = [], Edge = null, Bevel = null }, r.Shop, r.Steel);
        Assert.Contains("larger than the rectangle", RoughCuts.Of(tooWide, new RoughCutWanted(null, null)).Faults[0].Message);
    }

    [Fact]
    public void A_chop_saw_cuts_square_only()
    {
        var r = OddBlades.Of("skeleton-knife");
        r = r with { Shop = r.Shop with { Saws = [new Saw("chop saw", Length.OfMm(2.5), null) { Kind = SawKind.Chop }] } };
        var p = RoughCuts.Of(r, new RoughCutWanted(null, null)).Value;
        Assert.NotEmpty(p.Cuts);
        Assert.All(p.Cuts, c => Assert.Equal(90, c.AngleToEdge.Degrees, 1e-9));
        Assert.Empty(p.Reliefs);
    }

    [Fact]
    public void The_throat_of_a_portable_saw_ends_a_cut_into_a_hollow()
    {
        var p = RoughCuts.Of(OddBlades.Of("skeleton-hatchet"), new RoughCutWanted(null, null)).Value;
        Assert.Equal(SawKind.PortableBand, p.Saw.Kind);
        Assert.All(p.Cuts.Where(c => c.Pocket is not null), c => Assert.True(c.Chord.Mm <= 120 + 1e-9));
        Assert.All(p.Cuts.Where(c => c.Pocket is null), c => Assert.True(c.Chord.Mm <= 240 + 1e-9));

        // with no throat to mind the same saw takes more off
        var r = OddBlades.Of("skeleton-hatchet");
        var free = RoughCuts.Of(r with { Shop = r.Shop with { Saws = [r.Shop.Saws[0] with { Throat = null }] } }, new RoughCutWanted(null, null)).Value;
        Assert.True(free.RestMm2 < p.RestMm2 - 100);
        Assert.Contains(free.Cuts, c => c.Pocket is not null && c.Chord.Mm > 120);
    }

    [Fact]
    public void A_short_throat_is_kept_and_said()
    {
        var r = OddBlades.Of("skeleton-knife");
        var saw = new Saw("small band saw", Length.OfMm(1), Length.OfMm(16)) { Kind = SawKind.Band };
        var p = RoughCuts.Of(r with { Shop = r.Shop with { Saws = [saw] } }, new RoughCutWanted(null, null)).Value;
        var piece = p.Blank.Corners;
        foreach (var c in p.Cuts.Where(c => c.Pocket is null))
        {
            var at = c.Normal.Dot(c.From);
            Assert.True(Math.Min(piece.Max(q => c.Normal.Dot(q)) - at, at - piece.Min(q => c.Normal.Dot(q))) <= 16 + 1e-9);
            piece = ConvexClip.Beyond(piece, -c.Normal, -at);
        }

        Assert.Contains(p.Notes, n => n.Contains("left out because the small band saw has 16.00 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void A_disc_keeps_its_run_out_off_the_piece()
    {
        var r = OddBlades.Of("skeleton-hatchet");
        var disc = new Saw("angle grinder", Length.OfMm(1.3), null) { Kind = SawKind.Disc, DiscDiameter = Length.OfMm(125) };
        var p = RoughCuts.Of(r with { Shop = r.Shop with { Saws = [disc] } }, new RoughCutWanted(null, null)).Value;
        var run = DiscRunOut.Mm(62.5, DiscRunOut.ThroughMm, 6.35);
        var outline = Polygon([.. Chords.Of(r.Plan.Outline, 1e-4)]);
        var cuts = p.Cuts.Where(c => c.Pocket is not null).ToArray();
        Assert.NotEmpty(cuts);
        foreach (var c in cuts)
        {
            // where the disc ends on its own face when the far face ends at the near rim of the relief hole
            var way = (c.To - c.From).Unit;
            var end = c.To + (way * (run - (0.5 * p.Reliefs[0].Drill!.Diameter.Mm)));
            Assert.True(outline.Distance(new LineString([At(c.From), At(end)])) >= p.Allowance.Mm - 0.01);
        }
    }

    [Fact]
    public void A_hole_near_a_cut_is_kept_clear_when_it_is_drilled_first()
    {
        var limits = new SawLimits(new Saw("s", Length.OfMm(1), null), [(new Point(50, 20), 5)]);
        var piece = CutCase.Rectangle(new Box(0, 0, 100, 40));
        Assert.Null(limits.Refuses(piece, new SupportCut(0, 60, false)));
        Assert.Contains("finished hole", limits.Refuses(piece, new SupportCut(0, 57, false)));
    }

    private static double Area(System.Collections.Immutable.ImmutableArray<Point> p) => ConvexClip.AreaMm2(p.AsSpan());

    private static Coordinate At(Point p) => new(p.X, p.Y);

    private static Polygon Polygon(Point[] corners) => new(new LinearRing([.. corners.Select(At), At(corners[0])]));
}
