using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>One step as the page shows it.</summary>
/// <param name="Number">In order.</param>
/// <param name="Stage">In soft or hard steel.</param>
/// <param name="Tool">What the belt or paper is called.</param>
/// <param name="Grain">Its grain and the nearest grits of other series.</param>
/// <param name="Does">What it does.</param>
/// <param name="Edge">The edge when it is done; empty without a bevel.</param>
/// <param name="Time">Time and belts.</param>
/// <param name="More">Speed and roughness.</param>
public sealed record FinishStepShown(int Number, string Stage, string Tool, string Grain, string Does, string Edge, string Time, string More);

/// <summary>The finish as the page shows it.</summary>
/// <param name="Answer">The answer in one line.</param>
/// <param name="Steps">The steps.</param>
/// <param name="Stop">When to stop the coarse belt; empty when all the same.</param>
/// <param name="HeatHead">What the heat rows are about; empty without any.</param>
/// <param name="Heat">The heat rows.</param>
/// <param name="Notes">What to know.</param>
public sealed record FinishShown(string Answer, ImmutableArray<FinishStepShown> Steps, string Stop, string HeatHead, ImmutableArray<string> Heat, ImmutableArray<string> Notes);

/// <summary>The page of the finish.</summary>
public static class DeskFinish
{
    /// <summary>Grits to choose the last one from.</summary>
    public static ImmutableArray<string> Grits { get; } = ["P120", "P180", "P220", "P320", "P400", "P600", "P800", "P1000", "P1200", "P2000"];

    /// <summary>Belts and papers of the shop.</summary>
    public static ImmutableArray<string> Tools(PlanOnDesk desk) => FinishSteps.ToolNames(desk.Results.Shop);

    /// <summary>What was asked last.</summary>
    public static FinishRequest Asked(PlanOnDesk desk) => desk.FinishAsked ?? new FinishRequest(null, null);

    /// <summary>What holds while nothing is asked: the plan's own, else the usual.</summary>
    public static FinishRequest Usual(PlanOnDesk desk)
        => new((desk.Results.Plan.Finish?.Last ?? FinishSteps.UsualLast).Words, $"{Foundation.Shown.Trimmed(desk.Results.Plan.Heat?.Temper?.Celsius ?? FinishPlan.AssumedTemperC, 1)} C");

    /// <summary>Works it out for the plan as it stands and keeps the question for the sheets.</summary>
    public static Checked<FinishShown> Of(PlanOnDesk desk, string last, string tempered)
    {
        var request = new FinishRequest(last.Trim().Length == 0 ? null : last, tempered.Trim().Length == 0 ? null : tempered);
        var answer = PlanFinish.Of(desk.Results, request);
        if (answer.IsGood) desk.FinishAsked = request;
        return answer.Then(a => Checked<FinishShown>.Good(Shown(a)));
    }

    /// <summary>Adds a line to the shop's log.</summary>
    /// <returns>Faults; none when it was written.</returns>
    public static ImmutableArray<Fault> Log(PlanOnDesk desk, string batch, string tool, string pieces, string grams, string minutes, string belts, DateOnly date)
    {
        var faults = new List<Fault>();
        double? Number(string what, string text, bool isNeeded)
        {
            if (text.Trim().Length == 0 && !isNeeded) return null;
            if (double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var v)) return v;
            faults.Add(Fault.OfFile(what, text.Trim().Length == 0 ? "nothing is written" : $"\"{text}\" is not a number", "write a number with a point, as 12.5"));
            return null;
        }

        var (count, weight, time, worn) = (Number("pieces", pieces, true), Number("grams", grams, false), Number("minutes", minutes, true), Number("belts", belts, false));
        if (count is { } c && c != Math.Floor(c)) faults.Add(Fault.OfFile("pieces", $"\"{pieces}\" is no whole number", "write how many were ground"));
        if (faults.Count > 0) return [.. faults];
        var wrote = GrindingLogBeside.Add(desk.Path, null, new GrindingTyped(batch, tool, (int)Math.Min(count!.Value, int.MaxValue), weight, time!.Value, worn), date);
        desk.ShopChanged();
        return wrote.Faults;
    }

    /// <summary>The print request with the finish last asked for.</summary>
    internal static PrintRequest With(PlanOnDesk desk, PrintRequest print) => print.Finish is null ? print with { Finish = desk.FinishAsked } : print;

    private static FinishShown Shown(FinishAnswer answer)
    {
        var (r, f) = answer;
        var units = r.Shop.Show;
        return new FinishShown(
            $"{f.Steps.Length} {(f.Steps.Length == 1 ? "step" : "steps")} to {FinishWords.Grain(new FinishTool("", f.Last, GritScale.Micron(f.Last)!.Value, null))}. {FinishWords.All(f)}",
            [.. f.Steps.Select(s => new FinishStepShown(
                s.Number,
                s.Stage == FinishStage.Soft ? "In soft steel" : "In hard steel",
                s.Tool.Name,
                FinishWords.Grain(s.Tool),
                FinishWords.Does(s, units),
                FinishWords.Edge(s, units),
                s.Minutes is null ? s.TimeSays : $"{FinishWords.Time(s)}; {s.TimeSays}",
                string.Join("; ", FinishText.More(s, r.Shop).Where(t => t != FinishWords.Edge(s, units)))))],
            FinishWords.StopCoarse(f, units),
            f.Heat.IsEmpty ? "" : FinishWords.HeatHead(f),
            [.. f.Heat.Select(h => FinishWords.Heat(h, units))],
            f.Notes);
    }
}
