using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Cuts where the part must stay whole: outside every hole, and on or inside the outline.</summary>
internal static class PartCuts
{
    private const double StepMm = 0.1;

    /// <summary>How far the cone of a spot drill or countersink may chamfer the rim of a hole, mm; its cylinder may not.</summary>
    private const double RimMm = 1;

    public static IEnumerable<ProgramTrouble> Of(IReadOnlyList<Motion> motions, ImmutableArray<ProgramTool> tools, ProgramSetUp setUp, WantedPart wanted)
    {
        var seen = new HashSet<(Point, Point, Point, bool, double, bool)>();
        foreach (var m in motions)
        {
            if (m.Kind == MotionKind.Rapid || Math.Min(m.From.Z, m.To.Z) >= 0) continue;
            var tool = SweptTool.Of(tools, m.Tool);
            if (tool.Tool is null) continue;
            var tip = Math.Min(m.From.Z, m.To.Z);
            var radius = tool.RadiusAtFace(tip);
            var isCone = tool.Tool.Form is (ToolForm.SpotDrill or ToolForm.Countersink) && tip + tool.Point >= 0;
            if (!seen.Add((m.From.Flat, m.To.Flat, m.Centre, m.IsCounterClockwise, radius, isCone))) continue;
            if (FirstBad(m, radius, isCone ? RimMm : 0, setUp, wanted) is not { } bad) continue;
            yield return new("cuts the part", m.Line, $"the {tool.Tool.Name} cuts at x {Mm(bad.X)}, y {Mm(bad.Y)}, where the part must stay whole", wanted.Outline is null ? "keep cuts inside the holes" : "keep cuts inside the holes or outside the outline");
            yield break;
        }
    }

    private static Point? FirstBad(Motion m, double radius, double rim, ProgramSetUp setUp, WantedPart wanted)
    {
        bool? isOutside = null;
        foreach (var at in MotionSteps.Of(m, StepMm, StepMm))
        {
            var p = at.Flat;
            if (at.Z >= 0 && m.Flat() is not null) continue;
            if (wanted.Holes.Any(h => p.To(h.At) + radius <= (h.DiameterMm / 2) + wanted.ToleranceMm + rim)) continue;
            if (setUp.Stock.DistanceTo(p) >= radius - 1e-9) continue;
            if (wanted.Outline is not { } outline) return p;

            // once outside, it cannot get inside without coming nearer than its radius
            isOutside ??= !Inside.Of(outline, p);
            if (isOutside == false || Nearest.On(outline, p, radius).Distance < radius - wanted.ToleranceMm) return p;
        }

        return null;
    }

    private static string Mm(double mm) => Shown.Mm(Length.OfMm(mm));
}
