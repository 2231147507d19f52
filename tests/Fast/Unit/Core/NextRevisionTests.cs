using Tangwright.Core;

namespace Tangwright.Tests;

public class NextRevisionTests
{
    [Theory]
    [InlineData("", "A")]
    [InlineData("-", "A")]
    [InlineData("A", "B")]
    [InlineData("H", "J")]
    [InlineData("I", "J")]
    [InlineData("N", "P")]
    [InlineData("O", "P")]
    [InlineData("Z", "AA")]
    [InlineData("AH", "AJ")]
    [InlineData("AZ", "BA")]
    [InlineData("ZZ", "AAA")]
    [InlineData("c", "D")]
    [InlineData("3", "4")]
    [InlineData("09", "10")]
    [InlineData("B2", "B3")]
    [InlineData("first try", "A")]
    public void After(string revision, string next) => Assert.Equal(next, NextRevision.After(revision));

    /// <summary>Keeping on and on never offers the same letter twice.</summary>
    [Fact]
    public void Letters_do_not_come_again()
    {
        var seen = new HashSet<string>();
        for (var r = "A"; seen.Count < 2000; r = NextRevision.After(r)) Assert.True(seen.Add(r), r);
        Assert.DoesNotContain(seen, s => s.Contains('I') || s.Contains('O'));
    }
}
