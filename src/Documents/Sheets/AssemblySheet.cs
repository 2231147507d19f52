using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Will it go together: each way of making tang and scales, the chance that the pins go through, and the holes that give the chance asked.</summary>
internal static class AssemblySheet
{
    /// <summary>Its key.</summary>
    public const string Key = "assembly";

    private const string Title = "Will it go together";
    private const int Trials = 2_000;
    private const double WordsMm = 3;
    private const double LeastRowMm = 20;

    // shares of the width
    private const double WayShare = 0.32;
    private const double ChanceShare = 0.18;
    private const double HoleShare = 0.25;

    /// <summary>Draws its sheets; none when the plan puts on no scales or names no rods.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        if (GoTogether.Of(request.Results, GoTogether.UsualSeed, Trials) is not { } all) return [];
        var line = $"{AssemblyText.Asked(all)} {AssemblyText.ThroughTang} {AssemblyText.Caution}";
        OpenSheet Next(string words) => SheetTop.New(request, Key, Title, Title, words);
        var first = Next(line);
        return Flow.Over(first, () => Next("Continued."), Head(all), all.Ways.Select(w => Row(request, all, w, first.Room.Width)), Foot(first.Room.Width), Notes.Draw);
    }

    private static FlowRow Head(GoTogether all) => new(10, (canvas, box) =>
    {
        void Two(double share, double width, string one, string two)
        {
            canvas.Fitted(one, new Point(box.MinX + (share * box.Width), box.MinY + 5.6), (width * box.Width) - 1.5, WordsMm, bold: true);
            canvas.Fitted(two, new Point(box.MinX + (share * box.Width), box.MinY + 1.6), (width * box.Width) - 1.5, Canvas.SmallMm);
        }

        var asked = AssemblyText.InHundred(all.WantedShare);
        Two(0, WayShare, "Way of making", "circle of 99 in 100 centres");
        Two(WayShare, ChanceShare, "Pins go through", "of 100 pieces");
        Two(WayShare + ChanceShare, HoleShare, $"Tang's holes for {asked} of 100", "scales' holes as planned");
        Two(WayShare + ChanceShare + HoleShare, HoleShare, $"All holes for {asked} of 100", "by the drawing standard below");
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), Pen.Wide);
    });

    private static FlowRow Row(SheetRequest request, GoTogether all, WayChance way, double width)
    {
        var says = AssemblyText.Says(all, way);
        var bold = way.Making.Way == all.Said;
        var height = Math.Max(LeastRowMm, TextSpace.WrappedMm(says, (WayShare * width) - 2, WordsMm, bold) + 7);
        return new FlowRow(height, (canvas, box) =>
        {
            double At(double share) => box.MinX + (share * box.Width);
            var y = canvas.Wrapped(says, new Point(box.MinX, box.MaxY - 1.2), (WayShare * box.Width) - 2, WordsMm, bold: bold);
            canvas.Fitted($"⌀ {FigureText.Size(way.Zone, request.Units)}{(way.Capability.MeasuredSigma is null ? "" : ", measured")}", new Point(box.MinX, y - 3), (WayShare * box.Width) - 2, WordsMm);
            canvas.Fitted(AssemblyText.InHundred(way.Chance.Share), new Point(At(WayShare), box.MaxY - 6.8), (ChanceShare * box.Width) - 2, Canvas.LargeMm, bold: true);
            canvas.Wrapped(way.Capability.MeasuredSigma is null ? $"may be {AssemblyText.MayBe(way)}" : AssemblyText.MayBe(way), new Point(At(WayShare), box.MaxY - 8.2), (ChanceShare * box.Width) - 2, WordsMm);
            Hole(canvas, request, new Box(At(WayShare + ChanceShare), box.MinY, At(WayShare + ChanceShare + HoleShare), box.MaxY), way.TangAlone is { } a ? all.Rod + a : null, "the scales' own holes do not allow it");
            var last = new Box(At(WayShare + ChanceShare + HoleShare), box.MinY, box.MaxX, box.MaxY);
            Hole(canvas, request, last, way.AllAlike is { } b ? all.Rod + b : null, "none is large enough");
            canvas.Fitted($"standard {FigureText.Size(way.Floating, request.Units)}", new Point(last.MinX, last.MaxY - 17.4), last.Width - 1, WordsMm);
            canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
        });
    }

    private static void Hole(Canvas canvas, SheetRequest request, Box box, Length? hole, string none)
    {
        if (hole is not { } size)
        {
            canvas.Wrapped(none, new Point(box.MinX, box.MaxY - 2), box.Width - 2, WordsMm);
            return;
        }

        canvas.Fitted(FigureText.Size(size, request.Units), new Point(box.MinX, box.MaxY - 6.4), box.Width - 2, Canvas.TextMm, bold: true);
        canvas.Fitted(GoTogether.Tool(request.Results.Shop, size) is { } tool ? $"tool owned {tool.Name}" : "no tool owned so large", new Point(box.MinX, box.MaxY - 12), box.Width - 2, WordsMm);
    }

    private static FlowRow Foot(double width)
    {
        const string words = AssemblyText.LeftOut + " \"May be\": the way's scatter at its best and worst, common practice where nothing was measured. Standard: hole = rod + position error, play in every part (ASME Y14.5, floating). Seeded trials; scales clamped and rods put in after parts are laid so that they pass best.";
        return new FlowRow(TextSpace.WrappedMm(words, width, WordsMm) + 4, (canvas, box) => canvas.Wrapped(words, new Point(box.MinX, box.MaxY - 2), box.Width, WordsMm));
    }
}
