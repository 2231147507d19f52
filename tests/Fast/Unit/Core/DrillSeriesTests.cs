using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>Drill sizes against the sums of the published inch table (ASME B94.11M) and its known equalities.</summary>
public class DrillSeriesTests
{
    [Fact]
    public void Number_and_letter_sizes_add_up_to_the_published_table()
    {
        var numbers = DrillSeries.NumbersAndLetters.Where(d => d.Name[0] == '#').ToArray();
        var letters = DrillSeries.NumbersAndLetters.Where(d => d.Name[0] != '#').ToArray();
        Assert.Equal(80, numbers.Length);
        Assert.Equal(26, letters.Length);
        Assert.Equal(8.2637, numbers.Sum(d => d.Diameter.Inches), 9);
        Assert.Equal(8.0720, letters.Sum(d => d.Diameter.Inches), 9);
        Assert.Equal("#80", DrillSeries.NumbersAndLetters[0].Name);
        Assert.Equal("Z", DrillSeries.NumbersAndLetters[^1].Name);
        Assert.True(DrillSeries.Named("#1")!.Diameter < DrillSeries.Named("A")!.Diameter);
    }

    [Fact]
    public void Letter_E_is_a_quarter_inch_and_the_fraction_is_named_first()
    {
        Assert.Equal(6.35, DrillSeries.Named("e")!.Diameter.Mm, 12);
        Assert.Equal("1/4 in", DrillSeries.NameOf(Length.OfMm(6.35))!.Name);
        Assert.Equal("#30", DrillSeries.NameOf(Length.OfInches(0.1285))!.Name);
        Assert.Equal("8.1 mm", DrillSeries.NameOf(Length.OfMm(8.1))!.Name);
        Assert.Equal("1 1/8 in", DrillSeries.NameOf(Length.OfInches(1.125))!.Name);
        Assert.Null(DrillSeries.NameOf(Length.OfMm(8.123)));
        Assert.Null(DrillSeries.Named("#81"));
    }

    [Fact]
    public void Neighbours_in_a_list()
    {
        var owned = new[] { DrillSeries.OfMm(6), DrillSeries.OfMm(8), DrillSeries.Fraction(16) };
        Assert.Equal("1/4 in", DrillSeries.SmallerOrEqual(owned, Length.OfMm(7))!.Name);
        Assert.Equal("8 mm", DrillSeries.LargerOrEqual(owned, Length.OfMm(7))!.Name);
        Assert.Equal("8 mm", DrillSeries.SmallerOrEqual(owned, Length.OfMm(8))!.Name);
        Assert.Null(DrillSeries.LargerOrEqual(owned, Length.OfMm(9)));
        Assert.Null(DrillSeries.SmallerOrEqual(owned, Length.OfMm(5)));
    }

    [Fact]
    public void Series_ascend_without_gaps_at_their_seams()
    {
        foreach (var series in new[] { DrillSeries.Fractions, DrillSeries.Metric, DrillSeries.NumbersAndLetters })
        {
            for (var i = 1; i < series.Length; i++) Assert.True(series[i].Diameter > series[i - 1].Diameter);
        }

        Assert.Equal(50, DrillSeries.Metric[^1].Diameter.Mm, 9);
        Assert.Equal(3, DrillSeries.Fractions[^1].Diameter.Inches, 9);
        Assert.Contains(DrillSeries.Metric, d => d.Name == "14.25 mm");
    }
}
