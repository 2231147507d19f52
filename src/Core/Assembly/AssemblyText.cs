using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Chances and holes in words.</summary>
public static class AssemblyText
{
    /// <summary>A chance as so many in a hundred: "58", "99.7", "under 0.1", "over 99.9".</summary>
    public static string InHundred(double share) => share switch
    {
        < 0.0005 => "under 0.1",
        > 0.9995 => "over 99.9",
        < 0.095 or > 0.985 => Shown.Trimmed(100 * share, 1),
        _ => Shown.Number(100 * share, 0),
    };

    /// <summary>A hole size with the nearest drill or reamer owned that is not under it: "5.37 mm (0.211 in), nearest tool 5.4 mm".</summary>
    public static string Hole(Shop shop, Length size)
        => Shown.Both(size) + (GoTogether.Tool(shop, size) is { } tool ? $", nearest tool owned {Named(tool)}" : ", no tool owned that is so large");

    /// <summary>A tool by its name, with its size when the name does not say it.</summary>
    public static string Named(DrillSize tool) => tool.Name.EndsWith(" mm", StringComparison.Ordinal) ? $"{tool.Name} ({Shown.Inch(tool.Diameter)})" : $"{tool.Name} ({Shown.Mm(tool.Diameter)})";
}
