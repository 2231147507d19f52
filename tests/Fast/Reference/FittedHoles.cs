using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Reference;

/// <summary>Measured holes laid on their plan, worked cases and tables.</summary>
public class FittedHoles
{
    // three holes turned by 0.4 degrees, shifted by 0.15, -0.08 mm and then moved by known errors; solved by Arun, Huang and Blostein's closed form
    private static readonly ImmutableArray<Point> Planned = [new(0, 0), new(60, 0), new(120, 10)];
    private static readonly ImmutableArray<Point> Found = [new(0.17, -0.09), new(60.11853784, 0.35887562), new(120.08726308, 10.73750754)];

    [Fact]
    public void Three_holes_with_the_least_sum_of_squares()
    {
        var fit = RigidFit.Of(Planned, Found);
        Assert.Equal(0.394522, fit.Turn.Degrees, 6);
        Assert.Equal(0.149642, fit.Shift.X, 6);
        Assert.Equal(-0.077599, fit.Shift.Y, 1e-6);
        Assert.Equal(0.027082, fit.RmsMm, 6);
        Assert.Equal([(0.02036, -0.01240), (-0.02968, 0.02334), (0.00932, -0.01094)], fit.Rest.Select(r => (Math.Round(r.X, 5), Math.Round(r.Y, 5))));
    }

    // three holes on a line, the middle one 0.2 mm off it: by symmetry each is 0.1 mm off the best line (Chebyshev's equal errors)
    [Fact]
    public void A_bowed_row_is_off_by_half_its_bow_at_best()
    {
        var fit = MinimaxFit.Of([new(0, 0), new(50, 0), new(100, 0)], [new(0, 0), new(50, 0.2), new(100, 0)], [.. Enumerable.Repeat(Length.OfMm(1), 3)]);
        Assert.All(fit.Rest, r => Assert.Equal(0.1, r.Length, 6));
    }

    // ASME Y14.5, position of a hole: dx 0.08, dy 0.06 is 0.200 as a diameter
    [Fact]
    public void Position_as_a_diameter() => Assert.Equal(0.2, TruePosition.Of(new Point(0.08, 0.06)).Mm, 12);

    // ASME Y14.5, 0.10 at maximum material, hole 6.40 to 6.50, measured 6.47: 0.17; 6.35 pin in a 6.50 hole: 0.15
    [Fact]
    public void A_larger_hole_may_be_farther_off()
    {
        Assert.Equal(0.17, AllowedPosition.Of(Length.OfMm(0.10), Length.OfMm(6.40), Length.OfMm(6.47)).Mm, 12);
        Assert.Equal(0.15, AllowedPosition.ForPin(Length.OfMm(6.50), Length.OfMm(6.35), Length.OfMm(6.50)).Mm, 12);
    }

    // NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.4, critical values of the chi-square distribution
    [Theory]
    [InlineData(0.05, 1, 0.004)]
    [InlineData(0.05, 7, 2.167)]
    [InlineData(0.05, 10, 3.940)]
    [InlineData(0.05, 20, 10.851)]
    [InlineData(0.05, 100, 77.929)]
    [InlineData(0.95, 1, 3.841)]
    [InlineData(0.95, 10, 18.307)]
    [InlineData(0.99, 30, 50.892)]
    [InlineData(0.999, 5, 20.515)]
    public void Table_of_chi_squared(double share, int freedom, double value) => Assert.Equal(value, ChiSquared.Value(share, freedom), 3);

    // five holes, seven degrees of freedom: the bound is sqrt(7 / 2.167) = 1.797 times the answer, from the same table; forty holes, 77 degrees: sqrt(77 / 57.786) by the formula of Wilson and Hilferty
    [Theory]
    [InlineData(5, 1.797)]
    [InlineData(40, 1.154)]
    public void Five_holes_are_no_proof(int holes, double times)
    {
        var learnt = MachineScatter.Of([new FittedMove(default, default, [.. Enumerable.Repeat(new Point(0.03, 0.04), holes)])])!;
        Assert.Equal((2 * holes) - 3, learnt.Freedom);
        Assert.Equal(0.05 * Math.Sqrt(holes / (double)learnt.Freedom), learnt.Sigma.Mm, 9);
        Assert.Equal(times, learnt.Bound / learnt.Sigma, 3);
    }
}
