using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Holes along a line of stitches or rivets, all the same way apart along the line.</summary>
/// <param name="Holes">The holes, in order.</param>
/// <param name="Pitch">From hole to hole along the line: the one asked for, changed so far that it comes out even.</param>
/// <param name="Length">From the first to the last hole along the line.</param>
public sealed record EvenStitches(ImmutableArray<Point> Holes, Length Pitch, Length Length)
{
    /// <summary>Most holes of a line.</summary>
    public const int Most = 2000;

    /// <summary>The holes; none when the line is shorter than both ends.</summary>
    /// <param name="line">Straight pieces and round arcs.</param>
    /// <param name="pitch">Wanted from hole to hole.</param>
    /// <param name="end">From each end of the line to its first hole.</param>
    public static EvenStitches Along(Path line, Length pitch, Length end)
    {
        var length = line.Length - (2 * end.Mm);
        if (!(length > 0)) return new EvenStitches([], pitch, Length.Zero);
        var steps = (int)Math.Clamp(Math.Round(length / pitch.Mm), 1, Most);
        var holes = ImmutableArray.CreateBuilder<Point>(steps + 1);
        var (at, before) = (0, 0.0);
        for (var i = 0; i <= steps; i++)
        {
            var to = end.Mm + (length * i / steps);
            while (at + 1 < line.Segments.Length && before + line.Segments[at].Length < to) before += line.Segments[at++].Length;
            holes.Add(line.Segments[at].At(Math.Min(1, (to - before) / line.Segments[at].Length)));
        }

        return new EvenStitches(holes.MoveToImmutable(), Length.OfMm(length / steps), Length.OfMm(length));
    }
}
