using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>The worked example of the skeleton hatchet: webs and their limits are the published check values of that example.</summary>
public class HatchetFindingsTests
{
    private static readonly Results Hatchet = TestShop.WorkedUp(TestShop.Hatchet);

    [Fact]
    public void Least_webs_to_the_outline_are_6_21_and_6_17_and_6_48()
    {
        var c = HoleClearance.Of(Hatchet.Piece.Outer, Hatchet.Holes);
        Assert.Equal(6.21, c[0].WebMm, 0.005);
        Assert.Equal(6.17, c[1].WebMm, 0.005);
        Assert.Equal(6.48, c[2].WebMm, 0.005);
    }

    [Fact]
    public void Six_webs_of_8_5_between_the_holes()
    {
        for (var i = 0; i < 6; i++)
        {
            var (a, b) = (Hatchet.Holes[i], Hatchet.Holes[i + 1]);
            Assert.Equal(8.5, a.At.To(b.At) - ((a.Diameter + b.Diameter).Mm / 2), 0.01);
        }
    }

    [Fact]
    public void Only_holes_1_and_2_warn()
    {
        var warned = Hatchet.Findings.Where(f => f.Code is FindingCodes.WebToOutline or FindingCodes.WebToHole).ToArray();
        Assert.Equal(["hole L1", "hole L2"], warned.Select(f => f.Where).Order());
        Assert.All(warned, f => Assert.Equal(Severity.Warning, f.Severity));
        Assert.Contains("6.21 mm", warned[0].Found);
        Assert.Contains("6.35 mm (0.250 in)", warned[0].Limit);
    }

    [Fact]
    public void The_remedy_is_a_smaller_drill_or_a_small_step()
    {
        var f = Hatchet.Findings.Single(f => f.Where == "hole L1" && f.Code == FindingCodes.WebToOutline);
        Assert.Contains("15.7 mm (0.618 in) instead of 16 mm", f.Remedy);
        Assert.Contains("0.14 mm (0.006 in) down", f.Remedy);
    }

    [Fact]
    public void All_of_it_can_be_read()
    {
        var text = string.Join('\n', Hatchet.Findings.Select(f => $"{f.Severity} {f.Code} | {f.Where} | {f.Message} | {f.Found} | {f.Limit} | {f.Source} | {f.Remedy}"));
        TestContext.Current.SendDiagnosticMessage(text);
        Assert.DoesNotContain("NaN", text);
        Assert.DoesNotContain("∞", text);
        Assert.DoesNotContain(Hatchet.Findings, f => f.Severity == Severity.Error);
    }
}
