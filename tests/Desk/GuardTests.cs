using System.Net;

namespace Tangwright.Tests;

/// <summary>The running desk: who may talk to it, what it serves, what it refuses.</summary>
public sealed class GuardTests : IClassFixture<DeskOnScratch>
{
    private const string Secret = "not for pages";
    private readonly RunningDesk _desk;

    public GuardTests(DeskOnScratch desk)
    {
        _desk = desk.Running;
        if (System.IO.File.Exists(desk.Scratch.Path("secret.txt"))) return;
        desk.PutExample("paring-knife");
        desk.PutExample("skeleton-hatchet");
        desk.Scratch.Put("secret.txt", Secret);
    }

    [Fact]
    public void Listens_on_this_computer_alone() => Assert.Equal("127.0.0.1", _desk.Address.Host);

    [Theory]
    [InlineData("/", null, null, HttpStatusCode.OK)]
    [InlineData("/", null, "http://evil.example", HttpStatusCode.Forbidden)]
    [InlineData("/", null, "null", HttpStatusCode.Forbidden)]
    [InlineData("/", "evil.example", null, HttpStatusCode.Forbidden)]
    [InlineData("/plan/paring-knife/sheets.pdf?sheets=holes", null, "http://127.0.0.1:1", HttpStatusCode.Forbidden)]
    [InlineData("/_blazor/negotiate?negotiateVersion=1", null, "http://evil.example", HttpStatusCode.Forbidden)]
    public async Task Lets_only_its_own_pages_in(string address, string? host, string? origin, HttpStatusCode wanted)
    {
        using var request = new HttpRequestMessage(address.Contains("negotiate", StringComparison.Ordinal) ? HttpMethod.Post : HttpMethod.Get, address);
        if (host is not null) request.Headers.Host = host;
        if (origin is not null) request.Headers.Add("Origin", origin);
        using var answer = await _desk.Client.SendAsync(request);
        Assert.Equal(wanted, answer.StatusCode);
    }

    [Fact]
    public async Task Lists_the_plans_and_shows_their_numbers()
    {
        Assert.Contains("skeleton-hatchet", await _desk.Client.GetStringAsync("/"), StringComparison.Ordinal);
        var page = await _desk.Client.GetStringAsync("/plan/skeleton-hatchet");
        Assert.Contains("455", page, StringComparison.Ordinal);
        Assert.Contains("6.21", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/desk.css")]
    [InlineData("/js/drawing.js")]
    [InlineData("/_framework/blazor.web.js")]
    [InlineData("/plan/paring-knife/sheets.pdf?sheets=template&paper=a4")]
    public async Task Gives_its_files_whole_when_started_from_elsewhere(string address)
    {
        var bytes = await _desk.Client.GetByteArrayAsync(address);
        Assert.True(bytes.Length > 1000, $"{address}: {bytes.Length} bytes");
        if (address.Contains(".pdf", StringComparison.Ordinal)) Assert.Equal("%PDF-"u8.ToArray(), bytes[..5]);
    }

    [Theory]
    [InlineData("/plan/..%2fparing-knife/sheets.pdf")]
    [InlineData("/plan/%2e%2e%5cparing-knife/sheets.pdf")]
    [InlineData("/plan/..%2F..%2Fetc%2Fpasswd/sheets.pdf")]
    [InlineData("/plan/%2Fetc%2Fpasswd/sheets.pdf")]
    [InlineData("/plan/no-such-plan/sheets.pdf")]
    [InlineData("/secret.txt")]
    [InlineData("/paring-knife.plan.toml")]
    [InlineData("/js/../../secret.txt")]
    public async Task Reads_nothing_by_path_tricks(string address)
    {
        using var answer = await _desk.Client.GetAsync(new Uri(address, UriKind.Relative));
        Assert.NotEqual(HttpStatusCode.OK, answer.StatusCode);
        var said = await answer.Content.ReadAsStringAsync();
        Assert.DoesNotContain(Secret, said, StringComparison.Ordinal);
        Assert.DoesNotContain("root:", said, StringComparison.Ordinal);
    }
}
