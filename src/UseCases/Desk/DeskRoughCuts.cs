using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>One cut as the page shows it.</summary>
/// <param name="Number">In order.</param>
/// <param name="Marks">Where its line is marked.</param>
/// <param name="Run">Angle, length and time.</param>
/// <param name="Offcut">What falls off.</param>
public sealed record RoughCutShown(int Number, string Marks, string Run, string Offcut);

/// <summary>One way of getting to the line.</summary>
/// <param name="Way">"saw, then grind".</param>
/// <param name="Sawing">Time at the saw.</param>
/// <param name="Left">Steel left to grind.</param>
/// <param name="Grinding">Time at the grinder.</param>
/// <param name="Belts">Belts worn.</param>
/// <param name="All">In all, with its band.</param>
public sealed record GrindWayShown(string Way, string Sawing, string Left, string Grinding, string Belts, string All);

/// <summary>One station of the profiled piece.</summary>
/// <param name="FromEnd">From the end.</param>
/// <param name="Width">Width.</param>
/// <param name="Least">No-go under this.</param>
/// <param name="Most">Go under this.</param>
public sealed record WidthShown(string FromEnd, string Width, string Least, string Most);

/// <summary>Rough cuts as the page shows them.</summary>
/// <param name="Answer">The answer in one line.</param>
/// <param name="Svg">The blank with its cuts, an SVG element.</param>
/// <param name="Blade">Which blade; empty for a saw without teeth.</param>
/// <param name="First">What is drilled first, a line each.</param>
/// <param name="Cuts">The cuts in order.</param>
/// <param name="Ways">With the saw and without.</param>
/// <param name="Hollows">What stays in hollows, a line each.</param>
/// <param name="Notes">What to know.</param>
/// <param name="WidthsFrom">What stations and weight are of.</param>
/// <param name="Widths">Stations.</param>
/// <param name="Weight">What the profiled piece weighs; empty when not known.</param>
/// <param name="Caution">Cautions for this saw; without a cut those of the grinder.</param>
public sealed record RoughCutsShown(
    string Answer,
    string Svg,
    string Blade,
    ImmutableArray<string> First,
    ImmutableArray<RoughCutShown> Cuts,
    ImmutableArray<GrindWayShown> Ways,
    ImmutableArray<string> Hollows,
    ImmutableArray<string> Notes,
    string WidthsFrom,
    ImmutableArray<WidthShown> Widths,
    string Weight,
    string Caution);

/// <summary>The page of rough cuts.</summary>
public static class DeskRoughCuts
{
    /// <summary>Saws of the shop, for the choice.</summary>
    public static ImmutableArray<string> Saws(PlanOnDesk desk) => [.. desk.Results.Shop.Saws.Select(s => s.Name).Distinct()];

    /// <summary>Most cuts that can be asked for.</summary>
    public static int MostCuts => RoughCutWanted.MostCuts;

    /// <summary>What was asked last: number of cuts, empty for as many as pay, and saw, empty for the quickest.</summary>
    public static (string Cuts, string Saw) Asked(PlanOnDesk desk)
        => (desk.RoughCutAsked?.Cuts?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "", desk.RoughCutAsked?.SawName ?? "");

    /// <summary>Works it out for the plan as it stands and keeps the question for the sheets.</summary>
    /// <param name="desk">The plan.</param>
    /// <param name="cuts">How many cuts; empty: as many as pay.</param>
    /// <param name="saw">Name of the saw; empty: the quickest.</param>
    public static Checked<RoughCutsShown> Of(PlanOnDesk desk, string cuts, string saw)
    {
        int? count = int.TryParse(cuts, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var n) ? n : null;
        desk.RoughCutAsked = count is null && saw.Length == 0 ? null : new RoughCutWanted(count, saw.Length == 0 ? null : saw);
        return PlanRoughCuts.Of(desk.Results, count, saw.Length == 0 ? null : saw).Then(a => Checked<RoughCutsShown>.Good(Shown(a)));
    }

    /// <summary>The print request with the rough cuts last asked for.</summary>
    internal static PrintRequest With(PlanOnDesk desk, PrintRequest print) => print.RoughCut is null ? print with { RoughCut = desk.RoughCutAsked } : print;

    private static RoughCutsShown Shown(RoughCutAnswer answer)
    {
        var (r, p, widths) = answer;
        var units = r.Shop.Show;
        string Size(Length l) => RoughCutWords.Fine(l, units);
        var count = p.Cuts.Length == 1 ? "One cut" : $"{p.Cuts.Length} cuts";
        var saved = p.SavedMinutes >= 0 ? $"save {RoughCutWords.Minutes(p.SavedMinutes)}" : $"cost {RoughCutWords.Minutes(-p.SavedMinutes)}";
        return new RoughCutsShown(
            p.Cuts.IsEmpty ? RoughCutPlan.NoCut : $"{count} with the {p.Saw.Name} {(p.Cuts.Length == 1 ? saved.Replace("save", "saves", StringComparison.Ordinal).Replace("cost", "costs", StringComparison.Ordinal) : saved)} a piece and {(p.Cuts.Length == 1 ? "takes" : "take")} {StockWords.Percent(p.TakenShare)} of the waste off.",
            DrawnSheet.Of(RoughCutPicture.Of(r, p), $"Blank with {p.Cuts.Length} cuts").Svg,
            p.BladeSays,
            [.. p.Reliefs.Select(h => RoughCutText.Relief(h, p.Blank, units))],
            [.. p.Cuts.Select(c => new RoughCutShown(c.Number, RoughCutText.Marks(c, units), $"{RoughCutWords.Run(c, units)}; {RoughCutWords.Minutes(c.Minutes)}", RoughCutWords.Offcut(c, units)))],
            [
                Way("saw, then grind", p.Cuts.IsEmpty ? "" : RoughCutWords.Minutes(p.SawMinutes), p.Sawn, p.Minutes, p.LowSawMinutes + p.Sawn.LowMinutes, p.HighSawMinutes + p.Sawn.HighMinutes),
                Way("grind only", "", p.GrindOnly, p.GrindOnly.Minutes, p.GrindOnly.LowMinutes, p.GrindOnly.HighMinutes),
            ],
            [.. p.Hollows.Select(h => RoughCutWords.Hollow(h, units))],
            [.. p.Notes.Where(t => t != RoughCutPlan.NoCut)],
            $"Stations from the {widths.EndWords}; good within {Size(widths.Tolerance)} either way.",
            [.. widths.Stations.Select(s => new WidthShown(Size(s.FromEnd), Size(s.Width), Size(s.Least), Size(s.Most)))],
            widths.Mass is { } m ? $"Profiled it weighs {FigureText.Weight(m, units)}{(widths.MassBand is { } b ? $", {FigureText.Weight(b, units)} more or less" : "")}{(widths.DrilledMass is { } d ? $"; with its holes {FigureText.Weight(d, units)}" : "")}." : "",
            RoughCutWords.Caution(p));

        GrindWayShown Way(string name, string sawing, GrindingWork g, double all, double low, double high)
            => new(name, sawing, RoughCutWords.Left(g, units), RoughCutWords.Minutes(g.Minutes), Foundation.Shown.Number(g.Belts, 2), $"{RoughCutWords.Minutes(all)} ({RoughCutWords.Band(low, high)})");
    }
}
