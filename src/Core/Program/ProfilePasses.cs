using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>The profile, pass by pass, each led in and out on a quarter circle; the last passes lift the tool over the tabs.</summary>
internal static class ProfilePasses
{
    /// <summary>Feed straight down as a share of the feed along; common practice.</summary>
    private const double PlungeShare = 0.25;

    private const double MillimetresOver = 1;

    public static IEnumerable<ToolpathStep> Steps(ProfileCut cut, double thicknessMm, double straightMmPerMin, double safeMm)
    {
        var (feed, plunge) = (Math.Round(straightMmPerMin, 1), Math.Round(PlungeShare * straightMmPerMin, 1));
        var bottom = -thicknessMm - ProfileCut.ThroughMm;
        var tabs = -thicknessMm + TabPlaces.Height(thicknessMm);
        var passes = (int)Math.Ceiling(-bottom / (ProfileCut.PassShare * cut.Mill.Diameter.Mm));

        // clockwise round the part: the part lies to the right, the waste to the left
        var start = cut.Around.Start;
        var way = cut.Around.Segments[0].Tangent(0);
        var lead = ProfileCut.LeadShare * cut.Mill.Diameter.Mm;
        var centre = start + (way.Left * lead);
        var (from, to) = (centre - (way * lead), centre + (way * lead));
        for (var i = 1; i <= passes; i++)
        {
            var z = bottom * i / passes;
            yield return new RapidStep(new(from.X, from.Y, safeMm));
            yield return new RapidStep(new(from.X, from.Y, MillimetresOver));
            yield return new FeedStep(new(from.X, from.Y, z), plunge);
            yield return new ArcStep(new(start.X, start.Y, z), centre, true, feed);
            foreach (var step in Round(cut, z, tabs, feed, plunge)) yield return step;
            yield return new ArcStep(new(to.X, to.Y, z), centre, true, feed);
            yield return new RapidStep(new(to.X, to.Y, safeMm));
        }
    }

    private static IEnumerable<ToolpathStep> Round(ProfileCut cut, double z, double tabZ, double feed, double plunge)
    {
        var from = 0.0;
        var here = z;
        foreach (var s in cut.Around.Segments)
        {
            var length = s.Length;
            var marks = new List<double> { 0, length };
            if (z < tabZ) marks.AddRange(cut.Tabs.SelectMany(t => new[] { t.FromMm - from, t.ToMm - from }).Where(m => m > 1e-6 && m < length - 1e-6));
            marks.Sort();
            for (var i = 1; i < marks.Count; i++)
            {
                var middle = from + ((marks[i - 1] + marks[i]) / 2);
                var part = marks.Count == 2 ? s : s.Part(marks[i - 1] / length, marks[i] / length);
                var height = z < tabZ && cut.Tabs.Any(t => middle > t.FromMm && middle < t.ToMm) ? tabZ : z;
                if (height != here) yield return new FeedStep(new(part.Start.X, part.Start.Y, height), height > here ? feed : plunge);
                here = height;
                yield return part is Arc arc
                    ? new ArcStep(new(arc.End.X, arc.End.Y, here), arc.Centre, arc.IsCounterClockwise, feed)
                    : new FeedStep(new(part.End.X, part.End.Y, here), feed);
            }

            from += length;
        }
    }
}
