using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>The folder lying open on the desk: nothing outside it is read or written.</summary>
public sealed class DeskFolderTests : IDisposable
{
    private readonly Scratch _scratch = new();
    private readonly DeskFolder _folder;

    public DeskFolderTests()
    {
        _scratch.PutExample("skeleton-hatchet");
        _folder = DeskFolder.Of(_scratch.Folder).Value;
    }

    public void Dispose()
    {
        _folder.Dispose();
        _scratch.Dispose();
    }

    [Theory]
    [InlineData("../skeleton-hatchet")]
    [InlineData("..")]
    [InlineData("/etc/passwd")]
    [InlineData("a/b")]
    [InlineData("")]
    [InlineData(".hidden")]
    [InlineData("a\\b")]
    [InlineData("c:x")]
    [InlineData("a\0b")]
    [InlineData("absent")]
    public void A_name_that_leads_elsewhere_opens_nothing(string stem) => Assert.False(_folder.Plan(stem).IsGood);

    [Fact]
    public void A_link_out_of_the_folder_is_not_followed()
    {
        using var other = new Scratch();
        var outside = other.PutExample("paring-knife");
        System.IO.File.CreateSymbolicLink(_scratch.Path("linked.plan.toml"), outside);
        System.IO.Directory.CreateSymbolicLink(_scratch.Path("skeleton-hatchet-packet"), other.Folder);
        Assert.False(_folder.Plan("linked").IsGood);
        Assert.DoesNotContain(_folder.Plans(), p => p.Stem == "linked");
        Assert.False(DeskSheets.Packet(_folder.Plan("skeleton-hatchet").Value, _folder, new PrintRequest(null, null, false, null, new DateOnly(2025, 1, 1))).IsGood);
        Assert.False(System.IO.File.Exists(other.Path("packet.pdf")));
    }

    [Fact]
    public void An_example_is_copied_under_a_free_name_and_opens()
    {
        var first = NewOnDesk.Copy(_folder, "hatchet").Value;
        var second = NewOnDesk.Copy(_folder, "hatchet").Value;
        Assert.NotEqual(first, second);
        Assert.True(_folder.Plan(second).IsGood);
    }
}
