using System.Collections.Immutable;
using Tangwright.UseCases;

namespace Tangwright.Desk;

/// <summary>Addresses of sheets, and what an address asks for.</summary>
internal static class SheetsQuery
{
    /// <summary>What the words of an address ask for.</summary>
    public static PrintRequest Of(string? paper, string? printer, string? mirror, TimeProvider clock)
        => new(Said(paper), Measured: null, mirror == "yes", Units: null, DateOnly.FromDateTime(clock.GetLocalNow().Date)) { Printer = Said(printer) };

    /// <summary>The kinds of an address: "template,holes"; none: all.</summary>
    public static ImmutableArray<string> Kinds(string? sheets) => [.. (sheets ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    /// <summary>Page of all kinds, or of one.</summary>
    public static string Page(string stem, string? kind, PrintRequest print) => Plan(stem, "sheets" + (kind is null ? "" : "/" + Uri.EscapeDataString(kind)), print);

    /// <summary>The plain page that is printed.</summary>
    public static string Print(string stem, IEnumerable<string> kinds, PrintRequest print) => Plan(stem, "print/" + Uri.EscapeDataString(string.Join(',', kinds)), print);

    /// <summary>The PDF.</summary>
    public static string Pdf(string stem, IEnumerable<string> kinds, PrintRequest print) => Plan(stem, "sheets.pdf", print, ("sheets", string.Join(',', kinds)));

    /// <summary>The first sheet of a kind as a picture by itself.</summary>
    public static string Picture(string stem, string kind, PrintRequest print, int version) => Plan(stem, $"sheets/{Uri.EscapeDataString(kind)}/first.svg", print, ("version", version.ToString(System.Globalization.CultureInfo.InvariantCulture)));

    /// <summary>Sets the printer up that is chosen.</summary>
    public static string SetUp(string stem, PrintRequest print) => Plan(stem, "printer", print);

    private static string Plan(string stem, string rest, PrintRequest print, params ReadOnlySpan<(string Key, string Value)> more)
    {
        var query = new List<KeyValuePair<string, string?>>();
        foreach (var (key, value) in more) query.Add(new(key, value));
        if (print.Paper is not null) query.Add(new("paper", print.Paper));
        if (print.Printer is not null) query.Add(new("printer", print.Printer));
        if (print.Mirror) query.Add(new("mirror", "yes"));
        return $"/plan/{Uri.EscapeDataString(stem)}/{rest}" + QueryString.Create(query);
    }

    private static string? Said(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
