using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>The centre of an arc from the words of its line (NIST IR 6556, 3.5.3).</summary>
internal static class ArcWords
{
    /// <summary>How far the two radii of an arc may differ, mm.</summary>
    public const double RadiusMm = 0.002;

    /// <summary>The centre, or what is wrong.</summary>
    public static Reading<Point> Centre(ProgramBlock block, double unitMm, Point from, Point to, bool counterClockwise)
    {
        if (block.Get('R') is { } word) return FromRadius(word * unitMm, from, to, counterClockwise, block);
        if (block.Get('I') is null && block.Get('J') is null) return No("an arc without its centre", "write I and J, the steps from its start to its centre");
        if (block.Get('X') is null && block.Get('Y') is null) return No("an arc without its end", "write X and Y, for a full circle too");
        var centre = from + new Point((block.Get('I') ?? 0) * unitMm, (block.Get('J') ?? 0) * unitMm);
        var (first, last) = (from.To(centre), to.To(centre));
        return first < 1e-9 ? No("an arc without a radius", "write I and J, the steps from its start to its centre")
            : Math.Abs(first - last) > RadiusMm ? No($"the arc begins {Shown.Mm(Length.OfMm(first), 4)} from its centre and ends {Shown.Mm(Length.OfMm(last), 4)} from it", "work out I and J from the end points as they are written")
            : Reading<Point>.Of(centre);
    }

    private static Reading<Point> FromRadius(double radius, Point from, Point to, bool counterClockwise, ProgramBlock block)
    {
        if (block.Get('I') is not null || block.Get('J') is not null) return No("an arc with both a radius and a centre", "keep I and J");
        var half = from.To(to) / 2;
        if (half < 1e-9) return No("a full circle cannot be given by its radius", "write I and J");
        if (half > Math.Abs(radius) + RadiusMm) return No("the radius does not reach from start to end", "write I and J");

        // the centre lies left of the chord for the short arc run counter-clockwise
        var left = counterClockwise == radius > 0 ? 1 : -1;
        var up = Math.Sqrt(Math.Max(0, (radius * radius) - (half * half)));
        return Reading<Point>.Of(from.Toward(to, 0.5) + ((to - from).Unit.Left * (left * up)));
    }

    private static Reading<Point> No(string what, string remedy) => Reading<Point>.Bad(what, remedy);
}
