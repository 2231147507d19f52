using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The fit of a plan's pin in words.</summary>
public static class PinFitText
{
    /// <summary>The tools: "5.8 mm drill, then 6 mm reamer (not owned)".</summary>
    public static string Tools(PinFit p)
    {
        var drill = $"{p.Drill.Name} drill{Owned(p.DrillIsOwned)}";
        return p.ReamerIsOwned is { } owned ? $"{drill}, then {Named(p.Hole.Diameter)} reamer{Owned(owned)}" : p.Hole.Make == HoleMake.Bore ? "bored" : drill;
    }

    /// <summary>The rod: "4.97 mm rod", or what was taken for it.</summary>
    public static string Rod(PinFit p) => p.Rod is not { } rod ? "no rod" : p.RodIsSaid ? $"{FitText.Size(rod)} rod" : $"{Named(rod)} rod as sold, {PinFits.RodClass}";

    /// <summary>What the room is good for.</summary>
    public static string Room(PinFit p)
    {
        if (p.Fit is not { } fit) return p.Rod is null ? "" : "outside the tables: measure both";
        var (least, most) = GlueRoom.InSteel;
        if (fit.Kind == FitKind.Presses) return "does not go in by hand";
        if (fit.Kind == FitKind.SlidesOrPresses) return "may not go in by hand: try the rod in an offcut first";
        if (fit.MostClearance < least) return $"goes in closely; glued pins want {Bare(least)} to {Bare(most)} mm in the steel";
        if (fit.LeastClearance > most) return $"loose: more than {Bare(most)} mm, the glue alone holds it in place";
        return "goes in by hand, with room for glue";
    }

    /// <summary>The trade's name of a size with its mm.</summary>
    public static string Named(Length size) => DrillSeries.NameOf(size, DrillFindings.SameSizeMm) is { } d ? d.Name.EndsWith(" mm", StringComparison.Ordinal) ? d.Name : $"{d.Name} ({Shown.Mm(size, 3)})" : FitText.Size(size);

    private static string Owned(bool owned) => owned ? "" : " (not owned)";

    private static string Bare(Length l) => Shown.Number(l.Mm, 2);
}
