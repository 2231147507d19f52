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

    /// <summary>A sheet that can be had, "300 mm x 1000 mm", width first: pieces are laid by search; null: in rows along bars.</summary>
    public string? Sheet { get; init; }

    /// <summary>Pieces may lie across the sheet.</summary>
    public bool MayLieAcross { get; init; }

    /// <summary>Places weighed up in the search, millions; null: <see cref="SheetSearch.UsualMillions"/>.</summary>
    public int? Millions { get; init; }

    /// <summary>Search so many seconds on all cores instead; two runs may differ.</summary>
    public double? Seconds { get; init; }

    /// <summary>Seed of the search.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Told of every better layout while it is searched for: sheets, and the length used of the last.</summary>
    public Action<int, Length>? Better { get; init; }

    /// <summary>What chooses among ways of filling bars; needed with other plans, and only then made.</summary>
    public Func<IBarSolver>? Solver { get; init; }

    /// <summary>Ends the search early.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>As numbers, or what is wrong with them.</summary>
    internal Checked<StockWanted> Read(LengthUnit units)
    {
        var faults = new List<Fault>();
        var unitMm = units == LengthUnit.Inch ? Length.MmPerInch : 1;
        if (StraightCuts && Service is not null) faults.Add(Fault.OfFile("--service", "a cutting service follows the outlines and needs no straight cuts", "leave out --service or --straight-cuts"));
        var wanted = new StockWanted(Good)
        {
            ChanceShare = Share("--chance", Chance, faults),
            YieldShare = Share("--yield", Yield, faults),
            Starts = Starts,
            Bars = [.. Bars.Select(b => Size("--bar", b, unitMm, faults))],
            Clearance = Clearance is null ? null : Size("--clearance", Clearance, unitMm, faults),
            MayTurnOver = MayTurnOver,
            StraightCuts = StraightCuts,
            Sheet = Sheet is null ? null : Searched(unitMm, faults),
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

    private SheetSearch Searched(double unitMm, List<Fault> faults)
    {
        var sides = Sheet!.Split(['x', '×'], 2);
        if (sides.Length < 2)
        {
            faults.Add(Fault.OfFile("--sheet", $"\"{Sheet}\" is no size of a sheet", "write width and length: --sheet \"300 mm x 1000 mm\""));
            return new SheetSearch(Length.Zero, Length.Zero);
        }

        if (Millions is < 1 or > 100_000) faults.Add(Fault.OfFile("--search", $"{Millions} million places cannot be weighed up", "ask for 1 to 100000"));
        if (Seconds is { } s && !(s is >= 0.1 and <= 86_400)) faults.Add(Fault.OfFile("--seconds", "the time is not between 0.1 s and a day", "give seconds, as 60"));
        if (Seed < 0) faults.Add(Fault.OfFile("--seed", $"{Seed} is no seed", "give a whole number from 0"));
        var (started, effort) = (TimeProvider.System.GetTimestamp(), new SearchEffort((Millions ?? SheetSearch.UsualMillions) * 1_000_000L, SheetSearch.UsualSearches, (ulong)Math.Max(0, Seed)));
        return new SheetSearch(Size("--sheet", sides[0].Trim(), unitMm, faults), Size("--sheet", sides[1].Trim(), unitMm, faults))
        {
            MayLieAcross = MayLieAcross,
            Effort = Seconds is not { } seconds ? effort : effort with { Searches = Environment.ProcessorCount, ClockShare = () => TimeProvider.System.GetElapsedTime(started).TotalSeconds / seconds },
        };
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
