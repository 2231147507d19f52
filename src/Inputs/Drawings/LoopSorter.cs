using System.Collections.Immutable;
using System.Globalization;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>Finds the piece among the curves of a drawing: doubled lines dropped, loose ends joined, frames and title blocks put aside, the largest loop taken as the outline and the circles inside it as holes. Says what it took and what it left.</summary>
internal sealed class LoopSorter(CurveTray tray, ImportChoice choice)
{
    private const string OwnOutline = "OUTLINE";
    private const string OwnHoles = "HOLES";
    private const int MostListed = 12;
    private const int MostLoops = 10_000;
    private const int MostHoles = 5_000;
    private const int MostTexts = 1_000;

    private readonly List<string> _taken = [];
    private readonly List<string> _left = [];
    private readonly List<double> _gaps = [];
    private int _frames;

    public Checked<ImportedPiece> Sort() => Gathered().Then(Piece);

    /// <summary>Every closed loop, each with the number it is chosen by; the one that would be taken unasked is named.</summary>
    public Checked<FoundLoops> Find() => Gathered().Then(g =>
    {
        var fault = Outline(g.Shaped, g.Open, g.Loops, out var outer);
        if (g.Shaped.Count == 0 && outer is null) return Checked<FoundLoops>.Bad(fault!);
        return Checked<FoundLoops>.Good(new FoundLoops(
            [.. g.Shaped.Select((l, i) => Found(l, i + 1))],
            [.. g.Round.Where(r => !g.Shaped.Contains(r)).Select(r => Found(r, 0))],
            outer is null || !g.Shaped.Contains(outer) ? null : g.Shaped.IndexOf(outer) + 1,
            tray.Units,
            tray.MmPerUnit is not null,
            fault is null ? [.. _left, .. tray.Notes] : [$"{fault.Message} {fault.Remedy}", .. _left, .. tray.Notes]));

        static FoundLoop Found(DrawnLoop l, int number) => new(number, l.Path, l.Said, l.Round?.Centre, l.Round is { } r ? 2 * r.Radius : null);
    });

    private Checked<GatheredLoops> Gathered()
    {
        var layers = tray.Curves.GroupBy(c => c.Layer, StringComparer.OrdinalIgnoreCase)
            .Select(g => new ImportedLayer(g.Key, g.Count())).OrderBy(l => l.Name, StringComparer.Ordinal).ToImmutableArray();
        if (Curves(layers, out var curves) is { } noSuch) return No(noSuch);
        var loops = Loops(curves, out var doubled, out var runs);
        if (loops.Count > MostLoops) return No(Fault.OfFile(tray.File, $"The drawing has more than {MostLoops:N0} closed loops.", "Save only the piece into a file of its own."));
        var round = Circles(loops, ref doubled);
        if (round.Count > MostHoles) return No(Fault.OfFile(tray.File, $"The drawing has more than {MostHoles:N0} circles.", "Save only the piece into a file of its own."));
        var shaped = Distinct([.. loops.Where(l => l.Round is null)], ref doubled);
        var open = runs.Where(r => r.Run.Length > 1 || r.Run[0] is not Line).Select(r => new DrawnLoop(new Path(r.Run, closed: false), r.Layer)).Where(l => l.AreaMm2 > 0).ToList();
        if (doubled > 0) _left.Add($"{doubled} {(doubled == 1 ? "curve" : "curves")} drawn twice");
        return Checked<GatheredLoops>.Good(new GatheredLoops(layers, loops, shaped, round, open, runs));

        static Checked<GatheredLoops> No(Fault fault) => Checked<GatheredLoops>.Bad(fault);
    }

    private Checked<ImportedPiece> Piece(GatheredLoops g)
    {
        var (layers, loops, shaped, round, open, runs) = (g.Layers, g.Loops, g.Shaped, g.Round, g.Open, g.Runs);
        if (Outline(shaped, open, loops, out var outer) is { } fault) return Bad(fault);
        if (_gaps.Count > 0 && _gaps.Max() >= 5e-4)
            _taken.Add($"{_gaps.Count} loose {(_gaps.Count == 1 ? "end" : "ends")} joined, largest gap {Shown.Mm(Length.OfMm(_gaps.Max()), 3)} (tolerance {Shown.Mm(Length.OfMm(choice.JoinMm))})");
        var holes = Holes(outer!, round);
        ListRest(outer!, shaped, open, runs, round);
        var outline = Moments.Of(outer!.Path).AreaMm2 < 0 ? outer.Path.Reversed() : outer.Path;
        _taken.Insert(0, $"outline: {outer.Said}");
        _taken.Insert(1, holes.Length == 0 ? "no round holes" : $"{holes.Length} round {(holes.Length == 1 ? "hole" : "holes")}");
        _taken.AddRange(tray.Notes);
        _left.AddRange(tray.LeftOut.Select(l => $"{l.Value} {l.Key}"));
        return Checked<ImportedPiece>.Good(new ImportedPiece(outline, holes, tray.Units, [.. _taken], [.. _left], layers));
    }

    /// <summary>The curves on the layers to be taken; a fault when a named layer is not there.</summary>
    private Fault? Curves(ImmutableArray<ImportedLayer> layers, out List<DrawnPath> curves)
    {
        var wanted = choice.Layers.IsDefault ? [] : choice.Layers;
        if (wanted.IsEmpty && layers.Any(l => Same(l.Name, OwnOutline)))
        {
            wanted = [OwnOutline, OwnHoles];
            if (layers.Length > 2 || layers.Any(l => !Same(l.Name, OwnOutline) && !Same(l.Name, OwnHoles))) _taken.Add($"only the layers {OwnOutline} and {OwnHoles}; name others with --layer");
        }
        else if (wanted.FirstOrDefault(w => !layers.Any(l => Same(l.Name, w))) is { } missing)
        {
            curves = [];
            return Fault.OfFile(tray.File, $"The drawing has no layer \"{missing}\".", $"It has: {string.Join(", ", layers.Take(MostListed).Select(l => $"{l.Name} ({l.Curves})"))}.");
        }

        curves = [.. tray.Curves.Where(c => wanted.IsEmpty || wanted.Any(w => Same(w, c.Layer)))];
        foreach (var l in layers)
        {
            if (!wanted.IsEmpty && !wanted.Any(w => Same(w, l.Name))) _left.Add($"layer {l.Name}: {l.Curves} {(l.Curves == 1 ? "curve" : "curves")}");
        }

        return null;
    }

    private List<DrawnLoop> Loops(List<DrawnPath> curves, out int doubled, out List<(ImmutableArray<Segment> Run, string Layer)> runs)
    {
        var loops = curves.Where(c => c.Path.Closed).Select(c => new DrawnLoop(c.Path, c.Layer)).ToList();
        var single = curves.Where(c => !c.Path.Closed).SelectMany(c => c.Path.Segments.Select(s => new LayeredSegment(s, c.Layer))).ToList();
        var net = new LineNet(DoubledLines.Drop(single, out doubled), choice.JoinMm);
        var loose = new List<int>();
        foreach (var walk in OuterWalk.Loops(net, loose))
        {
            var run = walk.Select(s => s.From == 0 ? net.Segments[s.Segment].Segment : net.Segments[s.Segment].Segment.Reversed()).ToList();
            loops.Add(new DrawnLoop(JoinedEnds.Of(run, closed: true, _gaps), net.Segments[walk[0].Segment].Layer));
        }

        runs = [.. JoinedEnds.LooseRuns(net, loose).Select(r => (JoinedEnds.Of(r.Run, closed: false, []).Segments, r.Layer))];
        return loops;
    }

    private static List<DrawnLoop> Circles(List<DrawnLoop> loops, ref int doubled)
    {
        var kept = new List<DrawnLoop>();
        foreach (var l in loops.Where(l => l.Round is not null).OrderBy(l => l.Round!.Value.Centre.X).ThenBy(l => l.Round!.Value.Centre.Y).ThenBy(l => l.Round!.Value.Radius))
        {
            var twin = false;
            for (var i = kept.Count - 1; i >= 0 && kept[i].Round!.Value.Centre.X >= l.Round!.Value.Centre.X - (2 * DoubledLines.SameMm) && !twin; i--)
                twin = kept[i].Round!.Value.Centre.To(l.Round!.Value.Centre) <= DoubledLines.SameMm && Math.Abs(kept[i].Round!.Value.Radius - l.Round!.Value.Radius) <= DoubledLines.SameMm;
            if (twin) doubled++;
            else kept.Add(l);
        }

        return kept;
    }

    /// <summary>Loops largest first, each once.</summary>
    private static List<DrawnLoop> Distinct(List<DrawnLoop> loops, ref int doubled)
    {
        var kept = new List<DrawnLoop>();
        foreach (var l in loops.OrderByDescending(l => l.AreaMm2).ThenBy(l => l.Path.Bounds.MinX).ThenBy(l => l.Path.Bounds.MinY))
        {
            if (Enumerable.Reverse(kept).Take(16).Any(k => k.IsSameAs(l))) doubled++;
            else kept.Add(l);
        }

        return kept;
    }

    private Fault? Outline(List<DrawnLoop> shaped, List<DrawnLoop> open, List<DrawnLoop> all, out DrawnLoop? outer)
    {
        // a round blade is one loop among circles
        if (shaped.Count == 0 && open.Count == 0 && all.Count > 0) shaped.Add(all.OrderByDescending(l => l.AreaMm2).First());
        outer = null;
        if (choice.Loop is { } n)
        {
            if (n >= 1 && n <= shaped.Count) outer = shaped[n - 1];
            return outer is not null ? null : Fault.OfFile(tray.File, $"There is no loop {n} in the drawing.", shaped.Count == 0 ? "It has no closed outline." : "It has: " + Listed(shaped) + ".");
        }

        var rest = shaped.Concat(open).OrderByDescending(l => l.AreaMm2).ToList();
        while (rest.Count > 1 && IsFrame(rest[0], rest))
        {
            if (++_frames <= MostListed) _left.Add($"a frame: {rest[0].Said}" + (tray.Texts.Count == 0 ? $" (if it is the piece: --loop {shaped.IndexOf(rest[0]) + 1})" : ""));
            rest.RemoveAt(0);
        }

        var candidates = rest.Where(l => rest.Count == 1 || !HoldsText(l, rest)).ToList();
        if (candidates.Count == 0) candidates = rest;
        if (candidates.Count > 0 && !candidates[0].IsOpen)
        {
            outer = candidates[0];
            return null;
        }

        // circles alone beside loose lines: the largest circle is the piece when it holds all of them
        if (all.Where(l => l.Round is not null).MaxBy(l => l.AreaMm2) is { } disc && (candidates.Count == 0 || candidates.TrueForAll(disc.Encloses)))
        {
            outer = disc;
            return null;
        }

        return OpenFault(candidates);
    }

    /// <summary>An upright rectangle round everything, with lettering or other shapes in it; circles alone make it a piece with holes.</summary>
    private bool IsFrame(DrawnLoop l, List<DrawnLoop> rest)
        => !l.IsOpen && l.IsUprightRectangle && rest.TrueForAll(l.Encloses) && (tray.Texts.Count > 0 || rest.Exists(o => o != l && (!o.IsOpen || o.AreaMm2 > 0.1 * l.AreaMm2)));

    /// <summary>A box of a title block: an upright rectangle with lettering in it, standing beside the piece.</summary>
    private bool HoldsText(DrawnLoop l, List<DrawnLoop> rest)
        => !l.IsOpen && l.IsUprightRectangle && tray.Texts.Take(MostTexts).Any(l.Path.Bounds.Holds) && !rest.Exists(o => o != l && l.Encloses(o) && !o.IsUprightRectangle);

    private Fault OpenFault(List<DrawnLoop> candidates)
    {
        if (candidates.Count == 0)
            return Fault.OfFile(tray.File, "No closed outline was found in the drawing.", "Draw the outline as one closed run of lines, arcs and curves.");
        var open = candidates.Where(c => c.IsOpen && c.AreaMm2 >= 0.02 * candidates[0].AreaMm2).ToList();
        var ends = open.SelectMany((c, i) => new[] { (At: c.Path.Start, Run: i, End: 0), (At: c.Path.End, Run: i, End: 1) }).Take(400).ToList();
        var gaps = new List<(double Gap, Point A, Point B)>();
        foreach (var e in ends)
        {
            var other = ends.Where(o => o != e).MinBy(o => o.At.To(e.At));
            if (!gaps.Exists(g => (g.A == other.At && g.B == e.At) || (g.A == e.At && g.B == other.At))) gaps.Add((e.At.To(other.At), e.At, other.At));
        }

        string P(Point p) => $"({Shown.Trimmed(p.X, 3)}, {Shown.Trimmed(p.Y, 3)})";
        var said = gaps.OrderBy(g => g.Gap).Take(5).Select(g => $"{Shown.Mm(Length.OfMm(g.Gap), 3)} ({Shown.Inch(Length.OfMm(g.Gap), 4)}) between {P(g.A)} and {P(g.B)} mm");
        return Fault.OfFile(
            tray.File,
            $"The outline is open: a gap of {string.Join("; of ", said)}.",
            $"Close it in the drawing, or join ends farther apart than {Shown.Trimmed(choice.JoinMm, 3)} mm with --join.");
    }

    private ImmutableArray<ImportedHole> Holes(DrawnLoop outer, List<DrawnLoop> round)
    {
        var holes = new List<ImportedHole>();
        foreach (var c in round.Where(c => c != outer))
        {
            var (centre, r) = c.Round!.Value;
            if (!outer.Path.Bounds.Holds(centre) || !Inside.Of(outer.Path, centre))
            {
                _left.Add($"a circle outside the outline: {Ring(c)}");
                continue;
            }

            // rings on one centre: the smallest is the hole, the rest mark a countersink, a tube or a punch ring
            var at = holes.FindIndex(h => h.Centre.To(centre) <= DoubledLines.SameMm);
            if (at >= 0) _left.Add($"a larger circle on the centre of a hole: {Ring(c)}");
            else holes.Add(new ImportedHole(centre, 2 * r, c.Layer));
        }

        return [.. holes];
    }

    private void ListRest(DrawnLoop outer, List<DrawnLoop> shaped, List<DrawnLoop> open, List<(ImmutableArray<Segment> Run, string Layer)> runs, List<DrawnLoop> round)
    {
        var rest = shaped.Where(l => l != outer).Skip(_frames).ToList();
        foreach (var l in rest.Take(MostListed))
        {
            var n = shaped.IndexOf(l) + 1;
            _left.Add(outer.Encloses(l) ? $"loop {n} inside the outline (the plan knows round holes only): {l.Said}" : $"loop {n}, which can be taken with --loop {n}: {l.Said}");
        }

        if (rest.Count > MostListed) _left.Add($"{rest.Count - MostListed} more closed loops");
        var marks = (long)runs.Count * round.Count > 20_000_000 ? 0 : runs.Count(r => IsCentreMark(r.Run, round));
        if (marks > 0) _left.Add($"{marks} centre-mark {(marks == 1 ? "line" : "lines")}");
        var others = runs.Count - marks;
        if (others > 0) _left.Add($"{others} loose {(others == 1 ? "line" : "lines")} that close no loop" + (open.Count > 0 ? $", the largest {open.MaxBy(o => o.AreaMm2)!.Said}" : ""));
    }

    private static bool IsCentreMark(ImmutableArray<Segment> run, List<DrawnLoop> round)
        => run.Length == 1 && run[0] is Line l && round.Exists(c => l.Length <= 4 * c.Round!.Value.Radius && (l.At(0.5).To(c.Round.Value.Centre) <= 0.1 * c.Round.Value.Radius || OnAxis(l, c.Round.Value.Centre, c.Round.Value.Radius)));

    /// <summary>One of the four outer strokes of a broken centre cross.</summary>
    private static bool OnAxis(Line l, Point centre, double radius)
    {
        var along = (l.End - l.Start).Unit;
        return Math.Abs(along.Cross(centre - l.Start)) <= 0.02 * radius && l.At(0.5).To(centre) <= 1.6 * radius && l.Length <= radius;
    }

    private static string Ring(DrawnLoop c) => $"{Shown.Both(Length.OfMm(2 * c.Round!.Value.Radius))} across at {Shown.Trimmed(c.Round.Value.Centre.X, 2)}, {Shown.Trimmed(c.Round.Value.Centre.Y, 2)}, layer {c.Layer}";

    private static string Listed(List<DrawnLoop> loops)
        => string.Join("; ", loops.Take(MostListed).Select((l, i) => string.Create(CultureInfo.InvariantCulture, $"loop {i + 1}: {l.Said}")));

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static Checked<ImportedPiece> Bad(Fault fault) => Checked<ImportedPiece>.Bad(fault);

    private sealed record GatheredLoops(ImmutableArray<ImportedLayer> Layers, List<DrawnLoop> Loops, List<DrawnLoop> Shaped, List<DrawnLoop> Round, List<DrawnLoop> Open, List<(ImmutableArray<Segment> Run, string Layer)> Runs);
}
