using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Outline of the scales: that of the tang from the line of their front end to that of their rear end, or as far as the steel goes.</summary>
/// <param name="Path">The closed outline, counter-clockwise, plan's axes, mm.</param>
/// <param name="Sides">What of it runs along the edges of the tang.</param>
/// <param name="Front">The front end.</param>
/// <param name="Rear">The rear end; null when the scales go as far as the steel.</param>
public sealed record ScaleOutline(Path Path, ImmutableArray<Path> Sides, Segment Front, Segment? Rear)
{
    /// <summary>That of a plan; null when it has no scales of a material, or no front end that cuts the tang.</summary>
    public static ScaleOutline? Of(Plan plan)
    {
        if (plan.Scales is not { IsShaped: true } s || FrontLine(plan, s) is not { } line) return null;
        var outline = new Region(plan.Outline, []).Outer;
        var keep = Keep(plan, line);
        if (Cut(outline, line, keep, s.FrontBulge.Mm) is not var (path, front)) return null;
        Segment? rear = null;
        if (s.Rear is { } end)
        {
            if (Cut(path, end, Middle(front), 0) is not var (shorter, close) || !shorter.Segments.Contains(front)) return null;
            (path, rear) = (shorter, close);
        }

        return new ScaleOutline(path, Between(path, front, rear), front, rear);
    }

    /// <summary>The line of the front end: as written, else square to the grip at its front end; null when neither is there.</summary>
    private static PlungeLine? FrontLine(Plan plan, ScalesPlan s)
    {
        if (s.Front is { } written) return written;
        if (plan.Grip is not { } grip) return null;
        var square = (grip.To - grip.From).Unit.Left * Math.Max(plan.Outline.Bounds.Width, plan.Outline.Bounds.Height);

        // the end on the blade's side, should the grip be written the other way round
        var front = plan.Edge is { } edge && edge.From.Toward(edge.To, 0.5) is var blade && blade.To(grip.To) < blade.To(grip.From) ? grip.To : grip.From;
        return new PlungeLine(front - square, front + square);
    }

    // a point well on the handle's side of the front end
    private static Point Keep(Plan plan, PlungeLine line)
    {
        var box = plan.Outline.Bounds;
        var middle = line.A.Toward(line.B, 0.5);
        if (plan.Edge is null && plan.Grip is { } grip) return grip.To;
        var butt = HandleEnd.Of(plan)?.ButtMm ?? (middle.X > box.Centre.X ? box.MaxX : box.MinX);
        return new Point(butt, middle.Y);
    }

    // the part of a loop on the side of a point, closed by the line that cuts it
    private static (Path Path, Segment Close)? Cut(Path loop, PlungeLine line, Point keep, double bulge)
    {
        var rays = new RayHits(loop.Segments);
        var hits = new RayHit[rays.MostHits];
        var u = (line.B - line.A).Unit;
        var far = loop.Bounds.Width + loop.Bounds.Height;
        var start = line.A + (u * (loop.Bounds.Centre - line.A).Dot(u));
        var n = rays.Along(start, u, -far, far, hits);

        // of several stretches of steel under the line the one nearest to the handle
        (double Off, RayHit In, RayHit Out)? best = null;
        for (var i = 0; i + 1 < n; i++)
        {
            if (hits[i].Side <= 0 || hits[i + 1].Side >= 0) continue;
            var at = (keep - start).Dot(u);
            var off = Math.Max(0, Math.Max(hits[i].Distance - at, at - hits[i + 1].Distance));
            if (best is not { } b || off < b.Off) best = (off, hits[i], hits[i + 1]);
        }

        if (best is not var (_, enter, leave)) return null;
        var isLeft = u.Cross(keep - start) > 0;

        // counter-clockwise: where the line leaves the steel the loop runs on to its left side
        var side = isLeft ? loop.Between(Spot(leave), Spot(enter)) : loop.Between(Spot(enter), Spot(leave));
        var close = Close(side.End, side.Start, bulge);
        return (new Path([.. side.Segments, close], closed: true), close);
    }

    private static PathSpot Spot(RayHit h) => new(h.Segment, h.T);

    // bulged to the right of the way, which is out of the handle
    private static Segment Close(Point from, Point to, double bulge)
    {
        var chord = from.To(to);
        if (Math.Abs(bulge) < 1e-6) return new Line(from, to);
        var high = Math.Min(Math.Abs(bulge), 0.499 * chord);
        return Arc.Through(from, to, ((chord * chord / 4) + (high * high)) / (2 * high), large: false, counterClockwise: bulge > 0);
    }

    private static Point Middle(Segment s) => s.At(0.5);

    private static ImmutableArray<Path> Between(Path path, Segment front, Segment? rear)
    {
        var sides = ImmutableArray.CreateBuilder<Path>();
        var run = new List<Segment>();
        var first = path.Segments.IndexOf(front);
        for (var i = 1; i <= path.Segments.Length; i++)
        {
            var s = path.Segments[(first + i) % path.Segments.Length];
            if (!ReferenceEquals(s, front) && !ReferenceEquals(s, rear))
            {
                run.Add(s);
                continue;
            }

            if (run.Count > 0) sides.Add(new Path([.. run], closed: false));
            run.Clear();
        }

        return sides.ToImmutable();
    }
}
