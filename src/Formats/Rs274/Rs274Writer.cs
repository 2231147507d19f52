using System.Text;
using Tangwright.Foundation;

namespace Tangwright.Formats;

/// <summary>A toolpath as a program in RS-274/NGC (NIST IR 6556), in the words that a machine knows. The path is that of the tool's centre; heights are those of its tip.</summary>
public static class Rs274Writer
{
    /// <summary>Arcs written as straight moves stay this close, mm: the tolerance of arcs in NIST IR 6556.</summary>
    public const double LinesWithinMm = 0.002;

    /// <summary>The program.</summary>
    /// <param name="path">The toolpath.</param>
    /// <param name="dialect">What the machine understands.</param>
    /// <param name="remarks">Lines for the one at the machine, at the top.</param>
    public static string Write(Toolpath path, ProgramDialect dialect, IEnumerable<string> remarks)
    {
        var run = new Run(path, dialect);
        run.Head(remarks);
        foreach (var step in path.Steps) run.Step(step);
        run.Foot();
        return run.Text;
    }

    private sealed class Run(Toolpath path, ProgramDialect dialect)
    {
        /// <summary>How far over the last depth a drill comes back before it feeds on, mm.</summary>
        private const double BackOffMm = 0.25;

        /// <summary>Shorter arcs are written as straight moves, mm.</summary>
        private const double ShortestArcMm = 0.02;

        private readonly StringBuilder _text = new();
        private SpacePoint _at = new(double.NaN, double.NaN, double.NaN);
        private Point _exact = new(double.NaN, double.NaN);
        private string _feed = "";
        private bool _inCycle;
        private int _tool;

        public string Text => _text.ToString();

        private bool Inch => dialect.IsInch;

        public void Head(IEnumerable<string> remarks)
        {
            Put("%");
            Put(ProgramWords.Remark(path.Title));
            foreach (var r in remarks) Put(ProgramWords.Remark(r));
            foreach (var t in path.Tools) Put(ProgramWords.Remark($"T{t.Number}: {t.Name}"));
            Put($"G17 {(Inch ? "G20" : "G21")} G40 G49 G54 G80 G90 G94");
            Put("G61");
            if (dialect.HasDrillCycles) Put("G98");
        }

        public void Foot()
        {
            EndCycle();
            Rapid(_at with { Z = path.SafeZMm });
            Put("M9");
            Put("M5");
            Put("M2");
            Put("%");
        }

        public void Step(ToolpathStep step)
        {
            if (step is not DrillStep) EndCycle();
            switch (step)
            {
                case RemarkStep r: Put(ProgramWords.Remark(r.Text)); break;
                case ToolStep t: Change(t); break;
                case DwellStep d: Put("G4 P" + ProgramWords.Number(d.Seconds, 2)); break;
                case RapidStep r: Rapid(Round(r.To)); break;
                case FeedStep f: Feed(Round(f.To), f.MmPerMin); break;
                case ArcStep a: Arc(a); break;
                case DrillStep d: Drill(d); break;
                default: throw new ArgumentException("a step of a kind not known here", nameof(step));
            }

            _exact = step switch { RapidStep r => r.To.Flat, FeedStep f => f.To.Flat, ArcStep a => a.To.Flat, DrillStep d => d.At, _ => _exact };
        }

        private void Change(ToolStep t)
        {
            if (_tool > 0) Rapid(_at with { Z = path.SafeZMm });
            if (_tool > 0 && _tool != t.Tool.Number) Put("M5");
            Put(ProgramWords.Remark($"{t.Tool.Name}, {ProgramWords.Number(t.TurnsPerMin, 0)} rpm"));
            if (_tool == t.Tool.Number)
            {
                // it stays in the spindle, at another speed
            }
            else if (dialect.HasToolChange)
            {
                Put($"T{t.Tool.Number} M6");
                Put($"G43 H{t.Tool.Number}");
            }
            else
            {
                Put($"T{t.Tool.Number}");
                Put(ProgramWords.Remark($"put in {t.Tool.Name}, touch off its tip, then go on"));
                Put("M0");
            }

            Put($"S{ProgramWords.Number(t.TurnsPerMin, 0)} M3");
            Put("G4 P2");
            Put("G0 " + ProgramWords.Length('Z', path.SafeZMm, Inch));
            _at = _at with { Z = path.SafeZMm };
            (_tool, _feed) = (t.Tool.Number, "");
        }

        private void Rapid(SpacePoint to) => Move("G0", to, "");

        private void Feed(SpacePoint to, double mmPerMin) => Move("G1", to, FeedWord(mmPerMin));

        private void Move(string word, SpacePoint to, string feed)
        {
            var axes = Axes(to);
            if (axes.Length == 0) return;
            Put(word + axes + feed);
            _at = to;
        }

        private string Axes(SpacePoint to)
        {
            var b = new StringBuilder();
            if (to.X != _at.X && !double.IsNaN(to.X)) b.Append(' ').Append(ProgramWords.Length('X', to.X, Inch));
            if (to.Y != _at.Y && !double.IsNaN(to.Y)) b.Append(' ').Append(ProgramWords.Length('Y', to.Y, Inch));
            if (to.Z != _at.Z) b.Append(' ').Append(ProgramWords.Length('Z', to.Z, Inch));
            return b.ToString();
        }

        private void Arc(ArcStep a)
        {
            var to = Round(a.To);
            var isFull = a.To.Flat.To(_exact) < 1e-9 && a.To.Flat.To(a.Centre) > 1e-2;
            if (isFull) to = new(_at.X, _at.Y, to.Z);
            var centre = isFull ? a.Centre : OnTheMiddle(_at.Flat, to.Flat, a.Centre);
            var arc = MotionPath.ArcOf(_at.Flat, to.Flat, centre, a.IsCounterClockwise);

            // too short for a controller to tell from a full turn
            if (!isFull && MotionPath.ArcOf(_exact, a.To.Flat, a.Centre, a.IsCounterClockwise).Length < ShortestArcMm)
            {
                Feed(to, a.MmPerMin);
                return;
            }

            if (!dialect.HasArcs || (to.Z != _at.Z && !dialect.HasHelix))
            {
                var most = 2 * Math.Acos(Math.Max(0, 1 - (LinesWithinMm / Math.Max(arc.Radius, LinesWithinMm))));
                var count = Math.Max(isFull ? 8 : 1, (int)Math.Ceiling(Math.Abs(arc.Sweep) / most));
                var from = _at;
                for (var i = 1; i <= count; i++)
                {
                    var p = arc.At((double)i / count);
                    Feed(i == count ? to : Round(new(p.X, p.Y, from.Z + ((to.Z - from.Z) * i / count))), a.MmPerMin);
                }

                return;
            }

            var step = centre - _at.Flat;
            var z = to.Z != _at.Z ? " " + ProgramWords.Length('Z', to.Z, Inch) : "";
            Put($"{(a.IsCounterClockwise ? "G3" : "G2")} {ProgramWords.Length('X', to.X, Inch)} {ProgramWords.Length('Y', to.Y, Inch)}{z} {ProgramWords.Length('I', step.X, Inch)} {ProgramWords.Length('J', step.Y, Inch)}{FeedWord(a.MmPerMin)}");
            _at = to;
        }

        /// <summary>The centre moved so that both ends, rounded as written, are equally far from it.</summary>
        private static Point OnTheMiddle(Point a, Point b, Point centre)
        {
            var chord = b - a;
            if (chord.Length < 1e-6) return centre;
            var middle = a.Toward(b, 0.5);
            return centre - (chord.Unit * (centre - middle).Dot(chord.Unit));
        }

        private void Drill(DrillStep d)
        {
            var over = Round(new(d.At.X, d.At.Y, path.SafeZMm));
            if (_at.Z != over.Z) Rapid(_at with { Z = over.Z });
            if (!dialect.HasDrillCycles)
            {
                Single(d, over);
                return;
            }

            Rapid(over);
            var word = d.IsFedOut ? "G85" : d.PeckMm is not null ? "G83" : d.DwellSeconds > 0 ? "G82" : "G81";
            var more = d.PeckMm is { } q && !d.IsFedOut ? " " + ProgramWords.Length('Q', q, Inch) : word == "G82" ? " P" + ProgramWords.Number(d.DwellSeconds, 2) : "";
            Put($"{word} {ProgramWords.Length('X', over.X, Inch)} {ProgramWords.Length('Y', over.Y, Inch)} {ProgramWords.Length('Z', d.BottomZMm, Inch)} {ProgramWords.Length('R', d.RetractZMm, Inch)}{more}{FeedWord(d.MmPerMin)}");
            _inCycle = true;
        }

        private void Single(DrillStep d, SpacePoint over)
        {
            SpacePoint At(double z) => Round(over with { Z = z });
            Rapid(over);
            Rapid(At(d.RetractZMm));
            var z = d.RetractZMm;
            while (d.PeckMm is { } bite && z - bite > d.BottomZMm && !d.IsFedOut)
            {
                z -= bite;
                Feed(At(z), d.MmPerMin);
                Rapid(At(d.RetractZMm));
                Rapid(At(z + BackOffMm));
            }

            Feed(At(d.BottomZMm), d.MmPerMin);
            if (d.DwellSeconds > 0) Put("G4 P" + ProgramWords.Number(d.DwellSeconds, 2));
            if (d.IsFedOut) Feed(At(d.RetractZMm), d.MmPerMin);
            Rapid(over);
        }

        private void EndCycle()
        {
            if (_inCycle) Put("G80");
            _inCycle = false;
        }

        private string FeedWord(double mmPerMin)
        {
            var word = ProgramWords.Feed(mmPerMin, Inch);
            if (word == _feed) return "";
            _feed = word;
            return " " + word;
        }

        private SpacePoint Round(SpacePoint p) => new(ProgramWords.Rounded(p.X, Inch), ProgramWords.Rounded(p.Y, Inch), ProgramWords.Rounded(p.Z, Inch));

        private void Put(string line) => _text.Append(line).Append('\n');
    }
}
