using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The hole card of each machine: one row a tool in the order they are used, with speed, depth and feed to set, and a box to tick for each hole; then the holes no machine makes and what would help.</summary>
internal static class HoleCard
{
    /// <summary>Its key.</summary>
    public const string Key = "hole-card";

    /// <summary>What stands at the head of every card: where a hand can be hurt.</summary>
    public const string Caution = "Clamp the work on a board, never hold it by hand. Chuck key out before the switch. No gloves, sleeves or loose hair near the spindle; eyes covered. Ease off as the drill breaks through. Local rules and the machine's manual come first.";

    private const double RpmColumn = 38;
    private const double DepthColumn = 38;
    private const double FeedColumn = 36;
    private const double HeadMm = 15;
    private const double PeckMm = 3.5;
    private const double TicksMm = 10;
    private const double DepthsMm = 1.5;
    private const double LeastTickMm = 26;

    /// <summary>Draws its sheets, one card a machine; none without holes.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
        => [.. request.Results.Drilling.ByMachine.SelectMany(g => g.Machine is { } m ? OfMachine(request, g, m) : Unmade(request, g))];

    private static ImmutableArray<Sheet> OfMachine(SheetRequest request, HoleGroup group, Machine machine)
    {
        var heading = $"Hole card: {machine.Name}";
        var first = SheetTop.New(request, Key, "Hole card", heading, $"{How(machine)} Time {HoleStepText.Time(DrillTime.Of(group))}, setting up not counted. {Caution}");
        var width = first.Room.Width;
        return Flow.Over(first, () => SheetTop.New(request, Key, "Hole card", heading, "Continued. " + Caution), null, [.. Punched(group, machine, width), .. ToolRow.Of(group).Select(t => Row(request, t, width, SpeedStep(machine, t.Step)))], after: Notes.Draw);
    }

    /// <summary>Where no readout finds the places every centre is punched, and looked at, before a drill touches it.</summary>
    private static IEnumerable<FlowRow> Punched(HoleGroup group, Machine machine, double width)
    {
        if (HoleSteps.Spots(machine) || machine.Kind == MachineKind.DrillingVise) yield break;
        yield return TickedLine.Heading("Punch");
        yield return TickedLine.Of("Prick lightly on the crossed lines or the template's cross; look with a lens: a prick that is off is drawn over by pricking again at a slant. Then the centre punch, square, one blow; in thin stock light, on a hard block. Eyes covered.", width);
        var across = Math.Max(1, Math.Min(6, (int)(width / LeastTickMm)));
        foreach (var some in group.Holes.Chunk(across))
        {
            yield return new FlowRow(TicksMm, (canvas, box) =>
            {
                for (var i = 0; i < some.Length; i++)
                {
                    var left = box.MinX + (i * width / across);
                    canvas.TickBox(left, (box.MinY + box.MaxY) / 2);
                    canvas.Fitted(some[i].Hole.Name, new Point(left + 9, ((box.MinY + box.MaxY) / 2) - 2.4), (width / across) - 10, Canvas.LargeMm, bold: true);
                }
            });
        }

        yield return TickedLine.Heading("Drill");
    }

    /// <summary>Which step of the pulleys or gears: ", speed step 1 of 5 (1 the slowest)"; empty where any speed can be set.</summary>
    private static string SpeedStep(Machine machine, HoleOperation work)
        => machine.SpeedIsStepless || work.Speed is not { } speed || machine.SpeedsRpm.Length < 2 || machine.SpeedsRpm.IndexOf(speed.SetRpm) is not (>= 0 and var i)
            ? ""
            : string.Create(CultureInfo.InvariantCulture, $", speed step {i + 1} of {machine.SpeedsRpm.Length}{(i == 0 ? ", the slowest" : "")}");

    private static string How(Machine machine) => machine.Kind switch
    {
        MachineKind.DrillPress => "Punch every centre first (layout card or drill template). Then tool by tool." + Chuck(machine),
        MachineKind.DrillingVise => "Clamp the finished piece on the blank as guide: drill one hole, pin it, drill the far one, pin it, then the rest.",
        MachineKind.CncMill => "Tool by tool, as the program does it.",
        _ => machine.HasReadout ? "Spot all holes from the readout first, then tool by tool." : "Punch every centre first, then tool by tool.",
    };

    private static string Chuck(Machine machine) => machine.Chuck is { } chuck ? $" The chuck holds up to {Shown.Both(chuck)}." : "";

    private static FlowRow Row(SheetRequest request, ToolRow tool, double width, string speedStep)
    {
        var o = tool.Step;
        var small = string.Join(". ", new[] { tool.Remark, HoleStepText.Effort(o, request.Units) }.Where(x => x.Length > 0));
        var smallMm = small.Length == 0 ? 0 : TextSpace.WrappedMm(small, width, 3) + 1;
        var across = Math.Max(1, Math.Min(6, (int)(width / LeastTickMm)));
        var lines = (tool.Holes.Length + across - 1) / across;
        var head = HeadMm + (o.PeckMm is null ? 0 : PeckMm);
        var tick = TicksMm + (tool.IsSameDepth ? 0 : DepthsMm);
        return new FlowRow(head + (lines * tick) + smallMm + 2, (canvas, box) =>
        {
            DrawSettings(canvas, request, tool, speedStep, box);
            var y = box.MaxY - head;
            for (var i = 0; i < tool.Holes.Length; i++)
            {
                var left = box.MinX + (i % across * (width / across));
                var middle = y - (i / across * tick) - (tick / 2);
                var (hole, step) = tool.Holes[i];
                canvas.TickBox(left, middle);
                canvas.Fitted(hole, new Point(left + 9, tool.IsSameDepth ? middle - 2.4 : middle), (width / across) - 10, Canvas.LargeMm, bold: true);
                if (!tool.IsSameDepth) canvas.Fitted(HoleStepText.Depth(step, request.Units == UnitsShown.Inch ? UnitsShown.Inch : UnitsShown.Mm), new Point(left + 9, middle - 4.7), (width / across) - 10, Canvas.SmallMm);
            }

            if (small.Length > 0) canvas.Wrapped(small, new Point(box.MinX, y - (lines * tick)), width, 3);
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.25));
        });
    }

    private static void DrawSettings(Canvas canvas, SheetRequest request, ToolRow tool, string speedStep, Box box)
    {
        var o = tool.Step;
        var (line, under) = (box.MaxY - 7, box.MaxY - 12.6);
        var rpm = box.MaxX - RpmColumn - DepthColumn - FeedColumn;
        canvas.Fitted(o.Tool, new Point(box.MinX, line), rpm - box.MinX - 2, Canvas.LargeMm, bold: true);
        canvas.Fitted(HoleStepText.Of(o.Step) + speedStep, new Point(box.MinX, under), rpm - box.MinX - 2, Canvas.TextMm);
        var set = o.Speed is null ? "by hand" : HoleStepText.Set(o) + " rpm";
        canvas.Fitted(set, new Point(rpm, line), RpmColumn - 2, Canvas.LargeMm, bold: true);
        if (o.Speed is not null) canvas.Fitted(HoleStepText.Band(o), new Point(rpm, under), RpmColumn - 2, Canvas.SmallMm);
        if (o.Step == HoleStep.Chamfer) return;
        Two(canvas, request, "deep", tool.IsSameDepth ? o.DepthMm : null, (1, 3), rpm + RpmColumn, DepthColumn, box);
        if (o.FeedMmPerTurn > 0) Two(canvas, request, "a turn", o.FeedMmPerTurn, (2, 4), rpm + RpmColumn + DepthColumn, FeedColumn, box);
        if (o.PeckMm is not null) canvas.Fitted(HoleStepText.Peck(o, request.Units), new Point(rpm + RpmColumn + DepthColumn, box.MaxY - 16.8), FeedColumn, Canvas.SmallMm);
    }

    /// <summary>A figure large in the first unit, the other small beneath.</summary>
    private static void Two(Canvas canvas, SheetRequest request, string what, double? mm, (int Mm, int Inch) decimals, double x, double width, Box box)
    {
        var (line, under) = (box.MaxY - 7, box.MaxY - 12.6);
        if (mm is not { } value)
        {
            canvas.Fitted("depth below", new Point(x, line), width - 2, Canvas.TextMm);
            return;
        }

        var metric = value.ToString("F" + decimals.Mm, CultureInfo.InvariantCulture) + " mm";
        var inch = Shown.Number(value / Length.MmPerInch, decimals.Inch) + " in";
        canvas.Fitted(request.Units == UnitsShown.Inch ? inch : metric, new Point(x, line), width - 2, Canvas.LargeMm, bold: true);
        canvas.Fitted(request.Units == UnitsShown.Both ? $"{what} ({inch})" : what, new Point(x, under), width - 2, 3);
    }

    private static ImmutableArray<Sheet> Unmade(SheetRequest request, HoleGroup group)
    {
        const string Heading = "Holes no machine makes";
        var first = SheetTop.New(request, Key, "Hole card", Heading, "What keeps the machine that comes nearest from each hole, and what would help. Nothing here is to be drilled before it is settled, save the pilots named.");
        var width = first.Room.Width;
        return Flow.Over(first, () => SheetTop.New(request, Key, "Hole card", Heading, "Continued."), null, group.Holes.Select(h => Refused(h, request, width)), after: Notes.Draw);
    }

    private static FlowRow Refused(HolePlan hole, SheetRequest request, double width)
    {
        var lines = hole.Nearest.Select(x => $"{x.Machine}: {x.Reason}. What to do: {x.Remedy}.").ToList();
        if (hole.Pilot is { } p) lines.Add($"Pilot on the {p.Machine.Name}: {p.Operation.Tool}, {HoleStepText.Set(p.Operation)} rpm, {HoleStepText.Depth(p.Operation, request.Units)} deep.");
        var height = 9 + lines.Sum(l => TextSpace.WrappedMm(l, width - 9, Canvas.TextMm) + 1);
        return new FlowRow(height + 2, (canvas, box) =>
        {
            canvas.TickBox(box.MinX, box.MaxY - 5);
            canvas.Fitted($"{hole.Hole.Name}  ⌀{FigureText.Size(hole.Hole.Diameter, request.Units, brief: true)}", new Point(box.MinX + 9, box.MaxY - 7.2), width - 9, Canvas.LargeMm, bold: true);
            var y = box.MaxY - 9;
            foreach (var line in lines) y = canvas.Wrapped(line, new Point(box.MinX + 9, y), width - 9, Canvas.TextMm) - 1;
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.25));
        });
    }
}
