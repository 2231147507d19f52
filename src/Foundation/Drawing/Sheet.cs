using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>What a mark is drawn in. Sheets must lose nothing in mono: grey is for help lines only.</summary>
public enum Ink
{
    /// <summary>Full black.</summary>
    Black,

    /// <summary>Mid grey, for construction and ghost lines.</summary>
    Grey,

    /// <summary>Pale grey, for filled fields behind text.</summary>
    Pale,

    /// <summary>Paper white, to knock out behind text.</summary>
    White,
}

/// <summary>Line types of ISO 128-2 that the sheets use.</summary>
public enum LineKind
{
    /// <summary>Continuous.</summary>
    Solid,

    /// <summary>Dashed: hidden edges and cut-later lines.</summary>
    Dashed,

    /// <summary>Long dash, dot: centre lines.</summary>
    LongDashDot,
}

/// <summary>A line as drawn.</summary>
/// <param name="WidthMm">Width on paper, mm; ISO 128 pairs 0.5 and 0.25, templates 0.2.</param>
/// <param name="Kind">Line type.</param>
/// <param name="Ink">Ink.</param>
public readonly record struct Pen(double WidthMm, LineKind Kind = LineKind.Solid, Ink Ink = Ink.Black)
{
    /// <summary>Wide line, 0.5 mm: visible outlines.</summary>
    public static Pen Wide => new(0.5);

    /// <summary>Narrow line, 0.25 mm: dimensions, leaders.</summary>
    public static Pen Narrow => new(0.25);

    /// <summary>Template outline, 0.2 mm.</summary>
    public static Pen Template => new(0.2);

    /// <summary>Centre line, 0.25 mm long dash dot.</summary>
    public static Pen Centre => new(0.25, LineKind.LongDashDot);
}

/// <summary>Which point of a line of text stands at its place.</summary>
public enum TextAnchor
{
    /// <summary>Left end of the base line.</summary>
    Left,

    /// <summary>Middle of the base line.</summary>
    Middle,

    /// <summary>Right end of the base line.</summary>
    Right,
}

/// <summary>Something drawn on a sheet. Sheet coordinates: mm from the lower left corner, x right, y up.</summary>
public abstract record Mark;

/// <summary>A stroked path.</summary>
/// <param name="Path">In sheet coordinates.</param>
/// <param name="Pen">How it is drawn.</param>
public sealed record StrokeMark(Path Path, Pen Pen) : Mark;

/// <summary>Filled loops, even-odd.</summary>
/// <param name="Loops">Closed, in sheet coordinates.</param>
/// <param name="Ink">Fill.</param>
public sealed record FillMark(ImmutableArray<Path> Loops, Ink Ink) : Mark;

/// <summary>One line of text.</summary>
/// <param name="Text">Plain text.</param>
/// <param name="At">Place of the anchor on the base line.</param>
/// <param name="HeightMm">Height of capitals, mm (ISO 3098: 3.5, 5, 7).</param>
/// <param name="Bold">Bold face.</param>
/// <param name="Anchor">Which end stands at the place.</param>
/// <param name="AngleDegrees">Turn of the base line, counter-clockwise.</param>
/// <param name="Ink">Ink.</param>
public sealed record TextMark(string Text, Point At, double HeightMm, bool Bold = false, TextAnchor Anchor = TextAnchor.Left, double AngleDegrees = 0, Ink Ink = Ink.Black) : Mark;

/// <summary>Marks seen only inside a box, as on one tile of a template.</summary>
/// <param name="Window">The box, sheet coordinates.</param>
/// <param name="Marks">What is drawn.</param>
public sealed record ClippedMarks(Box Window, ImmutableArray<Mark> Marks) : Mark;

/// <summary>One sheet of paper.</summary>
/// <param name="Kind">Stable name of the sheet kind: <c>cover</c>, <c>holes</c>, <c>template</c>.</param>
/// <param name="Title">What stands on it, in the maker's words.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="HeightMm">Height, mm.</param>
/// <param name="Marks">What is drawn, in order.</param>
/// <param name="Scale">Scale of the drawing on it, for the title block: "1:2"; empty when there is no drawing to scale.</param>
public sealed record Sheet(string Kind, string Title, double WidthMm, double HeightMm, ImmutableArray<Mark> Marks, string Scale = "");

/// <summary>Sheets bound in order.</summary>
/// <param name="Title">Title of the whole.</param>
/// <param name="Date">The date printed on it.</param>
/// <param name="Sheets">The sheets.</param>
public sealed record SheetSet(string Title, DateOnly Date, ImmutableArray<Sheet> Sheets);
