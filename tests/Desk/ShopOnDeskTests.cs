using Tangwright.Foundation;
using Tangwright.UseCases;

namespace Tangwright.Tests;

/// <summary>A shop file lying open on the desk: changes, undoing, edits made elsewhere, and the plans that rest on it.</summary>
public sealed class ShopOnDeskTests : IDisposable
{
    private readonly Scratch _scratch = new();
    private readonly DeskFolder _folder;
    private readonly string _shop;

    public ShopOnDeskTests()
    {
        var plan = _scratch.PutExample("skeleton-hatchet");
        System.IO.File.WriteAllText(plan, System.IO.File.ReadAllText(plan).Replace("diameter = 16", "diameter = 16.5", StringComparison.Ordinal));
        _shop = _scratch.Path("skeleton-hatchet.shop.toml");
        if (!System.IO.File.Exists(_shop)) System.IO.File.Copy(Repository.Path("examples", "skeleton-hatchet.shop.toml"), _shop);
        _folder = DeskFolder.Of(_scratch.Folder).Value;
    }

    private ShopOnDesk Shop => _folder.Shop("skeleton-hatchet.shop.toml").Value;

    private string OnDisk => System.IO.File.ReadAllText(_shop);

    public void Dispose()
    {
        _folder.Dispose();
        _scratch.Dispose();
    }

    private bool LacksTheDrill(string stem = "skeleton-hatchet") => _folder.Plan(stem).Value.Results.Findings.Any(f => f.Code == "hole.drill-not-owned" && f.Where.Contains("L1", StringComparison.Ordinal));

    [Fact]
    public void A_drill_bought_takes_the_finding_away_and_undo_brings_it_back()
    {
        Assert.True(LacksTheDrill());
        var before = OnDisk;
        Assert.Empty(Shop.Make(new TickDrill("drills", "16.5 mm", IsOwned: true)));
        Assert.False(LacksTheDrill());
        Assert.Contains("\"16.5 mm\"", OnDisk, StringComparison.Ordinal);
        Shop.Undo();
        Assert.Equal(before, OnDisk);
        Assert.True(LacksTheDrill());
        Shop.Redo();
        Assert.False(LacksTheDrill());
    }

    [Fact]
    public void A_drill_written_down_in_a_text_editor_does_the_same()
    {
        Assert.True(LacksTheDrill());
        Rewrite(OnDisk.Replace("\"16 mm\"", "\"16 mm\", \"16.5 mm\"", StringComparison.Ordinal));
        _folder.LookAtShops();
        Assert.False(LacksTheDrill());
    }

    [Fact]
    public void While_the_shop_file_cannot_be_used_the_last_good_one_stays_and_nothing_is_lost()
    {
        var plan = _folder.Plan("skeleton-hatchet").Value;
        var name = Shop.Shop.Name;
        const string spoiled = "tangwright = 1\nname = half a thought";
        Rewrite(spoiled);
        _folder.LookAtShops();
        Assert.NotEmpty(plan.ShopFaults);
        Assert.NotEmpty(Shop.FileFaults);
        Assert.Equal(name, Shop.Shop.Name);
        Assert.Empty(Shop.Make(new SetInShop("", 0, "name", "Barn")));
        Assert.Equal(spoiled, OnDisk);
        Assert.Contains("Barn", System.IO.File.ReadAllText(_scratch.Path("skeleton-hatchet.desk.shop.toml")), StringComparison.Ordinal);
        Assert.Contains("skeleton-hatchet.desk.shop.toml", Shop.Notice, StringComparison.Ordinal);
    }

    [Fact]
    public void When_both_changed_neither_is_lost()
    {
        var shop = Shop;
        var theirs = OnDisk.Replace("kerf", "# mine\nkerf", StringComparison.Ordinal);
        Rewrite(theirs);
        Assert.Empty(shop.Make(new SetInShop("", 0, "name", "Barn")));
        Assert.Equal(theirs, OnDisk);
        Assert.Contains("Barn", System.IO.File.ReadAllText(_scratch.Path("skeleton-hatchet.desk.shop.toml")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_first_shop_file_says_what_was_assumed_until_then()
    {
        System.IO.File.Delete(_shop);
        var assumed = ShopInUse.Of(_folder, null).Read().Value;
        Assert.Null(ShopInUse.Of(_folder, null).FileName);
        Assert.Equal("shop.toml", _folder.BeginShop().Value);
        var own = _folder.Shop("shop.toml").Value.Shop;
        Assert.False(own.IsAssumed);
        Assert.Equal([.. assumed.Drills], [.. own.Drills]);
        Assert.Equal("shop.toml", ShopInUse.Of(_folder, "skeleton-hatchet").FileName);
    }

    [Fact]
    public void Every_key_of_the_form_can_be_set_to_what_it_shows()
    {
        foreach (var part in ShopForm.Of(Shop))
        {
            foreach (var entry in part.Entries)
            {
                foreach (var field in entry.Fields.Where(f => f.Written is not null)) Assert.Empty(Shop.Make(new SetInShop(part.Heading, entry.Index, field.Key, field.Written!)));
            }
        }

        Assert.Equal(System.IO.File.ReadAllText(Repository.Path("examples", "skeleton-hatchet.shop.toml")), OnDisk);
    }

    [Theory]
    [InlineData("../shop.toml")]
    [InlineData("skeleton-hatchet.plan.toml")]
    [InlineData("a/b.shop.toml")]
    [InlineData(".shop.toml")]
    [InlineData("absent.shop.toml")]
    public void A_name_that_leads_elsewhere_opens_nothing(string name) => Assert.False(_folder.Shop(name).IsGood);

    private void Rewrite(string text)
    {
        System.IO.File.WriteAllText(_shop, text);
        System.IO.File.SetLastWriteTimeUtc(_shop, System.IO.File.GetLastWriteTimeUtc(_shop).AddSeconds(2));
    }
}
