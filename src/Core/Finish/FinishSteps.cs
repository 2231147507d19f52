using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Plans the finish: bevels ground down, then each grit takes out the scratches of the one before, in soft steel to about P120, in hard steel to the last grit.</summary>
public static class FinishSteps
{
    /// <summary>Last grit when nobody says one.</summary>
    public static Grit UsualLast => new(GritSeries.FepaP, 400);

    /// <summary>In soft steel the ladder ends here: what fire scale and lost carbon take off anyway is not polished first. Common practice.</summary>
    private const double SoftLastMicron = 125;

    /// <summary>Coarsest grain put to a hard, thin bevel, µm: P60. Common practice.</summary>
    private const double HardFirstMicron = 270;

    /// <summary>A tool counts as the grit wanted when its size is within this ratio.</summary>
    private const double SameRatio = 1.18;

    /// <summary>The plan, or why there is none.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="wanted">What is asked.</param>
    /// <param name="cuts">The rough cuts, to tell what sawing first saves.</param>
    public static Checked<FinishPlan> Of(Results r, FinishWanted wanted, Checked<RoughCutPlan> cuts)
    {
        var last = wanted.Last ?? r.Plan.Finish?.Last ?? UsualLast;
        var tempered = wanted.Tempered ?? r.Plan.Heat?.Temper;
        if (GritScale.Micron(last) is not { } lastMicron || lastMicron is > 600 or < 0.5) return Bad($"{last.Words} is no grit of the lists", "write it as P400, CAMI 320, JIS 400 or \"65 um\"");
        if (tempered is { Celsius: < 80 or > 700 } hot) return Bad($"{Shown.Number(hot.Celsius, 0)} °C is no tempering temperature", "write it between 80 and 700 °C, as \"200 C\"");
        var tools = Tools(r.Shop);
        if (tools.Length == 0) return Bad("the shop has no belt or paper whose grain is in the lists", "write one between P12 and P3000 under [[belt]] or [papers]");
        var density = r.Steel?.Density?.Value.GramsPerCm3;
        var faceMm2 = Math.Abs(Moments.Of(r.Piece).AreaMm2);
        var ratio = GritLadder.Ratio(lastMicron);
        var notes = new List<string>();

        var soft = r.Plan.Bevel is { Ground: GroundWhen.BeforeHardening } ? Ladder(tools.Where(t => t.Belt is not null), SoftLastMicron, GritLadder.SatinRatio, null) : [];
        if (r.Shop.IsAssumed || r.Shop.BeltsAreAssumed) notes.Add("Belts and papers are those of the assumed shop: write your own under [[belt]] and [papers].");
        var hardFirst = tools.Where(t => t.Belt is not null && t.Micron <= HardFirstMicron * 1.02).Select(t => t.Micron).DefaultIfEmpty(tools[0].Micron).Max();
        var hardTools = tools.Where(t => t.Micron <= hardFirst).ToArray();
        var wantedTool = hardTools.Where(t => Apart(t.Micron, lastMicron) <= SameRatio).MinBy(t => Apart(t.Micron, lastMicron)) ?? new FinishTool(last.Words, last, lastMicron, null);
        var isOwned = hardTools.Contains(wantedTool);
        var hard = Ladder(hardTools, wantedTool.Micron, ratio, wantedTool);
        if (!isOwned) notes.Add($"{last.Words} is not among the belts and papers of the shop file: get it, or write yours under [papers].");
        foreach (var gap in Gaps(soft).Concat(Gaps(hard)).Distinct()) notes.Add(gap);

        var edges = (Soft: r.Plan.Bevel?.EdgeBeforeHardening, Hard: r.Plan.Bevel?.EdgeFinished);
        var steps = ImmutableArray.CreateBuilder<FinishStep>();
        var bevelMm2 = BevelMm2(r, faceMm2);
        Add(soft, FinishStage.Soft, Between(r, Stage.Drilled, Stage.BeforeHardening), edges.Soft);
        Add(hard, FinishStage.Hard, r.Plan.Bevel is null ? null : Between(r, r.Plan.Bevel.Ground == GroundWhen.AfterHardening ? Stage.Drilled : Stage.BeforeHardening, Stage.Finished), edges.Hard);

        var later = hard.Skip(1).Select((_, i) => ScratchDepth.Of(hard[i].Micron)).ToArray();
        var (takes, most) = (2e-3 * later.Sum(d => d.Usual), 2e-3 * later.Sum(d => d.High));
        if (edges is { Soft: { } left, Hard: { } end } && left.Mm - end.Mm < most)
        {
            notes.Add(left.Mm - end.Mm < takes
                ? $"The grits after {hard[0].Name} take {Shown.Both(Length.OfMm(takes))} off the edge, both faces; the plan leaves {Shown.Both(left - end)} for it all: leave the edge {Shown.Both(Length.OfMm(Math.Ceiling((end.Mm + most) * 20) / 20))} before hardening, or start finer."
                : $"With deep scratches the grits after {hard[0].Name} may take up to {Shown.Both(Length.OfMm(most))} off the edge, more than the {Shown.Both(left - end)} the plan leaves.");
        }

        if (density is { } steel && later.Length > 0 && 2e-6 * (faceMm2 - bevelMm2) * later.Sum(d => d.Usual) * steel is > 0.5 and var flats) notes.Add($"Off the flats the grits after {hard[0].Name} take about {Shown.Number(flats, 0)} g, which the plan's weights do not count. Start the flats finer where they are clean already.");
        var temper = tempered ?? Temperature.OfCelsius(FinishPlan.AssumedTemperC);
        var heatTool = hard.FirstOrDefault(t => t.Belt is not null);
        return Checked<FinishPlan>.Good(new FinishPlan(
            steps.ToImmutable(),
            last,
            ratio,
            faceMm2,
            edges.Hard is { } finished && hard.Length > 1 ? finished + Length.OfMm(takes) : null,
            hard.Length > 1 ? Length.OfMm(takes) : null,
            heatTool is null ? [] : Heat(r, heatTool, temper, density ?? GrindingWork.NominalDensity),
            heatTool,
            temper,
            tempered is null,
            cuts is { IsGood: true, Value.Cuts.IsEmpty: false } ? cuts.Value.SavedMinutes : null,
            [.. notes]));

        void Add(ImmutableArray<FinishTool> ladder, FinishStage stage, double? bevelGrams, Length? edge)
        {
            for (var i = 0; i < ladder.Length; i++)
            {
                var rest = 2e-3 * Enumerable.Range(i, Math.Max(0, ladder.Length - 1 - i)).Sum(k => ScratchDepth.Of(ladder[k].Micron).Usual);
                (double Low, double Usual, double High)? depth = i == 0 ? null : ScratchDepth.Of(ladder[i - 1].Micron);

                // what the grits after it take off the bevels is theirs
                var coarse = bevelGrams - (2e-6 * bevelMm2 * 500 * rest * (density ?? 0));
                (double? Low, double? Usual, double? High) grams = i == 0 ? (Math.Max(0, coarse ?? 0), coarse is { } c ? Math.Max(0, c) : null, Math.Max(0, coarse ?? 0)) : density is { } d ? (Mass(stage, depth!.Value.Low, d), Mass(stage, depth.Value.Usual, d), Mass(stage, depth.Value.High, d)) : (null, null, null);
                steps.Add(Step(r, steps.Count + 1, stage, ladder[i], i == 0, i == 0 ? null : ladder[i - 1], depth, grams, edge is { } e ? e + Length.OfMm(rest) : null, density));
            }
        }

        // soft: the bevels alone; hard: both whole faces, for the scale is on all of them
        double Mass(FinishStage stage, double um, double d) => 2e-6 * (stage == FinishStage.Soft ? bevelMm2 : faceMm2) * um * d;
    }

    private static FinishStep Step(Results r, int number, FinishStage stage, FinishTool tool, bool isFirst, FinishTool? before, (double, double, double)? depth, (double? Low, double? Usual, double? High) grams, Length? edge, double? density)
    {
        var (minutes, low, high, belts, says) = ((double?)null, (double?)null, (double?)null, (double?)null, "time it once and log it");
        if (tool.Belt is { } belt && grams.Usual is { } g)
        {
            var rate = BeltPractice.Of(r.Shop, belt, density ?? GrindingWork.NominalDensity);
            (minutes, low, high, belts, says) = (g / rate.GramsPerMinute, grams.Low / rate.HighGramsPerMinute, grams.High / rate.LowGramsPerMinute, g / rate.GramsPerBelt, rate.Says);
        }
        else if (tool.Belt is null && GrindingLog.Range(GrindingLog.MinutesPerPiece(r.Shop.GrindingLog, tool.Name), 0.5, 2) is { } log)
        {
            (minutes, low, high, says) = (log.Mean, log.Low, log.High, log.IsOwn ? $"your log, {log.Batches} batches" : $"your log, {log.Batches} {(log.Batches == 1 ? "batch" : "batches")}; the range is a guess until there are {LoggedRange.Enough}");
        }

        return new FinishStep(number, stage, tool, isFirst, before, depth, grams.Usual, grams.Low, grams.High, edge, minutes, low, high, belts, says, before is null ? null : before.Micron / tool.Micron, tool.Belt is null ? null : BeltSpeed.Of(r.Steel, tool.Micron, stage == FinishStage.Hard), GritRoughness.Ra(tool.Micron));
    }

    /// <summary>Names of the belts and papers of a shop, coarsest first.</summary>
    public static ImmutableArray<string> ToolNames(Shop shop) => [.. Tools(shop).Select(t => t.Name)];

    /// <summary>Belts and papers, coarsest first; of two of one size a belt first.</summary>
    private static FinishTool[] Tools(Shop shop)
        => [.. BeltPractice.Owned(shop).Select(b => new FinishTool(b.Name, b.Grain, GritScale.Micron(b.Grain) ?? 0, b))
            .Concat(shop.Papers.Select(p => new FinishTool(p.Words + " paper", p, GritScale.Micron(p) ?? 0, null)))
            .Where(t => t.Micron > 0).OrderByDescending(t => t.Micron).ThenBy(t => t.Belt is null)];

    /// <summary>From the coarsest tool to the one nearest a size, few steps.</summary>
    private static ImmutableArray<FinishTool> Ladder(IEnumerable<FinishTool> tools, double lastMicron, double ratio, FinishTool? last)
    {
        var all = tools.ToList();
        last ??= all.Where(t => t.Micron <= lastMicron * SameRatio).MaxBy(t => t.Micron) ?? all.LastOrDefault();
        if (last is null) return [];
        ImmutableArray<FinishTool> from = [.. all.Where(t => t.Micron > last.Micron * 1.0001), last];
        return [.. GritLadder.Of([.. from.Select(t => t.Micron)], ratio).Select(i => from[i])];
    }

    private static IEnumerable<string> Gaps(ImmutableArray<FinishTool> ladder)
    {
        for (var i = 1; i < ladder.Length; i++)
        {
            var gap = ladder[i - 1].Micron / ladder[i].Micron;
            if (gap <= GritLadder.SatinRatio + 1e-9) continue;
            var between = GritScale.Nearest(GritSeries.FepaP, Math.Sqrt(ladder[i - 1].Micron * ladder[i].Micron));
            yield return $"From {ladder[i - 1].Name} to {ladder[i].Name} the grain is {Shown.Number(gap, 1)} times finer at once: scratches stay, or it takes long. {(between is { } b ? $"A {b.Words} between would help." : "One between would help.")}";
        }
    }

    private static ImmutableArray<EdgeHeatRow> Heat(Results r, FinishTool tool, Temperature temper, double density)
    {
        if (r.Plan.Bevel is not { } bevel) return [];
        var rate = BeltPractice.Of(r.Shop, tool.Belt!, density);
        var patchMm2 = r.Shop.BeltWidth.Mm * Math.Min(bevel.Height?.Mm ?? r.Outline.Height.Mm, r.Outline.Height.Mm);
        double UmPerSecond(double grams) => grams / density * 1000 / 60 / patchMm2 * 1000;
        var stock = r.Plan.Stock.Thickness;
        ImmutableArray<(string Where, Length T)> places = [("at the finished edge", bevel.EdgeFinished), ("where it is 1 mm thick", Length.OfMm(1)), ("above the bevel", stock)];
        return [.. places.Where(p => p.T.Mm > 0 && (p.T.Mm <= stock.Mm)).DistinctBy(p => p.T.Mm).Select(p =>
        {
            var room = EdgeHeat.Between(p.T.Mm, tool.Micron, temper.Celsius, density);
            return new EdgeHeatRow(p.Where, p.T, room, room.UsualUm / UmPerSecond(rate.GramsPerMinute), room.LowUm / UmPerSecond(rate.HighGramsPerMinute), room.HighUm / UmPerSecond(rate.LowGramsPerMinute));
        })];
    }

    /// <summary>Area of the bevel on one face, about: a flat bevel takes half of T − te off on the average.</summary>
    private static double BevelMm2(Results r, double faceMm2)
    {
        if (r.Plan.Bevel is not { } bevel) return 0;
        var isAfter = bevel.Ground == GroundWhen.AfterHardening;
        var taken = r.At(Stage.Drilled)!.Volume.Mm3 - r.At(isAfter ? Stage.Finished : Stage.BeforeHardening)!.Volume.Mm3;
        var edge = (isAfter ? bevel.EdgeFinished : bevel.EdgeBeforeHardening ?? bevel.EdgeFinished).Mm;
        return r.Plan.Stock.Thickness.Mm > edge ? Math.Min(faceMm2, 2 * taken / (r.Plan.Stock.Thickness.Mm - edge)) : 0;
    }

    private static double? Between(Results r, Stage from, Stage to)
        => r.At(from)?.Mass is { } a && r.At(to)?.Mass is { } b ? Math.Max(0, (a - b).Grams) : null;

    private static double Apart(double a, double b) => a > b ? a / b : b / a;

    private static Checked<FinishPlan> Bad(string message, string remedy) => Checked<FinishPlan>.Bad(Fault.OfFile("finish", message, remedy));
}
