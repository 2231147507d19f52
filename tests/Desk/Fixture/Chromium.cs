using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Tangwright.Tests.Chromium))]

namespace Tangwright.Tests;

/// <summary>One browser for the whole run: Debian's Chromium, without a window.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] Flags = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private IPlaywright _playwright = null!;

    /// <summary>The browser.</summary>
    public IBrowser Browser { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        _playwright = await Playwright.CreateAsync();
        Browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = Flags });
    }

    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        _playwright.Dispose();
    }
}
