using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests.Heat;

/// <summary>Cooling against the exact series of the plane wall and the lumped limit.</summary>
public class CoolingPrinted
{
    /// <summary>First roots and factors of the plane wall as the textbooks print them (Incropera and DeWitt, table 5.1).</summary>
    [Theory]
    [InlineData(.01, .09983, 1.00166)]
    [InlineData(.1, .31105, 1.01609)]
    [InlineData(1, .86033, 1.11913)]
    [InlineData(10, 1.42887, 1.26196)]
    [InlineData(100, 1.55525, 1.27309)]
    public void Roots(double biot, double root, double factor)
    {
        var z = SlabSeries.RootRadians(biot);
        Assert.Equal(root, z, 0.00001);
        Assert.Equal(factor, SlabSeries.Factor(z), 0.00001);
    }

    /// <summary>A 6.35 mm plate from 830 to 500 °C in the middle, bath 25 °C, k 27, cp 620, 7800 kg/m³: the series of the plane wall, and the lumped law beside it.</summary>
    [Theory]
    [InlineData(300, 27.617, 26.999)]
    [InlineData(1000, 8.717, 8.100)]
    [InlineData(2000, 4.666, 4.050)]
    [InlineData(5000, 2.233, 1.620)]
    public void Meets_the_series_in_two_parts_in_a_thousand(double h, double seconds, double lumped)
    {
        const double mm = 6.35, k = 27, cp = 620, rho = 7800;
        var run = SlabCooling.Of(mm, 830, 25, _ => h, null, 499, HeatProperties.Fixed(rho, k, cp));
        var half = 0.0005 * mm;
        var fourier = Bracket.Root(f => SlabSeries.Share(h * half / k, f, 0) - ((500.0 - 25) / (830 - 25)), 0.01, 500, 1e-10);
        Assert.Equal(1, seconds / (fourier * half * half * rho * cp / k), 0.0005);
        Assert.Equal(1, run.Seconds(500)!.Value / seconds, 0.002);
        Assert.Equal(lumped, rho * cp * half / h * Math.Log(805.0 / 475), 0.001);
    }

    /// <summary>At Bi 1e-3 the plate is as good as lumped.</summary>
    [Fact]
    public void Thin_and_slow_is_lumped()
    {
        var run = SlabCooling.Of(1, 830, 25, _ => 54, null, 499, HeatProperties.Fixed(7800, 27, 620));
        Assert.Equal(1, run.Seconds(500)!.Value / (7800 * 620 * 0.0005 / 54 * Math.Log(805.0 / 475)), 0.002);
    }

    /// <summary>Plates in fast oil at 50 °C from 830 °C with the properties of austenite, without the heat of changes: times and rates of another solver on the same figures.</summary>
    [Theory]
    [InlineData(1.5, 1.04, 228, 1.29, 805, 4.0)]
    [InlineData(3, 1.98, 130, 2.49, 345, 8.2)]
    [InlineData(6.35, 3.92, 82, 5.02, 122, 18.3)]
    [InlineData(8, 4.84, 78, 6.23, 86, 23.7)]
    public void Plates_in_fast_oil(double mm, double from800To500, double rateAt700, double to540, double rateAt550, double to200)
    {
        var oil = QuenchList.BuiltIn.Find("fast oil")!;
        var run = SlabCooling.Of(mm, 830, 50, t => oil.TransferWPerM2K(t, 50), null, 100);
        Assert.Equal(1, (run.Seconds(500)!.Value - run.Seconds(800)!.Value) / from800To500, 0.02);
        Assert.Equal(1, run.CPerSecond(700)!.Value / rateAt700, 0.03);
        Assert.Equal(1, run.Seconds(540)!.Value / to540, 0.02);
        Assert.Equal(1, run.CPerSecond(550)!.Value / rateAt550, 0.05);
        Assert.Equal(1, run.Seconds(200)!.Value / to200, 0.02);
    }
}
