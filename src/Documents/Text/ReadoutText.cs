using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The way of a machine in words, the same on the readout list, on the layout card and on the desk.</summary>
public static class ReadoutText
{
    /// <summary>Further pieces of a bar that are told one by one.</summary>
    private const int MostPieces = 6;

    /// <summary>Pieces that are told when the plan does not say how long the bar is.</summary>
    private const int UsualPieces = 3;

    /// <summary>How the play of the table is taken out.</summary>
    public static string Play(MachineWay way, UnitsShown units)
    {
        const string OneSide = "Come to every hole from the side of smaller x and smaller y, and lock the table";
        if (way.Past is not { } past) return OneSide + ".";
        var by = FigureText.Size(past, units, brief: true);
        var why = way.Machine.Backlash is { } play ? $"the play of the screws is {FigureText.Size(play, units, brief: true)}, and at least twice that is gone past" : "the play of the screws is not in the shop file (backlash): measure it and write it there";
        return $"{OneSide}. Where “first” stands beside a figure, go there first, {by} past the hole, then up to the figure: {why}.";
    }

    /// <summary>A tool: "12 mm drill: drill, 310 rpm, 11.2 mm deep".</summary>
    public static string Tool(HoleOperation work, UnitsShown units)
    {
        if (work.Speed is null) return $"{work.Tool}: {HoleStepText.Of(work.Step)}, by hand";
        var depth = work.Step == HoleStep.Chamfer ? "" : $", {HoleStepText.Depth(work, units)} deep";
        return $"{work.Tool}: {HoleStepText.Of(work.Step)}, {HoleStepText.Set(work)} rpm{depth}";
    }

    /// <summary>How the work is moved and found again; steps to tick.</summary>
    public static ImmutableArray<string> ClampAnew(WayClamping clamping, BenchDatum bench, UnitsShown units)
    {
        var slide = FigureText.Size(Length.OfMm(Math.Abs(clamping.SlideMm)), units, brief: true);
        var moved = $"Spindle off. Loosen the clamps, slide the work {slide} towards {(bench.AlongSign < 0 ? "the right" : "the left")}, clamp it again and check that no clamp stands under the chuck.";
        if (clamping.Pins.Length < 2) return [moved, "No two holes made so far can be reached from both places: zero anew from a line scribed square across the work at a measured x, or make a locating hole between. Check the first hole with a rule before it is cut."];
        var (a, b) = (clamping.Pins[0], clamping.Pins[1]);
        return
        [
            moved,
            $"Put a pin or the drill itself, spindle standing, into {a.Name}; when it enters freely set the readout to {Place(a)}.",
            $"Go to {Place(b)}: the pin of {b.Name} must enter there too. Where it does not, tap the work round, never the readout, and begin again at {a.Name}. Then all figures below hold.",
        ];

        string Place(PlacedHole hole) => bench.ToBench(hole.MadeAt) is var p ? $"x {FigureText.Size(Length.OfMm(p.X), units)}, y {FigureText.Size(Length.OfMm(p.Y), units)}" : "";
    }

    /// <summary>What to add for each further piece in the bar; empty when the plan is not laid out in the uncut bar.</summary>
    public static ImmutableArray<string> MorePieces(Results results, UnitsShown units)
    {
        if (PieceRow.Of(results.Plan, results.Shop, results.Bench) is not { } row || row.Fit is < 2) return [];
        string Size(Length l) => FigureText.Size(l, units, brief: true);
        var kerf = row.Saw is { } saw ? $" + kerf {Size(saw.Kerf)} of the {saw.Name}" : ", no saw in the shop file, so no kerf";
        var last = Math.Min(MostPieces, row.Fit ?? UsualPieces);
        var lines = ImmutableArray.CreateBuilder<string>();
        for (var piece = 2; piece <= last; piece++)
        {
            var add = $"Piece {Count(piece)}: add {FigureText.Size(row.Pitch * (piece - 1), units)} to every x";
            lines.Add(piece > 2 ? add + "." : $"{add}: length {Size(row.Overall)} + twice {Size(row.End)} left at the ends{kerf}. All lie the same way round{(row.Fit is { } fit ? $"; the bar takes {Count(fit)}" : "")}.");
        }

        if (row.Fit > last) lines.Add($"Every further piece: {FigureText.Size(row.Pitch, units)} more, up to piece {Count(row.Fit.Value)}.");
        return lines.ToImmutable();
    }

    private static string Count(int n) => n.ToString(CultureInfo.InvariantCulture);
}
