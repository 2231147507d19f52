using CsCheck;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Path data against SVG 1.1 §8.3 and appendix F.6 (W3C Recommendation, 2011).</summary>
public class PathDataTests
{
    private static Foundation.Path One(string text, double unit = 1)
    {
        var r = PathData.Read(text, unit);
        Assert.Null(r.Fault);
        return Assert.Single(r.Paths);
    }

    private static void Near(Point a, Point b, double tolerance = 1e-9) => Assert.True(a.To(b) <= tolerance, $"{a} {b}");

    [Theory]
    [InlineData("M 0 0 L 10 0 L 10 5 L 0 5 Z")]
    [InlineData("m0,0 10,0 0,5 -10,0z")]
    [InlineData("M0 0H10V5H0Z")]
    [InlineData("M0 0h10v5h-10z")]
    [InlineData("M0-0L10-.0.1e2 5.0e0L0 5e+0z")]
    [InlineData("\tM 0,0\r\n10 , 0 10 5\n0 5 0 0")]
    public void Every_spelling_of_a_rectangle_is_the_same(string text)
    {
        var p = One(text);
        Assert.True(p.Closed);
        Assert.Equal(50, Math.Abs(Moments.Of(p).AreaMm2), 9);
        Assert.Equal(4, p.Segments.Length);
    }

    [Fact]
    public void Compact_numbers_are_told_apart()
    {
        var p = One("M1.5.5-3-.25");
        Near(p.Start, new Point(1.5, 0.5));
        Near(p.End, new Point(-3, -0.25));
    }

    [Fact]
    public void Sweep_flag_one_runs_counter_clockwise_with_y_up_and_flags_need_no_space()
    {
        var arc = Assert.IsType<Arc>(One("M 10 0 A 10 10 0 0110 20").Segments[0]);
        Assert.True(arc.IsCounterClockwise);
        var quarter = Assert.IsType<Arc>(One("M10 0a10 10 0 0 1-10 10").Segments[0]);
        Near(quarter.Centre, default);
        Near(quarter.At(0.5), Point.Direction(Math.PI / 4) * 10);
        var other = Assert.IsType<Arc>(One("M10 0a10 10 0 0 0-10 10").Segments[0]);
        Near(other.Centre, new Point(10, 10));
        var large = Assert.IsType<Arc>(One("M10 0a10 10 0 1 0-10 10").Segments[0]);
        Near(large.Centre, default);
        Assert.Equal(-1.5 * Math.PI, large.Sweep, 12);
    }

    [Fact]
    public void An_ellipse_turned_has_its_points_on_it()
    {
        // closed form: x'^2/a^2 + y'^2/b^2 = 1 in the turned axes
        var arc = Assert.IsType<Arc>(One("M 3 4 A 20 8 30 0 1 -12 9").Segments[0]);
        var (s, c) = Math.SinCos(Math.PI / 6);
        for (var i = 0; i <= 10; i++)
        {
            var d = arc.At(i / 10.0) - arc.Centre;
            var (x, y) = ((d.X * c) + (d.Y * s), (d.Y * c) - (d.X * s));
            Assert.Equal(1, (x * x / 400) + (y * y / 64), 9);
        }
    }

    [Fact]
    public void Radii_too_small_grow_and_a_zero_radius_is_a_line()
    {
        Assert.Equal(5, Assert.IsType<Arc>(One("M0 0A1 1 0 0 1 10 0").Segments[0]).Radius, 9);
        Assert.Equal(5, Assert.IsType<Arc>(One("M0 0A1e-300 1e-300 0 0 1 10 0").Segments[0]).Radius, 6);
        Assert.IsType<Line>(One("M0 0A0 5 0 0 1 10 0").Segments[0]);
        Assert.IsType<Line>(One("M0 0A5 5 0 0 1 0 0L10 0").Segments[0]);
        Assert.Equal(5, Assert.IsType<Arc>(One("M0 0A-5 -5 0 0 1 10 0").Segments[0]).Radius, 9);
    }

    [Fact]
    public void Smooth_curves_mirror_the_control_point_before()
    {
        var p = One("M0 0C0 10 10 10 10 0S20-10 20 0s10 10 10 0");
        Near(((Bezier)p.Segments[1]).Control1, new Point(10, -10));
        Near(((Bezier)p.Segments[2]).Control1, new Point(20, 10));
        var q = One("M0 0Q5 10 10 0T20 0t10 0");
        Near(q.Segments[1].At(0.5), new Point(15, -5));
        Near(q.Segments[2].At(0.5), new Point(25, 5));
        Near(((Bezier)One("M0 0L5 5S9 9 10 0").Segments[1]).Control1, new Point(5, 5));
    }

    [Fact]
    public void Subpaths_come_apart_and_a_step_after_Z_starts_at_the_first_point()
    {
        var r = PathData.Read("M0 0h4v4zl-3-3m10 10h1v1z M5 5", 1);
        Assert.Null(r.Fault);
        Assert.Equal(3, r.Paths.Length);
        Near(r.Paths[1].End, new Point(-3, -3));
        Near(r.Paths[2].Start, new Point(7, 7));
    }

    [Fact]
    public void A_half_turn_in_inches_is_exactly_one()
    {
        var arc = Assert.IsType<Arc>(One("M 0 0 A 0.3 0.3 0 0 1 0.6 0", 25.4).Segments[0]);
        Near(arc.Centre, new Point(7.62, 0), 1e-7);
        Assert.Equal(7.62, arc.Radius, 9);
    }

    [Theory]
    [InlineData("", 0, "empty")]
    [InlineData("   ", 0, "empty")]
    [InlineData("L 0 0", 0, "begins with L")]
    [InlineData("M 0 0 L 5", 6, "needs 2 numbers")]
    [InlineData("M 0 0 L 5 Z", 10, "needs 2 numbers")]
    [InlineData("M 0 0 L 5 5,", 6, "needs 2 numbers")]
    [InlineData("M 0 0 L 5,,5", 10, "','")]
    [InlineData("M 0 0 X 5 5", 6, "'X'")]
    [InlineData("M 0 0 L nan 5", 8, "'n'")]
    [InlineData("M 0 0 L inf 5", 8, "'i'")]
    [InlineData("M 0 0 L 1e400 5", 8, "too large")]
    [InlineData("M 0 0 A 5 5 0 2 1 3 3", 14, "flag")]
    [InlineData("M 0 0 Z 5 5", 8, "command letter")]
    [InlineData("M 0 0 L 5 . 5", 10, "'.'")]
    public void A_fault_says_where_and_what(string text, int offset, string part)
    {
        var f = PathData.Read(text, 1).Fault;
        Assert.NotNull(f);
        Assert.Equal(offset, f.Offset);
        Assert.Contains(part, f.Message, StringComparison.Ordinal);
        Assert.NotEmpty(f.Remedy);
    }

    [Fact]
    public void A_path_of_too_many_steps_is_refused()
    {
        var text = "M0 0" + string.Concat(Enumerable.Repeat(" 1 1", PathData.MostSteps + 5));
        Assert.Contains("100000 steps", PathData.Read(text, 1).Fault!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_text_gives_paths_or_a_fault()
    {
        Gen.Char["MLHVCSQTAZmlhvcsqtaz0123456789.,+-eE \n\0xé"].Array[0, 60].Select(c => new string(c)).Sample(text =>
        {
            var r = PathData.Read(text, 1);
            return r.Fault is null
                ? r.Paths.All(p => double.IsFinite(p.Length) && double.IsFinite(p.Bounds.Width))
                : r.Paths.IsEmpty && r.Fault.Offset >= 0 && r.Fault.Offset <= text.Length;
        }, iter: 3000);
    }

    private static readonly Gen<Point> Points = Gen.Select(Gen.Double[-300, 300], Gen.Double[-300, 300], (x, y) => new Point(x, y));

    private static readonly Gen<Foundation.Path> Paths =
        Gen.Select(Points, Gen.Select(Gen.Int[0, 3], Points, Points, Points, Gen.Double[-6.2, 6.2]).Array[1, 8], Gen.Bool).Select((start, parts, closed) =>
        {
            var b = new List<Segment>();
            var pen = start;
            foreach (var (kind, p, q, r, sweep) in parts)
            {
                Segment s = kind switch
                {
                    0 => new Line(pen, p),
                    1 => new Bezier(pen, p, q, r),
                    2 => Arc.OfCircle(pen - (Point.Direction(sweep) * 40), 40, sweep, Math.CopySign(Math.Max(0.1, Math.Abs(sweep)), sweep)),
                    _ => Arc.OfEllipse(pen - (q * 0.3), q * 0.3, (q.Left * 0.11) + (q * 0.05), 0, Math.CopySign(Math.Max(0.1, Math.Abs(sweep)), sweep)),
                };
                b.Add(s);
                pen = s.End;
            }

            if (closed) b.Add(new Line(pen, start));
            return new Foundation.Path([.. b], closed);
        });

    [Theory]
    [InlineData(1.0)]
    [InlineData(25.4)]
    public void What_is_written_is_read_back_within_a_millionth_of_a_micron(double unit)
    {
        Paths.Sample(p =>
        {
            if (p.Segments.Any(s => s.Length < 1e-6)) return;
            var text = PathData.Write(p, unit);
            var back = PathData.Read(text, unit);
            Assert.Null(back.Fault);
            var q = Assert.Single(back.Paths);
            Assert.True(q.Closed == p.Closed || p.Start.To(p.End) < 1e-6);
            Assert.Equal(p.Length, q.Length, 1e-7);
            Assert.Equal(Moments.Of(p).AreaMm2, Moments.Of(q).AreaMm2, 1e-5);
            var mine = p.Segments.Select(s => s.End).ToArray();
            foreach (var e in mine) Assert.True(q.Segments.Any(s => s.End.To(e) < 1e-9 || s.Start.To(e) < 1e-9));
        }, iter: 300);
    }

    [Fact]
    public void A_half_turn_written_and_read_moves_nothing()
    {
        foreach (var r in new[] { 0.1, 3.7, 8.0, 63.123456789 })
        {
            var p = Foundation.Path.Circle(new Point(12.3, -4.56), r);
            foreach (var s in One(PathData.Write(p, 25.4), 25.4).Segments)
            {
                var a = Assert.IsType<Arc>(s);
                Near(a.Centre, new Point(12.3, -4.56));
                Assert.Equal(r, a.Radius, 1e-9);
            }
        }
    }

    [Theory]
    [InlineData("M 0 6 L 2 68.78 L 72 68.78", 1, 3, 70, "M 0 6 L 3 70 L 72 68.78")]
    [InlineData("m0 0 10 0 0 5-10 0z", 1, 12, 1, "m0 0 12 1 -2 4-10 0z")]
    [InlineData("M0 0H10V5H0Z", 1, 10, 1, "M0 0L 10 1V5H0Z")]
    [InlineData("M0 0H10V5H0Z", 1, 11, 0, "M0 0H11L 10 5H0Z")]
    [InlineData("M0 0h10 5v5", 1, 10, 1, "M0 0l 10 1 l 5 -1v5")]
    [InlineData("M0 0h10 5v5", 2, 15, 1, "M0 0h10 l 5 1v4")]
    [InlineData("M1.5.5-3-.25", 0, 2, 0.5, "M2 .5-3-.25")]
    [InlineData("M1.5.5.25.75", 0, 2, 1, "M2 1 .25.75")]
    [InlineData("M0 0 L5 0 L5 5 L0 0", 0, -1, 0, "M-1 0 L5 0 L5 5 L-1 0")]
    [InlineData("M0 0 L5 0 A5 5 0 0110 5 Z", 2, 10, 4, "M0 0 L5 0 A5 5 0 0110 4 Z")]
    [InlineData("M0 0 L5 0 A5 5 0 0110 5 Z", 2, 9, 5, "M0 0 L5 0 A5 5 0 01 9 5 Z")]
    public void A_moved_point_changes_its_own_numbers(string text, int step, double x, double y, string expected)
        => Assert.Equal(expected, PathDataMove.Of(text, 1, step, new Point(x, y)));

    [Fact]
    public void A_moved_point_leaves_all_others_where_they_were()
    {
        Gen.Select(Gen.Int[0, 8].Array[1, 9], Gen.Bool.Array[9], Gen.Int[0, 9], Points, Gen.Double[-50, 50].Array[63]).Sample((kinds, small, which, to, n) =>
        {
            var s = "M1 2";
            for (var i = 0; i < kinds.Length; i++)
            {
                var letter = "LHVCSQTAL"[kinds[i]];
                string N(int k) => n[(i * 7) + k].ToString("F3");
                var flat = letter switch
                {
                    'H' or 'V' => N(0),
                    'C' => string.Join(' ', Enumerable.Range(0, 6).Select(N)),
                    'S' or 'Q' => string.Join(' ', Enumerable.Range(0, 4).Select(N)),
                    'A' => $"{N(0)} {N(1)} {N(2)} 01{N(3)} {N(4)}",
                    _ => $"{N(0)} {N(1)}",
                };
                s += (small[i] ? char.ToLowerInvariant(letter) : letter) + flat;
            }

            s += "z";
            var step = which % (kinds.Length + 1);
            var before = PathData.Read(s, 25.4);
            if (before.Steps.Skip(1).SkipLast(1).Any(p => p.End.To(before.Steps[0].End) < 1e-6)) return;
            var moved = PathDataMove.Of(s, 25.4, step, to);
            var after = PathData.Read(moved!, 25.4);
            Assert.Null(after.Fault);
            Assert.Equal(before.Steps.Length, after.Steps.Length);
            for (var i = 0; i < before.Steps.Length - 1; i++) Near(after.Steps[i].End, i == step ? to : before.Steps[i].End, 1e-9);
        }, iter: 500);
    }
}
