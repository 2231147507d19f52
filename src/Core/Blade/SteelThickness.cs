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
        if (profile.HeightMm is null) _full = new FullHeight(piece, edge, new RayHits(piece));
        if (plunge is not null) _plunge = (plunge.A, GroundSide(edge, plunge));
    }

    /// <summary>Thickness of the stock, mm.</summary>
    public double StockMm => _profile.StockMm;

    /// <summary>Whether the edge is sharpened.</summary>
    public bool IsSharpened => _profile.SharpenTangent > 0;

    /// <summary>Whether the height is another from place to place.</summary>
    public bool IsFullHeight => _full is not null;

    /// <summary>Whether there is a plunge line.</summary>
    public bool HasPlunge => _plunge is not null;

    /// <summary>Distance from the plunge line, mm, positive where ground.</summary>
    public double BeyondPlunge(Point q) => _plunge is { } p ? (q - p.On).Dot(p.Side) : double.PositiveInfinity;

    /// <summary>Nearest point of the sharpened part, distance to it and height of the bevel there; the height is 0 where nothing is ground. mm.</summary>
    public (Point Foot, double Distance, double Height) Foot(Point q)
    {
        var (_, foot, distance) = Nearest.On(_edge.Path, q);
        var height = _profile.HeightMm ?? (distance < 1e-9 ? 1 : _full!.Along(foot, (q - foot) * (1 / distance), out _));
        return (foot, distance, height);
    }

    /// <summary>Thickness at a point, the plunge line left out of account, mm.</summary>
    public double At(Point q)
    {
        var (_, distance, height) = Foot(q);
        return height <= 0 ? _profile.StockMm : _profile.At(distance, height);
    }

    /// <summary>Distances from the edge at which the law has a kink where the bevel has a height, mm; the last is where it ends.</summary>
    public int Kinks(double height, Span<double> kinks) => _profile.Kinks(height, kinks);

    /// <summary>The direction square to a plunge line towards the ground side.</summary>
    public static Point GroundSide(EdgeSpan edge, PlungeLine plunge)
    {
        var side = (plunge.B - plunge.A).Unit.Left;
        return (edge.Middle - plunge.A).Dot(side) >= 0 ? side : -side;
    }
}
