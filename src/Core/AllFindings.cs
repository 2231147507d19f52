using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What is wrong or risky, gravest first, then by place from left to right.</summary>
public static class AllFindings
{
    /// <summary>Every question asked of one plan.</summary>
    public static ImmutableArray<Finding> Of(Results results)
    {
        var clearances = HoleClearance.Of(results.Piece.Outer, results.Holes);
        var edge = EdgeSpan.Of(results.Plan, results.Piece);
        IEnumerable<Finding>[] asked =
        [
            OutlineShapeFindings.CrossesItself(results),
            OutlineShapeFindings.TooSmall(results),
            BarFitFindings.Width(results),
            BarFitFindings.Along(results),
            SawFindings.Across(results),
            SawFindings.Teeth(results),
            HolePlaceFindings.Outside(results, clearances),
            HolePlaceFindings.Overlaps(results),
            WebFindings.ToOutline(results, clearances),
            WebFindings.ToHole(results),
            HoleRuleFindings.EdgeDistance(results, clearances),
            HoleRuleFindings.Pitch(results),
            HoleRuleFindings.ShareOfHeight(results, clearances),
            DrillFindings.Drills(results),
            DrillFindings.Reamers(results),
            RefusedFindings.Of(results),
            HoldingFindings.Of(results),
            DrillCareFindings.ThinStock(results),
            DrillCareFindings.TooLong(results),
            DrillCareFindings.Hard(results),
            DrillCareFindings.NoDrillBeforeReaming(results),
            PinFitFindings.Of(results),
            InsideRadiusFindings.Curves(results),
            InsideRadiusFindings.Corners(results),
            PlungeFindings.Line(results),
            PlungeFindings.Edge(results, edge),
            BevelFindings.IntoHoles(results, edge, clearances),
            BevelFindings.PastSpine(results, edge),
            BevelFindings.TakenAsFlat(results),
            WheelFindings.Wheel(results),
            WheelFindings.Jig(results),
            EdgeFindings.Thickness(results),
            EdgeFindings.Sharpening(results, edge),
            GripFindings.Outside(results),
            GripFindings.Short(results),
            HandleFindings.Materials(results),
            HandleFindings.Front(results),
            HandleFindings.Pins(results),
            HandleFindings.Wood(results),
            HandleFindings.Glue(results),
            HandleFindings.Hand(results),
            SheathFindings.NoPattern(results),
            SheathFindings.Mouth(results),
            SheathFindings.Seam(results),
            TargetFindings.Weight(results),
            TargetFindings.Balance(results),
            SteelFindings.Of(results),
            HeatFindings.Verdict(results),
            HeatFindings.Bath(results),
            HeatFindings.Oven(results),
            TemperFindings.Of(results),
            BenchFindings.Of(results),
            MeasuredFindings.NotInPlan(results),
            MeasuredFindings.FarOff(results),
            MeasuredFindings.Rods(results),
            MeasuredFindings.Scrap(results),
            MeasuredFindings.Incomplete(results),
            AssemblyFindings.Chance(results),
        ];
        return
        [
            .. asked.SelectMany(f => f)
                .OrderByDescending(f => f.Severity)
                .ThenBy(f => f.Place?.X ?? double.PositiveInfinity)
                .ThenBy(f => f.Place?.Y ?? double.PositiveInfinity)
                .ThenBy(f => f.Code, StringComparer.Ordinal)
                .ThenBy(f => f.Where, StringComparer.Ordinal),
        ];
    }
}
