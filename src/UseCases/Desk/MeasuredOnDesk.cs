using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>A hole on the page of measured holes: what is planned, what was typed and what comes of it.</summary>
/// <param name="Hole">Name.</param>
/// <param name="PlannedX">Planned distance along, from the edges chosen.</param>
/// <param name="PlannedY">Planned distance across.</param>
/// <param name="PlannedSize">Planned diameter.</param>
/// <param name="Typed">What was measured, in the plan's unit; empty where nothing was.</param>
/// <param name="Position">How far it is out of place, from the edges and in the pattern; empty when not measured.</param>
/// <param name="Action">What to do, in a word; empty when not measured.</param>
/// <param name="Words">Why, in a sentence.</param>
public sealed record MeasuredRow(string Hole, string PlannedX, string PlannedY, string PlannedSize, TypedHole Typed, string Position, string Action, string Words);

/// <summary>Measured holes of an open plan, to type and to judge.</summary>
public static class MeasuredOnDesk
{
    private const int Decimals = 4;

    /// <summary>Name of the file beside the plan.</summary>
    public static string FileName(PlanOnDesk desk) => System.IO.Path.GetFileName(MeasuredBeside.PathOf(desk.Path));

    /// <summary>The edges to choose from, in words for this plan.</summary>
    public static ImmutableArray<(MeasuredFrom From, string Says)> Edges(PlanOnDesk desk)
    {
        var bench = desk.Results.Bench;
        var (end, side) = (bench.AlongSign < 0 ? "right" : "left", bench.AcrossSign < 0 ? "upper" : "lower");
        return
        [
            (MeasuredFrom.Bench, $"{bench.AlongFrom}, {bench.AcrossFrom}"),
            (MeasuredFrom.Profile, $"{end} end and {side} side of the profiled piece"),
            (MeasuredFrom.Plan, "the plan's own zero"),
        ];
    }

    /// <summary>Pieces measured so far; the guide piece is always offered.</summary>
    public static ImmutableArray<string> Pieces(PlanOnDesk desk) => [PositionReport.Guide, .. desk.Results.Measured.Where(p => !p.IsGuide).Select(p => p.Piece)];

    /// <summary>One row for each hole of the plan.</summary>
    public static ImmutableArray<MeasuredRow> Rows(PlanOnDesk desk, string piece, MeasuredFrom from)
    {
        var r = desk.Results;
        var edges = MeasureHoles.EdgesOf(r, from);
        var report = r.Measured.FirstOrDefault(p => p.Piece == piece.Trim());
        return [.. r.Holes.Select(Row)];

        MeasuredRow Row(PlacedHole hole)
        {
            var planned = edges.FromEdges(hole.At);
            var (x, y, size) = (Both(planned.X), Both(planned.Y), Shown.Both(hole.Diameter));
            if (report?.Holes.FirstOrDefault(h => h.Hole.Name == hole.Name) is not { } m) return new(hole.Name, x, y, size, new(hole.Name, "", "", ""), "", "", "");
            var at = edges.FromEdges(m.Built.At);
            var typed = new TypedHole(hole.Name, Bare(r, at.X), Bare(r, at.Y), m.Built.Diameter is { } d ? Bare(r, d.Mm) : "");
            var position = $"{Shown.Both(m.Position)} from the edges" + (m.IsFarOff ? "" : $", {Shown.Both(m.PositionPassing)} in the pattern") + (m.Allowed is { } a ? $"; allowed {Shown.Both(Length.Max(a, Length.Zero))}" : "");
            return new(hole.Name, x, y, size, typed, position, MeasuredJson.Word(m.Verdict.Action), m.Verdict.Words);
        }
    }

    /// <summary>What the piece as a whole tells, in sentences.</summary>
    public static ImmutableArray<string> Words(PlanOnDesk desk, string piece)
    {
        if (desk.Results.Measured.FirstOrDefault(p => p.Piece == piece.Trim()) is not { } p) return [];
        var words = ImmutableArray.CreateBuilder<string>();
        if (p.Fit.Rest.Length > 1) words.Add($"Best fit: shifted {Both(p.Fit.Shift.X)} along and {Both(p.Fit.Shift.Y)} across, turned {Shown.Number(p.Fit.Turn.Degrees, 3)}° about the plan's zero; rms left over {Both(p.Fit.RmsMm)}, the most {Both(p.Fit.MostMm)}.");
        if (p.Passing.Rest.Length > 1) words.Add($"Laid so that the worst comes off best, it is {Both(2 * p.Passing.MostMm)} out of place.");
        if (p.IsGuide && p.NotMeasured.Length > 0) words.Add($"Not measured, so as planned on all sheets: {string.Join(", ", p.NotMeasured)}.");
        return words.ToImmutable();
    }

    /// <summary>What all measured pieces tell of the machine, in a sentence; empty when too few were measured.</summary>
    public static string Scatter(PlanOnDesk desk) => LearnScatter.Of(desk.Results, null) is { } s
        ? $"{s.Holes} holes of {s.Pieces} piece{(s.Pieces == 1 ? "" : "s")} scatter by {Shown.Both(s.Sigma)} along one axis. With 95 in 100 it is under {Shown.Both(s.Bound)}: 99 of 100 centres then fall in a circle of {Shown.Both(s.Zone)}."
        : "";

    /// <summary>Writes what was typed into the file beside the plan: the rows that say something new, all of them or none.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="piece">Which piece.</param>
    /// <param name="from">Which edges.</param>
    /// <param name="typed">The rows as typed.</param>
    /// <param name="date">Day written beside them.</param>
    public static ImmutableArray<Fault> Keep(PlanOnDesk desk, string piece, MeasuredFrom from, IEnumerable<TypedHole> typed, DateOnly date)
    {
        var before = Rows(desk, piece, from).ToDictionary(r => r.Hole, r => r.Typed, StringComparer.Ordinal);
        var news = typed.Where(t => before.GetValueOrDefault(t.Hole) != t && (t.X + t.Y + t.Diameter).Trim().Length > 0).Select(t => MeasureHoles.Read(desk.Work, t)).ToArray();
        if (news.SelectMany(n => n.Faults).ToImmutableArray() is { Length: > 0 } faults) return faults;
        return news.Length == 0 ? [] : Done(desk, MeasureHoles.Put(desk.Work, desk.Path, piece, from, [.. news.Select(n => n.Value)], date));
    }

    /// <summary>Takes a measured hole out again.</summary>
    public static ImmutableArray<Fault> TakeOut(PlanOnDesk desk, string piece, string hole) => Done(desk, MeasureHoles.TakeOut(desk.Path, null, piece.Trim(), hole));

    /// <summary>Writes the scatter into the shop file.</summary>
    /// <returns>Name of the file.</returns>
    public static Checked<string> Learn(PlanOnDesk desk, string way, string machine)
    {
        var written = LearnScatter.Write(desk.Path, null, null, way, machine);
        desk.ShopChanged();
        return written.Then(path => Checked<string>.Good(System.IO.Path.GetFileName(path)));
    }

    private static ImmutableArray<Fault> Done(PlanOnDesk desk, Checked<Results> made)
    {
        desk.ShopChanged();
        return made.Faults;
    }

    private static string Bare(Results r, double mm) => r.Plan.Units == LengthUnit.Inch ? Shown.Trimmed(mm / Length.MmPerInch, Decimals + 1) : Shown.Trimmed(mm, Decimals);

    private static string Both(double mm) => Shown.Both(Length.OfMm(mm));
}
