using System.Net;

namespace Tangwright.Tests;

/// <summary>The running desk: who may talk to it, what it serves, what it refuses.</summary>
public sealed class DeskAtWork : IDisposable
{
    private readonly string _folder = System.IO.Directory.CreateTempSubdirectory("tangwright-desk-").FullName;
    private readonly DeskServer _desk;

    public DeskAtWork()
    {
        foreach (var ending in new[] { ".plan.toml", ".shop.toml" })
        {
            System.IO.File.Copy(Repository.Path("examples", "skeleton-hatchet" + ending), System.IO.Path.Combine(_folder, "skeleton-hatchet" + ending));
        }

        _desk = new DeskServer(_folder);
    }

    public void Dispose()
    {
        _desk.Dispose();
        System.IO.Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public async Task Listens_on_this_computer_alone() => Assert.Equal("127.0.0.1", (await Task.FromResult(_desk.Address)).Host);

    [Theory]
    [InlineData("Host", "evil.example")]
    [InlineData("Origin", "http://evil.example")]
    [InlineData("Origin", "null")]
    public async Task Turns_strangers_away(string header, string value)
    {
        foreach (var path in new[] { "/", "/_blazor/negotiate", "/plan/skeleton-hatchet/sheets.pdf" })
        {
            using var request = new HttpRequestMessage(path.Contains("negotiate", StringComparison.Ordinal) ? HttpMethod.Post : HttpMethod.Get, path);
            request.Headers.TryAddWithoutValidation(header, value);
            Assert.Equal(HttpStatusCode.Forbidden, (await _desk.Client.SendAsync(request)).StatusCode);
        }
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
    [InlineData("desk.css")]
    [InlineData("js/drawing.js")]
    [InlineData("_framework/blazor.web.js")]
    public async Task Serves_its_own_files_wherever_it_is_started(string file)
        => Assert.NotEmpty(await _desk.Client.GetByteArrayAsync("/" + file));

    [Fact]
    public async Task Gives_a_sheet_as_pdf()
    {
        var pdf = await _desk.Client.GetByteArrayAsync("/plan/skeleton-hatchet/sheets.pdf?sheets=holes&paper=letter");
        Assert.Equal("%PDF-"u8.ToArray(), pdf[..5]);
    }

    [Theory]
    [InlineData("/plan/..%2F..%2Fetc%2Fpasswd/sheets.pdf")]
    [InlineData("/plan/%2Fetc%2Fpasswd/sheets.pdf")]
    [InlineData("/plan/no-such-plan/sheets.pdf")]
    public async Task Reads_nothing_outside_its_folder(string path)
    {
        var answer = await _desk.Client.GetAsync(path);
        Assert.False(answer.IsSuccessStatusCode);
        Assert.DoesNotContain("root:", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }
}
