using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>One segment of the outline for the screen: L a line, A an arc, C a cubic Bézier; plan's axes, mm, degrees.</summary>
public sealed record DrawnSegment(string Kind, double X0, double Y0, double X, double Y, double Rx = 0, double Ry = 0, double Turn = 0, bool Large = false, bool Sweep = false, double X1 = 0, double Y1 = 0, double X2 = 0, double Y2 = 0);

/// <summary>A hole for the screen, plan's axes, mm.</summary>
/// <param name="Id">Name as a <see cref="Thing"/>.</param>
/// <param name="Name">Name for the maker.</param>
/// <param name="X">Centre.</param>
/// <param name="Y">Centre.</param>
/// <param name="Diameter">Diameter.</param>
public sealed record DrawnHole(string Id, string Name, double X, double Y, double Diameter);

/// <summary>A point marked on the drawing, plan's axes, mm.</summary>
/// <param name="Kind">datum, balance, percussion, or the severity of a finding.</param>
/// <param name="Label">What stands at it.</param>
/// <param name="Says">What it is, in words.</param>
/// <param name="X">Along.</param>
/// <param name="Y">Across.</param>
public sealed record DrawnMark(string Kind, string Label, string Says, double X, double Y);

/// <summary>A dimension over all, plan's axes, mm.</summary>
public sealed record DrawnSize(double X0, double Y0, double X1, double Y1, string Text);

/// <summary>What follows from the outline and the holes and is drawn anew at every step of a move.</summary>
/// <param name="Refused">Why the step was not made; empty when it was.</param>
/// <param name="Edge">The sharpened part, path data in mm; empty when there is none.</param>
/// <param name="Plunge">The plunge line, path data; empty when there is none.</param>
/// <param name="Grip">Line through the grip, path data; empty when there is none.</param>
/// <param name="RowHoles">Holes of rows.</param>
/// <param name="Marks">Datum, balance, percussion, findings.</param>
/// <param name="Sizes">Length and height over all.</param>
public sealed record DrawnMarks(string Refused, string Edge, string Plunge, string Grip, ImmutableArray<DrawnHole> RowHoles, ImmutableArray<DrawnMark> Marks, ImmutableArray<DrawnSize> Sizes);

/// <summary>A plan as the screen draws it.</summary>
/// <param name="Version">Version of the plan drawn.</param>
/// <param name="Box">Left, lower, right, upper extreme of the piece, mm.</param>
/// <param name="UnitMm">The maker's unit, mm.</param>
/// <param name="StepMm">What places are rounded to, mm.</param>
/// <param name="Outline">The outline; points are where segments start.</param>
/// <param name="Holes">Single holes.</param>
/// <param name="Derived">What follows from them.</param>
/// <param name="Pale">A version to draw pale behind, path data; empty when there is none.</param>
public sealed record DrawnPlan(int Version, ImmutableArray<double> Box, double UnitMm, double StepMm, ImmutableArray<DrawnSegment> Outline, ImmutableArray<DrawnHole> Holes, DrawnMarks Derived, string Pale)
{
    /// <summary>Draws an open plan.</summary>
    public static DrawnPlan Of(PlanOnDesk desk)
    {
        var r = desk.Results;
        var b = r.Plan.Outline.Bounds;
        return new DrawnPlan(
            desk.Version,
            [b.MinX, b.MinY, b.MaxX, b.MaxY],
            r.Plan.Units == LengthUnit.Inch ? Length.MmPerInch : 1,
            PutAt.StepMm(r.Plan.Units),
            [.. r.Plan.Outline.Segments.Select(Segment)],
            [.. r.Holes.Where(h => h.Row is null).Select(h => Hole(h, ThingKind.Hole))],
            Marks(desk, ""),
            (desk.Pale ?? desk.Compared?.Results) is { } pale ? PathData.Write(pale.Plan.Outline, 1) + string.Concat(pale.Holes.Select(h => " " + PathData.Write(Path.Circle(h.At, h.Diameter.Mm / 2), 1))) : "");
    }

    /// <summary>Draws what follows.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="refused">Why the last step was not made; empty when it was.</param>
    public static DrawnMarks Marks(PlanOnDesk desk, string refused)
    {
        var r = desk.Results;
        var marks = ImmutableArray.CreateBuilder<DrawnMark>();
        var datum = FromDatum.Zero(r.Plan);
        marks.Add(new("datum", r.Plan.Datum.Name, "Datum: measuring starts here", datum.X, datum.Y));
        var balance = r.Stages[^1].Balance;
        marks.Add(new("balance", "", "Balance point of the finished steel", balance.X, balance.Y));
        if (r.Striking is { } s) marks.Add(new("percussion", "", "Centre of percussion: a blow here does not jar the grip", s.Percussion.X, s.Percussion.Y));
        for (var i = 0; i < r.Findings.Length; i++)
        {
            var f = r.Findings[i];
            if (f.Place is { } at) marks.Add(new(CheckPlan.SeverityWord(f.Severity), $"{i + 1}", $"{f.Where}: {f.Message}", at.X, at.Y));
        }

        var b = r.Plan.Outline.Bounds;
        return new DrawnMarks(
            refused,
            EdgeSpan.Of(r.Plan, r.Piece) is { } edge ? PathData.Write(edge.Path, 1) : "",
            r.Plan.Bevel?.Plunge is { } p ? Stretch(p.A, p.B) : "",
            r.Plan.Grip is { } g ? Stretch(g.From, g.To) : "",
            [.. r.Holes.Where(h => h.Row is not null).Select(h => Hole(h, ThingKind.RowHole))],
            marks.ToImmutable(),
            [
                new(b.MinX, b.MinY, b.MaxX, b.MinY, DeskFigures.Size(r.Outline.Length, r.Plan.Units)),
                new(b.MaxX, b.MinY, b.MaxX, b.MaxY, DeskFigures.Size(r.Outline.Height, r.Plan.Units)),
            ]);
    }

    private static string Stretch(Point a, Point b) => PathData.Write(new Path([new Line(a, b)], closed: false), 1);

    private static DrawnHole Hole(PlacedHole h, ThingKind kind) => new(new Thing(kind, h.Name).ToString(), h.Name, h.At.X, h.At.Y, h.Diameter.Mm);

    private static DrawnSegment Segment(Segment s) => s switch
    {
        Bezier c => new("C", c.Start.X, c.Start.Y, c.End.X, c.End.Y, X1: c.Control1.X, Y1: c.Control1.Y, X2: c.Control2.X, Y2: c.Control2.Y),
        Arc a => new("A", a.Start.X, a.Start.Y, a.End.X, a.End.Y, a.AxisU.Length, a.AxisV.Length, Math.Atan2(a.AxisU.Y, a.AxisU.X) * 180 / Math.PI, Math.Abs(a.Sweep) > Math.PI, a.IsCounterClockwise),
        _ => new("L", s.Start.X, s.Start.Y, s.End.X, s.End.Y),
    };
}
