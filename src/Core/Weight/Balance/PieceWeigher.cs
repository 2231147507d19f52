using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Weight and balance of a piece.</summary>
/// <param name="Grams">Weight, g.</param>
/// <param name="FromDatumMm">Balance point along the piece, from the datum into it, mm.</param>
public readonly record struct Weighed(double Grams, double FromDatumMm);

/// <summary>Weighs the whole piece, steel and what is put on it, with levers moved; only what the levers touch is worked out again, on the true solid.</summary>
public sealed class PieceWeigher
{
    private readonly Results _r;
    private readonly double _density;
    private readonly Moments _plate, _removed, _broken, _handle;
    private readonly EdgeSpan? _edge;
    private readonly Dictionary<(Length From, Length To), Moments> _strips = [];

    /// <summary>For a plan worked up; its steel's density must be known.</summary>
    /// <param name="r">The plan worked up.</param>
    public PieceWeigher(Results r)
    {
        _r = r;
        _density = r.Steel!.Density!.Value.GramsPerCm3;
        _edge = EdgeSpan.Of(r.Plan, r.Piece);
        _plate = TaperedPlate.Of(r.Piece, FaceThickness.Of(r.Plan));
        _broken = BrokenEdgeSteel.Of(r.Plan, r.Holes, r.Piece);
        _removed = _plate - _broken - r.At(Stage.Finished)!.Solid;
        _handle = Handle(r.Plan, r.Holes);
    }

    /// <summary>The lever without the bevel when there is none, or when its holes lie out of the bevel's reach.</summary>
    /// <param name="lever">The lever.</param>
    public BalanceLever Narrowed(BalanceLever lever)
        => _edge is null || _r.Plan.Bevel is null || (lever.Touches.HasFlag(LeverTouches.Holes) && IsBeyondBevel(HolePlacement.Of(lever.Set(_r.Plan, lever.High))))
            ? WithoutBevel(lever)
            : lever;

    /// <summary>Weighs plans that differ a little from the one worked up; what their bevels take is followed along the same rays for all of them.</summary>
    /// <param name="trials">Plans, and what they touch.</param>
    /// <returns>Weight and balance of each, and whether its bevel takes the very same.</returns>
    public ImmutableArray<(Weighed Weighed, bool IsSameBevel)> Near(ImmutableArray<(Plan Plan, LeverTouches Touches)> trials)
    {
        var ground = trials.Where(IsOnSamePiece).Select(t => t.Plan).ToArray();
        var removed = new Dictionary<Plan, Moments>(ReferenceEqualityComparer.Instance);
        if (ground.Length > 0)
        {
            var laws = BevelSolid.Differing(_r.Piece, _edge!, _r.Plan.Bevel!.Plunge, [.. ground.Prepend(_r.Plan).Select(GrindProfile.Finished)]);
            for (var i = 0; i < ground.Length; i++) removed[ground[i]] = laws[i + 1] - laws[0];
        }

        return [.. trials.Select(t => removed.TryGetValue(t.Plan, out var more) ? (Of(t.Plan, t.Touches, _removed + more), IsNothing(more)) : (Of(t.Plan, t.Touches), false))];

        bool IsOnSamePiece((Plan Plan, LeverTouches Touches) t) => _edge is not null && t.Touches.HasFlag(LeverTouches.Bevel) && !t.Touches.HasFlag(LeverTouches.Holes);
    }

    /// <summary>The lever without the bevel.</summary>
    /// <param name="lever">The lever.</param>
    public static BalanceLever WithoutBevel(BalanceLever lever) => lever with { Touches = lever.Touches & ~LeverTouches.Bevel };

    /// <summary>Weighs a plan.</summary>
    /// <param name="plan">The plan with levers moved.</param>
    /// <param name="touches">What the levers touch.</param>
    public Weighed Of(Plan plan, LeverTouches touches) => Of(plan, touches, null);

    private Weighed Of(Plan plan, LeverTouches touches, Moments? removed)
    {
        var isBored = touches.HasFlag(LeverTouches.Holes);
        var holes = isBored ? HolePlacement.Of(plan) : _r.Holes;
        var piece = isBored ? PieceOf(plan, holes) : _r.Piece;
        var solid = (touches & (LeverTouches.Holes | LeverTouches.Faces)) != LeverTouches.Nothing ? TaperedPlate.Of(piece, FaceThickness.Of(plan)) : _plate;
        solid -= removed ?? (touches.HasFlag(LeverTouches.Bevel) ? Removed(plan, piece) : _removed);
        solid -= touches.HasFlag(LeverTouches.BrokenEdges) ? BrokenEdgeSteel.Of(plan, holes, piece) : _broken;
        foreach (var m in plan.AddedMasses) solid += PlacedMass.Of(m, Strip).Water * (1 / _density);
        solid += (ReferenceEquals(plan.Scales, _r.Plan.Scales) && (touches & (LeverTouches.Holes | LeverTouches.Faces)) == LeverTouches.Nothing ? _handle : Handle(plan, holes)) * (1 / _density);
        return new Weighed(solid.AreaMm2 * _density / 1000, FromDatum.Of(plan, solid.Centroid).Along.Mm);
    }

    private static Region PieceOf(Plan plan, IEnumerable<PlacedHole> holes) => new(plan.Outline, [.. holes.Select(h => Path.Circle(h.At, h.Diameter.Mm / 2))]);

    private Moments Strip((Length From, Length To) over)
    {
        if (!_strips.TryGetValue(over, out var strip)) _strips[over] = strip = PlacedMass.Strip(_r.Plan, over);
        return strip;
    }

    // as much water as scales, pins, glue and cord weigh
    private Moments Handle(Plan plan, ImmutableArray<PlacedHole> holes) => HandleParts.Of(plan, holes, _r.Shop).Aggregate(default(Moments), (sum, m) => sum + m.Water);

    private Moments Removed(Plan plan, Region piece) => _edge is { } edge && plan.Bevel is { } bevel ? BevelSolid.Removed(piece, edge, bevel.Plunge, GrindProfile.Finished(plan))[0] : default;

    private bool IsNothing(Moments more) => Math.Abs(more.AreaMm2) < 1e-11 * _plate.AreaMm2;

    // further from the edge than the bevel reaches, or wholly behind the line it ends on
    private bool IsBeyondBevel(IEnumerable<PlacedHole> holes)
    {
        var bevel = _r.Plan.Bevel!;
        var reach = bevel.IsFull ? double.PositiveInfinity : GrindProfile.Finished(_r.Plan).Reach(bevel.Height?.Mm ?? double.PositiveInfinity);
        Point? side = bevel.Plunge is { } line ? SteelThickness.GroundSide(_edge!, line) : null;
        return holes.All(h => IsBehind(h) || Nearest.Distance(_edge!.Path, h.At) - (0.5 * h.Diameter.Mm) > reach);

        bool IsBehind(PlacedHole h) => side is { } s && (h.At - bevel.Plunge!.A).Dot(s) < -0.5 * h.Diameter.Mm;
    }
}
