using CsCheck;
using Tangwright.Foundation;
using Tangwright.Inputs;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>What must hold for every change of an outline.</summary>
public class OutlineLaws
{
    // a loop of lines, arcs and Béziers round the origin
    private static readonly Gen<Path> Loop = Gen.Select(Gen.Double[20, 60].Array[5, 9], Gen.Int[0, 1000], (radii, kinds) =>
    {
        var n = radii.Length;
        Point Corner(int i)
        {
            var p = Point.Direction(2 * Math.PI * (i % n) / n) * radii[i % n];
            return new(Math.Round(p.X, 3), Math.Round(p.Y, 3));
        }

        return new Path(
            [
                .. Enumerable.Range(0, n).Select<int, Segment>(i => ((kinds / (1 << i)) % 3) switch
                {
                    0 => new Line(Corner(i), Corner(i + 1)),
                    1 => Arc.Through(Corner(i), Corner(i + 1), 70, large: false, counterClockwise: i % 2 == 0),
                    _ => new Bezier(Corner(i), Corner(i).Toward(Corner(i + 1), 0.3) * 1.1, Corner(i).Toward(Corner(i + 1), 0.7) * 0.9, Corner(i + 1)),
                }),
            ],
            closed: true);
    });

    private static readonly Gen<(Path Loop, int At)> LoopAndPlace = Gen.Select(Loop, Gen.Int[0, 1000], (l, i) => (l, i % l.Segments.Length));

    private static PlanFile File(Path loop, double unitMm)
        => PlanReader.Read($"tangwright = 1\nname = \"x\"   # stays\nunits = \"{(unitMm == 1 ? "mm" : "in")}\"\n[stock]\nsteel = \"80CrV2\"\nthickness = \"4 mm\"\n# stays too\n[outline]\npath = \"{PathData.Write(loop, unitMm)}\"  # and this\n[[hole]]\nat = [0, 0]\ndiameter = 1\n", "x").Value;

    /// <summary>All but the path's own line.</summary>
    private static string Rest(PlanFile file) => string.Join('\n', file.Text.Split('\n').Select(l => l.StartsWith("path", StringComparison.Ordinal) ? l[l.LastIndexOf('"')..] : l));

    private static double Area(Path loop) => Moments.Of(loop).AreaMm2;

    [Fact]
    public void Parts_of_a_segment_follow_it_exactly() => Gen.Select(LoopAndPlace, Gen.Double[0.001, 0.999]).Sample(
        (place, t) =>
        {
            var s = place.Loop.Segments[place.At];
            var split = new Path([.. place.Loop.Segments.Take(place.At), s.Part(0, t), s.Part(t, 1), .. place.Loop.Segments.Skip(place.At + 1)], closed: true);
            return Math.Abs(Area(split) - Area(place.Loop)) < 1e-9 && Math.Abs(split.Length - place.Loop.Length) < 1e-9;
        },
        iter: 500,
        seed: "0000000000000");

    /// <summary>In the text computed places have six decimals, so the shape stays to half of the last one along the outline.</summary>
    [Fact]
    public void A_new_point_changes_no_shape_and_no_other_line() => Gen.Select(LoopAndPlace, Gen.Double[0.05, 0.95], Gen.OneOf(Gen.Const(1.0), Gen.Const(Length.MmPerInch))).Sample(
        (place, t, unit) =>
        {
            var file = File(place.Loop, unit);
            var after = OutlineEdit.AddPoint(file, place.Loop.Segments[place.At].At(t)).Value;
            var slack = 2e-6 * unit * place.Loop.Length;
            return after.Plan.Outline.Segments.Length == place.Loop.Segments.Length + 1
                && Math.Abs(Area(after.Plan.Outline) - Area(place.Loop)) < slack && Math.Abs(after.Plan.Outline.Length - place.Loop.Length) < slack
                && Rest(after) == Rest(file);
        },
        iter: 300,
        seed: "0000000000000");

    [Fact]
    public void A_point_taken_away_leaves_all_others() => LoopAndPlace.Sample(
        place =>
        {
            var file = File(place.Loop, 1);
            var after = OutlineEdit.RemovePoint(file, place.At);
            if (!after.IsGood) return true; // what is left may enclose nothing
            var left = after.Value.Plan.Outline.Segments.Select(s => s.Start).ToArray();
            return Rest(after.Value) == Rest(file) && place.Loop.Segments.Select((s, i) => i == place.At || left.Any(p => p.To(s.Start) < 1e-9)).All(x => x);
        },
        iter: 300,
        seed: "0000000000000");

    [Fact]
    public void Another_kind_of_segment_keeps_its_ends_and_its_neighbours() => Gen.Select(LoopAndPlace, Gen.Enum<SegmentKind>()).Sample(
        (place, kind) =>
        {
            var file = File(place.Loop, 1);
            var after = OutlineEdit.SetKind(file, place.At, kind);
            if (!after.IsGood) return false;
            var now = after.Value.Plan.Outline;
            var added = now.Segments.Length - place.Loop.Segments.Length;
            return Rest(after.Value) == Rest(file) && now.Segments[place.At].Start.To(place.Loop.Segments[place.At].Start) < 1e-9
                && Enumerable.Range(0, place.Loop.Segments.Length).All(i => i == place.At || now.Segments[i < place.At ? i : i + added].At(0.4).To(place.Loop.Segments[i].At(0.4)) < 1e-6)
                && Enumerable.Range(place.At, added + 1).All(i => OutlineEdit.Kind(now.Segments[i]) == kind);
        },
        iter: 300,
        seed: "0000000000000");

    [Fact]
    public void A_rounded_corner_runs_on_smoothly_and_the_largest_radius_fits() => Gen.Select(LoopAndPlace, Gen.Double[0.2, 25]).Sample(
        (place, radius) =>
        {
            var (before, after) = (place.Loop.Segments[(place.At + place.Loop.Segments.Length - 1) % place.Loop.Segments.Length], place.Loop.Segments[place.At]);
            if (!RoundedCorner.IsCorner(before, after)) return true;
            if (RoundedCorner.Of(before, after, radius) is not { } round) return RoundedCorner.GreatestRadius(before, after) < radius;
            return Math.Abs(round.Arc.Radius - radius) < 1e-12
                && Math.Abs(round.Before.Tangent(1).Cross(round.Arc.Tangent(0))) < 1e-6 && Math.Abs(round.Arc.Tangent(1).Cross(round.After.Tangent(0))) < 1e-6
                && round.Before.Tangent(1).Dot(round.Arc.Tangent(0)) > 0 && round.Arc.Tangent(1).Dot(round.After.Tangent(0)) > 0
                && Nearest.Distance(before, round.Arc.Centre) > radius - 1e-6 && Nearest.Distance(after, round.Arc.Centre) > radius - 1e-6;
        },
        iter: 500,
        seed: "0000000000000");

    /// <summary>The meaning of a parallel curve: none of its points is nearer to the outline than the distance, and none farther.</summary>
    [Fact]
    public void Every_point_of_an_offset_lies_at_its_distance()
    {
        var made = 0;
        Gen.Select(Loop, Gen.Double[-6, 6]).Sample(
            (loop, d) =>
            {
                if (Math.Abs(d) < 0.01 || Crossings.Of(loop, 1).Length > 0 || OffsetLoop.Of(loop, d).Path is not { } path) return true;
                Interlocked.Increment(ref made);
                foreach (var s in path.Segments)
                {
                    for (var t = 0.1; t < 1; t += 0.2)
                    {
                        var p = s.At(t);
                        if (Math.Abs(Nearest.Distance(loop, p) - Math.Abs(d)) > 0.01 || Inside.Of(loop, p) != d < 0) return false;
                    }
                }

                return true;
            },
            iter: 300,
            seed: "0000000000000");
        Assert.True(made > 100, $"only {made} of 300 were made");
    }
}
