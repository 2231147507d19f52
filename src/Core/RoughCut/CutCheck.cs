using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>Looks at the cuts again, apart from how they were found: the true outline with its curves against every cut, as long as it is sawn.</summary>
public static class CutCheck
{
    /// <summary>Least distance of a cut from the outline, mm, from below; 0 when one runs into the piece; looked for up to a distance.</summary>
    /// <param name="outline">The true outline.</param>
    /// <param name="cuts">The cuts, from and to.</param>
    /// <param name="withinMm">How far to look, mm.</param>
    public static double LeastMm(Path outline, IEnumerable<(Point From, Point To)> cuts, double withinMm)
    {
        var least = withinMm;
        foreach (var (from, to) in cuts)
        {
            var line = new Path([new Line(from, to)], closed: false);
            least = Inside.Of(outline, from) || Inside.Of(outline, to) ? 0 : Math.Min(least, LeastGap.Of(outline, line, least));
        }

        return least;
    }
}
