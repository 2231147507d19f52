using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A loop of the picture.</summary>
/// <param name="Number">Number it is chosen by; 0 for a circle.</param>
/// <param name="Path">Path data.</param>
/// <param name="Said">What it is, in words.</param>
/// <param name="IsOutline">Whether it is taken as the outline.</param>
public sealed record WalkLoop(int Number, string Path, string Said, bool IsOutline);

/// <summary>A line of the picture from one place to another, y up, mm.</summary>
public sealed record WalkLine(double X1, double Y1, double X2, double Y2);

/// <summary>What the import walk shows: the drawing and what was told so far; y up, mm; the picture itself is turned over.</summary>
/// <param name="ViewBox">View box, y down.</param>
/// <param name="LettersMm">Height of lettering.</param>
/// <param name="Loops">Loops, largest first.</param>
/// <param name="Holes">Circles of the piece: path data, whether it is taken.</param>
/// <param name="Edge">Path data of the sharpened part.</param>
/// <param name="EdgeEnds">Its ends as far as told.</param>
/// <param name="Plunge">The plunge line; null: none.</param>
/// <param name="Grip">The grip; null: none.</param>
public sealed record WalkPicture(string ViewBox, double LettersMm, ImmutableArray<WalkLoop> Loops, ImmutableArray<(string Path, bool IsTaken)> Holes, string Edge, ImmutableArray<Point> EdgeEnds, WalkLine? Plunge, WalkLine? Grip)
{
    /// <summary>Most loops drawn and listed.</summary>
    public const int MostLoops = 40;

    private const int MostSegments = 20_000;

    /// <summary>The picture of the step that is asked: all loops at first, then the piece alone.</summary>
    public static WalkPicture Of(ImportWalk walk)
    {
        var all = walk.Step == 1;
        var shaped = walk.Found.Shaped.Take(MostLoops).Where(l => l.Path.Segments.Length <= MostSegments).ToArray();
        var round = all ? walk.Found.Round.Take(400) : [];
        var box = all ? shaped.Concat(round).Aggregate(Box.Nothing, (b, l) => b.With(l.Path.Bounds)) : Box.Nothing;
        if (walk.Piece is { } piece) box = box.With(piece.Outline.Bounds);
        var m = 0.06 * Math.Max(box.Width, box.Height);
        return new WalkPicture(
            $"{N(box.MinX - m)} {N(-box.MaxY - m)} {N(box.Width + (2 * m))} {N(box.Height + (2 * m))}",
            0.022 * Math.Max(box.Width, 0.6 * box.Height),
            [
                .. all ? shaped.Where(l => l.Number != walk.Loop).Concat(round).Select(l => new WalkLoop(l.Number, PathData.Write(l.Path, 1), l.Said, false)) : [],
                .. walk.Piece is { } p ? [new WalkLoop(walk.Loop ?? 0, PathData.Write(p.Outline, 1), walk.Found.Shaped.FirstOrDefault(l => l.Number == walk.Loop)?.Said ?? "", true)] : Array.Empty<WalkLoop>(),
            ],
            [.. walk.Piece is { } held ? held.Holes.Take(400).Select((h, i) => (PathData.Write(Path.Circle(h.Centre, 0.5 * h.DiameterMm), 1), walk.IsHole(i))) : []],
            walk is { Piece: { } q, Edge: { To: { } to, From: var from } } ? PathData.Write(EdgeSpan.Of(q.Outline, from, to).Path, 1) : "",
            walk.Edge is { } e ? e.To is { } second ? [e.From, second] : [e.From] : [],
            walk.Bevel == BevelTold.AtPlunge && walk.Place(walk.Plunge) is { } x ? new WalkLine(x, box.MinY - (0.4 * m), x, box.MaxY + (0.4 * m)) : null,
            walk.HasGrip && walk.GripEnds() is { } grip ? new WalkLine(grip.From.X, grip.From.Y, grip.To.X, grip.To.Y) : null);
    }

    /// <summary>A number for the picture.</summary>
    public static string N(double v) => Shown.Trimmed(v, 3);
}
