using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests.Laws;

/// <summary>What holds for every machine program and every motion.</summary>
public partial class ProgramLaws
{
    private static readonly Gen<double> Place = Gen.Double[-40, 140];

    [Fact]
    public void Any_text_is_read_or_refused_in_words()
        => Gen.Select(Gen.String[Gen.Char["GMXYZFSTIJKRQPLDH0123456789.-+()%;/# \n"], 0, 200], Gen.Int[0, HandMade.Whole.Length - 1], Gen.Int[0, 60]).Sample((text, from, length) =>
        {
            foreach (var program in new[] { text, HandMade.Whole.Remove(from, Math.Min(length, HandMade.Whole.Length - from)), HandMade.Whole.Insert(from, text) })
            {
                var reading = ProgramReader.Read(program, HandMade.Tools, true, ProgramReader.Anywhere);
                Assert.True(reading.EndLine > 0 || reading.Troubles.Length > 0);
                Assert.All(reading.Troubles, t => Assert.True(t.Message.Length > 0 && t.Remedy.Length > 0));
            }
        });

    // harmless to leave out: remarks, tape marks, the end of a cycle before another word takes over, words whose value holds already,
    // spots (the hole is made without), a pilot where the end mill bores anyway, the first of two passes, one tab of two
    [GeneratedRegex(@"^(%|\(.*\)|G80|G0 Z20|G0 Z1|G0 X30 Y15|G1 Z0 F60|G1 X50 Y15|M5|S\d+ M3|X50 Y15|G43 H1|G1 Z-2\.6 F60|X68|X50|M2|G81 .*|G1 Z-4\.2|G1 X[45][37]|G1 Y15)$|^(G1 Y19 F240|G2 X24 Y26 I7 J0|G3 X52 Y15 I-2 J0 Z-\d( F120)?)$|^G82|^G1 Z-5\.2$")]
    private static partial Regex MayGo();

    [Fact]
    public void A_line_left_out_is_noticed()
    {
        var lines = HandMade.Whole.Split('\n');
        var silent = Enumerable.Range(0, lines.Length)
            .Where(i => HandMade.Troubles(string.Join('\n', lines.Where((_, k) => k != i))).IsEmpty)
            .Select(i => lines[i]).ToArray();
        Assert.Equal("", string.Join(" | ", silent.Where(l => !MayGo().IsMatch(l))));
    }

    [GeneratedRegex(@"(?<=[XYIJ])-?[\d.]+")]
    private static partial Regex PlaceWord();

    // every number that says where a cut goes, save those where a tab begins or ends and where the last cut overlaps the first
    [Fact]
    public void A_place_moved_by_a_fifth_of_a_millimetre_is_noticed()
    {
        var whole = HandMade.Whole;
        var from = whole.IndexOf("G1 Z-5.2\nG1 Y19", StringComparison.Ordinal);
        var places = PlaceWord().Matches(whole).Where(m => m.Index > from && m.Value is not ("47" or "53") && !whole[m.Index..].StartsWith("15\nG0", StringComparison.Ordinal)).ToArray();
        Assert.True(places.Length > 15);
        foreach (var by in new[] { -0.2, 0.2 })
        {
            var silent = places.Where(m => HandMade.Troubles(whole.Remove(m.Index, m.Length).Insert(m.Index, (double.Parse(m.Value, CultureInfo.InvariantCulture) + by).ToString("0.###", CultureInfo.InvariantCulture))).IsEmpty).Select(m => whole[(m.Index - 5)..(m.Index + 4)]);
            Assert.Equal([], silent);
        }
    }

    [GeneratedRegex(@"[\d.]+(?= mm from its place)")]
    private static partial Regex Told();

    [Fact]
    public void A_hole_off_its_place_is_told_by_how_much()
        => Gen.Select(Gen.Double[0.06, 0.9], Gen.Double[0, 6.28], Gen.Double[2, 12]).Sample((off, way, diameter) =>
        {
            var at = new Point(50, 15) + (Point.Direction(way) * off);
            ImmutableArray<ProgramTool> tools = [new(1, "drill", ToolForm.TwistDrill, diameter, 118, null)];
            var program = string.Create(CultureInfo.InvariantCulture, $"G17 G21 G40 G49 G54 G80 G90 G94 G61\nT1 M6\nS900 M3\nG0 Z20\nG0 X{at.X:F6} Y{at.Y:F6}\nG1 Z-10 F50\nG0 Z20\nM2");
            var troubles = ProgramCheck.Of(program, tools, HandMade.SetUp with { SpoilMm = 8 }, new WantedPart([new("H", new(50, 15), diameter)], null, 0.05));
            var told = Told().Match(Assert.Single(troubles, t => t.Kind == "hole place").Message);
            Assert.Equal(off, double.Parse(told.Value, CultureInfo.InvariantCulture), 0.001);
        });

    // against small steps: the tool's axis is nearer to the clamp than its radius while the tip is below the clamp's top
    [Fact]
    public void A_motion_hits_a_clamp_when_its_small_steps_do()
        => Gen.Select(Place, Place, Place, Place, Gen.Double[-5, 30], Gen.Double[-5, 30], Gen.Int[0, 2]).Sample((x0, y0, x1, y1, z0, z1, kind) =>
        {
            var motion = MotionOf(new(x0, y0, z0), new(x1, y1, z1), kind);
            var setUp = HandMade.SetUp with { Stock = new Box(900, 900, 910, 910) };
            var least = Steps(motion).Where(p => p.Z < 12).SelectMany(p => setUp.Clamps.Select(c => c.Box.DistanceTo(p.Flat))).DefaultIfEmpty(99).Min();
            if (Math.Abs(least - 3) < 0.01 || Math.Abs(Math.Min(z0, z1) - 12) < 0.001) return;
            Assert.Equal(least < 3, Told(motion, setUp).Contains("clamp"));
        });

    // a rapid is held against the stock with a grid of 0.1 mm
    [Fact]
    public void A_rapid_goes_through_stock_when_its_small_steps_do()
        => Gen.Select(Place, Place, Place, Place, Gen.Double[-4.9, 3], Gen.Double[-4.9, 3], Gen.Int[0, 1]).Sample((x0, y0, x1, y1, z0, z1, slanted) =>
        {
            var motion = MotionOf(new(x0, y0, z0), new(x1, y1, slanted == 1 ? z1 : z0), 0);
            var setUp = HandMade.SetUp with { Clamps = [] };
            var steps = Steps(motion).ToArray();
            var least = steps.Where(p => p.Z < -0.05).Select(p => setUp.Stock.DistanceTo(p.Flat)).DefaultIfEmpty(99).Min();
            var most = steps.Where(p => p.Z < 0).Select(p => setUp.Stock.DistanceTo(p.Flat)).DefaultIfEmpty(99).Min();
            var told = Told(motion, setUp).Contains("rapid through stock");
            if (least < 3 - 0.25) Assert.True(told);
            if (most > 3) Assert.False(told);
        });

    private static Motion MotionOf(SpacePoint from, SpacePoint to, int kind)
        => new(1, kind == 0 ? MotionKind.Rapid : MotionKind.Arc, from, kind == 0 ? to : to with { X = from.X, Y = from.Y }, to.Flat, kind == 1, kind == 0 ? 0 : 100, 5, 1000);

    private static IEnumerable<SpacePoint> Steps(Motion m)
    {
        var flat = m.Flat();
        for (var i = 0; i <= 20000; i++)
        {
            var p = flat?.At(i / 20000.0) ?? m.To.Flat;
            yield return new SpacePoint(p.X, p.Y, m.HeightAt(i / 20000.0));
        }
    }

    private static string[] Told(Motion motion, ProgramSetUp setUp)
        => [.. ProgramSweep.Of(new ProgramReading([motion], [], [], [], 0, 2, []), HandMade.Tools, setUp, new WantedPart([], null, 0.05)).Select(t => t.Kind)];
}
