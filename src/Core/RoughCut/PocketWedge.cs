using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Two cuts that meet in a pocket and free what lies between them.</summary>
/// <param name="Pocket">The pocket.</param>
/// <param name="Apex">Where they meet, plan's axes, mm.</param>
/// <param name="First">Direction from the apex along the first cut, length 1; the waste lies to its left.</param>
/// <param name="Second">Direction along the second; the waste lies to its right.</param>
/// <param name="Waste">What they free of the blank, convex.</param>
[Formula("the widest wedge out of a pocket, seen from its apex, that keeps off the piece", "tangents-to-a-disc", "Two straight cuts that meet; for a given apex exact: the tangents to the outline grown by the allowance; the apex by search, never into the piece")]
public sealed record PocketWedge(Pocket Pocket, Point Apex, Point First, Point Second, ImmutableArray<Point> Waste)
{
    private const int Along = 24;
    private const int Deep = 12;
    private const double LeastStepMm = 0.05;

    /// <summary>Area freed, mm².</summary>
    public double AreaMm2 => ConvexClip.AreaMm2(Waste.AsSpan());

    /// <summary>The best wedge found; null when none frees anything.</summary>
    /// <param name="pocket">The pocket.</param>
    /// <param name="blank">The blank, convex.</param>
    /// <param name="growMm">How far cuts keep off the outline's chords, mm.</param>
    /// <param name="keepMm">How much further the apex keeps off, for the relief hole and what the saw runs past it, mm.</param>
    /// <param name="can">Whether the saw can make it; null: any.</param>
    public static PocketWedge? Best(Pocket pocket, ImmutableArray<Point> blank, double growMm, double keepMm, Func<PocketWedge, bool>? can = null)
    {
        var e = (pocket.LidTo - pocket.LidFrom).Unit;
        var length = pocket.LidFrom.To(pocket.LidTo);
        Point At(double s, double d) => pocket.LidFrom + (e * s) + (e.Left * d);
        var (best, top) = (default(Point), 0.0);
        for (var i = 1; i < Along; i++)
        {
            for (var j = 0; j < Deep; j++) Try(At(length * i / Along, pocket.DepthMm * (j + 0.5) / Deep), ref best, ref top);
        }

        if (top <= 0) return null;
        for (var (step, across) = (length / Along, pocket.DepthMm / Deep); Math.Max(step, across) > LeastStepMm;)
        {
            var was = top;
            var from = best;
            for (var i = -1; i <= 1; i++)
            {
                for (var j = -1; j <= 1; j++) Try(from + (e * (i * step)) + (e.Left * (j * across)), ref best, ref top);
            }

            if (top <= was + 1e-9) (step, across) = (0.5 * step, 0.5 * across);
        }

        return From(pocket, blank, best, growMm, keepMm);

        void Try(Point w, ref Point held, ref double area)
        {
            if (Rays(pocket, w, growMm, keepMm) is not { } rays) return;
            Span<Point> one = stackalloc Point[blank.Length + 2];
            Span<Point> two = stackalloc Point[blank.Length + 4];
            var n = ConvexClip.Beyond(blank.AsSpan(), rays.First.Left, rays.First.Left.Dot(w), one);
            n = ConvexClip.Beyond(one[..n], -rays.Second.Left, -rays.Second.Left.Dot(w), two);
            var a = ConvexClip.AreaMm2(two[..n]);
            if (a > area + 1e-9 && (can is null || (From(pocket, blank, w, growMm, keepMm) is { } made && can(made)))) (held, area) = (w, a);
        }
    }

    /// <summary>The wedge from a given apex; null when the apex is too near the piece or there is no way out.</summary>
    public static PocketWedge? From(Pocket pocket, ImmutableArray<Point> blank, Point apex, double growMm, double keepMm)
    {
        if (Rays(pocket, apex, growMm, keepMm) is not { } rays) return null;
        var half = ConvexClip.Beyond(blank, rays.First.Left, rays.First.Left.Dot(apex));
        var waste = half.IsEmpty ? half : ConvexClip.Beyond(half, -rays.Second.Left, -rays.Second.Left.Dot(apex));
        return waste.IsEmpty ? null : new PocketWedge(pocket, apex, rays.First, rays.Second, waste);
    }

    /// <summary>What is left of the wedge in a piece that other cuts have made smaller.</summary>
    public ImmutableArray<Point> In(ImmutableArray<Point> piece)
    {
        var half = ConvexClip.Beyond(piece, First.Left, First.Left.Dot(Apex));
        return half.IsEmpty ? half : ConvexClip.Beyond(half, -Second.Left, -Second.Left.Dot(Apex));
    }

    /// <summary>Tangents from the apex past the grown outline: the waste lies between them, outward.</summary>
    private static (Point First, Point Second)? Rays(Pocket pocket, Point w, double grow, double keep)
    {
        var e = (pocket.LidTo - pocket.LidFrom).Unit;
        var inward = e.Left;
        if (inward.Dot(w - pocket.LidFrom) <= 0) return null;

        // angles from the inward direction towards e, followed along the chain so that they never jump
        var chain = pocket.Chain;
        var (angle, seen, low, high) = (0.0, 0.0, double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < chain.Length; i++)
        {
            if (i > 0 && Off(w, chain[i - 1], chain[i]) < grow + keep) return null;
            var d = chain[i] - w;
            var l = d.Length;
            if (l <= grow) return null;
            var now = Math.Atan2(d.Dot(e), d.Dot(inward));
            angle = i == 0 ? now : angle + Turn(now - seen);
            seen = now;
            var pad = Math.Asin(grow / l);
            (low, high) = (Math.Min(low, angle - pad), Math.Max(high, angle + pad));
        }

        if (low <= -Math.PI || high >= Math.PI || (2 * Math.PI) - (high - low) is var open && (open < 0.02 || open >= Math.PI - 1e-6)) return null;
        Point Way(double a) => (e * Math.Sin(a)) + (inward * Math.Cos(a));

        // outward lies beyond both; going counter-clockwise from the side of the lid's start
        return (Way(low), Way(high));
    }

    private static double Turn(double a) => a > Math.PI ? a - (2 * Math.PI) : a < -Math.PI ? a + (2 * Math.PI) : a;

    private static double Off(Point p, Point a, Point b)
    {
        var d = b - a;
        var l = d.Dot(d);
        return p.To(a + (d * (l > 0 ? Math.Clamp((p - a).Dot(d) / l, 0, 1) : 0)));
    }
}
