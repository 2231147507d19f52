using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Rules of structural steel and of tangs bent in their plane, as notes: one for each rule with all the holes it names.</summary>
[Formula("Edge distance 1.2 d and pitch 2.2 d of holes", "en-1993-1-8", "Bolted plates; for a tang a note only")]
public static class HoleRuleFindings
{
    /// <summary>Least centre-to-edge distance in hole diameters, EN 1993-1-8:2005 table 3.3 (e1, e2).</summary>
    public const double EdgeDiameters = 1.2;

    /// <summary>Least pitch in hole diameters, EN 1993-1-8:2005 table 3.3 (p1).</summary>
    public const double PitchDiameters = 2.2;

    /// <summary>A centred hole up to this share of the height does not raise the greatest stress of a bar bent in its plane: 2x / (1 − x³) = 1 at x = 0.453 (net section with a stress factor of 2 at the hole; Heywood, Designing by Photoelasticity, 1952, from memory).</summary>
    public const double HeightShare = 0.45;

    private const string Structural = "EN 1993-1-8:2005 table 3.3, a rule for bolted plates";

    /// <summary>Centre to outline under 1.2 diameters.</summary>
    public static IEnumerable<Finding> EdgeDistance(Results r, ImmutableArray<HoleClearance> clearances)
    {
        var named = clearances.Where(c => c.WebMm >= 0 && c.CentreMm < (EdgeDiameters * c.Hole.Diameter.Mm) - 1e-6).ToArray();
        if (named.Length == 0) yield break;
        var worst = Worst.Least(named, c => c.CentreMm / c.Hole.Diameter.Mm);
        yield return new Finding(
            FindingCodes.EdgeDistanceRule,
            Severity.Note,
            Names(named.Select(c => c.Hole.Name)),
            worst.Hole.At,
            $"Centres nearer to the outline than {EdgeDiameters} hole diameters: {Names(named.Select(c => c.Hole.Name))}.",
            $"least {Shown.Number(worst.CentreMm / worst.Hole.Diameter.Mm, 2)} diameters at {worst.Hole.Name}: {Shown.Both(Length.OfMm(worst.CentreMm))}",
            $"{EdgeDiameters} diameters: {Shown.Both(worst.Hole.Diameter * EdgeDiameters)} there",
            Structural,
            $"at {worst.Hole.Name} a hole of {Shown.Both(Length.OfMm(Math.Floor(worst.CentreMm / EdgeDiameters * 10) / 10))} would meet it; a lightened handle need not")
        {
            Ways = HoleWays.Resized(r.Plan, named.Select(c => (c.Hole, HoleWays.AtMost(r.Shop, r.Plan.Units, c.Hole, c.CentreMm / EdgeDiameters)))),
        };
    }

    /// <summary>Centre to centre under 2.2 diameters of the larger hole.</summary>
    public static IEnumerable<Finding> Pitch(Results r)
    {
        if (r.Holes.Length < 2) yield break;
        var most = r.Holes.Max(h => h.Diameter.Mm) * PitchDiameters;
        var close = HolePairs.CloserThan(r.Holes, most)
            .Where(p => p.WebMm >= 0)
            .Select(p => (p.A, p.B, Ratio: p.A.At.To(p.B.At) / Length.Max(p.A.Diameter, p.B.Diameter).Mm))
            .Where(p => p.Ratio < PitchDiameters - 1e-6)
            .ToArray();
        if (close.Length == 0) yield break;
        var worst = Worst.Least(close, p => p.Ratio);
        var larger = Length.Max(worst.A.Diameter, worst.B.Diameter);
        var named = close.SelectMany(p => new[] { p.A.Name, p.B.Name }).ToHashSet(StringComparer.Ordinal);
        var names = Names(r.Holes.Select(h => h.Name).Where(named.Contains));
        yield return new Finding(
            FindingCodes.PitchRule,
            Severity.Note,
            names,
            worst.A.At.Toward(worst.B.At, 0.5),
            $"Centres nearer to one another than {PitchDiameters} hole diameters: {names}.",
            $"least {Shown.Number(worst.Ratio, 2)} diameters between {worst.A.Name} and {worst.B.Name}: {Shown.Both(Length.OfMm(worst.A.At.To(worst.B.At)))}",
            $"{PitchDiameters} diameters: {Shown.Both(larger * PitchDiameters)} there",
            Structural,
            $"a pitch of {Shown.Both(larger * PitchDiameters)} between {worst.A.Name} and {worst.B.Name} would meet it; a row along the handle need not")
        {
            Ways = HoleWays.Resized(r.Plan, close.SelectMany(p => new[] { (Hole: p.A, Mm: p.A.At.To(p.B.At)), (Hole: p.B, Mm: p.A.At.To(p.B.At)) })
                .Where(p => p.Hole.Diameter.Mm * PitchDiameters > p.Mm)
                .GroupBy(p => p.Hole)
                .Select(g => (g.Key, HoleWays.AtMost(r.Shop, r.Plan.Units, g.Key, g.Min(p => p.Mm) / PitchDiameters)))),
        };
    }

    /// <summary>Diameter over 0.45 of the height of the piece at the hole, square to the grip or else to x.</summary>
    public static IEnumerable<Finding> ShareOfHeight(Results r, ImmutableArray<HoleClearance> clearances)
    {
        // the height at a hole is at least twice its centre's distance from the outline
        ImmutableArray<HoleClearance> maybe = [.. clearances.Where(c => c.WebMm >= 0 && c.Hole.Diameter.Mm > 2 * HeightShare * c.CentreMm)];
        if (maybe.IsEmpty) yield break;
        var across = r.Plan.Grip is { } grip && grip.From.To(grip.To) > 0 ? (grip.To - grip.From).Unit.Left : new Point(0, 1);
        var rays = new RayHits(r.Piece.Outer.Segments);
        var hits = new RayHit[rays.MostHits];
        var reach = r.Piece.Outer.Bounds.Width + r.Piece.Outer.Bounds.Height;
        var wide = new List<(PlacedHole Hole, double HeightMm)>();
        foreach (var c in maybe)
        {
            var n = rays.Along(c.Hole.At, across, -reach, reach, hits);
            var (above, below) = (double.PositiveInfinity, double.PositiveInfinity);
            for (var i = 0; i < n; i++)
            {
                if (hits[i].Distance >= 0) above = Math.Min(above, hits[i].Distance);
                else below = Math.Min(below, -hits[i].Distance);
            }

            if (c.Hole.Diameter.Mm > (HeightShare * (above + below)) + 1e-6) wide.Add((c.Hole, above + below));
        }

        if (wide.Count == 0) yield break;
        var worst = Worst.Greatest(wide, w => w.Hole.Diameter.Mm / w.HeightMm);
        yield return new Finding(
            FindingCodes.ShareOfHeight,
            Severity.Note,
            Names(wide.Select(w => w.Hole.Name)),
            worst.Hole.At,
            $"Holes over {HeightShare} of the height of the piece weaken it when it is bent in its plane: {Names(wide.Select(w => w.Hole.Name))}.",
            $"most {Shown.Number(worst.Hole.Diameter.Mm / worst.HeightMm, 2)} of the height at {worst.Hole.Name}: {Shown.Both(worst.Hole.Diameter)} of {Shown.Both(Length.OfMm(worst.HeightMm))}",
            $"{HeightShare} of the height: {Shown.Both(Length.OfMm(HeightShare * worst.HeightMm))} there",
            "stress of a bar with a centred hole, bent in its plane (after Heywood 1952, from memory)",
            $"at {worst.Hole.Name} a hole of {Shown.Both(Length.OfMm(Math.Floor(HeightShare * worst.HeightMm * 10) / 10))} would meet it")
        {
            Ways = HoleWays.Resized(r.Plan, wide.Select(w => (w.Hole, HoleWays.AtMost(r.Shop, r.Plan.Units, w.Hole, HeightShare * w.HeightMm)))),
        };
    }

    private static string Names(IEnumerable<string> names)
    {
        var all = names.ToArray();
        return (all.Length == 1 ? "hole " : "holes ") + string.Join(", ", all);
    }
}
