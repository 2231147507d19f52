using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>What is asked of the bars, as a person writes it.</summary>
/// <param name="Good">Good pieces wanted.</param>
public sealed record StockRequest(int Good)
{
    /// <summary>Chance wanted, "90%"; null: the shop's.</summary>
    public string? Chance { get; init; }

    /// <summary>Yield, "95%"; null: the shop's, else the assumed one.</summary>
    public string? Yield { get; init; }

    /// <summary>Pieces to start; null: as many as the chance asks for.</summary>
    public int? Starts { get; init; }

    /// <summary>Lengths of bars to be had, "48 in"; empty: the plan's.</summary>
    public ImmutableArray<string> Bars { get; init; } = [];

    /// <summary>Clearance between pieces, "5 mm"; null: from saw and allowance.</summary>
    public string? Clearance { get; init; }

    /// <summary>Pieces may lie with the back face up.</summary>
    public bool MayTurnOver { get; init; }

    /// <summary>Pieces must lie so that straight cuts part them.</summary>
    public bool StraightCuts { get; init; }

    /// <summary>Services that can be named.</summary>
    public static ImmutableArray<string> Services => [.. HiredCut.All.Select(s => s.Name)];

    /// <summary>Who cuts instead of a saw, "laser"; null: a saw.</summary>
    public string? Service { get; init; }

    /// <summary>Other plans in the same order; empty: this one alone.</summary>
    public ImmutableArray<StockWith> With { get; init; } = [];

    /// <summary>What chooses among ways of filling bars; needed with other plans, and only then made.</summary>
    public Func<IBarSolver>? Solver { get; init; }

    /// <summary>Ends the search early.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>As numbers, or what is wrong with them.</summary>
    internal Checked<StockWanted> Read(LengthUnit units)
    {
        var faults = new List<Fault>();
        var unitMm = units == LengthUnit.Inch ? Length.MmPerInch : 1;
        var wanted = new StockWanted(Good)
        {
            ChanceShare = Share("--chance", Chance, faults),
            YieldShare = Share("--yield", Yield, faults),
            Starts = Starts,
            Bars = [.. Bars.Select(b => Size("--bar", b, unitMm, faults))],
            Clearance = Clearance is null ? null : Size("--clearance", Clearance, unitMm, faults),
            MayTurnOver = MayTurnOver,
            StraightCuts = StraightCuts,
            Service = Service is null ? null : Of(Service, faults),
        };
        return faults.Count > 0 ? Checked<StockWanted>.Bad(faults) : Checked<StockWanted>.Good(wanted);
    }

    /// <summary>The same question of another plan of the order; starts are always by the chance.</summary>
    internal static StockWanted For(StockWanted first, int good) => first with { Starts = null, Good = good };

    /// <summary>A share written as "90%", "90 %" or "0.9".</summary>
    private static double? Share(string option, string? text, List<Fault> faults)
    {
        if (string.IsNullOrWhiteSpace(text)) return null;
        var bare = text.Trim().TrimEnd('%').TrimEnd();
        if (double.TryParse(bare, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var v)) return text.Contains('%', StringComparison.Ordinal) ? v / 100 : v;
        faults.Add(Fault.OfFile(option, $"\"{text}\" is no share", "write it as 90% or 0.9"));
        return null;
    }

    private static HiredCut? Of(string name, List<Fault> faults)
    {
        var service = HiredCut.All.FirstOrDefault(s => string.Equals(s.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));
        if (service is null) faults.Add(Fault.OfFile("--service", $"\"{name}\" is no service known here", "choose from: " + string.Join(", ", HiredCut.All.Select(s => s.Name)) + "; for another give the clearance: --clearance \"5 mm\""));
        return service;
    }

    private static Length Size(string option, string text, double unitMm, List<Fault> faults)
    {
        var read = LengthText.Read(text, unitMm);
        if (read.IsGood) return read.Value.Length;
        faults.Add(Fault.OfFile(option, read.Message, read.Remedy));
        return Length.Zero;
    }
}

/// <summary>Another plan in an order.</summary>
/// <param name="PlanPath">The plan file.</param>
/// <param name="Good">Good pieces wanted of it.</param>
public sealed record StockWith(string PlanPath, int Good)
{
    /// <summary>Reads "other.plan.toml=6".</summary>
    public static Checked<StockWith> Read(string text)
    {
        var at = text.LastIndexOf('=');
        return at > 0 && int.TryParse(text[(at + 1)..].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var good)
            ? Checked<StockWith>.Good(new StockWith(text[..at].Trim(), good))
            : Checked<StockWith>.Bad(Fault.OfFile("--with", $"\"{text}\" is no plan with a count", "write the plan file, = and how many good ones: --with \"other.plan.toml=6\""));
    }
}
