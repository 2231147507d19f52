using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Does the shop own the drill or reamer for every hole? The plan's size is never changed: same plan, two shops, same part.</summary>
public static class DrillFindings
{
    /// <summary>A drill this near to the size is that size, mm: the rounding of inch sizes to hundredths.</summary>
    public const double SameSizeMm = 0.006;

    /// <summary>A size no further off than this is offered before buying, mm; common practice.</summary>
    private const double NearMm = 0.5;

    /// <summary>Drills missing, one finding for each size.</summary>
    public static IEnumerable<Finding> Drills(Results r)
        => Missing(r, r.Holes.Where(h => h.Make == HoleMake.Drill), r.Shop.Drills, FindingCodes.DrillNotOwned, "drill");

    /// <summary>Reamers missing, one finding for each size.</summary>
    public static IEnumerable<Finding> Reamers(Results r)
        => Missing(r, r.Holes.Where(h => h.Make == HoleMake.Ream), r.Shop.Reamers, FindingCodes.ReamerNotOwned, "reamer");

    private static IEnumerable<Finding> Missing(Results r, IEnumerable<PlacedHole> holes, ImmutableArray<DrillSize> owned, string code, string tool)
    {
        foreach (var size in holes.GroupBy(h => Math.Round(h.Diameter.Mm, 3)).OrderBy(g => g.Key))
        {
            var first = size.First();
            var d = first.Diameter.Mm;
            if (owned.Any(o => Math.Abs(o.Diameter.Mm - d) <= SameSizeMm)) continue;
            var names = string.Join(", ", size.Select(h => h.Name));
            var below = owned.Where(o => o.Diameter.Mm < d).MaxBy(o => o.Diameter.Mm);
            var above = owned.Where(o => o.Diameter.Mm > d).MinBy(o => o.Diameter.Mm);
            var written = first.DiameterAsWritten;
            var alsoCalled = written.Length > 0 && (written[0] == '#' || char.IsAsciiLetter(written[0]) || written.Contains('/')) ? $" ({written})" : "";
            yield return ShopFinding.Of(
                r.Shop,
                new Finding(
                    code,
                    Severity.Warning,
                    size.Count() == 1 ? $"hole {names}" : $"holes {names}",
                    first.At,
                    $"No {Sized(first.Diameter)} {tool}{alsoCalled} in the shop for {(size.Count() == 1 ? "hole" : "holes")} {names}.",
                    Shown.Both(first.Diameter),
                    $"nearest owned: {Named(below)} below, {Named(above)} above",
                    "sizes listed in the shop file",
                    Remedy(first.Diameter, below, above, tool))
                {
                    Ways = [.. Near(first, below, above).Select(near => HoleWays.InSizes(r.Plan, size.Select(h => (h, near))))],
                });
        }
    }

    /// <summary>The sizes to offer, the nearest first; none under half or over twice the planned one.</summary>
    private static IEnumerable<DrillSize> Near(PlacedHole hole, DrillSize? below, DrillSize? above)
        => new[] { below, above }.OfType<DrillSize>()
            .Where(s => s.Diameter.Mm >= HoleWays.LeastShare * hole.Diameter.Mm && HoleWays.LeastShare * s.Diameter.Mm <= hole.Diameter.Mm)
            .OrderBy(s => Math.Abs((s.Diameter - hole.Diameter).Mm));

    private static string Remedy(Length d, DrillSize? below, DrillSize? above, string tool)
    {
        var buy = $"buy a {tool} of {Sized(d)}";
        var near = below is null ? above : above is null || d - below.Diameter <= above.Diameter - d ? below : above;
        if (near is null) return buy;
        var change = near.Diameter - d;
        var plan = $"plan {near.Name} instead ({Shown.Mm(Length.OfMm(Math.Abs(change.Mm)))} {(change.Mm < 0 ? "smaller" : "larger")})";
        return Math.Abs(change.Mm) <= NearMm ? $"{plan}, or {buy}" : $"{buy}, or {plan}";
    }

    private static string Named(DrillSize? size) => size is null ? "none" : size.Name.EndsWith(" mm", StringComparison.Ordinal) ? size.Name : $"{size.Name} ({Shown.Mm(size.Diameter)})";

    private static string Sized(Length d) => $"{Shown.Trimmed(d.Mm, 2)} mm ({Shown.Inch(d)})";
}
