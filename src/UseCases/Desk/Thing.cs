using System.Globalization;

namespace Tangwright.UseCases;

/// <summary>What kind of thing of a drawing can be taken hold of.</summary>
public enum ThingKind
{
    /// <summary>A single hole.</summary>
    Hole,

    /// <summary>A hole of a row.</summary>
    RowHole,

    /// <summary>A point of the outline.</summary>
    OutlinePoint,
}

/// <summary>A thing of the drawing that can be taken hold of, as a page names it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">The hole's name, or the number of the outline's segment that starts at the point.</param>
public sealed record Thing(ThingKind Kind, string Name)
{
    /// <summary>Number of the segment for a point of the outline.</summary>
    public int Segment => int.TryParse(Name, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : -1;

    /// <summary>The name pages use: <c>hole:L1</c>, <c>row:R3</c>, <c>point:4</c>.</summary>
    public override string ToString() => Kind switch { ThingKind.Hole => "hole:", ThingKind.RowHole => "row:", _ => "point:" } + Name;

    /// <summary>The thing a page names; null when it is none.</summary>
    public static Thing? Of(string text)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0 || text.Length > 200) return null;
        var name = text[(colon + 1)..];
        return text[..colon] switch
        {
            "hole" => new Thing(ThingKind.Hole, name),
            "row" => new Thing(ThingKind.RowHole, name),
            "point" => new Thing(ThingKind.OutlinePoint, name),
            _ => null,
        };
    }
}
