using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The patterns of sheath and edge guard as shapes for true-scale sheets.</summary>
internal static class SheathShapes
{
    private static readonly Pen Light = new(0.18, LineKind.Dashed);
    private static readonly Pen Thin = new(0.13);

    /// <summary>Pattern, welt and belt loop.</summary>
    public static ImmutableArray<TrueScaleShape> Of(SheathPattern p, UnitsShown units)
    {
        var shapes = ImmutableArray.CreateBuilder<TrueScaleShape>();
        shapes.Add(Pattern(p, units));
        if (p.Welt is { } welt)
        {
            var spots = p.Stitches.Holes.Select(h => h + new Point(0, p.FaceFrom.Mm));
            shapes.Add(new TrueScaleShape(p.WeltLayers == 1 ? "welt" : $"welt, {p.WeltLayers} layers", [new PlanStroke(welt, Pen.Template), .. Crosses(spots, 1)], [])
            {
                MayTurn = true,
                NameAt = new Point(0.3 * p.Pocket.Depth.Mm, -p.Pocket.Widest.Mm - 5),
            });
        }

        if (p.Loop is var (length, wide))
        {
            var (l, w) = (length.Mm, wide.Mm);
            shapes.Add(new TrueScaleShape(
                "belt loop",
                [
                    Rectangle(l, w),
                    .. new[] { SheathRules.LoopEndMm, l - SheathRules.LoopEndMm }.Select(x => Straight(new Point(x, 0), new Point(x, w), Light)),
                ],
                [])
            { MayTurn = true });
        }

        return shapes.ToImmutable();
    }

    /// <summary>The edge guard.</summary>
    public static TrueScaleShape Guard(EdgeGuard g, UnitsShown units)
    {
        var (l, half, fold) = (g.Long.Mm, 0.5 * g.Wide.Mm, 0.5 * g.Fold.Mm);
        var strokes = ImmutableArray.CreateBuilder<PlanStroke>();
        strokes.Add(new PlanStroke(Path.Polygon(new(0, -half), new(l, -half), new(l, half), new(0, half)), Pen.Template));
        strokes.Add(Straight(default, new Point(l, 0), Pen.Centre));
        foreach (var side in new[] { -1, 1 })
        {
            strokes.Add(Straight(new Point(0, side * fold), new Point(l, side * fold), Light));
            var clip = side * (half - SheathRules.GuardClipMm);
            strokes.Add(Straight(new Point(0, clip), new Point(l, clip), Light));
        }

        if (PathPoints.Polyline([.. g.Edge]) is { } edge) strokes.Add(new PlanStroke(edge, Thin));
        return new TrueScaleShape(
            "edge guard",
            strokes.ToImmutable(),
            [
                new PlanLabel($"fold over the taped edge; {FigureText.Size(g.Material, units, brief: true)} sheet", new Point(l / 2, fold), 1.5, 2.5),
                new PlanLabel("clip here, or rivet past both ends of the edge", new Point(l / 2, half - SheathRules.GuardClipMm), 1, 2.5),
                new PlanLabel("edge; tape it first", g.Edge[g.Edge.Length / 2], 1.5, 2.5),
            ])
        { MayTurn = true };
    }

    private static TrueScaleShape Pattern(SheathPattern p, UnitsShown units)
    {
        var (end, face, isLeather) = (p.Cut.Bounds.MaxX, p.FaceFrom.Mm, p.Asked.Kind == SheathKind.Leather);
        var strokes = ImmutableArray.CreateBuilder<PlanStroke>();
        strokes.Add(new PlanStroke(p.Cut, Pen.Template));
        if (p.Trim is { } trim) strokes.Add(new PlanStroke(trim, Light));
        if (p.IsFolded)
        {
            strokes.Add(Straight(default, new Point(end, 0), Pen.Centre));
            foreach (var y in new[] { -face, face }) strokes.Add(Straight(new Point(0, y), new Point(end, y), Light));
        }

        foreach (var run in Inside(p.Blade)) strokes.Add(new PlanStroke(run, Thin));
        strokes.AddRange(Crosses(p.IsFolded ? p.Stitches.Holes.Concat(p.Stitches.Holes.Select(h => h with { Y = -h.Y })) : p.Stitches.Holes, isLeather ? 1 : 4));
        var low = p.Cut.Bounds.MinY;
        var labels = ImmutableArray.CreateBuilder<PlanLabel>();
        labels.Add(new PlanLabel("mouth", new Point(0, low * 0.5), 1.5, 2.5));
        labels.Add(new PlanLabel(p.IsFolded ? "fold over the spine" : "cut two, one turned over", new Point(end / 2, 0), 1, 2.5));
        labels.Add(new PlanLabel(isLeather ? $"{p.Stitches.Holes.Length} holes in each half" : $"{p.Stitches.Holes.Length} rivets", p.Stitches.Holes.IsEmpty ? new Point(end / 2, low) : p.Stitches.Holes[p.Stitches.Holes.Length / 3], 2, 2.5));
        if (p.Trim is { } at) labels.Add(new PlanLabel("trim here after pressing", new Point(end / 2, at.Bounds.MaxY), 1.5, 2.5));
        return new TrueScaleShape($"sheath, {(isLeather ? "leather" : "sheet")} {FigureText.Size(p.Material, units, brief: true)}", strokes.ToImmutable(), labels.ToImmutable()) { MayTurn = true };
    }

    /// <summary>Runs of the blade's outline on the sheath's side of the mouth.</summary>
    private static IEnumerable<Path> Inside(ImmutableArray<Point> blade)
    {
        var from = Enumerable.Range(0, blade.Length).FirstOrDefault(i => blade[i].X < 0);
        var run = new List<Point>();
        for (var i = 0; i < blade.Length; i++)
        {
            var (a, b) = (blade[(from + i) % blade.Length], blade[(from + i + 1) % blade.Length]);
            if (a.X >= 0) run.Add(a);
            if (a.X >= 0 != b.X >= 0) run.Add(a.Toward(b, a.X / (a.X - b.X)));
            if (b.X >= 0 || run.Count == 0) continue;
            if (PathPoints.Polyline([.. run]) is { } path) yield return path;
            run.Clear();
        }

        if (PathPoints.Polyline([.. run]) is { } last) yield return last;
    }

    private static IEnumerable<PlanStroke> Crosses(IEnumerable<Point> spots, double arm)
        => spots.SelectMany(h => new[] { Straight(h - new Point(arm, 0), h + new Point(arm, 0), Thin), Straight(h - new Point(0, arm), h + new Point(0, arm), Thin) });

    private static PlanStroke Rectangle(double l, double w) => new(Path.Polygon(new(0, 0), new(l, 0), new(l, w), new(0, w)), Pen.Template);

    private static PlanStroke Straight(Point a, Point b, Pen pen) => new(new Path([new Line(a, b)], closed: false), pen);
}
