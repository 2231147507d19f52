using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Makes the chosen cuts one after the other: where each begins and ends, its marks, offcut, kerf and time.</summary>
internal static class SawCuts
{
    /// <summary>The cuts in order, relief holes, the convex rest and its area with the pockets taken out.</summary>
    public static (ImmutableArray<SawCut> Cuts, ImmutableArray<ReliefHole> Reliefs, ImmutableArray<Point> Left, double LeftMm2) Of(ChosenCuts chosen, RoughBlank blank, Saw saw, SawLimits limits, Length thickness, DrillSize? drill)
    {
        var (cuts, reliefs) = (ImmutableArray.CreateBuilder<SawCut>(), ImmutableArray.CreateBuilder<ReliefHole>());
        var (piece, kerf) = (blank.Corners, saw.Kerf.Mm);
        double Minutes(double mm) => SawTime.Minutes(mm, thickness.Mm, SawPractice.RateCm2PerMin(saw).Rate, SawPractice.SetUpMinutes(saw));
        foreach (var c in chosen.Through)
        {
            var (n, at) = (c.Normal, c.OffsetMm);
            var chord = ConvexClip.Chord(piece, n, at)!.Value;
            var full = ConvexClip.Chord(blank.Corners, n, at)!.Value;
            var waste = ConvexClip.Beyond(piece, n, at);
            var offcut = ConvexClip.Beyond(piece, n, at + kerf);
            cuts.Add(Made(chord.From, chord.To, n, c.IsFlush, [blank.Mark(full.From), blank.Mark(full.To)], waste, offcut, limits.FromBothEnds(chord.From.To(chord.To)), null));
            piece = ConvexClip.Beyond(piece, -n, -at);
        }

        var restMm2 = ConvexClip.AreaMm2(piece.AsSpan());
        for (var i = 0; i < chosen.Wedges.Length; i++)
        {
            var w = chosen.Wedges[i];
            var runs = RoughCutSearch.Runs(w, piece)!.Value;
            var waste = w.In(piece);
            restMm2 -= ConvexClip.AreaMm2(waste.AsSpan());
            reliefs.Add(new ReliefHole(i + 1, w.Apex, blank.From(w.Apex), drill));
            var (first, second) = (w.First.Left, -w.Second.Left);
            var inner = ConvexClip.Beyond(waste, first, first.Dot(w.Apex) + kerf);
            var offcut = inner.IsEmpty ? inner : ConvexClip.Beyond(inner, second, second.Dot(w.Apex) + kerf);
            var (a, b) = (Rim(w.Apex, w.First, blank.Corners), Rim(w.Apex, w.Second, blank.Corners));
            cuts.Add(Made(runs.First, w.Apex, first, false, [blank.Mark(a)], [], [], false, i + 1));
            cuts.Add(Made(runs.Second, w.Apex, second, false, [blank.Mark(b)], waste, offcut, false, i + 1));
        }

        return (cuts.ToImmutable(), reliefs.ToImmutable(), piece, restMm2);

        SawCut Made(Point from, Point to, Point n, bool flush, ImmutableArray<RimMark> marks, ImmutableArray<Point> waste, ImmutableArray<Point> offcut, bool both, int? pocket)
        {
            var (length, width) = Size(offcut);
            var lean = Math.Abs(Math.Atan2(n.X, n.Y)) * 180 / Math.PI;
            return new SawCut(
                cuts.Count + 1,
                from,
                to,
                n,
                flush,
                marks,
                Angle.OfDegrees(Math.Min(lean, 180 - lean)),
                waste,
                offcut,
                Length.OfMm(length),
                Length.OfMm(width),
                ConvexClip.AreaMm2(waste.AsSpan()) - ConvexClip.AreaMm2(offcut.AsSpan()),
                both,
                Minutes(from.To(to)),
                pocket);
        }
    }

    /// <summary>Sides of the smallest rectangle around an offcut, the longer first: one of its sides lies along one of the offcut's.</summary>
    private static (double Length, double Width) Size(ImmutableArray<Point> offcut)
    {
        var best = (Length: 0.0, Width: 0.0);
        for (var i = 0; i < offcut.Length; i++)
        {
            var way = (offcut[(i + 1) % offcut.Length] - offcut[i]).Unit;
            if (way.Length == 0) continue;
            var (a, b) = (Across(way), Across(way.Left));
            if (best.Length == 0 || a * b < best.Length * best.Width) best = (Math.Max(a, b), Math.Min(a, b));
        }

        return best;

        double Across(Point way) => offcut.Max(p => way.Dot(p)) - offcut.Min(p => way.Dot(p));
    }

    /// <summary>Where a line out of an apex leaves the uncut blank.</summary>
    private static Point Rim(Point apex, Point way, ImmutableArray<Point> blank)
    {
        var chord = ConvexClip.Chord(blank, way.Left, way.Left.Dot(apex))!.Value;
        return way.Dot(chord.From) > way.Dot(chord.To) ? chord.From : chord.To;
    }
}
