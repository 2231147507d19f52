using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>What brings the balance where it is wanted: each lever with the value that alone does it, what a mm or 1/64 in of it does, and the least change of several together.</summary>
public static class BalanceSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "balance";

    private const string Title = "Weight and balance";
    private const double RowMm = 19;

    // where the columns begin, as shares of the width
    private static readonly ImmutableArray<(string Head, double At)> Columns = [("change", 0), ("now", 0.3), ("alone it takes", 0.48), ("then weight", 0.7), ("balance", 0.85)];

    /// <summary>Draws its sheets; none when the plan wants neither weight nor balance, or the density of the steel is not known.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        var r = request.Results;
        var target = r.Plan.Target;
        if ((target.BalanceFromDatum is null && target.Weight is null) || r.Stages.IsDefaultOrEmpty) return [];
        if (BalanceStudy.Of(r, target.BalanceFromDatum, target.Weight, []) is not { } b || b.Levers.IsEmpty) return [];
        var datum = r.Plan.Datum.Name.Length > 0 ? $", {r.Plan.Datum.Name}" : "";
        var first = SheetTop.New(request, Key, Title, Title, $"Now {BalanceWords.Weighed(b.Now, request.Units)} from the datum{datum}. Wanted {BalanceWords.Wanted(b, request.Units)}.");
        var width = first.Room.Width;
        ImmutableArray<FlowRow> rows = [.. b.Levers.Select(a => Row(request, a))];
        if (b.Together is { } j) rows = rows.Add(Together(request, j, width));
        rows = [.. rows, CardRows.Line(BalanceWords.Ground, width, CardRows.NoteMm), CardRows.Boxed(BalanceWords.Caution, width)];
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, "Continued."), Head(request), rows, after: Notes.Draw);
    }

    private static FlowRow Head(SheetRequest request) => new(10, (canvas, box) =>
    {
        for (var i = 0; i < Columns.Length; i++) canvas.Fitted(Columns[i].Head, At(box, i), Wide(box, i), 3, bold: true);
        canvas.Fitted(request.Units switch { UnitsShown.Mm => "mm and g", UnitsShown.Inch => "inches and oz", _ => "mm and g large, inches and oz small" }, new Point(box.MinX, box.MinY + 1.4), 0.4 * box.Width, Canvas.SmallMm);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), Pen.Wide);

        static Point At(Box box, int i) => new(box.MinX + (Columns[i].At * box.Width), box.MinY + 5.4);
    });

    private static FlowRow Row(SheetRequest request, LeverAnswer a) => new(RowMm, (canvas, box) =>
    {
        canvas.Wrapped(a.Lever.Name, Left(box, 0, 2.8), Wide(box, 0), 3, bold: true, mostLines: 2);
        Figure(canvas, box, 1, a.Lever, a.Lever.Now, request.Units, bold: false);
        if (a is { Reaches: true, Value: { } value, Then: { } then })
        {
            Figure(canvas, box, 2, a.Lever, value, request.Units, bold: true);
            Two(canvas, box, 3, FigureText.Weight(Mass.OfGrams(then.Grams), Large(request.Units)), FigureText.Weight(Mass.OfGrams(then.Grams), UnitsShown.Inch), request.Units);
            Two(canvas, box, 4, FigureText.Size(Length.OfMm(then.FromDatumMm), Large(request.Units)), FigureText.Size(Length.OfMm(then.FromDatumMm), UnitsShown.Inch), request.Units);
        }
        else if (a.Then is { } best)
        {
            canvas.Fitted(BalanceWords.Alone(a, request.Units), Left(box, 2, 7), 0.52 * box.Width, 3);
            if (a.Value != a.Lever.Now) canvas.Fitted("there " + BalanceWords.Weighed(best, request.Units), Left(box, 2, 11.5), 0.52 * box.Width, 3);
        }

        canvas.Fitted((request.Units == UnitsShown.Inch ? "" : BalanceWords.PerMm(a) + ". ") + (request.Units == UnitsShown.Mm ? "" : BalanceWords.PerSixtyFourth(a) + "."), new Point(box.MinX, box.MinY + 2.4), box.Width, 3);
        canvas.Line(new Point(box.MinX, box.MinY), new Point(box.MaxX, box.MinY), new Pen(0.18));
    });

    private static void Figure(Canvas canvas, Box box, int column, BalanceLever lever, double value, UnitsShown units, bool bold)
    {
        var large = lever.IsWeight ? FigureText.Weight(Mass.OfGrams(value), Large(units)) : FigureText.Size(Length.OfMm(value), Large(units));
        var small = lever.IsWeight ? FigureText.Weight(Mass.OfGrams(value), UnitsShown.Inch) : FigureText.Size(Length.OfMm(value), UnitsShown.Inch);
        Two(canvas, box, column, large, small, units, bold);
    }

    private static void Two(Canvas canvas, Box box, int column, string large, string small, UnitsShown units, bool bold = false)
    {
        canvas.Fitted(large, Left(box, column, 7), Wide(box, column), Canvas.LargeMm, bold: bold);
        if (units == UnitsShown.Both) canvas.Fitted(small, Left(box, column, 11.5), Wide(box, column), 3);
    }

    private static UnitsShown Large(UnitsShown units) => units == UnitsShown.Both ? UnitsShown.Mm : units;

    private static Point Left(Box box, int column, double down) => new(box.MinX + (Columns[column].At * box.Width), box.MaxY - down);

    private static double Wide(Box box, int column) => (((column + 1 < Columns.Length ? Columns[column + 1].At : 1) - Columns[column].At) * box.Width) - 2;

    private static FlowRow Together(SheetRequest request, JointChange j, double width)
    {
        var says = string.Join("; ", j.Moves.Where(BalanceWords.IsMoved).Select(m => $"{m.Lever.Name} {BalanceWords.Value(m.Lever, m.Lever.Now, request.Units)} to {BalanceWords.Value(m.Lever, m.Value, request.Units)}")) + $". Then {BalanceWords.Weighed(j.Then, request.Units)}.{(j.Reaches ? "" : " That is as near as they get within their limits.")}";
        var lines = TextSpace.WrappedMm(says, width, Canvas.TextMm);
        return new FlowRow(lines + 13, (canvas, box) =>
        {
            canvas.Text("Together, each moved as little as does it", new Point(box.MinX, box.MaxY - 8), Canvas.LargeMm, bold: true);
            canvas.Wrapped(says, new Point(box.MinX, box.MaxY - 10.5), width);
        });
    }
}
