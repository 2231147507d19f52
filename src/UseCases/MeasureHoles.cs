using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.UseCases;

/// <summary>Which edges a hole was measured from.</summary>
public enum MeasuredFrom
{
    /// <summary>The two edges of the bench sheets: sawn end and long edge while the piece is in the bar.</summary>
    Bench,

    /// <summary>The outermost places of the profiled piece, on the same sides.</summary>
    Profile,

    /// <summary>The axes of the plan.</summary>
    Plan,
}

/// <summary>A hole as somebody measured and typed it.</summary>
/// <param name="Hole">Name of the hole.</param>
/// <param name="X">Along, as typed: "147.22", "5.796 in".</param>
/// <param name="Y">Across, as typed.</param>
/// <param name="Diameter">Diameter, as typed; empty when not measured.</param>
public sealed record TypedHole(string Hole, string X, string Y, string Diameter);

/// <summary>Takes measured holes into the file beside the plan.</summary>
public static class MeasureHoles
{
    /// <summary>The words for the edges, in the order of <see cref="MeasuredFrom"/>.</summary>
    public static ImmutableArray<string> FromWords { get; } = ["bench", "profile", "plan"];

    /// <summary>Adds one hole.</summary>
    /// <param name="planPath">The plan.</param>
    /// <param name="shopPath">The shop; null: looked for.</param>
    /// <param name="piece">Which piece.</param>
    /// <param name="from">Which edges.</param>
    /// <param name="typed">The hole.</param>
    /// <param name="date">Day written beside it.</param>
    public static Checked<Results> Add(string planPath, string? shopPath, string piece, MeasuredFrom from, TypedHole typed, DateOnly date)
        => OpenWork.Of(planPath, shopPath).Then(work => Read(work, typed).Then(hole => Put(work, planPath, piece, from, [hole], date)));

    /// <summary>Takes a list in: name, x, y and perhaps the diameter of each hole.</summary>
    /// <param name="planPath">The plan.</param>
    /// <param name="shopPath">The shop; null: looked for.</param>
    /// <param name="piece">Which piece.</param>
    /// <param name="from">Which edges.</param>
    /// <param name="list">The list.</param>
    /// <param name="date">Day written beside it.</param>
    public static Checked<Results> Import(string planPath, string? shopPath, string piece, MeasuredFrom from, string list, DateOnly date)
        => OpenWork.Of(planPath, shopPath).Then(work => TextFile.Read(list)
            .Then(text => HoleListReader.Read(text, list))
            .Then(holes => Put(work, planPath, piece, from, holes.Holes, date)));

    /// <summary>Takes a measured hole out again: its last line.</summary>
    public static Checked<Results> TakeOut(string planPath, string? shopPath, string piece, string hole)
        => OpenWork.Of(planPath, shopPath).Then(work => MeasuredEdit.TakeOut(work.Measured, piece, hole)
            .Then(now => MeasuredBeside.Write(planPath, work.Measured, now))
            .Then(now => Checked<Results>.Good((work with { Measured = now }).WorkUp())));

    /// <summary>The hole as typed, in mm.</summary>
    internal static Checked<ListedHole> Read(OpenedWork work, TypedHole typed)
    {
        var unitMm = work.Plan.Units == LengthUnit.Inch ? Length.MmPerInch : 1;
        var faults = new List<Fault>();
        Length? One(string what, string text)
        {
            var read = LengthText.Read(text, unitMm);
            if (read.IsGood) return read.Value.Length;
            faults.Add(Fault.OfFile(what, read.Message, read.Remedy));
            return null;
        }

        var (x, y) = (One("x", typed.X), One("y", typed.Y));
        var diameter = typed.Diameter.Trim().Length == 0 ? null : One("diameter", typed.Diameter);
        if (diameter is { Mm: <= 0 or > 500 }) faults.Add(Fault.OfFile("diameter", $"{Shown.Both(diameter.Value)} is no diameter of a hole", "measure it again, or leave it empty"));
        return faults.Count > 0 || x is null || y is null ? Checked<ListedHole>.Bad(faults) : Checked<ListedHole>.Good(new ListedHole(typed.Hole.Trim(), new Point(x.Value.Mm, y.Value.Mm), diameter));
    }

    /// <summary>Puts holes into the file; all of them or none.</summary>
    internal static Checked<Results> Put(OpenedWork work, string planPath, string piece, MeasuredFrom from, ImmutableArray<ListedHole> holes, DateOnly date)
    {
        var results = work.WorkUp();
        if (piece.Trim().Length == 0) return Checked<Results>.Bad(Fault.OfFile("piece", "the piece has no name", "write guide for the guide piece, else its number"));
        ImmutableArray<Fault> unknown = [.. holes.Where(h => results.Holes.All(p => p.Name != h.Name)).Select(h => Fault.OfFile(planPath, $"the plan has no hole \"{h.Name}\"", "choose from: " + string.Join(", ", results.Holes.Select(p => p.Name))))];
        if (unknown.Length > 0) return Checked<Results>.Bad(unknown);
        var edges = EdgesOf(results, from);
        return MeasuredEdit.Add(work.Measured, [.. holes.Select(h => new MeasuredHole(piece.Trim(), h.Name, h.At, h.Diameter, edges, date))])
            .Then(now => MeasuredBeside.Write(planPath, work.Measured, now))
            .Then(now => Checked<Results>.Good((work with { Measured = now }).WorkUp()));
    }

    /// <summary>The edges a word means.</summary>
    internal static MeasuredEdges EdgesOf(Results results, MeasuredFrom from) => from switch
    {
        MeasuredFrom.Plan => MeasuredEdges.OfPlan,
        MeasuredFrom.Profile => MeasuredEdges.OfProfile(results.Plan.Outline, results.Bench),
        _ => new MeasuredEdges(results.Bench.Corner, results.Bench.AlongSign < 0, results.Bench.AcrossSign < 0),
    };
}
