using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>Draws the marks of a sheet, in whatever a format draws with.</summary>
internal abstract class SheetInk
{
    /// <summary>Draws the marks in order.</summary>
    public void Draw(ImmutableArray<Mark> marks)
    {
        foreach (var mark in marks)
        {
            switch (mark)
            {
                case StrokeMark stroke:
                    Stroke(stroke);
                    break;
                case FillMark fill:
                    Fill(fill);
                    break;
                case TextMark text:
                    Letter(text);
                    break;
                case ClippedMarks clipped:
                    Clip(clipped);
                    break;
                default:
                    throw new InvalidOperationException("unknown mark " + mark.GetType().Name);
            }
        }
    }

    /// <summary>Draws a line.</summary>
    protected abstract void Stroke(StrokeMark mark);

    /// <summary>Fills a region.</summary>
    protected abstract void Fill(FillMark mark);

    /// <summary>Draws marks that show only within a box.</summary>
    protected abstract void Clip(ClippedMarks mark);

    /// <summary>Writes a text.</summary>
    /// <param name="mark">The mark.</param>
    /// <param name="text">Its text with the signs the lettering has.</param>
    /// <param name="widthMm">Width of the text, mm.</param>
    /// <param name="backMm">From the mark's point to the text's left end, mm; negative when it begins before the point.</param>
    protected abstract void Letter(TextMark mark, string text, double widthMm, double backMm);

    private void Letter(TextMark mark)
    {
        var text = Lettering.Drawn(mark.Text);
        if (text.Length == 0) return;
        var width = Lettering.Width(text, mark.HeightMm, mark.Bold);
        Letter(mark, text, width, mark.Anchor switch { TextAnchor.Left => 0, TextAnchor.Middle => -0.5 * width, _ => -width });
    }
}
