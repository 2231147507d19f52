using System.Net;
using System.Net.WebSockets;
using System.Text;
using System.Text.RegularExpressions;

namespace Tangwright.Tests;

/// <summary>Pages of strangers, names that lead elsewhere, links: nothing outside the folder that lies open is read or written. Addresses are those the desk's own code names, so a new one is tried too.</summary>
public sealed partial class HostileTests : IDisposable
{
    private const string Secret = "Not for pages";

    private readonly Scratch _scratch = new();
    private readonly RunningDesk _desk;

    public HostileTests()
    {
        System.IO.Directory.CreateDirectory(_scratch.Path("open"));
        var plan = Repository.Text("examples", "paring-knife.plan.toml");
        _scratch.Put("open/knife.plan.toml", plan);
        _scratch.Put("secret.plan.toml", NameLine().Replace(plan, $"name = \"{Secret}\"", 1));
        _scratch.Put("secret.txt", Secret);
        _scratch.Put("shop.toml", $"# {Secret}\n");
        System.IO.File.CreateSymbolicLink(_scratch.Path("open", "linked.plan.toml"), _scratch.Path("secret.plan.toml"));
        System.IO.File.CreateSymbolicLink(_scratch.Path("open", "linked.shop.toml"), _scratch.Path("shop.toml"));
        foreach (var folder in new[] { "linked", "linked-packet", "linked-revisions" }) System.IO.Directory.CreateSymbolicLink(_scratch.Path("open", folder), _scratch.Folder);
        _desk = new RunningDesk(_scratch.Path("open"));
    }

    public void Dispose()
    {
        _desk.Dispose();
        _scratch.Dispose();
    }

    [Fact]
    public async Task No_address_leads_out_of_the_folder()
    {
        string[] tricks = ["..%2Fsecret", "..%5Csecret", "%2e%2e%2fsecret", "..%252Fsecret", "..%2Fsecret.txt", Uri.EscapeDataString(_scratch.Path("secret")), "linked", "linked%2Fsecret", "knife%00", "..%2Fopen%2F..%2Fsecret", ".", "..", "con", new string('a', 3000)];
        var before = Outside();
        var templates = Addresses();
        Assert.Contains("/plan/{Stem}", templates);
        Assert.Contains("/plan/{stem}/sheets.pdf", templates);
        foreach (var template in templates)
        {
            foreach (var trick in tricks)
            {
                // the trick as the plan's name, and in every other place beside a good name
                foreach (var address in new[] { Hole().Replace(template, trick), Hole().Replace(template.Replace("{stem}", "knife", StringComparison.OrdinalIgnoreCase), trick) + $"?file={trick}&name={trick}&sheets={trick}&shop={trick}&with={trick}&revision={trick}" }.Distinct())
                {
                    foreach (var method in new[] { HttpMethod.Get, HttpMethod.Post })
                    {
                        using var answer = await _desk.Client.SendAsync(new HttpRequestMessage(method, new Uri(_desk.Address, address)));
                        Assert.False((int)answer.StatusCode == 500, $"{method} {address}: {(int)answer.StatusCode} {string.Join(' ', _desk.Said)}");
                        Assert.DoesNotContain(Secret, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
                    }
                }
            }
        }

        Assert.Equal(before, Outside());
    }

    [Theory]
    [InlineData("http://evil.example", HttpStatusCode.Forbidden)]
    [InlineData("null", HttpStatusCode.Forbidden)]
    [InlineData("", HttpStatusCode.SwitchingProtocols)]
    public async Task No_stranger_gets_a_line_to_the_desk(string origin, HttpStatusCode wanted)
    {
        using var line = new ClientWebSocket();
        line.Options.CollectHttpResponseDetails = true;
        line.Options.SetRequestHeader("Origin", origin.Length > 0 ? origin : _desk.Address.GetLeftPart(UriPartial.Authority));
        try
        {
            await line.ConnectAsync(new UriBuilder(_desk.Address) { Scheme = "ws", Path = "_blazor" }.Uri, CancellationToken.None);
        }
        catch (WebSocketException) when (wanted == HttpStatusCode.Forbidden)
        {
            // told by the status
        }

        Assert.Equal(wanted, line.HttpStatusCode);
    }

    [Fact]
    public async Task A_plan_of_10_MB_is_refused_in_words()
    {
        await System.IO.File.WriteAllTextAsync(_scratch.Path("open", "huge.plan.toml"), string.Concat(Enumerable.Repeat("# a remark that goes on and on\n", 340_000)));
        var page = await _desk.Client.GetStringAsync("/plan/huge");
        Assert.Contains("is too large", page, StringComparison.Ordinal);
        Assert.Contains("knife", await _desk.Client.GetStringAsync("/"), StringComparison.Ordinal);
    }

    private static string[] Addresses()
        => [.. System.IO.Directory.EnumerateFiles(Repository.Path("src", "Desk"), "*.*", System.IO.SearchOption.AllDirectories)
            .Where(f => f.EndsWith(".razor", StringComparison.Ordinal) || f.EndsWith(".cs", StringComparison.Ordinal))
            .Where(f => !f.Contains("/obj/", StringComparison.Ordinal) && !f.Contains("/bin/", StringComparison.Ordinal))
            .SelectMany(f => Address().Matches(System.IO.File.ReadAllText(f)))
            .Select(m => m.Groups["address"].Value)
            .Distinct(StringComparer.Ordinal)];

    private string Outside() => string.Join('\n', System.IO.Directory.GetFiles(_scratch.Folder).Concat(System.IO.Directory.GetDirectories(_scratch.Folder)).Order(StringComparer.Ordinal).Select(f => f + (System.IO.File.Exists(f) ? System.IO.File.ReadAllText(f) : "")));

    [GeneratedRegex("(@page |Map(Get|Post|Put|Delete|Methods)\\(\\s*)\"(?<address>/[^\"]*)\"", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Address();

    [GeneratedRegex("\\{[^}]+\\}", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Hole();

    [GeneratedRegex("name = \".*?\"", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex NameLine();
}
