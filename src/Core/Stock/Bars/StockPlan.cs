using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A bar in the rack.</summary>
/// <param name="Name">What is written on it.</param>
/// <param name="Steel">Name of its steel.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Width">Width.</param>
/// <param name="Length">Length.</param>
public sealed record RackBar(string Name, string Steel, Length Thickness, Length Width, Length Length);

/// <summary>A bar that can be bought.</summary>
/// <param name="Steel">Name of its steel.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Width">Width.</param>
/// <param name="Length">Length.</param>
/// <param name="Price">What one costs; null when not said.</param>
/// <param name="PricePerKg">What a kilogram costs; null when not said.</param>
public sealed record PricedBar(string Steel, Length Thickness, Length Width, Length Length, decimal? Price, decimal? PricePerKg);

/// <summary>How pieces are kept apart in a bar.</summary>
/// <param name="Clearance">Between two pieces.</param>
/// <param name="Kerf">Of the saw that cuts the last piece off the rest.</param>
/// <param name="End">At each end of the row.</param>
/// <param name="Edge">Between a piece and a long edge of the bar.</param>
/// <param name="Says">Where the clearance comes from, in words.</param>
public sealed record BarRoom(Length Clearance, Length Kerf, Length End, Length Edge, string Says);

/// <summary>How one bar is cut, or several alike.</summary>
/// <param name="Rack">The bar of the rack; null for a new one.</param>
/// <param name="Count">How many bars are cut so.</param>
/// <param name="Width">Width of the bar.</param>
/// <param name="Length">Length of the bar.</param>
/// <param name="Places">Where the pieces lie, mm from the bar's left end and its lower edge.</param>
/// <param name="Row">Length of the row of pieces, the end allowances included.</param>
/// <param name="LeastGap">Least gap between two pieces as checked on the true outline; at most twice the clearance is looked for.</param>
/// <param name="IsShortest">Whether no row of the kind is shorter.</param>
/// <param name="Drop">What is left in one length, the kerf taken off.</param>
/// <param name="DropHoldsPiece">Whether another of these pieces comes out of the drop.</param>
public sealed record BarCut(RackBar? Rack, int Count, Length Width, Length Length, ImmutableArray<LanePlace> Places, Length Row, Length LeastGap, bool IsShortest, Length Drop, bool DropHoldsPiece)
{
    /// <summary>Name of its steel.</summary>
    public string Steel { get; init; } = "";

    /// <summary>Its thickness.</summary>
    public Length Thickness { get; init; }

    /// <summary>Straight cuts that part the pieces, one after each but the last; empty when the layout is not made for straight cuts.</summary>
    public ImmutableArray<SawLine> SawLines { get; init; } = [];

    internal BarCut Sawn(ImmutableArray<Path> outlines, bool straightCuts, Length clearance) => straightCuts ? this with { SawLines = SawLine.Between(outlines, Places, Width.Mm, clearance.Mm) } : this;
}

/// <summary>Bars of one length to buy.</summary>
/// <param name="Count">How many.</param>
/// <param name="Length">How long.</param>
/// <param name="MostInBar">Pieces in one at most.</param>
/// <param name="StraightInBar">Pieces in one when they are laid end to end.</param>
public sealed record BarsToBuy(int Count, Length Length, int MostInBar, int StraightInBar)
{
    /// <summary>Their width.</summary>
    public Length Width { get; init; }

    /// <summary>Name of their steel.</summary>
    public string Steel { get; init; } = "";

    /// <summary>Their thickness.</summary>
    public Length Thickness { get; init; }

    /// <summary>What one costs; null when the shop file does not say.</summary>
    public decimal? Price { get; init; }
}

/// <summary>One pattern of an order.</summary>
/// <param name="Results">Its plan worked up.</param>
/// <param name="Good">Good pieces wanted.</param>
/// <param name="Starts">Pieces laid out.</param>
/// <param name="Yield">Share that comes out good.</param>
/// <param name="ChanceShare">Chance of enough good ones.</param>
/// <param name="LowChanceShare">At the lower end of the yield's band.</param>
/// <param name="HighChanceShare">At the upper end.</param>
public sealed record StockPattern(Results Results, int Good, int Starts, YieldGuess Yield, double ChanceShare, double LowChanceShare, double HighChanceShare)
{
    /// <summary>What the new steel of one good piece costs, by its share of the pieces' steel; null without prices.</summary>
    public decimal? SteelPrice { get; init; }
}

/// <summary>What so many starts give and take.</summary>
/// <param name="Starts">Pieces started.</param>
/// <param name="ChanceShare">Chance of enough good ones.</param>
/// <param name="LowChanceShare">At the lower end of the yield's band.</param>
/// <param name="HighChanceShare">At the upper end.</param>
/// <param name="NewBars">New bars it takes.</param>
/// <param name="NewSteel">Their length together.</param>
/// <param name="IsFree">Whether it takes no more steel than one start less.</param>
public sealed record StartsRow(int Starts, double ChanceShare, double LowChanceShare, double HighChanceShare, int NewBars, Length NewSteel, bool IsFree);

/// <summary>From a count of good pieces to bars and cuts.</summary>
/// <param name="Good">Good pieces wanted.</param>
/// <param name="WantedChanceShare">Chance asked for.</param>
/// <param name="Yield">Share that comes out good.</param>
/// <param name="Starts">Pieces laid out.</param>
/// <param name="Rows">Starts around it, with chance and steel.</param>
/// <param name="Room">Clearances.</param>
/// <param name="Cuts">How the bars are cut, rack first.</param>
/// <param name="Buy">New bars, by length.</param>
/// <param name="StraightBars">New bars it would take end to end, of the longest length; null when none would hold one.</param>
/// <param name="Mass">Mass of the new bars; null when the steel's density is not known.</param>
/// <param name="Notes">What to know, in words.</param>
public sealed record StockPlan(
    int Good,
    double WantedChanceShare,
    YieldGuess Yield,
    int Starts,
    ImmutableArray<StartsRow> Rows,
    BarRoom Room,
    ImmutableArray<BarCut> Cuts,
    ImmutableArray<BarsToBuy> Buy,
    int? StraightBars,
    Mass? Mass,
    ImmutableArray<string> Notes)
{
    /// <summary>The patterns, the plan's own first; <see cref="LanePlace.Pattern"/> counts through them.</summary>
    public ImmutableArray<StockPattern> Patterns { get; init; } = [];

    /// <summary>What the new bars cost; null where a price is missing.</summary>
    public decimal? Price { get; init; }

    /// <summary>What prices are counted in; may be empty.</summary>
    public string Money { get; init; } = "";

    /// <summary>Whether no bars cost less, of all ways looked at.</summary>
    public bool IsLeast { get; init; } = true;

    /// <summary>Who cuts instead of a saw; null: a saw.</summary>
    public HiredCut? Service { get; init; }

    /// <summary>Whether the pieces lie on sheets, laid by search.</summary>
    public bool IsOnSheets { get; init; }

    /// <summary>Whether the pieces can be parted by straight cuts.</summary>
    public bool IsByStraightCuts { get; init; }

    /// <summary>The row of the starts laid out.</summary>
    public StartsRow Chosen => Rows.First(r => r.Starts == Starts);

    /// <summary>The most starts that take no more steel than those laid out.</summary>
    public StartsRow Free => Rows.Last(r => r.Starts == Starts || (r.Starts > Starts && r.NewSteel <= Chosen.NewSteel));
}
