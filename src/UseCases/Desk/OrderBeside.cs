using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>What was last asked for on the page of bars, kept beside the plan as <c>NAME.order.csv</c>: a name, a comma, a value on each line. A line that makes no sense is passed over.</summary>
internal static class OrderBeside
{
    private const int MostLines = 200;

    /// <summary>Where it lies.</summary>
    public static string PathOf(string planPath)
        => System.IO.Path.Combine(System.IO.Path.GetDirectoryName(planPath) ?? "", OpenWork.Stem(planPath) + ".order.csv");

    /// <summary>Reads it; null when there is none or no count in it.</summary>
    public static StockRequest? Read(string planPath, DeskFolder folder)
    {
        if (new System.IO.FileInfo(PathOf(planPath)) is not { Exists: true, LinkTarget: null }) return null;
        var text = TextFile.Read(PathOf(planPath));
        if (!text.IsGood) return null;
        var lines = text.Value.Split('\n').Take(MostLines).Select(l => l.Trim()).Where(l => l.Length > 0 && l[0] != '#' && l.Contains(',', StringComparison.Ordinal)).Select(l => (Name: l[..l.IndexOf(',', StringComparison.Ordinal)], Value: l[(l.IndexOf(',', StringComparison.Ordinal) + 1)..].Trim())).ToArray();
        string? One(string name) => lines.LastOrDefault(l => l.Name == name).Value is { Length: > 0 } v ? v : null;
        if (!int.TryParse(One("good"), NumberStyles.None, CultureInfo.InvariantCulture, out var good)) return null;
        return new StockRequest(good)
        {
            Yield = One("yield"),
            Chance = One("chance"),
            Bars = [.. lines.Where(l => l.Name == "bar" && l.Value.Length > 0).Select(l => l.Value)],
            MayTurnOver = One("turn_over") == "yes",
            StraightCuts = One("straight_cuts") == "yes",
            Service = One("service"),
            Sheet = One("sheet"),
            MayLieAcross = One("across") == "yes",
            With = [.. lines.Where(l => l.Name == "with").Select(l => Other(l.Value, folder)).OfType<StockWith>()],
            Solver = folder.Solver,
        };
    }

    /// <summary>Writes it whole or not at all; what went wrong, if anything did.</summary>
    public static ImmutableArray<Fault> Write(string planPath, StockRequest r)
    {
        var text = new StringBuilder("# What was last asked for on the page of bars. It may be deleted.\n");
        void Line(string name, string? value)
        {
            if (!string.IsNullOrEmpty(value)) text.Append(CultureInfo.InvariantCulture, $"{name},{value.ReplaceLineEndings(" ")}\n");
        }

        Line("good", r.Good.ToString(CultureInfo.InvariantCulture));
        Line("yield", r.Yield);
        Line("chance", r.Chance);
        foreach (var b in r.Bars) Line("bar", b);
        Line("turn_over", r.MayTurnOver ? "yes" : "");
        Line("straight_cuts", r.StraightCuts ? "yes" : "");
        Line("service", r.Service);
        Line("sheet", r.Sheet);
        Line("across", r.MayLieAcross ? "yes" : "");
        foreach (var w in r.With) Line("with", string.Create(CultureInfo.InvariantCulture, $"{OpenWork.Stem(w.PlanPath)}={w.Good}"));
        if (System.IO.File.Exists(PathOf(planPath)) && TextFile.Read(PathOf(planPath)) is { IsGood: true, Value: var there } && there == text.ToString()) return [];
        return OutputFolder.Write([new OutputFile(PathOf(planPath), Encoding.UTF8.GetBytes(text.ToString()))], overwrite: true);
    }

    /// <summary>A plan of the folder and its count.</summary>
    private static StockWith? Other(string text, DeskFolder folder)
        => StockWith.Read(text) is { IsGood: true, Value: var with } && folder.PathOf(with.PlanPath) is { IsGood: true, Value: var path } && System.IO.File.Exists(path) ? with with { PlanPath = path } : null;
}
