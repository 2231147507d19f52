using CsCheck;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests.Laws;

public class ApartLaws
{
    private static readonly Gen<Path> Blob = Gen.Double[15, 30].Array[6].Select(r => Path.Polygon([.. r.Select((d, i) => new Point(d * Math.Cos(i * Math.PI / 3), d * Math.Sin(i * Math.PI / 3)))]));

    /// <summary>A naive twin: 200 points of each side.</summary>
    [Fact]
    public void No_point_of_either_is_farther_and_one_is_as_far()
        => Gen.Select(Blob, Blob).Sample(
            (a, b) =>
            {
                var found = FarthestApart.Of(a, b).Mm;
                var naive = Math.Max(Naive(a, b), Naive(b, a));
                Assert.InRange(naive, found - 0.5, found + FarthestApart.WithinMm);
            },
            iter: 40);

    [Fact]
    public void It_is_the_same_both_ways_and_nothing_from_itself()
        => Gen.Select(Blob, Blob).Sample(
            (a, b) =>
            {
                Assert.Equal(FarthestApart.Of(a, b).Mm, FarthestApart.Of(b, a).Mm, 2 * FarthestApart.WithinMm);
                Assert.Equal(0, FarthestApart.Of(a, a.Reversed()).Mm, 1e-9);
            },
            iter: 40);

    private static double Naive(Path a, Path b)
        => a.Segments.SelectMany(s => Enumerable.Range(0, 200).Select(i => Nearest.Distance(b, s.At(i / 200.0)))).Max();
}
