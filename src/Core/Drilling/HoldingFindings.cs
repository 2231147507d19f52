using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Can the machine that makes the holes hold the stock and reach them? Table, vise, travel, and room for clamps.</summary>
public static class HoldingFindings
{
    /// <summary>More than this many table lengths of stock tips by its own weight; common practice.</summary>
    private const double MostOverTableFactor = 2;

    /// <summary>One round over all machines that make holes.</summary>
    public static IEnumerable<Finding> Of(Results r)
    {
        foreach (var group in r.Drilling.ByMachine)
        {
            if (group.Machine is not { } machine) continue;
            foreach (var f in Holding(r, machine, group)) yield return ShopFinding.Of(r.Shop, f);
        }
    }

    private static IEnumerable<Finding> Holding(Results r, Machine machine, HoleGroup group)
    {
        var stock = r.Bench.StockBox;
        PlacedHole[] holes = [.. group.Holes.Select(h => h.Hole)];
        if (machine.Table is { } table && (stock.Width > MostOverTableFactor * table.X.Mm || stock.Height > MostOverTableFactor * table.Y.Mm))
        {
            yield return Finding(
                FindingCodes.TableTooSmall,
                holes,
                $"The stock hangs far over the table of the {machine.Name}: it tips and springs under the drill.",
                $"{Sizes(stock.Width, stock.Height)}",
                $"at most twice the table, {Sizes(table.X.Mm, table.Y.Mm)}",
                SourceTag.CommonPractice,
                "put a support of the same height under the far end, screw a longer board on the table, or saw the piece to a rectangle first");
        }

        if (machine.Kind != MachineKind.DrillingVise && machine.ViseOpens is { } opens && Math.Min(stock.Width, stock.Height) > opens.Mm)
        {
            yield return Finding(
                FindingCodes.ViseTooNarrow,
                holes,
                $"The vise of the {machine.Name} does not open as wide as the stock.",
                $"stock {Shown.Both(Length.OfMm(Math.Min(stock.Width, stock.Height)))} wide",
                $"vise opens {Shown.Both(opens)}",
                MachineGates.ShopFile,
                "clamp the stock flat on the table on a board, or saw it narrower first");
        }

        if (machine.TravelX is { } along && Travel(r, machine, holes, along) is { } travel) yield return travel;
        if (ClampRoom.Blocked(r, machine, holes) is { } blocked) yield return blocked;
    }

    private static Finding? Travel(Results r, Machine machine, PlacedHole[] holes, Length along)
    {
        var reach = Reclamp.Along(holes, along.Mm, r.Bench.AlongSign);
        if (reach.Clampings.Length < 2) return null;
        var spread = Length.OfMm(holes.Max(h => h.At.X) - holes.Min(h => h.At.X));
        var pins = reach.Pins[0];
        var how = pins.Length < 2
            ? "the far holes cannot be pinned by two that are made already: lay them out by hand, or make a locating hole between"
            : $"make {Names(reach.Clampings[0])} first, put pins through {pins[0].Name} and {pins[1].Name} into the board under it, shift the board, find both pins again, then make {Names(reach.Clampings[1])}";
        return Finding(
            FindingCodes.BeyondTravel,
            holes,
            $"The holes spread wider than the table of the {machine.Name} travels.",
            $"{Shown.Both(spread)} from first to last centre",
            $"travel {Shown.Both(along)}",
            MachineGates.ShopFile,
            how);
    }

    private static string Names(IEnumerable<PlacedHole> holes) => string.Join(", ", holes.Select(h => h.Name));

    private static string Sizes(double x, double y) => $"{Shown.Trimmed(x, 1)} x {Shown.Trimmed(y, 1)} mm ({Shown.Trimmed(x / Length.MmPerInch, 2)} x {Shown.Trimmed(y / Length.MmPerInch, 2)} in)";

    internal static Finding Finding(string code, PlacedHole[] holes, string message, string found, string limit, string source, string remedy)
        => new(code, Severity.Warning, RefusedFindings.Named(holes), holes[0].At, message, found, limit, source, remedy);
}
