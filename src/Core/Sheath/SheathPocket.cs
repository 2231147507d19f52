using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The part of the piece that goes into a sheath, and the room about it, in the sheath's axes: x from the mouth to the tip, y up, the spine's highest place at 0 and the edge below, mm.</summary>
/// <remarks>The room is the tightest convex one about the blade, about the blade as it is drawn out, and out to the fold beside the tip: it only gets wider toward the mouth, so whatever lies in it can be drawn out.</remarks>
public sealed record SheathPocket
{
    /// <summary>Chords of curves stay this close, mm.</summary>
    private const double ChordMm = 0.002;

    private const double LeastMm = 10;

    /// <summary>x of the plan where the sheath ends.</summary>
    public required Length Mouth { get; init; }

    /// <summary>From the plan's axes to the sheath's; may mirror.</summary>
    public required Transform ToSheath { get; init; }

    /// <summary>The outline of the piece, sheath's axes.</summary>
    public required ImmutableArray<Point> Outline { get; init; }

    /// <summary>The edge side of the room, from the mouth to the fold beside the tip; its end is square to the fold.</summary>
    public required ImmutableArray<Point> Side { get; init; }

    /// <summary>From the mouth to the tip.</summary>
    public required Length Depth { get; init; }

    /// <summary>Widest place of the blade inside, from the spine's highest place.</summary>
    public required Length Widest { get; init; }

    /// <summary>How wide it is at the mouth, from the same line.</summary>
    public required Length AtMouth { get; init; }

    /// <summary>x of the plan where it is widest, the place nearest the mouth.</summary>
    public required Length WidestAt { get; init; }

    /// <summary>Edge left bare outside the mouth.</summary>
    public required Length Bare { get; init; }

    /// <summary>x of the plan where the edge ends on the handle's side.</summary>
    public required Length EdgeEnds { get; init; }

    /// <summary>How much wider the blade is inside than at the mouth; 0 when it is widest there.</summary>
    public Length Caught => Length.Max(Length.Zero, Widest - AtMouth);

    /// <summary>The room for a plan that names a sheath; null, and the reason in words, when there is none.</summary>
    public static SheathPocket? Of(Plan plan, Region piece, out string why)
    {
        why = "";
        if (plan.Sheath is not { } sheath || EdgeSpan.Of(plan, piece) is not { } edge)
        {
            why = "the plan has no sheath or no edge";
            return null;
        }

        var chord = edge.Path.End - edge.Path.Start;
        if (edge.IsWholeLoop || Math.Abs(chord.X) < Math.Abs(chord.Y))
        {
            why = "the edge runs across the piece, so nothing is drawn out along it: cover it with an edge guard";
            return null;
        }

        // steel lies to the left of the edge: an edge that runs to the right lies below
        var (tip, down) = (TipSign(plan, piece, edge), chord.X > 0 ? 1 : -1);
        var corners = Chords.Of(piece.Outer, ChordMm);
        var ends = Math.Max(edge.Path.Start.X * -tip, edge.Path.End.X * -tip) * -tip;
        var mouth = sheath.Mouth?.Mm ?? UsualMouth(plan, corners, ends, tip, down);
        var spine = Within(corners, mouth, tip).Select(p => p.Y * down).DefaultIfEmpty(double.NaN).Max() * down;
        var map = Transform.Shift(new Point(-mouth, -spine)).Then(Transform.Scale(tip, down));
        ImmutableArray<Point> outline = [.. corners.Select(map.Map)];
        var inside = Within(outline, 0, 1);
        var (depth, widest) = inside.Count == 0 ? (0, 0) : (inside.Max(p => p.X), -inside.Min(p => p.Y));
        if (!(depth >= LeastMm) || !(widest > 1))
        {
            why = $"only {Shown.Both(Length.OfMm(Math.Max(0, depth)))} of the piece lies inside the mouth";
            return null;
        }

        var wideAt = inside.Where(p => -p.Y >= widest - 1e-6).Min(p => p.X);
        var bare = Chords.Of(edge.Path, ChordMm).Append(edge.Path.End).Max(p => -map.Map(p).X);
        return new SheathPocket
        {
            Mouth = Length.OfMm(mouth),
            ToSheath = map,
            Outline = outline,
            Side = SideOf(inside, depth, widest),
            Depth = Length.OfMm(depth),
            Widest = Length.OfMm(widest),
            AtMouth = Length.OfMm(-inside.Where(p => p.X <= 1e-9).Select(p => p.Y).DefaultIfEmpty(0).Min()),
            WidestAt = Length.OfMm(mouth + (tip * wideAt)),
            Bare = Length.OfMm(Math.Max(0, bare)),
            EdgeEnds = Length.OfMm(ends),
        };
    }

    /// <summary>+1 when the tip lies at greater x than the handle.</summary>
    private static int TipSign(Plan plan, Region piece, EdgeSpan edge)
    {
        var middle = edge.Path.Start.Toward(edge.Path.End, 0.5).X;
        return middle < (plan.Grip?.Middle.X ?? piece.Outer.Bounds.Centre.X) ? -1 : 1;
    }

    /// <summary>A little past the edge when the blade is as wide there, never into the grip; else where the edge ends.</summary>
    private static double UsualMouth(Plan plan, ImmutableArray<Point> corners, double ends, int tip, int down)
    {
        if (plan.Bevel?.Plunge is { } plunge)
        {
            foreach (var x in new[] { plunge.A.X, plunge.B.X })
            {
                if ((ends - x) * tip is > 0 and < SheathRules.PastEdgeMm) ends = x;
            }
        }

        var room = plan.Grip is { } grip ? Math.Clamp((ends * tip) - Math.Max(grip.From.X * tip, grip.To.X * tip), 0, SheathRules.PastEdgeMm) : SheathRules.PastEdgeMm;
        var past = ends - (tip * room);
        return Width(past) >= Width(ends) - SheathRules.GivesMm ? past : ends;

        double Width(double x) => Within(corners, x, tip).Where(p => Math.Abs(p.X - x) < 1e-9).Select(p => -p.Y * down).DefaultIfEmpty(double.NegativeInfinity).Max();
    }

    /// <summary>Corners on the tip's side of x, with the points where the outline crosses it.</summary>
    private static List<Point> Within(ImmutableArray<Point> corners, double x, int tip)
    {
        var inside = new List<Point>();
        for (var i = 0; i < corners.Length; i++)
        {
            var (p, q) = (corners[i], corners[(i + 1) % corners.Length]);
            var (a, b) = ((p.X - x) * tip, (q.X - x) * tip);
            if (a >= 0) inside.Add(p);
            if (a * b < 0) inside.Add(new Point(x, p.Toward(q, a / (a - b)).Y));
        }

        return inside;
    }

    private static ImmutableArray<Point> SideOf(List<Point> inside, double depth, double widest)
    {
        var (low, far) = (new Point(0, -widest), new Point(depth, 0));
        var hull = ConvexHull.Of(inside.Concat([default, low, far]));
        var from = hull.IndexOf(low);
        return [.. Enumerable.Range(0, hull.Length).Select(i => hull[(from + i) % hull.Length]).TakeWhile(p => p != far), far];
    }
}
