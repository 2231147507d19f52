using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Documents;
using Tangwright.Foundation;

namespace Tangwright.UseCases;

/// <summary>One way of cutting a bar as a drawing to send away. Without a service: outlines and holes as planned. For a service: outlines with the steel to grind off, the layer says on which side the kerf lies, lead-ins on a layer of their own, holes too small for it marked for the drill.</summary>
public static class BarDrawing
{
    /// <summary>The drawing, mm.</summary>
    /// <param name="s">The bars.</param>
    /// <param name="cut">The way of cutting.</param>
    /// <param name="number">Its number, for the title.</param>
    public static FlatDrawing Of(StockPlan s, BarCut cut, int number)
    {
        var title = $"{string.Join(", ", cut.Places.Select(p => p.Pattern).Distinct().Order().Select(p => $"{s.Patterns[p].Results.Plan.Name} rev {s.Patterns[p].Results.Plan.Revision}"))}, {StockWords.Word(s)} {number}, mm";
        var (paths, circles) = (ImmutableArray.CreateBuilder<DrawnPath>(), ImmutableArray.CreateBuilder<DrawnCircle>());
        paths.Add(new DrawnPath("BAR", Path.Polygon(new(0, 0), new(cut.Length.Mm, 0), new(cut.Length.Mm, cut.Width.Mm), new(0, cut.Width.Mm))));
        var without = new List<string>();
        var outlines = cut.Places.Select(p => Outline(s, p)).ToArray();
        for (var i = 0; i < outlines.Length; i++)
        {
            var results = s.Patterns[cut.Places[i].Pattern].Results;
            var turn = Turn(results, cut.Places[i]);
            paths.Add(new DrawnPath(s.Service is null ? "OUTLINE" : "CUT_KERF_OUTSIDE", outlines[i]));
            foreach (var h in results.Holes)
            {
                var (centre, name) = (turn.Map(h.MadeAt), $"{i + 1}-{h.Name}");
                var cutMm = h.MadeDiameter.Mm - (2 * (s.Service?.Edge.Mm ?? 0));
                if (s.Service is not { } service) circles.Add(new DrawnCircle("HOLES", name, centre, h.MadeDiameter.Mm));
                else if (cutMm < results.Plan.Stock.Thickness.Mm) circles.Add(new DrawnCircle("DRILL_LATER_DO_NOT_CUT", name, centre, h.MadeDiameter.Mm));
                else
                {
                    circles.Add(new DrawnCircle("CUT_KERF_INSIDE", name, centre, cutMm));
                    paths.Add(new DrawnPath("LEAD_IN", new Path([LeadIn.Within(centre, cutMm, service.Kerf.Mm)], closed: false)));
                }
            }

            if (s.Service is not { } by) continue;
            var others = outlines.Where((_, k) => k != i).ToArray();
            if (LeadIn.Outside(outlines[i], others, new Box(0, 0, cut.Length.Mm, cut.Width.Mm), by.Kerf.Mm) is { } lead) paths.Add(new DrawnPath("LEAD_IN", new Path([lead], closed: false)));
            else without.Add($"{i + 1}");
        }

        return new FlatDrawing(s.Service is { } how ? $"{title}; {how.Words}; kerf outside the outlines, inside the holes; outlines hold {Shown.Trimmed(how.Edge.Mm, 2)} mm to grind off{(without.Count > 0 ? $"; no room for a lead-in at piece {string.Join(", ", without)}: the service chooses" : "")}" : title, paths.ToImmutable(), circles.ToImmutable());
    }

    /// <summary>The outline as it is to be cut.</summary>
    private static Path Outline(StockPlan s, LanePlace p)
    {
        var results = s.Patterns[p.Pattern].Results;
        var outline = results.Plan.Outline;
        var grown = s.Service is { } service ? OffsetLoop.Of(outline, service.Edge.Mm).Path ?? throw new InvalidOperationException("an outline that cannot be grown is refused before it is drawn") : outline;
        return grown.Transformed(Turn(results, p));
    }

    private static Transform Turn(Results results, LanePlace p) => Lies.Turn(p.Lie, results.Plan.Outline.Bounds).Then(Transform.Shift(new Point(p.AlongMm, p.UpMm)));
}
