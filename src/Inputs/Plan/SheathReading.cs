using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads the sheath a plan wants.</summary>
internal static class SheathReading
{
    private const double MostMaterialMm = 12, MostSeamMm = 100;

    public static SheathPlan? Read(Fields f, Path? outline, bool hasEdge)
    {
        if (!f.IsThere) return null;
        if (!hasEdge) f.FaultAt(f.Offset, "a sheath without an edge", "add [edge], which says what is covered; or take the sheath out");
        var sheath = new SheathPlan((SheathKind)Math.Max(0, f.Word("kind")))
        {
            MaterialThickness = Upto(f, "material_thickness", MostMaterialMm),
            Seam = Upto(f, "seam", MostSeamMm),
            StitchFromEdge = Upto(f, "stitch_from_edge", MostSeamMm),
            Pitch = Upto(f, "pitch", MostSeamMm, leastMm: 1),
            Mouth = f.Length("mouth", positive: false),
            BeltLoop = Upto(f, "belt_loop", 150),
        };
        if (sheath.Mouth is { } mouth && outline?.Bounds is { } box && (mouth.Mm <= box.MinX || mouth.Mm >= box.MaxX))
            f.Fault("mouth", $"mouth is x {Shown.Both(mouth)}, where there is no piece", $"write an x between {Shown.Both(Length.OfMm(box.MinX))} and {Shown.Both(Length.OfMm(box.MaxX))}");
        if (SheathRules.FromEdge(sheath) >= SheathRules.Finished(sheath))
            f.Fault(f.Has("stitch_from_edge") ? "stitch_from_edge" : "seam", $"the stitches lie {Shown.Both(SheathRules.FromEdge(sheath))} from the edge, which is only {Shown.Both(SheathRules.Finished(sheath))} from the blade", "write a wider seam, or stitches nearer to the edge");
        return sheath;
    }

    private static Length? Upto(Fields f, string key, double mostMm, double leastMm = 0.3)
    {
        if (f.Length(key) is not { } length) return null;
        if (length.Mm >= leastMm && length.Mm <= mostMm) return length;
        f.Fault(key, $"{key} is {Shown.Both(length)}", $"write {Shown.Both(Length.OfMm(leastMm))} to {Shown.Both(Length.OfMm(mostMm))}");
        return null;
    }
}
