using System.Net;

namespace Tangwright.Tests;

public sealed class GuardTests : IDisposable
{
    private readonly Scratch _scratch = new();
    private readonly RunningDesk _desk;
    private readonly HttpClient _client = new();

    public GuardTests()
    {
        _scratch.PutExample("paring-knife");
        _scratch.Put("secret.txt", "not for pages");
        _desk = new RunningDesk(_scratch.Folder);
    }

    public void Dispose()
    {
        _client.Dispose();
        _desk.Dispose();
        _scratch.Dispose();
    }

    [Theory]
    [InlineData("/", null, null, HttpStatusCode.OK)]
    [InlineData("/", null, "http://evil.example", HttpStatusCode.Forbidden)]
    [InlineData("/", null, "null", HttpStatusCode.Forbidden)]
    [InlineData("/", "evil.example", null, HttpStatusCode.Forbidden)]
    [InlineData("/plan/paring-knife/sheets.pdf?sheets=holes", null, "http://127.0.0.1:1", HttpStatusCode.Forbidden)]
    [InlineData("/_blazor/negotiate?negotiateVersion=1", null, "http://evil.example", HttpStatusCode.Forbidden)]
    public async Task Lets_only_its_own_pages_in(string address, string? host, string? origin, HttpStatusCode wanted)
    {
        using var request = new HttpRequestMessage(address.Contains("negotiate", StringComparison.Ordinal) ? HttpMethod.Post : HttpMethod.Get, new Uri(_desk.Address, address));
        if (host is not null) request.Headers.Host = host;
        if (origin is not null) request.Headers.Add("Origin", origin);
        using var answer = await _client.SendAsync(request);
        Assert.Equal(wanted, answer.StatusCode);
    }

    [Theory]
    [InlineData("/desk.css")]
    [InlineData("/js/drawing.js")]
    [InlineData("/_framework/blazor.web.js")]
    [InlineData("/plan/paring-knife/sheets.pdf?sheets=template&paper=a4")]
    public async Task Gives_its_files_whole_when_started_from_elsewhere(string address)
    {
        var bytes = await _client.GetByteArrayAsync(new Uri(_desk.Address, address));
        Assert.True(bytes.Length > 1000, $"{address}: {bytes.Length} bytes");
    }

    [Theory]
    [InlineData("/plan/..%2fparing-knife/sheets.pdf")]
    [InlineData("/plan/%2e%2e%5cparing-knife/sheets.pdf")]
    [InlineData("/secret.txt")]
    [InlineData("/paring-knife.plan.toml")]
    [InlineData("/js/../../secret.txt")]
    public async Task Reads_nothing_by_path_tricks(string address)
    {
        using var answer = await _client.GetAsync(new Uri(_desk.Address, address));
        Assert.NotEqual(HttpStatusCode.OK, answer.StatusCode);
        Assert.DoesNotContain("not for pages", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }
}
