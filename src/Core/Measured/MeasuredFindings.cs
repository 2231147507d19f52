using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What measured holes tell that needs a decision.</summary>
public static class MeasuredFindings
{
    /// <summary>Measured holes that the plan does not have.</summary>
    public static IEnumerable<Finding> NotInPlan(Results r)
        => from p in r.Measured
           where p.NotInPlan.Length > 0
           let names = string.Join(", ", p.NotInPlan)
           select new Finding(FindingCodes.MeasuredNotInPlan, Severity.Warning, Where(p), null, $"Measured on {Where(p)}, but not in the plan: {names}.", names, "names of holes of the plan", "the file of measured values", "give the hole its old name again, or change the name in the measured file");

    /// <summary>Holes so far off that the typing or the edges are in doubt.</summary>
    public static IEnumerable<Finding> FarOff(Results r)
        => from p in r.Measured
           from h in p.Holes
           where h.IsFarOff
           select new Finding(
               FindingCodes.MeasuredFarOff,
               Severity.Warning,
               $"hole {h.Hole.Name} of {Where(p)}",
               h.Built.At,
               $"Hole {h.Hole.Name} of {Where(p)} was measured {Both(h.Off.Length)} from its planned place: mistyped, or measured from other edges?",
               Both(h.Off.Length),
               Both(HoleReport.FarOffMm),
               "common practice: twice as far as the worst hole placed by hand",
               "measure it again, and say which edges it was measured from; until then it stays as planned");

    /// <summary>Holes that a rod does not pass, or too loosely.</summary>
    public static IEnumerable<Finding> Rods(Results r)
        => from p in r.Measured
           from h in p.Holes
           where h.Verdict.Action is HoleAction.OpenUp or HoleAction.ThickerRod
           select new Finding(
               FindingCodes.MeasuredRod,
               Severity.Warning,
               $"hole {h.Hole.Name} of {Where(p)}",
               h.Built.At,
               $"The rod does not pass hole {h.Hole.Name} of {Where(p)} as it should.",
               $"{Shown.Both(h.PositionPassing)} out of place in the pattern" + (h.Built.Diameter is { } d ? $", {Shown.Both(d)} across" : ""),
               $"{Shown.Both(Length.Max(h.Allowed ?? Length.Zero, Length.Zero))} with a rod of {Shown.Both(h.Hole.Pin ?? Length.Zero)}",
               "ASME Y14.5, floating fastener; sizes by common practice",
               Remedy(h));

    /// <summary>Pieces that opening holes does not save.</summary>
    public static IEnumerable<Finding> Scrap(Results r)
        => from p in r.Measured
           from h in p.Holes
           where h.Verdict.Action == HoleAction.Scrap
           select new Finding(
               FindingCodes.MeasuredScrap,
               p.IsGuide ? Severity.Error : Severity.Warning,
               $"hole {h.Hole.Name} of {Where(p)}",
               h.Built.At,
               $"Hole {h.Hole.Name} of {Where(p)} cannot be mended.",
               $"{Shown.Both(h.Position)} out of place",
               h.Allowed is { } allowed ? $"{Shown.Both(Length.Max(allowed, Length.Zero))} allowed" : $"{Both(WebLimits.ErrorMm(r.Plan.Stock.Thickness))} of steel beside it",
               "common practice",
               Remedy(h) + (p.IsGuide ? "; until then take its lines out of the measured file, so that no later sheet goes by it" : ""));

    /// <summary>A guide piece of which only some holes were measured.</summary>
    public static IEnumerable<Finding> Incomplete(Results r)
        => from p in r.Measured
           where p.IsGuide && p.Holes.Length > 0 && p.NotMeasured.Length > 0
           let names = string.Join(", ", p.NotMeasured)
           select new Finding(FindingCodes.MeasuredIncomplete, Severity.Note, Where(p), null, $"Not all holes of the guide piece were measured: {names} stay as planned on all later sheets.", $"{p.Holes.Length} measured, {p.NotMeasured.Length} not", "all of them", SourceTag.CommonPractice, "measure the others too: a pattern that is half as built and half as planned may not fit either");

    private static string Where(PositionReport p) => p.IsGuide ? "the guide piece" : $"piece {p.Piece}";

    private static string Remedy(HoleReport h) => h.Verdict.Words;

    private static string Both(double mm) => Shown.Both(Length.OfMm(mm));
}
