using System.Collections.Immutable;
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
            r.Plan.Layout.DrilledIn == DrilledIn.Bar && r.Plan.Stock.Width is null ? "give the bar's width in the plan" : "choose an end and a side of the piece as datum")
        {
            Ways = Touchable(r),
        };
    }

    /// <summary>The end and the side measured from at the bench as the plan's own datum; none when the bar's width is what is missing.</summary>
    private static ImmutableArray<RemedyWay> Touchable(Results r)
    {
        if (r.Plan.Layout.DrilledIn == DrilledIn.Bar && r.Plan.Stock.Width is null) return [];
        var (end, side) = (r.Bench.AlongSign < 0 ? "right" : "left", r.Bench.AcrossSign < 0 ? "top" : "bottom");
        var changes = ImmutableArray.CreateBuilder<RemedyChange>();
        if (r.Plan.Datum.X.Side == DatumSide.At) changes.Add(new WordSet("datum", "x", end));
        if (r.Plan.Datum.Y.Side == DatumSide.At) changes.Add(new WordSet("datum", "y", side));
        return changes.Count == 0 ? [] : [new RemedyWay($"measure from the {string.Join(" and the ", changes.OfType<WordSet>().Select(w => w.Word + (w.Key == "x" ? " end" : " side")))} of the piece", changes.ToImmutable())];
    }
}
