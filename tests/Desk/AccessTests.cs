using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Tangwright.Tests;

/// <summary>Every page can be used by everyone: the rules of axe-core find nothing, light, dark and printed. The pages are those the desk's own code names, so a new one is looked at too.</summary>
public sealed partial class AccessTests(Chromium chromium, DeskOnScratch desk) : Journey(chromium, desk)
{
    [Theory]
    [InlineData(ColorScheme.Light, Media.Screen)]
    [InlineData(ColorScheme.Dark, Media.Screen)]
    [InlineData(ColorScheme.Light, Media.Print)]
    public async Task Nothing_is_found_on_any_page(ColorScheme scheme, Media media)
    {
        var stem = Desk.PutExample("skeleton-hatchet");
        var page = await NewPage(1400, 900, scheme);
        await page.EmulateMediaAsync(new() { Media = media, ColorScheme = scheme });
        var addresses = Pages(stem);
        Assert.Contains("/", addresses);
        Assert.Contains($"/plan/{stem}", addresses);
        var found = new List<string>();
        foreach (var address in addresses)
        {
            await page.GotoAsync(address);
            await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
            if (address == $"/plan/{stem}") await Ready(page);
            var result = await page.RunAxe();
            found.AddRange(result.Violations.SelectMany(v => v.Nodes.Select(n => $"{address}: {v.Id} ({v.Impact}) {n.Target} {n.Html[..Math.Min(200, n.Html.Length)]}")));
        }

        Assert.True(found.Count == 0, string.Join("\n", found));
    }

    /// <summary>Addresses of all pages without names of their own but the plan's.</summary>
    private static string[] Pages(string stem)
        => [.. System.IO.Directory.EnumerateFiles(Repository.Path("src", "Desk"), "*.razor", System.IO.SearchOption.AllDirectories)
            .Where(f => !f.Contains("/obj/", StringComparison.Ordinal) && !f.Contains("/bin/", StringComparison.Ordinal))
            .SelectMany(f => Address().Matches(System.IO.File.ReadAllText(f)))
            .Select(m => m.Groups["address"].Value.Replace("{Stem}", stem, StringComparison.Ordinal))
            .Where(a => !a.Contains('{', StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)];

    [GeneratedRegex("^@page \"(?<address>[^\"]+)\"", RegexOptions.ExplicitCapture | RegexOptions.Multiline | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Address();
}
