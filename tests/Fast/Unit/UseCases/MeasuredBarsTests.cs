using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests;

public sealed class MeasuredBarsTests
{
    private static readonly Printer Printer = new("office", "a4", null, Length.OfMm(10), 97.2, 100);

    [Theory]
    [InlineData("97.2", 97.2)]
    [InlineData(" 100 ", 100)]
    [InlineData("102.5 mm", 102.5)]
    [InlineData("3 27/32 in", 97.63125)]
    [InlineData("3.85 in", 97.79)]
    [InlineData("4 in", 101.6)] // the other bar taken by mistake is believed, and shows at the check print
    public void Reads_what_a_maker_writes(string typed, double mm)
    {
        var read = MeasuredBars.Read(Printer, typed, "100");
        Assert.True(read.IsGood);
        Assert.Equal(mm, read.Value.AcrossMm, 1e-9);
    }

    [Theory]
    [InlineData("", "is missing")]
    [InlineData("3.85", "write 3.85 in")]
    [InlineData("84.9", "100 %")]
    [InlineData("115.1", "more than 15 mm from 100")]
    [InlineData("about 97", "\"about 97\" is no length")]
    [InlineData("NaN", "\"NaN\" is no length")]
    public void Refuses_nonsense_with_a_word(string typed, string says)
    {
        var read = MeasuredBars.Read(Printer, typed, "100");
        Assert.False(read.IsGood);
        Assert.Contains(says, read.Faults[0].Message + " " + read.Faults[0].Remedy, StringComparison.Ordinal);
    }

    /// <summary>A printer that shrinks to 97.2 % was corrected by 100 / 97.2 and still gives 99.5: it truly shrinks to 96.714 %, so that drawn by 100 / 96.714 it gives 100.</summary>
    [Fact]
    public void A_second_measuring_builds_on_the_first()
    {
        var bars = MeasuredBars.Read(Printer, "99.5", "100.1").Value;
        Assert.False(bars.IsTrue);
        Assert.Equal(96.714, bars.BarAcrossMm, 1e-9);
        var truth = 0.972 * 99.5 / 100;
        Assert.Equal(100, 100 * (100 / bars.BarAcrossMm) * truth, 1e-9);
    }

    [Theory]
    [InlineData("99.9", "100.1", true)]
    [InlineData("99.89", "100", false)]
    [InlineData("100", "100.11", false)]
    public void Within_a_tenth_no_correction_is_needed(string across, string along, bool isTrue) => Assert.Equal(isTrue, MeasuredBars.Read(Printer, across, along).Value.IsTrue);

    [Fact]
    public void Both_off_by_the_same_is_what_fit_to_page_does()
    {
        Assert.True(MeasuredBars.Read(Printer, "96.1", "96.3").Value.LooksFitted);
        Assert.False(MeasuredBars.Read(Printer, "99.6", "99.6").Value.LooksFitted);
        Assert.False(MeasuredBars.Read(Printer, "96.1", "99").Value.LooksFitted);
    }
}
