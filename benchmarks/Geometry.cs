using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Benchmarks;

/// <summary>Geometry and weights of the reference plan.</summary>
[MemoryDiagnoser]
public class Geometry
{
    private readonly Plan _plan = ReferencePlan.Plan;
    private readonly Plan _row;
    private readonly ImmutableArray<PlacedHole> _holes;
    private readonly Region _piece;
    private readonly EdgeSpan _edge;
    private readonly BenchDatum _bench;

    /// <summary>Builds the plan once.</summary>
    public Geometry()
    {
        _holes = HolePlacement.Of(_plan);
        _piece = new Region(_plan.Outline, [.. _holes.Select(h => Path.Circle(h.At, h.Diameter.Mm / 2))]);
        _edge = EdgeSpan.Of(_plan, _piece)!;
        _bench = new BenchDatum(DrilledIn.Rectangle, "", "", default, 1, 1, _plan.Outline.Bounds.Grown(3), "");
        _row = _plan with { Holes = [new HoleRow("R", null, null, true, 8, [Length.OfMm(9), Length.OfMm(5)], RowSpacing.EqualWebs, HoleUse.Lightening, HoleMake.Drill)] };
    }

    /// <summary>How many base points the bevel takes.</summary>
    public int Rays
    {
        get
        {
            BevelSolid.Removed(_piece, _edge, _plan.Bevel!.Plunge, Laws(_plan), out var rays);
            return rays;
        }
    }

    /// <summary>Area and moments of the pierced plate.</summary>
    [Benchmark]
    public Moments PlateMoments() => Moments.Of(_piece);

    /// <summary>Steel taken before hardening and when finished.</summary>
    [Benchmark]
    public ImmutableArray<Moments> Bevel() => BevelSolid.Removed(_piece, _edge, _plan.Bevel!.Plunge, Laws(_plan));

    /// <summary>The same with a bevel to the spine.</summary>
    [Benchmark]
    public ImmutableArray<Moments> FullBevel() => BevelSolid.Removed(_piece, _edge, _plan.Bevel!.Plunge, Laws(_plan with { Bevel = _plan.Bevel! with { Height = null } }));

    /// <summary>Forty single holes.</summary>
    [Benchmark]
    public ImmutableArray<PlacedHole> PlaceHoles() => HolePlacement.Of(_plan);

    /// <summary>Eight graded holes along the midline.</summary>
    [Benchmark]
    public ImmutableArray<PlacedHole> RowOnMidline() => HolePlacement.Of(_row);

    /// <summary>All five stages.</summary>
    [Benchmark]
    public ImmutableArray<StageFigures> Weights() => StageWeights.Of(_plan, _holes, _piece, _bench, null);

    private static ImmutableArray<GrindProfile> Laws(Plan plan) => [GrindProfile.BeforeHardening(plan), GrindProfile.Finished(plan)];
}
