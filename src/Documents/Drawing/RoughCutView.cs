using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The blank to scale with its cuts: waste shaded, cuts numbered in order, marks on the rim named a and b.</summary>
internal static class RoughCutView
{
    /// <summary>Room the names of the marks take round the blank, mm.</summary>
    public const double RimMm = 11;

    /// <summary>Draws it.</summary>
    public static void Draw(Canvas canvas, RoughCutPlan plan, PieceView view, bool withNames = true)
    {
        var box = view.On(plan.Blank.Box);
        foreach (var c in plan.Cuts.Where(c => !c.Waste.IsEmpty)) canvas.Fill(view.On(Path.Polygon(c.Waste.AsSpan())), Ink.Pale);
        canvas.Frame4(box, Pen.Wide);
        view.DrawPiece(canvas, new Pen(0.35));
        foreach (var c in plan.Cuts)
        {
            canvas.Line(view.On(c.From), view.On(c.To), new Pen(0.5, LineKind.Dashed));
            var middle = view.On(c.From.Toward(c.To, 0.5)) + (c.Normal * 4.2);
            Number(canvas, $"{c.Number}", new Point(Math.Clamp(middle.X, box.MinX + 3, box.MaxX - 3), Math.Clamp(middle.Y, box.MinY + 3, box.MaxY - 3)));
        }

        foreach (var h in plan.Reliefs)
        {
            var (at, radius) = (view.On(h.At), Math.Max(0.5, 0.5 * (h.Drill?.Diameter.Mm ?? 1) * view.Factor));
            canvas.Fill(Path.Circle(at, radius), Ink.White);
            canvas.Stroke(Path.Circle(at, radius), new Pen(0.35));
            canvas.CentreCross(at, radius);
        }

        if (withNames) Names(canvas, plan, view, box);
        Corner(canvas, plan.Blank, box);
    }

    private static void Number(Canvas canvas, string text, Point at)
    {
        canvas.Fill(Path.Circle(at, 2.9), Ink.White);
        canvas.Stroke(Path.Circle(at, 2.9), new Pen(0.25));
        canvas.Text(text, at - new Point(0, 1.7), Canvas.TextMm, bold: true, anchor: TextAnchor.Middle);
    }

    private static void Names(Canvas canvas, RoughCutPlan plan, PieceView view, Box box)
    {
        var marks = plan.Cuts.SelectMany(c => c.Marks.Select((m, i) => (Name: RoughCutWords.MarkName(c, i), m.On, At: view.On(m.At)))).ToArray();
        LabelRail.Draw(canvas, marks.Where(m => m.On == "upper edge").Select(m => new Pointer(m.Name, m.At)), box.MaxY + 5.5, box.MinX - 6, box.MaxX + 6, 3, bold: true);
        LabelRail.Draw(canvas, marks.Where(m => m.On == "lower edge").Select(m => new Pointer(m.Name, m.At)), box.MinY - 8.5, box.MinX - 6, box.MaxX + 6, 3, bold: true);
        foreach (var left in new[] { true, false })
        {
            var side = marks.Where(m => m.On == (left ? "left end" : "right end")).OrderBy(m => m.At.Y).ToArray();
            if (Spread.Of([.. side.Select(m => m.At.Y)], [.. side.Select(_ => 3.0)], 1, box.MinY - 8, box.MaxY + 8) is not { } places) continue;
            for (var i = 0; i < side.Length; i++)
            {
                var x = left ? box.MinX - 4 : box.MaxX + 4;
                canvas.Text(side[i].Name, new Point(left ? x - 0.5 : x + 0.5, places[i] - 1.5), 3, bold: true, anchor: left ? TextAnchor.Right : TextAnchor.Left);
                canvas.Line(new Point(x, places[i]), side[i].At, new Pen(0.18));
            }
        }
    }

    /// <summary>A filled corner where measuring starts.</summary>
    private static void Corner(Canvas canvas, RoughBlank blank, Box box)
    {
        var (at, along, across) = (new Point(blank.FromRight ? box.MaxX : box.MinX, blank.FromTop ? box.MaxY : box.MinY), blank.FromRight ? -1 : 1, blank.FromTop ? -1 : 1);
        canvas.Fill(Path.Polygon(at, at + new Point(4.5 * along, 0), at + new Point(0, 4.5 * across)));
    }
}
