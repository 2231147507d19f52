using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The caution page: short cards for what this plan's steps can do to a person.</summary>
internal static class CautionsSheet
{
    /// <summary>Its key.</summary>
    public const string Key = "cautions";

    private const string Title = "Cautions";

    /// <summary>Draws its sheets.</summary>
    public static ImmutableArray<Sheet> Draw(SheetRequest request)
    {
        const string First = "Local rules, the machine maker's manual and licensed practice come first. What stands here is a reminder; its numbers are starting points.";
        var first = SheetTop.New(request, Key, Title, Title, First);
        var width = first.Room.Width;
        return Flow.Over(first, () => SheetTop.New(request, Key, Title, Title, First), head: null, Caution.For(request.Results).Select(c => Card(c, width)));
    }

    private static FlowRow Card(Caution caution, double width)
    {
        const double Left = 32;
        const double LetterMm = 3;
        var textWidth = width - Left;
        var height = caution.Lines.Sum(l => TextSpace.WrappedMm(l, textWidth - 4, LetterMm) + 0.6) + TextSpace.WrappedMm(caution.Sources, textWidth, Canvas.SmallMm) + 4;
        return new FlowRow(height, (canvas, box) =>
        {
            canvas.Line(new Point(box.MinX, box.MaxY), new Point(box.MaxX, box.MaxY), Pen.Narrow);
            var top = box.MaxY - 1.5;
            canvas.Wrapped(caution.Title, new Point(box.MinX, top), Left - 3, Canvas.TextMm, bold: true);
            var y = top;
            foreach (var line in caution.Lines)
            {
                canvas.Fill(Path.Circle(new Point(box.MinX + Left + 1, y - 2.2), 0.7));
                y = canvas.Wrapped(line, new Point(box.MinX + Left + 4, y), textWidth - 4, LetterMm) - 0.6;
            }

            canvas.Wrapped(caution.Sources, new Point(box.MinX + Left, y), textWidth, Canvas.SmallMm);
        });
    }
}
