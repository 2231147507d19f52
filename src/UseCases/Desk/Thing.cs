using System.Globalization;

namespace Tangwright.UseCases;

/// <summary>What kind of thing of a drawing can be taken hold of.</summary>
public enum ThingKind
{
    /// <summary>A single hole.</summary>
    Hole,

    /// <summary>A hole of a row.</summary>
    RowHole,

    /// <summary>A point of the outline: where a segment starts.</summary>
    OutlinePoint,

    /// <summary>A control point of a Bézier.</summary>
    Control,

    /// <summary>The middle of a circular arc.</summary>
    Bow,

    /// <summary>An end of the sharpened part.</summary>
    EdgeEnd,

    /// <summary>An end of the plunge line.</summary>
    PlungeEnd,

    /// <summary>An end of the line through the grip.</summary>
    GripEnd,

    /// <summary>Where measuring starts.</summary>
    Datum,

    /// <summary>An end of a row of holes.</summary>
    RowEnd,
}

/// <summary>A thing of the drawing that can be taken hold of, as a page names it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">The hole's or row's name, the number of the outline's segment, or which end; a second part follows after the last point: <c>4.1</c>, <c>R.from</c>.</param>
public sealed record Thing(ThingKind Kind, string Name)
{
    private static readonly (ThingKind Kind, string Word)[] Words =
    [
        (ThingKind.Hole, "hole"),
        (ThingKind.RowHole, "row"),
        (ThingKind.OutlinePoint, "point"),
        (ThingKind.Control, "control"),
        (ThingKind.Bow, "bow"),
        (ThingKind.EdgeEnd, "edge"),
        (ThingKind.PlungeEnd, "plunge"),
        (ThingKind.GripEnd, "grip"),
        (ThingKind.Datum, "datum"),
        (ThingKind.RowEnd, "rowend"),
    ];

    /// <summary>Number of the outline's segment for a point, a control point or a bow; -1 for others.</summary>
    public int Segment => Kind is ThingKind.OutlinePoint or ThingKind.Control or ThingKind.Bow && int.TryParse(Kind == ThingKind.Control ? Before : Name, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : -1;

    /// <summary>Whether it is the first of its two: first control point, front end.</summary>
    public bool IsFirst => After is "1" or "from" or "a";

    /// <summary>Name of the row whose end it is; else its own name.</summary>
    public string Owner => Kind == ThingKind.RowEnd ? Before : Name;

    private int Dot => Name.LastIndexOf('.');

    private string Before => Dot < 0 ? Name : Name[..Dot];

    private string After => Kind is ThingKind.Control or ThingKind.RowEnd ? Name[(Dot + 1)..] : Name;

    /// <summary>The name pages use: <c>hole:L1</c>, <c>row:R3</c>, <c>point:4</c>, <c>control:4.1</c>, <c>bow:4</c>, <c>edge:from</c>, <c>plunge:a</c>, <c>grip:to</c>, <c>datum:at</c>, <c>rowend:R.from</c>.</summary>
    public override string ToString() => Array.Find(Words, w => w.Kind == Kind).Word + ":" + Name;

    /// <summary>The thing a page names; null when it is none.</summary>
    public static Thing? Of(string text)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0 || text.Length > 200) return null;
        var found = Array.FindIndex(Words, w => text.AsSpan(0, colon).SequenceEqual(w.Word));
        if (found < 0) return null;
        var thing = new Thing(Words[found].Kind, text[(colon + 1)..]);
        return thing.Kind switch
        {
            ThingKind.EdgeEnd or ThingKind.GripEnd => thing.Name is "from" or "to",
            ThingKind.PlungeEnd => thing.Name is "a" or "b",
            ThingKind.Datum => thing.Name == "at",
            ThingKind.RowEnd => thing.Dot > 0 && thing.After is "from" or "to",
            ThingKind.Control => thing.Segment >= 0 && thing.After is "1" or "2",
            ThingKind.OutlinePoint or ThingKind.Bow => thing.Segment >= 0,
            _ => true,
        } ? thing : null;
    }
}
