using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Walks round a net of joined segments. Where lines branch off inside, as a plunge line from spine to edge does, the outermost way round is taken.</summary>
internal static class OuterWalk
{
    /// <summary>Loops as steps (segment, end it is entered by); what is not part of an outermost way goes to <paramref name="inner"/>.</summary>
    public static List<List<(int Segment, int From)>> Loops(LineNet net, List<int> inner)
    {
        var loops = new List<List<(int, int)>>();
        for (var round = 0; round < 8; round++)
        {
            inner.AddRange(net.Prune());
            var ends = net.Ends();
            var next = NextSteps(net, ends);
            var bridges = new List<int>();
            foreach (var part in Parts(net, ends)) Walk(net, part, next, loops, inner, bridges);
            if (bridges.Count == 0) break;
            foreach (var b in bridges) net.Alive[b] = false;
            inner.AddRange(bridges);
        }

        return loops;
    }

    private static void Walk(LineNet net, List<int> part, Dictionary<(int, int), (int Segment, int From)> next, List<List<(int, int)>> loops, List<int> inner, List<int> bridges)
    {
        var seen = new HashSet<(int, int)>();
        List<(int Segment, int From)>? outer = null;
        var least = double.PositiveInfinity;
        foreach (var segment in part)
        {
            for (var from = 0; from < 2; from++)
            {
                if (seen.Contains((segment, from))) continue;
                var face = new List<(int Segment, int From)>();
                var area = 0.0;
                for (var step = (segment, from); seen.Add(step); step = next[step])
                {
                    face.Add(step);
                    area += Swept(net.Segments[step.segment].Segment) * (step.from == 0 ? 1 : -1);
                }

                if (area >= least) continue;
                least = area;
                outer = face;
            }
        }

        if (outer is null) return;
        var twice = outer.GroupBy(s => s.Segment).Where(g => g.Count() > 1).Select(g => g.Key).ToList();
        if (twice.Count > 0 && twice.Count < part.Count)
        {
            // a bridge between two loops: take it out and walk this part again
            bridges.AddRange(twice);
            return;
        }

        loops.Add(outer);
        var used = outer.Select(s => s.Segment).ToHashSet();
        foreach (var segment in part)
        {
            net.Alive[segment] = false;
            if (!used.Contains(segment)) inner.Add(segment);
        }
    }

    /// <summary>After coming along a segment into a knot: the way out that lies next clockwise from the way back.</summary>
    private static Dictionary<(int, int), (int Segment, int From)> NextSteps(LineNet net, Dictionary<int, List<(int Segment, int End)>> ends)
    {
        var next = new Dictionary<(int, int), (int, int)>();
        foreach (var here in ends.Values)
        {
            var fan = here.Select(e => (e.Segment, e.End, Key: Leaving(net.Segments[e.Segment].Segment, e.End)))
                .OrderBy(e => e.Key.Angle).ThenBy(e => e.Key.Bend).ThenBy(e => e.Segment).ThenBy(e => e.End).ToList();
            for (var i = 0; i < fan.Count; i++)
            {
                var out1 = fan[(i + fan.Count - 1) % fan.Count];
                next[(fan[i].Segment, 1 - fan[i].End)] = (out1.Segment, out1.End);
            }
        }

        return next;
    }

    /// <summary>Direction of leaving a knot, in steps of a millionth of a radian, then how it bends to the left.</summary>
    private static (long Angle, double Bend) Leaving(Segment s, int end)
    {
        var d = end == 0 ? s.Tangent(0) : -s.Tangent(1);
        var angle = Math.Atan2(d.Y, d.X);
        var whole = (long)Math.Round(2 * Math.PI * 1e6);
        var steps = (long)Math.Round((angle < 0 ? angle + (2 * Math.PI) : angle) * 1e6) % whole;
        var bend = end == 0 ? s.Curvature(0) : -s.Curvature(1);
        return (steps, double.IsFinite(bend) ? bend : 0);
    }

    private static double Swept(Segment s)
    {
        var sum = 0.0;
        var o = s.Start;
        for (var i = 0; i < 16; i++) sum += (s.At(i / 16.0) - o).Cross(s.At((i + 1) / 16.0) - o);
        return 0.5 * (sum + s.Start.Cross(s.End));
    }

    private static List<List<int>> Parts(LineNet net, Dictionary<int, List<(int Segment, int End)>> ends)
    {
        var parts = new List<List<int>>();
        var done = new bool[net.Segments.Count];
        for (var first = 0; first < done.Length; first++)
        {
            if (done[first] || !net.Alive[first]) continue;
            var part = new List<int>();
            var stack = new Stack<int>([first]);
            done[first] = true;
            while (stack.TryPop(out var i))
            {
                part.Add(i);
                for (var e = 0; e < 2; e++)
                {
                    foreach (var (j, _) in ends[net.Knot(i, e)])
                    {
                        if (done[j]) continue;
                        done[j] = true;
                        stack.Push(j);
                    }
                }
            }

            parts.Add(part);
        }

        return parts;
    }
}
