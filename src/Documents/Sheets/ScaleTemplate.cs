using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>Both scales at true scale: the front one as seen from the front, the back one mirrored, as seen from the back.</summary>
public static class ScaleTemplate
{
    /// <summary>Its key.</summary>
    public const string Key = "scales";

    private const double CrossMm = 5;
    private static readonly Pen Thin = new(0.13);
    private static readonly Pen Dashed = new(0.18, LineKind.Dashed);

    /// <summary>Draws its sheets; none without scales.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
        => request.Handle is { Shape: { } shape } p ? TrueScaleSheets.Draw(request, Key, "Scale template", Shapes(p, shape, request.Units)) : [];

    /// <summary>The two scales as shapes.</summary>
    public static ImmutableArray<TrueScaleShape> Shapes(HandlePlan p, ScaleShape shape, UnitsShown units)
    {
        var front = One(p, shape, units, "front scale, outside", isBack: false);
        return [front, One(p, shape, units, "back scale, outside (mirrored)", isBack: true)];
    }

    private static TrueScaleShape One(HandlePlan p, ScaleShape shape, UnitsShown units, string name, bool isBack)
    {
        var map = isBack ? Transform.Scale(1, -1) : Transform.None;
        var strokes = ImmutableArray.CreateBuilder<PlanStroke>();
        var labels = ImmutableArray.CreateBuilder<PlanLabel>();
        void Add(Path path, Pen pen) => strokes.Add(new PlanStroke(path.Transformed(map), pen));
        void Label(string text, Point at, double clear, double height, double? rim = null) => labels.Add(new PlanLabel(text, map.Map(at), clear, height, rim));

        var outline = shape.Outline.Path;
        Add(outline, Pen.Template);
        if (OffsetLoop.Of(outline, ScaleBlank.RoomMm).Path is { } saw) Add(saw, Dashed);
        if (shape.Plan.Section == HandleSection.Octagon) foreach (var run in Facets(shape)) Add(run, Dashed);
        foreach (var u in p.Under)
        {
            var at = u.Hole.MadeAt;
            if (!u.IsDrilled)
            {
                // struck through: not a hole of the scale
                var slant = new Point(1, 1).Unit * (u.Hole.MadeDiameter.Mm / 2);
                Add(Path.Circle(at, u.Hole.MadeDiameter.Mm / 2), Dashed);
                Add(Straight(at - slant, at + slant), Thin);
                Label(TemplateStrip.Cut(u.Hole.Name, 10), at, (u.Hole.MadeDiameter.Mm / 2) + 0.5, 2.5, u.Hole.MadeDiameter.Mm / 2);
                continue;
            }

            var d = u.Pin?.Diameter ?? u.Hole.MadeDiameter;
            Add(Path.Circle(at, d.Mm / 2), Pen.Template);
            var reach = (d.Mm / 2) + CrossMm;
            Add(Straight(at - new Point(reach, 0), at + new Point(reach, 0)), Pen.Template);
            Add(Straight(at - new Point(0, reach), at + new Point(0, reach)), Pen.Template);
            Label(TemplateStrip.Cut(u.Hole.Name, 10), at, (d.Mm / 2) + 0.6, 2.5, d.Mm / 2);
        }

        Grain(p, shape, Add);
        var box = outline.Bounds;
        Label("front", shape.Outline.Front.At(0.5).Toward(box.Centre, Math.Min(0.3, 7 / box.Width)), 0, 2.5);
        var sizes = p.Under.Where(u => u.IsDrilled).GroupBy(u => (u.Pin?.Diameter ?? u.Hole.MadeDiameter).Mm).Select(g => $"{string.Join(", ", g.Select(u => u.Hole.Name).Take(8))} Ø{FigureText.Size(Length.OfMm(g.Key), units)}");
        if (p.Under.Any(u => u.IsDrilled)) labels.Add(new PlanLabel(TemplateStrip.Cut("drill " + string.Join("; ", sizes), 90), map.Map(new Point(box.Centre.X, isBack ? box.MinY : box.MaxY)), 4, 2.5));
        labels.Add(new PlanLabel($"dashed outside: saw line, {FigureText.Size(Length.OfMm(ScaleBlank.RoomMm), units)} off{(p.Under.Any(u => !u.IsDrilled) ? "; struck-through circles: no pin, do not drill" : "")}{(shape.Plan.Section == HandleSection.Octagon ? "; dashed inside: facet line" : "")}", map.Map(new Point(box.Centre.X, isBack ? box.MaxY : box.MinY)), 4, 2.5));
        return new TrueScaleShape(name, strokes.ToImmutable(), labels.ToImmutable());
    }

    // an arrow both ways along the handle, where no hole is: the grain
    private static void Grain(HandlePlan p, ScaleShape shape, Action<Path, Pen> add)
    {
        if (p.Made.Front is { Kind: not HandleKind.Wood }) return;
        var box = shape.Outline.Path.Bounds;
        var holes = p.Under.Select(u => u.Hole.MadeAt.X).Append(box.MinX).Append(box.MaxX).Order().ToArray();
        var (from, to) = holes.Zip(holes.Skip(1)).MaxBy(g => g.Second - g.First);
        var along = p.Results.Plan.Grip is { } g ? (g.To - g.From).Unit : new Point(1, 0);
        var middle = new Point(0.5 * (from + to), box.Centre.Y);
        var reach = Math.Min(20, 0.3 * (to - from));
        var (a, b) = (middle - (along * reach), middle + (along * reach));
        add(Straight(a, b), Thin);
        foreach (var (tip, back) in new[] { (a, along), (b, -along) })
        {
            add(Straight(tip, tip + (back * 3) + (back.Left * 1.2)), Thin);
            add(Straight(tip, tip + (back * 3) - (back.Left * 1.2)), Thin);
        }
    }

    // a line the leg in from the long edges, not from the ends that a line cuts
    private static IEnumerable<Path> Facets(ScaleShape shape)
    {
        foreach (var side in shape.Outline.Sides)
        {
            var run = new List<Point>();
            foreach (var s in side.Segments)
            {
                var steps = Math.Clamp((int)Math.Ceiling(s.Length), 1, 500);
                for (var i = 0; i <= steps; i++)
                {
                    var t = (double)i / steps;
                    var p = s.At(t) + (s.Tangent(t).Unit.Left * shape.LegMm);
                    var off = shape.Outline.Sides.Min(x => Nearest.Distance(x, p));
                    if (Inside.Of(shape.Outline.Path, p) && off > shape.LegMm - 0.01 && (run.Count == 0 || run[^1].To(p) > 1e-6)) run.Add(p);
                }
            }

            if (run.Count > 1) yield return new Path([.. run.Zip(run.Skip(1), (a, b) => (Segment)new Line(a, b))], closed: false);
        }
    }

    private static Path Straight(Point a, Point b) => new([new Line(a, b)], closed: false);
}
