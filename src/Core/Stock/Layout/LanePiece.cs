using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>An outline ready to be laid in a lane: its flanks in every way it may lie.</summary>
/// <param name="Outline">The true outline, plan's axes.</param>
/// <param name="LengthMm">Along the bar, mm.</param>
/// <param name="HeightMm">Across the bar, mm.</param>
/// <param name="Flanks">Flanks for each lie allowed, in the order of <see cref="Lie"/>; chords where the outline is curved.</param>
/// <param name="OffMm">How far a chord may lie from its curve, mm; 0 when all is straight.</param>
public sealed record LanePiece(Path Outline, double LengthMm, double HeightMm, ImmutableArray<Flanks> Flanks, double OffMm)
{
    /// <summary>Chords stay this close to their curve, mm.</summary>
    public const double ChordMm = 0.001;

    /// <summary>Readies an outline.</summary>
    /// <param name="outline">Closed, plan's axes.</param>
    /// <param name="mayTurn">It may lie turned end for end.</param>
    /// <param name="mayTurnOver">It may lie with its back face up.</param>
    /// <param name="straightSides">Hollows count as steel, so that a straight cut parts any two.</param>
    public static LanePiece Of(Path outline, bool mayTurn = true, bool mayTurnOver = false, bool straightSides = false)
    {
        var ccw = Moments.Of(outline).AreaMm2 < 0 ? outline.Reversed() : outline;
        var (corners, box) = (Chords.Of(ccw, ChordMm), outline.Bounds);
        if (straightSides) corners = ConvexHull.Of(corners);
        Lie[] lies = (mayTurn, mayTurnOver) switch
        {
            (false, _) => [Lie.Plain],
            (_, false) => [Lie.Plain, Lie.Turned],
            _ => [Lie.Plain, Lie.Turned, Lie.Over, Lie.OverTurned],
        };
        var straight = outline.Segments.All(s => s is Line);
        return new LanePiece(outline, box.Width, box.Height, [.. lies.Select(l => Core.Flanks.Of(Turned(corners, l, box)))], straight ? 0 : ChordMm);
    }

    private static ImmutableArray<Point> Turned(ImmutableArray<Point> corners, Lie lie, Box box)
    {
        var turn = Lies.Turn(lie, box);
        var turned = corners.Select(turn.Map);
        return [.. turn.Determinant < 0 ? turned.Reverse() : turned];
    }
}
