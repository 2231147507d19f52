using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Documents;

/// <summary>The bars measured before a template is trusted: 100 mm and 4 in, level and upright. They are stretched with the drawing, so that on a corrected print they measure true.</summary>
internal static class CheckBars
{
    private const double Below = 3;
    private const double Above = 13;

    /// <summary>Room a bar takes along itself, mm.</summary>
    public static double Length(double stretch, bool half) => ((half ? 50.8 : 101.6) * stretch) + 4;

    /// <summary>Room a bar takes across itself, mm.</summary>
    public const double Depth = 16;

    /// <summary>Draws one bar in its box.</summary>
    /// <param name="box">Where, sheet coordinates.</param>
    /// <param name="upright">Whether it stands.</param>
    /// <param name="stretch">Correction along it.</param>
    /// <param name="half">50 mm and 2 in, on paper too narrow for the full bars.</param>
    /// <param name="way">"across the sheet" or "along the feed".</param>
    public static IEnumerable<Mark> Draw(Box box, bool upright, double stretch, bool half, string way)
    {
        Point At(double along, double across) => upright
            ? new Point(box.MaxX - across, box.MinY + 2 + along)
            : new Point(box.MinX + 2 + along, box.MinY + across);
        StrokeMark Line(double a0, double c0, double a1, double c1, double width = 0.25) => new(new Path([new Line(At(a0, c0), At(a1, c1))], closed: false), new Pen(width));

        var mm = (half ? 50 : 100) * stretch;
        var inch = (half ? 50.8 : 101.6) * stretch;
        yield return Line(0, Above, mm, Above);
        yield return Line(0, Below, inch, Below);
        foreach (var end in new[] { 0, mm }) yield return Line(end, Above - 2, end, Above + 2);
        foreach (var end in new[] { 0, inch }) yield return Line(end, Below - 2, end, Below + 2);
        var tens = half ? 5 : 10;
        for (var i = 1; i < tens; i++) yield return Line(mm * i / tens, Above, mm * i / tens, Above + 1, 0.18);
        var inches = half ? 4 : 8;
        for (var i = 1; i < inches; i++) yield return Line(inch * i / inches, Below, inch * i / inches, Below - (i % 2 == 0 ? 1.2 : 0.7), 0.18);
        var turn = upright ? 90 : 0;
        var height = half ? 2.5 : 3.5;
        yield return new TextMark(half ? "50 mm ↑" : "100 mm ↑", At(1.5, 6.2), height, Bold: true, AngleDegrees: turn);
        yield return new TextMark(half ? way.Split(' ')[0] : way, At(mm / 2, 6.2), height, Anchor: TextAnchor.Middle, AngleDegrees: turn);
        yield return new TextMark(half ? "2 in ↓" : "4 in ↓", At(inch - 1.5, 6.2), height, Bold: true, Anchor: TextAnchor.Right, AngleDegrees: turn);
    }

    /// <summary>What the bars are for, in one line.</summary>
    public static ImmutableArray<string> Words(bool half) =>
        half ? ["Print at 100 % / actual size. Measure both bars before use:", "50.0 mm and 2 in each way, else enter twice what they measure."]
            : ["Print at 100 % / actual size. Measure both bars before use:", "100.0 mm and 4 in each way, else enter what they measure."];
}
