using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The spine: every computation in order, no logic of its own. Cheap enough (a few ms) to run on every change.</summary>
public static class WorkUp
{
    /// <summary>Works up one plan in one shop.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="steel">The steel; null when it is not known: masses are then left out.</param>
    /// <param name="measured">Holes measured on finished pieces.</param>
    public static Results Of(Plan plan, Shop shop, Steel? steel, ImmutableArray<MeasuredHole> measured = default)
    {
        var bench = BenchEdges.Of(plan, shop);
        var planned = HolePlacement.Of(plan);
        var reports = PositionReport.Of(plan, shop, planned, bench, measured);
        var holes = AsBuiltHoles.Of(planned, reports);
        var piece = new Region(plan.Outline, [.. holes.Select(h => Path.Circle(h.At, h.Diameter.Mm / 2))]);
        var outline = OutlineSize.Of(plan, holes);
        var stages = StageWeights.Of(plan, holes, piece, bench, steel, HandleParts.Of(plan, planned, shop));
        var striking = Striking.Of(plan, stages[^1], steel);
        var drilling = DrillPlan.Of(plan, shop, steel, holes, bench);
        var order = OrderOfWork.Of(plan, shop, holes, drilling, steel);
        var results = new Results(plan, shop, steel, holes, piece, outline, stages, striking, bench, order, []) { Drilling = drilling, Measured = reports };
        return results with { Findings = AllFindings.Of(results) };
    }
}
