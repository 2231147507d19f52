using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>One measured hole beside its plan.</summary>
/// <param name="Hole">The hole as planned.</param>
/// <param name="Built">As measured, plan's axes.</param>
/// <param name="Off">Measured less planned, from the same edges, mm.</param>
/// <param name="OffFitted">What is left over when the pattern is laid on the measured holes with the least sum of squares, mm.</param>
/// <param name="OffPassing">What is left over when it is laid so that the worst pin hole, or without pin holes the worst of all, comes off best, mm.</param>
/// <param name="Allowed">Position error allowed as a diameter, larger for a larger hole; null when no rod is named.</param>
/// <param name="Verdict">What to do with it.</param>
public sealed record HoleReport(PlacedHole Hole, AsBuilt Built, Point Off, Point OffFitted, Point OffPassing, Length? Allowed, HoleVerdict Verdict)
{
    /// <summary>Farther than this from its planned place, mm, a hole was most likely mistyped or measured from other edges (common practice: twice as far as the worst hole placed by hand). It is neither fitted nor carried on.</summary>
    public const double FarOffMm = 2;

    /// <summary>Whether it was measured too far from its place to be believed.</summary>
    public bool IsFarOff => Off.Length > FarOffMm;

    /// <summary>Position error from the edges, as a diameter.</summary>
    public Length Position => TruePosition.Of(Off);

    /// <summary>Position error within the pattern, fitted with the least sum of squares, as a diameter.</summary>
    public Length PositionFitted => TruePosition.Of(OffFitted);

    /// <summary>Position error within the pattern, laid so that the worst comes off best, as a diameter.</summary>
    public Length PositionPassing => TruePosition.Of(OffPassing);
}

/// <summary>The measured holes of one piece beside the plan.</summary>
/// <param name="Piece">Which piece.</param>
/// <param name="Holes">Its measured holes in the plan's order.</param>
/// <param name="NotMeasured">Holes of the plan that were not measured.</param>
/// <param name="NotInPlan">Measured holes that the plan does not have.</param>
/// <param name="Fit">Least sum of squares over all measured holes.</param>
/// <param name="Passing">Least worst over the pin holes, or without them over all.</param>
public sealed record PositionReport(string Piece, ImmutableArray<HoleReport> Holes, ImmutableArray<string> NotMeasured, ImmutableArray<string> NotInPlan, FittedMove Fit, FittedMove Passing)
{
    /// <summary>Name of the piece whose measured holes all later sheets go by.</summary>
    public const string Guide = "guide";

    /// <summary>Whether its measured holes take the place of the planned ones.</summary>
    public bool IsGuide => Piece == Guide;

    /// <summary>Reports on all measured pieces, the guide piece first, then in the order of the list.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="holes">The plan's holes.</param>
    /// <param name="bench">The edges of the bench sheets.</param>
    /// <param name="measured">What was measured; the last entry for a hole counts.</param>
    public static ImmutableArray<PositionReport> Of(Plan plan, Shop shop, ImmutableArray<PlacedHole> holes, BenchDatum bench, ImmutableArray<MeasuredHole> measured)
        => measured.IsDefaultOrEmpty ? [] : [.. measured.GroupBy(m => m.Piece, StringComparer.Ordinal).OrderByDescending(g => g.Key == Guide).Select(g => OfPiece(plan, shop, holes, bench, g.Key, [.. g]))];

    private static PositionReport OfPiece(Plan plan, Shop shop, ImmutableArray<PlacedHole> holes, BenchDatum bench, string piece, ImmutableArray<MeasuredHole> measured)
    {
        var last = measured.GroupBy(m => m.Name, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Last(), StringComparer.Ordinal);
        var built = holes.Where(h => last.ContainsKey(h.Name)).Select(h => h with { AsBuilt = new AsBuilt(last[h.Name].InPlan(bench), last[h.Name].Diameter) }).ToImmutableArray();
        var near = built.Where(h => h.At.To(h.MadeAt) <= HoleReport.FarOffMm).ToImmutableArray();
        var fit = RigidFit.Of([.. near.Select(h => h.At)], [.. near.Select(h => h.MadeAt)]);
        var passing = BestPassing(near);
        var all = AsBuiltHoles.With(holes, near);
        return new PositionReport(
            piece,
            [.. built.Select(h => new HoleReport(h, h.AsBuilt!, h.MadeAt - h.At, Left(fit, h), Left(passing, h), Allowed(h), HoleVerdict.Of(plan, shop, all, h, TruePosition.Of(Left(passing, h)), Allowed(h))))],
            [.. holes.Where(h => !last.ContainsKey(h.Name)).Select(h => h.Name)],
            [.. measured.Select(m => m.Name).Distinct(StringComparer.Ordinal).Where(n => holes.All(h => h.Name != n))],
            fit,
            passing);
    }

    private static Length? Allowed(PlacedHole hole) => hole.Pin is { } rod ? AllowedPosition.ForPin(hole.Diameter, rod, hole.MadeDiameter) : null;

    private static Point Left(FittedMove move, PlacedHole hole) => FittedMove.Of(move.Turn.Radians, move.Shift, [hole.At], [hole.MadeAt]).Rest[0];

    // pin holes decide how the piece is laid; a hole its rod does not enter is opened up first and asks for the least
    private static FittedMove BestPassing(ImmutableArray<PlacedHole> near)
    {
        const double Little = 0.01;
        var pins = near.Where(h => h.Pin is not null).ToImmutableArray();
        var used = pins.IsEmpty ? near : pins;
        return MinimaxFit.Of([.. used.Select(h => h.At)], [.. used.Select(h => h.MadeAt)], [.. used.Select(h => pins.IsEmpty ? Length.OfMm(1) : Length.OfMm(Math.Max(Little, Allowed(h)!.Value.Mm)))]);
    }
}
