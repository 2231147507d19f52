using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>The path of a tool kept to one side of the path that is written (G41, G42; NIST IR 6556, 3.5.10 and appendix B): outside corners go round in an arc, inside corners are cut where the neighbours meet. The first move leads in from where the tool stands.</summary>
/// <param name="Line">Line that turns it on.</param>
/// <param name="Left">Distance to the left of the written path, mm; negative to the right.</param>
internal sealed record CompensatedPath(int Line, double Left)
{
    private const double ClosesMm = 0.002;

    private readonly List<Motion> _written = [];

    /// <summary>How many moves across it has.</summary>
    public int Count => _written.Count(m => m.Flat() is not null);

    /// <summary>Takes the next written motion; says what is wrong with it.</summary>
    public (string What, string Remedy)? Add(Motion motion)
    {
        if (motion.Flat() is { } flat && Count == 0)
        {
            if (motion.Kind == MotionKind.Arc) return ("the first move with cutter compensation is an arc", "lead in on a straight line");
            if (flat.Length < Math.Abs(Left)) return ($"the lead-in is {Shown.Mm(Length.OfMm(flat.Length))} long, shorter than the tool's radius {Shown.Mm(Length.OfMm(Math.Abs(Left)))}", "lead in on a longer straight line");
        }

        _written.Add(motion);
        return null;
    }

    /// <summary>The motions of the tool's centre, or what does not fit.</summary>
    public (IReadOnlyList<Motion> Motions, ProgramTrouble? Trouble) Run()
    {
        var run = new List<Motion>();
        var entry = true;
        foreach (var written in _written)
        {
            if (written.Flat() is not { } flat)
            {
                var at = run.Count > 0 ? run[^1].To : written.From;
                run.Add(written with { From = at, To = at with { Z = written.To.Z } });
                continue;
            }

            if (Beside(written, flat) is not { } next) return No(written.Line, "the tool's radius is larger than this inside arc");
            var lastAcross = run.FindLastIndex(m => m.Flat() is not null);
            if (lastAcross >= 0 && !Join(run, lastAcross, flat, ref next)) return No(written.Line, "the tool does not fit into the inside corner before it");
            run.Add(next);
            entry = false;
        }

        if (!entry)
        {
            // it leads in from where it really stands
            var first = run.FindIndex(m => m.Flat() is not null);
            run[first] = run[first] with { From = _written.First(m => m.Flat() is not null).From };
        }

        return (run, null);
    }

    private static (IReadOnlyList<Motion> Motions, ProgramTrouble? Trouble) No(int line, string what)
        => ([], new ProgramTrouble("compensation", line, what, "use a smaller end mill, or round the corner off more"));

    /// <summary>A written motion moved to the tool's side; null when nothing is left of it.</summary>
    private Motion? Beside(Motion written, Segment flat)
    {
        Point Off(double t) => flat.At(t) + (flat.Tangent(t).Left * Left);
        if (flat is Arc arc && arc.Radius - (arc.IsCounterClockwise ? Left : -Left) <= ClosesMm) return null;
        var (from, to) = (Off(0), flat is Arc && written.From.Flat.To(written.To.Flat) < 1e-9 ? Off(0) : Off(1));
        return written with { From = new SpacePoint(from.X, from.Y, written.From.Z), To = new SpacePoint(to.X, to.Y, written.To.Z) };
    }

    /// <summary>Joins the last move across with the next one.</summary>
    private bool Join(List<Motion> run, int last, Segment written, ref Motion next)
    {
        var before = run[last];
        var (end, start) = (before.To.Flat, next.From.Flat);
        if (end.To(start) <= ClosesMm)
        {
            next = next with { From = Flat(next.From, end) };
            return true;
        }

        var corner = written.Start;
        if (before.Flat()!.Tangent(1).Cross(written.Tangent(0)) * Left < 0 || before.Flat()!.Tangent(1).Dot(written.Tangent(0)) < -0.999999)
        {
            var z = run[^1].To.Z;
            run.Add(next with { Kind = next.Kind == MotionKind.Rapid ? MotionKind.Rapid : MotionKind.Arc, From = new SpacePoint(end.X, end.Y, z), To = new SpacePoint(start.X, start.Y, z), Centre = corner, IsCounterClockwise = Left < 0 });
            return true;
        }

        var met = Crossings.Between(new Path([before.Flat()!], closed: false), new Path([next.Flat()!], closed: false), 4);
        if (met.IsEmpty) return false;
        var at = met[^1].At;
        run[last] = before with { To = Flat(before.To, at) };
        for (var i = last + 1; i < run.Count; i++) run[i] = run[i] with { From = Flat(run[i].From, at), To = Flat(run[i].To, at) };
        next = next with { From = Flat(next.From, at) };
        return true;
    }

    private static SpacePoint Flat(SpacePoint p, Point at) => new(at.X, at.Y, p.Z);
}
