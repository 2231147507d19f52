using System.CommandLine;
using Tangwright.Foundation;
using Tangwright.Planners;
using Tangwright.UseCases;

namespace Tangwright.Cli;

/// <summary>The options that ask for bars.</summary>
internal sealed class StockOptions
{
    private readonly Option<int?> _good;
    private readonly Option<string?> _chance = new("--chance") { Description = "chance of enough good ones; else the shop's, else 90%", HelpName = "90%" };
    private readonly Option<string?> _yield = new("--yield") { Description = "share of started pieces that come out good; else the shop's, else 90% is assumed", HelpName = "95%" };
    private readonly Option<int?> _start = new("--start") { Description = "start so many whatever the chance", HelpName = "N" };
    private readonly Option<string[]> _bars = new("--bar") { Description = "length of a bar that can be bought, once for each; else that of the plan", HelpName = "LENGTH" };
    private readonly Option<string?> _clearance = new("--clearance") { Description = "least distance between pieces; else the kerf of the first saw and twice the shop's allowance beside a piece", HelpName = "LENGTH" };
    private readonly Option<string[]> _with = new("--with") { Description = "another plan of the same order and how many good ones, once for each; pieces of one steel and thickness share bars", HelpName = "PLAN=N" };
    private readonly Option<bool> _straight = new("--straight-cuts") { Description = "lay the pieces so that straight cuts across the bar part them, and say what that costs" };
    private readonly Option<string?> _service = new("--service") { Description = "a service cuts, no saw: " + string.Join(", ", StockRequest.Services), HelpName = "NAME" };
    private readonly Option<string?> _sheet = new("--sheet") { Description = "lay the pieces by search on sheets of this size, or on bars wide enough for several rows: width, then length along the grain", HelpName = "\"W x L\"" };
    private Option<int>? _seed;
    private readonly Option<bool> _across = new("--across") { Description = "on sheets pieces may also lie across the grain" };
    private readonly Option<int?> _search = new("--search") { Description = "how long to search: millions of places weighed up, else 20; asked again, the answer is the same", HelpName = "N" };
    private readonly Option<double?> _seconds = new("--seconds") { Description = "search for so many seconds on all cores instead; two runs may differ", HelpName = "S" };
    private readonly Option<bool> _over = new("--turn-over") { Description = "pieces may also lie with the back face up" };

    /// <summary>The options.</summary>
    /// <param name="required">Whether a count must be given.</param>
    public StockOptions(bool required) => _good = new("--good") { Description = required ? "good pieces wanted" : "good pieces wanted: adds a buy list and a cut map", HelpName = "N", Required = required };

    /// <summary>Adds them to a verb.</summary>
    public void AddTo(Command c, Option<int> seed)
    {
        _seed = seed;
        Option[] all = [_good, _chance, _yield, _start, _bars, _clearance, _with, _straight, _service, _sheet, _across, _search, _seconds, _over];
        foreach (var o in all) c.Options.Add(o);
    }

    /// <summary>What was asked, or what is wrong with how it is written; null without a count.</summary>
    public Checked<StockRequest>? Of(ParseResult p)
    {
        if (p.GetValue(_good) is not { } good)
        {
            return new Option[] { _with, _straight, _service, _sheet, _bars, _start, _yield, _chance, _clearance }.FirstOrDefault(o => p.GetResult(o) is { Implicit: false }) is { } alone
                ? Checked<StockRequest>.Bad(Fault.OfFile(alone.Name, "asks about bars without a count", "say how many good pieces: --good 12"))
                : null;
        }

        if (p.GetValue(_sheet) is null && new Option[] { _across, _search, _seconds }.FirstOrDefault(o => p.GetResult(o) is { Implicit: false }) is { } idle) return Checked<StockRequest>.Bad(Fault.OfFile(idle.Name, "only says how sheets are searched", "name the sheet too: --sheet \"300 mm x 1000 mm\""));
        if (p.GetValue(_sheet) is not null && p.GetValue(_bars) is { Length: > 0 }) return Checked<StockRequest>.Bad(Fault.OfFile("--bar", "does not go with a sheet", "give --bar or --sheet, not both"));
        var with = (p.GetValue(_with) ?? []).Select(StockWith.Read).ToArray();
        return with.Any(w => !w.IsGood) ? Checked<StockRequest>.Bad(with.SelectMany(w => w.Faults)) : Checked<StockRequest>.Good(new StockRequest(good)
        {
            Chance = p.GetValue(_chance),
            Yield = p.GetValue(_yield),
            Starts = p.GetValue(_start),
            Bars = [.. p.GetValue(_bars) ?? []],
            Clearance = p.GetValue(_clearance),
            Sheet = p.GetValue(_sheet),
            MayLieAcross = p.GetValue(_across),
            Millions = p.GetValue(_search),
            Seconds = p.GetValue(_seconds),
            Seed = p.GetValue(_seed!),
            MayTurnOver = p.GetValue(_over),
            StraightCuts = p.GetValue(_straight),
            Service = p.GetValue(_service),
            With = [.. with.Select(w => w.Value)],
            Solver = static () => new BarSolver(),
        });
    }
}
