using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The holes as rows of a table that other programs may rely on: <c>name,x_mm,y_mm,diameter_mm,use</c> first, more columns after. A hole measured on the guide piece stands here as measured, and as planned in the last columns. The first pair is in the plan's axes, the bench pair from the two edges measured from.</summary>
public static class HoleCsv
{
    /// <summary>The rows, the heading first.</summary>
    public static ImmutableArray<ImmutableArray<string>> Rows(Results results)
    {
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        rows.Add(["name", "x_mm", "y_mm", "diameter_mm", "use", "bench_x_mm", "bench_y_mm", "bench_x_in", "bench_y_in", "diameter_in", "make", "size_as_written", "row", "as_built", "planned_x_mm", "planned_y_mm", "planned_diameter_mm"]);
        foreach (var h in results.Holes)
        {
            var bench = results.Bench.ToBench(h.MadeAt);
            rows.Add([h.Name, Mm(h.MadeAt.X), Mm(h.MadeAt.Y), Mm(h.MadeDiameter.Mm), h.Use.ToString().ToLowerInvariant(), Mm(bench.X), Mm(bench.Y), Inch(bench.X), Inch(bench.Y), Inch(h.MadeDiameter.Mm), h.Make.ToString().ToLowerInvariant(), h.DiameterAsWritten, h.Row ?? "", h.AsBuilt is null ? "no" : "yes", Mm(h.At.X), Mm(h.At.Y), Mm(h.Diameter.Mm)]);
        }

        return rows.ToImmutable();
    }

    private static string Mm(double mm) => Shown.Trimmed(mm, 4);

    private static string Inch(double mm) => Shown.Trimmed(mm / Length.MmPerInch, 5);
}
