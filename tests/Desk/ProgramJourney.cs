using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>The page of the program: set-up, tools, what is left out, the file; and why there is none.</summary>
public sealed class ProgramJourney(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Fact]
    public async Task Is_made_checked_and_saved()
    {
        var stem = Desk.PutExample("skeleton-knife");
        var page = await Open($"plan/{stem}/program");
        await page.GetByText("4 holes and the profile").WaitForAsync();
        await page.GetByRole(AriaRole.Img, new() { Name = "Set-up on the table of the mill" }).WaitForAsync();
        await page.GetByRole(AriaRole.Rowheader, new() { Name = "T6 6 mm end mill" }).WaitForAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = $"Save {stem}.ngc" }).ClickAsync());
        Assert.Equal(stem + ".ngc", download.SuggestedFilename);
        var text = await System.IO.File.ReadAllTextAsync(await download.PathAsync());
        Assert.StartsWith("%\n(Skeleton knife 160, revision A)\n", text, StringComparison.Ordinal);
        Assert.EndsWith("M2\n%\n", text, StringComparison.Ordinal);

        // the second clamping, from the second pin
        await page.GetByLabel("Work").SelectOptionAsync("profile");
        await page.GetByText("zero: centre of hole H1, on its pin").WaitForAsync();
        await page.GetByLabel("Zero").SelectOptionAsync("H3");
        await page.GetByText("zero: centre of hole H3, on its pin").WaitForAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = $"Save {stem}-profile.ngc" }).WaitForAsync();
    }

    [Fact]
    public async Task Says_why_there_is_none()
    {
        var (noMill, noClamp) = (Desk.PutExample("skeleton-hatchet"), Desk.PutExample("skeleton-knife"));
        var page = await Open($"plan/{noMill}/program");
        await page.GetByText("there is no mill under computer control").WaitForAsync();
        var shop = PathOf(noClamp).Replace(".plan.toml", ".shop.toml", StringComparison.Ordinal);
        var text = await System.IO.File.ReadAllTextAsync(shop);
        await System.IO.File.WriteAllTextAsync(shop, text.Remove(text.IndexOf("[[clamp]]", StringComparison.Ordinal), text.IndexOf("[[saw]]", StringComparison.Ordinal) - text.IndexOf("[[clamp]]", StringComparison.Ordinal)));
        page = await Open($"plan/{noClamp}/program");
        await page.GetByText("there is no clamp in the shop file").WaitForAsync();
        Assert.Equal(0, await page.GetByRole(AriaRole.Link, new() { Name = "Save" }).CountAsync());
    }
}
