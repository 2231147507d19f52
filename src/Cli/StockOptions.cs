using System.CommandLine;
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
    private readonly Option<bool> _over = new("--turn-over") { Description = "pieces may also lie with the back face up" };

    /// <summary>The options.</summary>
    /// <param name="required">Whether a count must be given.</param>
    public StockOptions(bool required) => _good = new("--good") { Description = required ? "good pieces wanted" : "good pieces wanted: adds a buy list and a cut map", HelpName = "N", Required = required };

    /// <summary>Adds them to a verb.</summary>
    public void AddTo(Command c)
    {
        Option[] all = [_good, _chance, _yield, _start, _bars, _clearance, _over];
        foreach (var o in all) c.Options.Add(o);
    }

    /// <summary>What was asked; null without a count.</summary>
    public StockRequest? Of(ParseResult p) => p.GetValue(_good) is not { } good ? null : new StockRequest(good)
    {
        Chance = p.GetValue(_chance),
        Yield = p.GetValue(_yield),
        Starts = p.GetValue(_start),
        Bars = [.. p.GetValue(_bars) ?? []],
        Clearance = p.GetValue(_clearance),
        MayTurnOver = p.GetValue(_over),
    };
}
