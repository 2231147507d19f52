using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Thickness of the ground steel at a point of the piece, mm: the law of <see cref="GrindProfile"/> at the distance to the nearest point of the sharpened part, as <see cref="BevelSolid"/> integrates it.</summary>
internal sealed class SteelThickness
{
    private readonly EdgeSpan _edge;
    private readonly GrindProfile _profile;
    private readonly FullHeight? _full;

    // ground is where (q − on)·side ≥ 0
    private readonly (Point On, Point Side)? _plunge;

    public SteelThickness(Region piece, EdgeSpan edge, PlungeLine? plunge, GrindProfile profile)
    {
        (_edge, _profile) = (edge, profile);
        if (profile.IsFull) _full = new FullHeight(piece, edge, new RayHits(piece));
        if (plunge is not null) _plunge = (plunge.A, GroundSide(edge, plunge));
    }

    /// <summary>Whether the edge is sharpened.</summary>
    public bool IsSharpened => _profile.SharpenTangent > 0;

    /// <summary>Whether the height is another from place to place.</summary>
    public bool IsFullHeight => _full is not null;

    /// <summary>Whether there is a plunge line.</summary>
    public bool HasPlunge => _plunge is not null;

    /// <summary>Distance from the plunge line, mm, positive where ground.</summary>
    public double BeyondPlunge(Point q) => _plunge is { } p ? (q - p.On).Dot(p.Side) : double.PositiveInfinity;

    /// <summary>Thickness of the flat faces at a point, mm.</summary>
    public double Flat(Point q) => _profile.Faces.At(q.X);

    /// <summary>Nearest point of the sharpened part, distance to it, and how far facet and bevel reach from there; the bevel's reach is 0 where nothing is ground. mm.</summary>
    public (Point Foot, double Distance, double Facet, double Bevel) Foot(Point q)
    {
        var (foot, distance, height, way) = From(q);
        if (height <= 0) return (foot, distance, 0, 0);
        var reach = _profile.Reach(height);
        var (facet, bevel) = Along(foot, way, height).Ends(1.001 * reach);
        return (foot, distance, facet, Math.Min(bevel, reach));
    }

    /// <summary>Thickness at a point, the plunge line left out of account, mm.</summary>
    public double At(Point q)
    {
        var (foot, distance, height, way) = From(q);
        return height <= 0 ? Flat(q) : Along(foot, way, height).At(distance);
    }

    private FaceAlong Along(Point foot, Point way, double height) => new(_profile, foot.X, way.X, height);

    private (Point Foot, double Distance, double Height, Point Way) From(Point q)
    {
        var (_, foot, distance) = Nearest.On(_edge.Path, q);
        var way = distance < 1e-9 ? default : (q - foot) * (1 / distance);
        var height = _full is null ? _profile.HeightMm ?? double.PositiveInfinity : distance < 1e-9 ? 1 : _full.Along(foot, way, out _);
        return (foot, distance, height, way);
    }

    /// <summary>The direction square to a plunge line towards the ground side.</summary>
    public static Point GroundSide(EdgeSpan edge, PlungeLine plunge)
    {
        var side = (plunge.B - plunge.A).Unit.Left;
        return (edge.Middle - plunge.A).Dot(side) >= 0 ? side : -side;
    }
}
