using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Where the tool comes from, where it is changed and where it is left.</summary>
internal static class StartAndEnd
{
    public static IEnumerable<ProgramTrouble> Of(ProgramReading reading, ProgramSetUp setUp)
    {
        var free = FreeHeight(setUp);
        var over = $"go straight up to more than {Shown.Mm(Length.OfMm(free))} first";
        foreach (var m in reading.Motions)
        {
            if (m.IsKnown()) break;
            var isUp = double.IsFinite(m.To.Z) && m.To.Z > free;
            if (isUp) continue;
            yield return new("start", m.Line, "the tool moves from an unknown place before it is clear of the work and the clamps", over);
            break;
        }

        foreach (var c in reading.Changes)
        {
            if (double.IsFinite(c.At.Z) && c.At.Z <= free) yield return new("tool change", c.Line, $"tool {c.Tool} is put in {Shown.Mm(Length.OfMm(c.At.Z))} above the work", over);
            if (c.TurnsPerMin > 0) yield return new("tool change", c.Line, $"tool {c.Tool} is put in while the spindle turns", "write M5 before the stop");
        }

        if (reading.Motions is [.., var last] && !(last.To.Z > free)) yield return new("end", last.Line, "the tool is left in the work or between the clamps", $"end above {Shown.Mm(Length.OfMm(free))}");
        if (reading.Motions.IsEmpty) yield return new("end", 0, "the program moves nothing", "write its moves");
    }

    /// <summary>Height above which nothing stands in the way, mm.</summary>
    public static double FreeHeight(ProgramSetUp setUp) => setUp.Clamps.Aggregate(0.0, (top, c) => Math.Max(top, c.TopZMm));
}
