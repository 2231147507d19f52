using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>A straight cut across a bar.</summary>
/// <param name="LowMm">Where its middle crosses the lower long edge, mm from the bar's left end.</param>
/// <param name="HighMm">Where it crosses the upper one, mm.</param>
/// <param name="RoomMm">How much steel lies between the pieces left and right of it, mm; less than the kerf: no straight cut parts them.</param>
public readonly record struct SawLine(double LowMm, double HighMm, double RoomMm)
{
    /// <summary>The cuts between pieces that lie one behind the other, each clear of all pieces and not of its neighbours alone.</summary>
    /// <param name="outlines">The patterns.</param>
    /// <param name="places">Where the pieces lie.</param>
    /// <param name="widthMm">Width of the bar, mm.</param>
    /// <param name="clearanceMm">What pieces keep from each other, mm: where so much lies square across between them, the cut is square.</param>
    public static ImmutableArray<SawLine> Between(ImmutableArray<Path> outlines, ImmutableArray<LanePlace> places, double widthMm, double clearanceMm)
    {
        var corners = outlines.Select(o => ConvexHull.Of(Chords.Of(o, LanePiece.ChordMm))).ToArray();
        var placed = places.Select(p => corners[p.Pattern].Select(Lies.Turn(p.Lie, outlines[p.Pattern].Bounds).Then(Transform.Shift(new Point(p.AlongMm, p.UpMm))).Map).ToArray()).ToArray();
        var after = new ImmutableArray<Point>[placed.Length];
        for (var i = placed.Length - 1; i > 0; i--) after[i] = ConvexHull.Of(i + 1 < placed.Length ? placed[i].Concat(after[i + 1]) : placed[i]);
        var (lines, before) = (ImmutableArray.CreateBuilder<SawLine>(), ImmutableArray<Point>.Empty);
        for (var i = 0; i + 1 < placed.Length; i++)
        {
            before = ConvexHull.Of(before.Concat(placed[i]));
            lines.Add(Square(before, after[i + 1], clearanceMm) ?? Between(before, after[i + 1], widthMm));
        }

        return lines.ToImmutable();
    }

    private static SawLine? Square(ImmutableArray<Point> left, ImmutableArray<Point> right, double clearanceMm)
    {
        var (from, to) = (left.Max(p => p.X), right.Min(p => p.X));
        return to - from >= clearanceMm - 1e-6 ? new SawLine(0.5 * (from + to), 0.5 * (from + to), to - from) : null;
    }

    private static SawLine Between(ImmutableArray<Point> left, ImmutableArray<Point> right, double widthMm)
    {
        var (room, a, b) = (double.PositiveInfinity, left[0], right[0]);
        Look(left, right, swapped: false);
        Look(right, left, swapped: true);
        var (middle, way) = (0.5 * (a + b), b - a);

        // where they meet there is no way across them: square through the place
        var lean = way.X > 1e-9 && room > 1e-9 ? way.Y / way.X : 0;
        var isApart = way.X > 1e-9 && left.All(p => (p - a).Dot(way) <= 1e-6) && right.All(p => (p - b).Dot(way) >= -1e-6);
        return new SawLine(middle.X + (lean * middle.Y), middle.X - (lean * (widthMm - middle.Y)), isApart ? room : 0);

        void Look(ImmutableArray<Point> corners, ImmutableArray<Point> sides, bool swapped)
        {
            foreach (var p in corners)
            {
                for (var i = 0; i < sides.Length; i++)
                {
                    var (s, e) = (sides[i], sides[(i + 1) % sides.Length] - sides[i]);
                    var q = s + (Math.Clamp((p - s).Dot(e) / Math.Max(1e-18, e.Dot(e)), 0, 1) * e);
                    var d = Math.Sqrt((q - p).Dot(q - p));
                    if (d < room) (room, a, b) = swapped ? (d, q, p) : (d, p, q);
                }
            }
        }
    }
}
