using System.Collections.Immutable;

namespace Tangwright.Foundation;

/// <summary>Cubic Béziers that follow an arc.</summary>
public static class CurveOfArc
{
    /// <summary>One cubic for each quarter turn or part of it, controls (4/3) tan(θ/4) along the end tangents: for a circle within 2.8e-4 of the radius (Goldapp, Computer Aided Geometric Design 8 (1991) 227–238).</summary>
    public static ImmutableArray<Segment> Of(Arc arc)
    {
        var pieces = (int)Math.Ceiling((Math.Abs(arc.Sweep) / (Math.PI / 2)) - 1e-9);
        var all = ImmutableArray.CreateBuilder<Segment>(pieces);
        for (var i = 0; i < pieces; i++)
        {
            var part = arc.Part((double)i / pieces, (i + 1.0) / pieces);
            var sweep = arc.Sweep / pieces;
            var reach = 4.0 / 3 * Math.Tan(sweep / 4) / sweep;
            all.Add(new Bezier(part.Start, part.Start + (part.Derivative(0) * reach), part.End - (part.Derivative(1) * reach), part.End));
        }

        return all.ToImmutable();
    }
}
