using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>How a piece may lie on a sheet.</summary>
/// <param name="Degrees">Turned counter-clockwise by, degrees.</param>
/// <param name="IsOver">Turned over first, about its length: the back face up.</param>
public readonly record struct PieceTurn(double Degrees, bool IsOver = false)
{
    /// <summary>As drawn.</summary>
    public static PieceTurn Plain => new(0);

    /// <summary>End for end.</summary>
    public static PieceTurn Turned => new(180);

    /// <summary>Takes the piece's own places to those of the piece turned, about the origin.</summary>
    public Transform Transform
    {
        get
        {
            var (cos, sin) = Degrees switch
            {
                0 => (1.0, 0.0),
                90 => (0.0, 1.0),
                180 => (-1.0, 0.0),
                270 => (0.0, -1.0),
                _ => (Math.Cos(Degrees * Math.PI / 180), Math.Sin(Degrees * Math.PI / 180)),
            };
            return IsOver ? new(cos, sin, sin, -cos, 0, 0) : new(cos, -sin, sin, cos, 0, 0);
        }
    }
}

/// <summary>A kind of piece to be laid on a sheet.</summary>
/// <param name="Corners">Its outline as a polygon that does not cross itself, mm.</param>
/// <param name="Count">How many of them.</param>
/// <param name="Turns">The ways it may lie, at least one.</param>
public sealed record SheetPiece(ImmutableArray<Point> Corners, int Count, ImmutableArray<PieceTurn> Turns);

/// <summary>Where one piece lies on a sheet.</summary>
/// <param name="Piece">Which kind, by its place in the list.</param>
/// <param name="Bar">Which bar or sheet, from 0.</param>
/// <param name="Turn">How it lies.</param>
/// <param name="AlongMm">Left end of the box around it, mm from the bar's left end.</param>
/// <param name="UpMm">Lower side of that box, mm from the sheet's lower side.</param>
public readonly record struct SheetPlace(int Piece, int Bar, PieceTurn Turn, double AlongMm, double UpMm);

/// <summary>Pieces laid on bars, sheets or a strip of one width.</summary>
/// <param name="Places">Where they lie; those of a kind together, in the order of the list.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="UsedMm">Length used of each bar, mm: all of it, but of the last only what is needed.</param>
/// <param name="Share">Area of the pieces over that of the steel used.</param>
public sealed record StripLayout(ImmutableArray<SheetPlace> Places, double WidthMm, ImmutableArray<double> UsedMm, double Share)
{
    /// <summary>Length used in all, mm.</summary>
    public double LengthMm => UsedMm.Sum();

    /// <summary>Placements weighed up to find it.</summary>
    public long Work { get; init; }
}
