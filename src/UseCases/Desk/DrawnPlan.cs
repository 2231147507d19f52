using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>One segment of the outline for the screen: L a line, A an arc, C a cubic Bézier; plan's axes, mm, degrees.</summary>
public sealed record DrawnSegment(string Kind, double X0, double Y0, double X, double Y, double Rx = 0, double Ry = 0, double Turn = 0, bool Large = false, bool Sweep = false, double X1 = 0, double Y1 = 0, double X2 = 0, double Y2 = 0);

/// <summary>A point marked on the drawing, plan's axes, mm.</summary>
/// <param name="Kind">datum, balance, percussion, or the severity of a finding.</param>
/// <param name="Label">What stands at it.</param>
/// <param name="Says">What it is, in words.</param>
/// <param name="X">Along.</param>
/// <param name="Y">Across.</param>
public sealed record DrawnMark(string Kind, string Label, string Says, double X, double Y);

/// <summary>A segment of the outline that is no longer as it was sent.</summary>
/// <param name="I">Which.</param>
/// <param name="Segment">As it is now.</param>
public sealed record ChangedSegment(int I, DrawnSegment Segment);

/// <summary>A drill owned, for sizes to hold on to.</summary>
/// <param name="Name">As it is written in a plan.</param>
/// <param name="Mm">Diameter, mm.</param>
public sealed record DrawnDrill(string Name, double Mm);

/// <summary>A straight line places can hold on to, plan's axes, mm.</summary>
public sealed record DrawnLine(double X0, double Y0, double X1, double Y1);

/// <summary>What follows from the outline and the holes and is drawn anew at every step of a move.</summary>
/// <param name="Version">Version of the plan it follows from.</param>
/// <param name="Refused">Why the step was not made; empty when it was.</param>
/// <param name="Edge">The sharpened part, path data in mm; empty when there is none.</param>
/// <param name="Plunge">The plunge line, path data; empty when there is none.</param>
/// <param name="Grip">Line through the grip, path data; empty when there is none.</param>
/// <param name="RowHoles">Holes of rows; null when they are as they were sent.</param>
/// <param name="Places">Ends of edge, plunge, grip and rows, the datum.</param>
/// <param name="Changed">Segments that are not as they were sent.</param>
/// <param name="Marks">Datum, balance, percussion, findings.</param>
/// <param name="Sizes">Length and height over all, and the dimensions of the chosen thing.</param>
public sealed record DrawnMarks(int Version, string Refused, string Edge, string Plunge, string Grip, ImmutableArray<DrawnThing>? RowHoles, ImmutableArray<DrawnThing> Places, ImmutableArray<ChangedSegment> Changed, ImmutableArray<DrawnMark> Marks, ImmutableArray<DrawnSize> Sizes);

/// <summary>A plan as the screen draws it.</summary>
/// <param name="Version">Version of the plan drawn.</param>
/// <param name="Box">Left, lower, right, upper extreme of the piece, mm.</param>
/// <param name="UnitMm">The maker's unit, mm.</param>
/// <param name="StepMm">What places are rounded to, mm.</param>
/// <param name="Outline">The outline; points are where segments start.</param>
/// <param name="Things">Single holes and all of the outline that can be taken hold of.</param>
/// <param name="Lines">Lines of grip and rows.</param>
/// <param name="Drills">Drills owned, ascending.</param>
/// <param name="Derived">What follows from them.</param>
/// <param name="Pale">A version to draw pale behind, path data; empty when there is none.</param>
public sealed record DrawnPlan(int Version, ImmutableArray<double> Box, double UnitMm, double StepMm, ImmutableArray<DrawnSegment> Outline, ImmutableArray<DrawnThing> Things, ImmutableArray<DrawnLine> Lines, ImmutableArray<DrawnDrill> Drills, DrawnMarks Derived, string Pale)
{
    private const int MostMarked = 200;

    /// <summary>Draws an open plan.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="chosen">Name of the chosen thing; empty when none is.</param>
    public static DrawnPlan Of(PlanOnDesk desk, string chosen)
    {
        var now = desk.Now;
        var r = now.Results;
        var b = r.Plan.Outline.Bounds;
        return new DrawnPlan(
            now.Version,
            [b.MinX, b.MinY, b.MaxX, b.MaxY],
            r.Plan.Units == LengthUnit.Inch ? Length.MmPerInch : 1,
            PutAt.StepMm(r.Plan.Units),
            [.. r.Plan.Outline.Segments.Select(Segment)],
            [.. DrawnThings.Holes(r), .. DrawnThings.OfOutline(r.Plan.Outline)],
            [.. LinesOf(r.Plan)],
            [.. r.Shop.Drills.Select(d => new DrawnDrill(d.Name, d.Diameter.Mm))],
            Marks(now, "", chosen, null),
            (desk.Pale ?? desk.Compared?.Results) is { } pale ? BothDrawn.Lines(pale) : "");
    }

    /// <summary>What the pale drawing behind is, in words; empty when there is none.</summary>
    public static string PaleSays(PlanOnDesk desk)
        => desk.Pale is not null ? "Pale: what you did here before the file was changed elsewhere" : desk.Compared is { } other ? $"Pale: {other.Says}" : "";

    /// <summary>Draws what follows.</summary>
    /// <param name="now">The plan as it stands.</param>
    /// <param name="refused">Why the last step was not made; empty when it was.</param>
    /// <param name="chosen">Name of the chosen thing; empty when none is.</param>
    /// <param name="sent">What was sent last; null when everything is to be sent.</param>
    public static DrawnMarks Marks(PlanState now, string refused, string chosen, DrawnPlan? sent)
    {
        var r = now.Results;
        var marks = ImmutableArray.CreateBuilder<DrawnMark>();
        var datum = FromDatum.Zero(r.Plan);
        marks.Add(new("datum", r.Plan.Datum.Name, "Datum: measuring starts here", datum.X, datum.Y));
        var balance = r.Stages[^1].Balance;
        marks.Add(new("balance", "", r.Stages[^1].Stage == Stage.Assembled ? "Balance point, with what is put on the steel" : "Balance point of the finished steel", balance.X, balance.Y));
        if (r.Striking is { } s) marks.Add(new("percussion", "", "Centre of percussion: a blow here does not jar the grip", s.Percussion.X, s.Percussion.Y));
        for (var i = 0; i < r.Findings.Length && marks.Count < MostMarked; i++)
        {
            var f = r.Findings[i];
            if (f.Place is { } at) marks.Add(new(CheckPlan.SeverityWord(f.Severity), $"{i + 1}", $"{f.Where}: {f.Message}", at.X, at.Y));
        }

        var (rows, rest) = (DrawnThings.RowHoles(r), DrawnThings.Rest(r));
        return new DrawnMarks(
            now.Version,
            refused,
            EdgeSpan.Of(r.Plan, r.Piece) is { } edge ? PathData.Write(edge.Path, 1) : "",
            r.Plan.Bevel?.Plunge is { } p ? Stretch(p.A, p.B) : "",
            r.Plan.Grip is { } g ? Stretch(g.From, g.To) : "",
            sent?.Derived.RowHoles is { } was && was.SequenceEqual(rows) ? null : rows,
            rest,
            sent is null ? [] : Changed(r.Plan.Outline, sent.Outline),
            marks.ToImmutable(),
            DrawnSize.Of(r, Chosen(r, chosen, rows, rest)));
    }

    /// <summary>The dimensions to draw when a thing is chosen.</summary>
    public static ImmutableArray<DrawnSize> Sizes(PlanOnDesk desk, string chosen)
    {
        var r = desk.Results;
        return DrawnSize.Of(r, Chosen(r, chosen, DrawnThings.RowHoles(r), DrawnThings.Rest(r)));
    }

    private static DrawnThing? Chosen(Results r, string id, ImmutableArray<DrawnThing> rows, ImmutableArray<DrawnThing> rest)
    {
        if (id.Length == 0) return null;
        if (id.StartsWith("rim:", StringComparison.Ordinal)) id = "hole:" + id[4..];
        return rest.Concat(rows).Concat(DrawnThings.Holes(r)).Concat(DrawnThings.OfOutline(r.Plan.Outline)).FirstOrDefault(t => t.Id == id);
    }

    private static ImmutableArray<ChangedSegment> Changed(Path outline, ImmutableArray<DrawnSegment> sent)
    {
        if (outline.Segments.Length != sent.Length) return [];
        var changed = ImmutableArray.CreateBuilder<ChangedSegment>();
        for (var i = 0; i < sent.Length; i++)
        {
            if (Segment(outline.Segments[i]) is var now && now != sent[i]) changed.Add(new(i, now));
        }

        return changed.ToImmutable();
    }

    private static IEnumerable<DrawnLine> LinesOf(Plan plan)
    {
        if (plan.Grip is { } g) yield return new(g.From.X, g.From.Y, g.To.X, g.To.Y);
        foreach (var row in plan.Holes.OfType<HoleRow>())
        {
            if (!row.OnMidline && (row.From ?? plan.Grip?.From) is { } from && (row.To ?? plan.Grip?.To) is { } to) yield return new(from.X, from.Y, to.X, to.Y);
        }
    }

    private static string Stretch(Point a, Point b) => PathData.Write(new Path([new Line(a, b)], closed: false), 1);

    private static DrawnSegment Segment(Segment s) => s switch
    {
        Bezier c => new("C", c.Start.X, c.Start.Y, c.End.X, c.End.Y, X1: c.Control1.X, Y1: c.Control1.Y, X2: c.Control2.X, Y2: c.Control2.Y),
        Arc a => new("A", a.Start.X, a.Start.Y, a.End.X, a.End.Y, a.AxisU.Length, a.AxisV.Length, Math.Atan2(a.AxisU.Y, a.AxisU.X) * 180 / Math.PI, Math.Abs(a.Sweep) > Math.PI, a.IsCounterClockwise),
        _ => new("L", s.Start.X, s.Start.Y, s.End.X, s.End.Y),
    };
}
