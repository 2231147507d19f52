using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What was assumed about the edges to measure from.</summary>
public static class BenchFindings
{
    /// <summary>The remark of the bench datum, as a note.</summary>
    public static IEnumerable<Finding> Of(Results r)
    {
        if (r.Bench.Remark.Length == 0) yield break;
        yield return new Finding(
            FindingCodes.BenchEdge,
            Severity.Note,
            "datum",
            r.Bench.Corner,
            r.Bench.Remark,
            $"measured from: {r.Bench.AlongFrom}, {r.Bench.AcrossFrom}",
            "edges that can be touched at the bench",
            "this plan's datum and layout",
            r.Plan.Layout.DrilledIn == DrilledIn.Bar && r.Plan.Stock.Width is null ? "give the bar's width in the plan" : "choose an end and a side of the piece as datum");
    }
}
