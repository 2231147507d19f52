using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Motions beyond the reach of table or spindle.</summary>
internal static class TravelReach
{
    private const double SlackMm = 1e-6;

    public static IEnumerable<ProgramTrouble> Of(IReadOnlyList<Motion> motions, ProgramSetUp setUp)
    {
        if (setUp.Travel is { } travel)
        {
            var reach = travel.Grown(SlackMm);
            foreach (var m in motions)
            {
                var box = m.Flat()?.Bounds ?? Box.Around(m.From.Flat, m.To.Flat);
                if (box.MinX >= reach.MinX && box.MaxX <= reach.MaxX && box.MinY >= reach.MinY && box.MaxY <= reach.MaxY) continue;
                yield return new("travel", m.Line, $"the table would have to go from x {Mm(box.MinX)}, y {Mm(box.MinY)} to x {Mm(box.MaxX)}, y {Mm(box.MaxY)}; it reaches x {Mm(travel.MinX)} to {Mm(travel.MaxX)}, y {Mm(travel.MinY)} to {Mm(travel.MaxY)}", "move the stock on the table, or work in two clampings on pinned holes");
                break;
            }
        }

        if (setUp.TravelZMm is not { } up || motions.Count == 0) yield break;
        var (low, high) = (motions.Min(m => Math.Min(m.From.Z, m.To.Z)), motions.Max(m => Math.Max(m.From.Z, m.To.Z)));
        if (high - low > up + SlackMm) yield return new("travel", motions.First(m => Math.Max(m.From.Z, m.To.Z) == high).Line, $"the spindle would go from {Mm(low)} to {Mm(high)}; it has {Mm(up)} of travel", "lower the height between cuts");
    }

    private static string Mm(double mm) => Shown.Mm(Length.OfMm(mm));
}
