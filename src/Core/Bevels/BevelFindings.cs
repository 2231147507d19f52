using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Is there steel for the bevel, and is it clear of the holes?</summary>
public static class BevelFindings
{
    private const int Stations = 24;

    /// <summary>Holes within the bevel.</summary>
    public static IEnumerable<Finding> IntoHoles(Results r, EdgeSpan? edge, ImmutableArray<HoleClearance> clearances)
    {
        if (edge is null || r.Plan.Bevel is not { } bevel) yield break;
        var remedy = new WebRemedy(r);
        var ground = bevel.AnglePerSide is null ? null : new SteelThickness(r.Piece, edge, bevel.Plunge, GrindProfile.Finished(r.Plan));
        foreach (var c in clearances)
        {
            // the edge is part of the outline, so it lies no nearer than that
            var h = c.Hole;
            if (c.Inside && bevel.Height is { } most && c.WebMm >= most.Mm) continue;
            var foot = Nearest.On(edge.Path, h.At);
            var rim = foot.Distance - (0.5 * h.Diameter.Mm);
            if (bevel.Height is { } height && rim >= height.Mm) continue;
            if (bevel.IsFull && !LiesOnBevel(r, edge, h, foot.At)) continue;

            // at a constant angle the height is that of the place
            var reach = ground is null ? (double?)null : ground.Foot(h.At).Bevel;
            if (reach is { } so && rim >= so) continue;
            if (bevel.Plunge is { } plunge && BeyondPlunge(plunge, edge, h)) continue;
            yield return new Finding(
                FindingCodes.BevelIntoHole,
                Severity.Warning,
                $"hole {h.Name}",
                h.At,
                $"The bevel runs into hole {h.Name}.",
                $"rim {Shown.Both(Length.OfMm(rim))} from the edge",
                bevel.Height is { } at ? $"{Shown.Both(at)}, the bevel's height" : reach is { } there ? $"{Shown.Both(Length.OfMm(there))}, the bevel's height there" : "clear of a bevel to the spine",
                "geometry",
                bevel.Height is { } now && rim > 0 ? $"a bevel {Shown.Both(Length.OfMm(Math.Floor(rim * 10) / 10))} high, or move the hole {Shown.Both(now - Length.OfMm(rim))} away from the edge" : "move the hole off the bevel, or end the bevel before it")
            {
                Ways = [.. Lower(r, rim), .. bevel.Height is { } high && rim > 0 ? HoleWays.Moved(remedy.Along(h, (h.At - foot.At).Unit, high.Mm - rim)) : []],
            };
        }
    }

    /// <summary>Bevel higher than the piece over more than half of the edge; towards a tip it always is.</summary>
    public static IEnumerable<Finding> PastSpine(Results r, EdgeSpan? edge)
    {
        if (edge is null || r.Plan.Bevel?.Height is not { } height) yield break;
        var depths = Depths(r, edge);
        var over = depths.Count(d => d < height.Mm);
        if (depths.Length == 0 || over * 2 <= depths.Length) yield break;
        var deepest = Length.OfMm(depths.Max());
        yield return new Finding(
            FindingCodes.BevelPastSpine,
            Severity.Warning,
            "bevel",
            edge.Middle,
            $"The bevel is {Shown.Both(height)} high, more than the piece over {Shown.Number(100.0 * over / depths.Length, 0)} % of the edge.",
            Shown.Both(height),
            $"at most {Shown.Both(deepest)} of steel square to the edge",
            "geometry",
            $"a height of {Shown.Both(Length.OfMm(Math.Floor(Median(depths) * 10) / 10))} or less, or \"full\" to grind to the spine")
        {
            Ways = [.. Lower(r, Median(depths)), new RemedyWay("grind to the spine", [new WordSet("bevel", "height", "full")])],
        };
    }

    /// <summary>A hollow bevel whose wheel is not said stands in as flat.</summary>
    public static IEnumerable<Finding> TakenAsFlat(Results r)
    {
        if (r.Plan.Bevel is not { } bevel || !BevelSolid.IsFlatStandIn(bevel)) yield break;
        yield return new Finding(
            FindingCodes.BevelTakenAsFlat,
            Severity.Note,
            "bevel",
            null,
            "The bevel is hollow, but the plan does not say the wheel: it is weighed and drawn as a flat one, and the real piece comes out lighter.",
            "no wheel",
            "the diameter of the wheel",
            "geometry",
            "add wheel = \"254 mm\", the diameter of your wheel, under [bevel]");
    }

    /// <summary>Steel square to the edge, inwards to the other side, at about even stations of the edge, mm.</summary>
    internal static double[] Depths(Results r, EdgeSpan edge)
    {
        var rays = new RayHits(r.Piece.Outer.Segments);
        var hits = new RayHit[rays.MostHits];
        var reach = r.Piece.Outer.Bounds.Width + r.Piece.Outer.Bounds.Height;
        var depths = new List<double>(Stations);
        var lengths = edge.Path.Segments.Select(s => s.Start.To(s.At(0.5)) + s.At(0.5).To(s.End)).ToArray(); // near enough for stations
        var total = lengths.Sum();
        var (before, i) = (0.0, 0);
        for (var k = 0; k < Stations; k++)
        {
            var at = total * (k + 0.5) / Stations;
            while (i < lengths.Length - 1 && before + lengths[i] < at) before += lengths[i++];
            var s = edge.Path.Segments[i];
            var t = Math.Clamp((at - before) / lengths[i], 0, 1);
            if (rays.Along(s.At(t), s.Tangent(t).Left, 1e-6, reach, hits) > 0) depths.Add(hits[0].Distance);
        }

        return [.. depths];
    }

    /// <summary>A bevel no higher than so much; none when nothing would be left of it.</summary>
    private static ImmutableArray<RemedyWay> Lower(Results r, double mostMm)
    {
        var height = PlanStep.SizeDown(mostMm, r.Plan.Units);
        return height.Mm > 0 ? [new RemedyWay($"grind the bevel {Shown.Both(height)} high", [new LengthSet("bevel", "height", height)])] : [];
    }

    private static double Median(double[] values)
    {
        var sorted = values.Order().ToArray();
        return sorted[sorted.Length / 2];
    }

    private static bool BeyondPlunge(PlungeLine plunge, EdgeSpan edge, PlacedHole h)
    {
        var way = (plunge.B - plunge.A).Unit;
        var toBevel = Math.Sign((edge.Middle - plunge.A).Cross(way));
        return (h.At - plunge.A).Cross(way) * toBevel <= 0.5 * h.Diameter.Mm;
    }

    /// <summary>Whether a full bevel without a height covers the hole: its foot lies within the edge, not at its ends.</summary>
    private static bool LiesOnBevel(Results r, EdgeSpan edge, PlacedHole h, Point foot)
        => (foot.To(edge.Path.Start) > 1e-6 && foot.To(edge.Path.End) > 1e-6) || r.Plan.Bevel!.Plunge is not null;
}
