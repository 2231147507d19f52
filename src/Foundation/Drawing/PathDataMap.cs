using System.Text;

namespace Tangwright.Foundation;

/// <summary>Path data mirrored, shifted or evenly scaled along its axes, number by number: commands, order and spaces stay.</summary>
public static class PathDataMap
{
    /// <summary>The text under a map. Null when the text has a fault.</summary>
    /// <param name="text">The path data.</param>
    /// <param name="unitMm">Length of one unit of the text, mm.</param>
    /// <param name="map">A map that keeps x along x and y along y and scales both alike; a mirror turns the sweep of arcs about.</param>
    public static string? Of(string text, double unitMm, Transform map)
    {
        if (map.B != 0 || map.C != 0 || Math.Abs(map.A) != Math.Abs(map.D)) throw new ArgumentException("the map turns or scales unevenly", nameof(map));
        var read = PathData.Read(text, unitMm);
        if (read.Fault is not null) return null;
        var s = new StringBuilder();
        var (copied, before) = (0, Written.Kept);
        foreach (var step in read.Steps)
        {
            for (var k = 0; k < step.NumberCount; k++)
            {
                var number = read.Numbers[step.FirstNumber + k];
                s.Append(text, copied, number.Offset - copied);
                var (mapped, how) = Mapped(text.Substring(number.Offset, number.Length), number.Value, step, k, unitMm, map);

                // compact numbers lean on a sign, a point or a flag: what is written anew is kept apart
                if (s.Length > 0 && (char.IsAsciiDigit(s[^1]) || s[^1] == '.') && mapped[0] is not ('-' or '+') && (how == Written.Anew || before == Written.Anew)) s.Append(' ');
                s.Append(mapped);
                (copied, before) = (number.Offset + number.Length, how);
            }
        }

        return s.Append(text, copied, text.Length - copied).ToString();
    }

    private static (string Text, Written How) Mapped(string old, double value, PathStep step, int index, double unitMm, Transform map)
    {
        if (step.Kind == 'A' && index % 7 == 4) return (map.Determinant < 0 ? value == 0 ? "1" : "0" : old, Written.Kept);
        if (step.Kind == 'A' && index % 7 == 3) return (old, Written.Kept);
        if (step.Kind == 'A' && index % 7 == 2) return map.Determinant < 0 && value != 0 ? (PathData.Number(-value, 1), Written.Anew) : (old, Written.Kept);
        var radius = step.Kind == 'A' && index % 7 < 2;
        var along = step.Kind switch { 'H' => true, 'V' => false, 'A' => index % 7 == 5, _ => index % 2 == 0 };
        var shift = radius || (step.IsRelative && step.StartStep >= 0) ? 0 : along ? map.Dx : map.Dy;
        var mm = value * unitMm;
        var mapped = (mm * (radius ? Math.Abs(map.A) : along ? map.A : map.D)) + shift;
        return Math.Abs(mapped - mm) < 1e-12 ? (old, Written.Kept) : (PathData.Number(mapped, unitMm), Written.Anew);
    }

    private enum Written
    {
        Kept,
        Anew,
    }
}
