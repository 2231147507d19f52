using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Reads the bevel of a plan.</summary>
internal static class BevelReading
{
    public static Bevel? Read(Fields f, Path? outline, bool hasEdge)
    {
        if (!f.IsThere) return null;
        if (!hasEdge) f.FaultAt(f.Offset, "[bevel] without [edge]", "add [edge] with from and to, so that it is known which side is ground");
        var grind = (Grind)Math.Max(0, f.Word("grind"));
        var oneSided = f.Flag("one_sided") ?? false;
        var full = f.Node("height") is TomlText { Value: var v } && string.Equals(v.Trim(), "full", StringComparison.OrdinalIgnoreCase);
        var height = full ? null : f.Length("height");
        var ground = f.Word("ground") == 1 ? GroundWhen.AfterHardening : GroundWhen.BeforeHardening;
        var (before, finished) = Edge(f, ground);
        var sharpen = AngleOf(f, "sharpen_per_side", "a sharpening angle", "16");
        var angle = AngleOf(f, "angle_per_side", "an angle of the bevel", "5.9");
        if (!f.Has("height") && !f.Has("angle_per_side")) f.FaultAt(f.Offset, "[bevel] has neither height nor angle_per_side", "add height = 26 (square to the edge; \"full\" goes to the spine), or angle_per_side = 5.9 (the height follows the thickness)");
        if (f.Has("height") && f.Has("angle_per_side")) f.Fault("angle_per_side", "angle_per_side beside height", "one follows from the other: keep the one you grind to and take the other out");
        if (grind != Grind.Flat && f.Has("angle_per_side")) f.Fault("angle_per_side", $"a constant angle on a {Word(grind)} bevel", "write height instead; only a flat face has one angle");
        if (grind != Grind.Hollow && f.Has("wheel")) f.Fault("wheel", $"a wheel for a {Word(grind)} bevel", "write grind = \"hollow\", or take this line out");
        if (grind != Grind.Convex && f.Has("radius")) f.Fault("radius", $"a radius of the bulge for a {Word(grind)} bevel", "write grind = \"convex\", or take this line out");
        var (wheel, radius) = (f.Length("wheel"), f.Length("radius"));
        var plunge = f.Node("plunge") switch
        {
            null => null,
            TomlList list => f.TwoPoints(list, "plunge") is { } p ? new PlungeLine(p.A, p.B) : null,
            _ => f.Length("plunge", positive: false) is { } x && outline is not null ? new PlungeLine(new Point(x.Mm, outline.Bounds.MinY), new Point(x.Mm, outline.Bounds.MaxY)) : null,
        };
        return finished is { } edge ? new Bevel(grind, oneSided, height, ground, before, edge, sharpen, plunge) { AnglePerSide = angle, Wheel = wheel, Radius = radius } : null;
    }

    private static (Length? Before, Length? Finished) Edge(Fields f, GroundWhen ground)
    {
        var (before, finished) = (f.Length("edge_before_hardening"), f.Length("edge_finished", positive: false));
        if (finished is { Mm: < 0 }) f.Fault("edge_finished", "edge_finished is below 0", "write the thickness of the edge before sharpening; 0 is a bevel ground to nothing");
        if (ground == GroundWhen.AfterHardening && before is not null) f.Fault("edge_before_hardening", "an edge left for hardening, but the bevel is ground after it", "take this line out, or write ground = \"before\"");
        if (before is { } b && finished is { } e && b < e) f.Fault("edge_before_hardening", "the edge before hardening is thinner than the finished one", "write the thickness left for hardening, which is the greater one");
        return (before, finished);
    }

    private static Angle? AngleOf(Fields f, string key, string what, string example)
    {
        var angle = f.Quantity(key, QuantityText.Degrees);
        if (angle is { Degrees: not (> 0 and < 60) }) f.Fault(key, $"{what} that is not between 0 and 60 degrees per side", $"write the angle of one face against the middle plane, as {example}");
        return angle;
    }

    private static string Word(Grind grind) => grind.ToString().ToLowerInvariant();
}
