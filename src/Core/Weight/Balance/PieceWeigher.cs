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
    private readonly Moments _plate, _removed, _broken;
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
    }

    /// <summary>The lever with what it does not touch taken out: a taper or a hole far from the bevel.</summary>
    /// <param name="lever">The lever.</param>
    public BalanceLever Narrowed(BalanceLever lever)
    {
        if (_edge is null || _r.Plan.Bevel is null) return lever with { Touches = lever.Touches & ~LeverTouches.Bevel };
        if (!lever.Touches.HasFlag(LeverTouches.Bevel) || lever.Key is "stock" or "bevel-height") return lever;
        var far = Math.Abs(lever.Low - lever.Now) > Math.Abs(lever.High - lever.Now) ? lever.Low : lever.High;
        var plan = lever.Set(_r.Plan, far);
        var isSame = lever.Touches.HasFlag(LeverTouches.Holes)
            ? IsBeyondBevel(HolePlacement.Of(plan)) || IsSame(Removed(plan, PieceOf(plan, HolePlacement.Of(plan))))
            : IsBeyondBevel(plan) || IsSame(Removed(plan, _r.Piece));
        return isSame ? lever with { Touches = lever.Touches & ~LeverTouches.Bevel } : lever;
    }

    /// <summary>Weighs a plan.</summary>
    /// <param name="plan">The plan with levers moved.</param>
    /// <param name="touches">What the levers touch.</param>
    public Weighed Of(Plan plan, LeverTouches touches)
    {
        var isBored = touches.HasFlag(LeverTouches.Holes);
        var holes = isBored ? HolePlacement.Of(plan) : _r.Holes;
        var piece = isBored ? PieceOf(plan, holes) : _r.Piece;
        var solid = (touches & (LeverTouches.Holes | LeverTouches.Faces)) != LeverTouches.Nothing ? TaperedPlate.Of(piece, FaceThickness.Of(plan)) : _plate;
        solid -= touches.HasFlag(LeverTouches.Bevel) ? Removed(plan, piece) : _removed;
        solid -= touches.HasFlag(LeverTouches.BrokenEdges) ? BrokenEdgeSteel.Of(plan, holes, piece) : _broken;
        foreach (var m in plan.AddedMasses) solid += PlacedMass.Of(m, Strip).Water * (1 / _density);
        return new Weighed(solid.AreaMm2 * _density / 1000, FromDatum.Of(plan, solid.Centroid).Along.Mm);
    }

    private static Region PieceOf(Plan plan, IEnumerable<PlacedHole> holes) => new(plan.Outline, [.. holes.Select(h => Path.Circle(h.At, h.Diameter.Mm / 2))]);

    private Moments Strip((Length From, Length To) over)
    {
        if (!_strips.TryGetValue(over, out var strip)) _strips[over] = strip = PlacedMass.Strip(_r.Plan, over);
        return strip;
    }

    private Moments Removed(Plan plan, Region piece) => _edge is { } edge && plan.Bevel is { } bevel ? BevelSolid.Removed(piece, edge, bevel.Plunge, GrindProfile.Finished(plan))[0] : default;

    private bool IsSame(Moments removed) => Math.Abs(removed.AreaMm2 - _removed.AreaMm2) < 1e-7 * _plate.AreaMm2;

    private double Reach => _r.Plan.Bevel!.IsFull ? double.PositiveInfinity : GrindProfile.Finished(_r.Plan).Reach(_r.Plan.Bevel.Height?.Mm ?? double.PositiveInfinity);

    private bool IsBeyondBevel(IEnumerable<PlacedHole> holes)
    {
        if (!double.IsFinite(Reach)) return false;
        var box = _edge!.Path.Bounds.Grown(Reach);
        return holes.All(h => h.At.X + (0.5 * h.Diameter.Mm) < box.MinX || h.At.X - (0.5 * h.Diameter.Mm) > box.MaxX || h.At.Y + (0.5 * h.Diameter.Mm) < box.MinY || h.At.Y - (0.5 * h.Diameter.Mm) > box.MaxY);
    }

    // where the faces of two plans differ the bevel does not reach
    private bool IsBeyondBevel(Plan plan)
    {
        if (!double.IsFinite(Reach)) return false;
        var box = _edge!.Path.Bounds.Grown(Reach);
        var (was, now) = (FaceThickness.Of(_r.Plan), FaceThickness.Of(plan));
        double[] kinks = [box.MinX, box.MaxX, .. was.KinksMm, .. now.KinksMm];
        return kinks.Where(x => x >= box.MinX && x <= box.MaxX).All(x => Math.Abs(was.At(x) - now.At(x)) < 1e-12);
    }
}
