using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Inputs;

/// <summary>One reading of a program: the machine's memory and what has come out so far.</summary>
internal sealed class ProgramReadingRun(ImmutableArray<ProgramTool> tools, bool hasToolChange, SpacePoint start)
{
    private readonly ProgramState _now = new() { At = start, Stands = start };
    private readonly List<Motion> _motions = [];
    private readonly List<ToolChange> _changes = [];
    private readonly List<WordUse> _uses = [];
    private readonly List<ProgramTrouble> _troubles = [];
    private readonly Dictionary<int, int> _withoutLength = [];
    private string[]? _unsaid;
    private double? _blendMm = 0;
    private int _tapeMarks;

    public int EndLine { get; private set; }

    public bool No(int line, string kind, string what, string remedy)
    {
        _troubles.Add(new ProgramTrouble(kind, line, what, remedy));
        return false;
    }

    public void Take(ProgramBlock block)
    {
        if (block.IsTapeMark)
        {
            if (++_tapeMarks == 2) EndLine = block.Line;
            return;
        }

        if (block.Words.IsEmpty) return;
        if (BlockRules.Broken(block) is { } broken) No(block.Line, "reading", broken.What, broken.Remedy);
        else _ = Speeds(block) && Tools(block) && Modes(block) && Moves(block) && Stops(block);
    }

    public ProgramReading Done(int lines)
    {
        RunCompensated(lines);
        if (EndLine == 0) No(lines, "end", "the program does not end", "end it with M2");
        if (_uses.Exists(u => u.Word == ProgramWord.ToolLength))
        {
            foreach (var (tool, line) in _withoutLength) No(line, "tool length", $"tool {tool} cuts, but its length is not allowed for", $"write G43 H{tool} after the tool change");
        }

        return new([.. _motions], [.. _changes], [.. _uses], [.. _unsaid ?? []], _blendMm, EndLine, [.. _troubles]);
    }

    private bool Speeds(ProgramBlock b)
    {
        if (b.Get('F') is { } f)
        {
            if (f < 0) return No(b.Line, "feed", "the feed is below 0", "write a feed above 0");
            if (Has(b, 'G', 20) || Has(b, 'G', 21)) return No(b.Line, "reading", "a feed in the line that sets the unit", "write G20 or G21 in a line before it");
            _now.FeedMmPerMin = f * _now.UnitMm;
        }

        if (b.Get('S') is { } s)
        {
            if (s < 0) return No(b.Line, "spindle", "the speed is below 0", "write a speed above 0");
            _now.SetTurnsPerMin = s;
        }

        return true;
    }

    private bool Tools(ProgramBlock b)
    {
        if (b.Get('T') is { } t)
        {
            if (t != 0 && !tools.Any(x => x.Number == t)) return No(b.Line, "tool", $"there is no tool T{t:0.###}", "call a tool of the set-up sheet");
            _now.Next = (int)t;
        }

        if (Has(b, 'M', 6))
        {
            Use(ProgramWord.ToolChange, b.Line);
            if (_now.Next == 0) return No(b.Line, "tool", "M6 without a tool to put in", "name it with T before M6");
            if (_now.Compensated is not null) return No(b.Line, "compensation", "the tool changes while cutter compensation is on", "write G40 first");
            _changes.Add(new ToolChange(b.Line, _now.Next, _now.Stands, 0));
            _now.IsTurning = false;
            _now.Tool = _now.Next;
        }

        if (Has(b, 'M', 4)) return No(b.Line, "spindle", "the spindle turns backwards", "write M3: these tools cut clockwise");
        if (Has(b, 'M', 3)) _now.IsTurning = true;
        if (Has(b, 'M', 5)) _now.IsTurning = false;
        return true;
    }

    private bool Modes(ProgramBlock b)
    {
        foreach (var w in b.Words.Where(w => w.Letter == 'G'))
        {
            foreach (var say in ProgramState.ToSay)
            {
                if (say.Split(" or ").Contains(w.ToString())) _now.Said.Add(say);
            }

            if (w.Value is 0 or 1 or 2 or 3 or (>= 81 and <= 89)) _now.Said.Add("G80");
            if (w.Value is 91) _now.Said.Add("G90");
            if (w.Value is 43) _now.Said.Add("G49");
        }

        if (Has(b, 'G', 4) && b.Get('P') is not >= 0) return No(b.Line, "reading", "G4 without how long to wait", "write P and the seconds");
        foreach (var (code, mm, word) in new[] { (20, 25.4, ProgramWord.Inches), (21, 1, ProgramWord.Millimetres) })
        {
            if (!Has(b, 'G', code)) continue;
            if (_unsaid is not null && mm != _now.UnitMm) return No(b.Line, "reading", "the unit changes in the middle of the program", "keep one unit");
            _now.UnitMm = mm;
            Use(word, b.Line);
        }

        return Compensation(b) && Lengths(b) && Rest(b);
    }

    private bool Compensation(ProgramBlock b)
    {
        if (Has(b, 'G', 40)) return RunCompensated(b.Line);
        var left = Has(b, 'G', 41);
        if (!left && !Has(b, 'G', 42)) return true;
        Use(ProgramWord.Compensation, b.Line);
        if (_now.Compensated is not null) return No(b.Line, "compensation", "cutter compensation is on already", "write G40 first");
        var number = (int)(b.Get('D') ?? _now.Tool);
        if (number != _now.Tool || tools.FirstOrDefault(t => t.Number == number) is not { } tool) return No(b.Line, "compensation", $"D{number} is not the tool in the spindle", $"write D{_now.Tool}");
        _now.Compensated = new CompensatedPath(b.Line, tool.DiameterMm / 2 * (left ? 1 : -1));
        return true;
    }

    private bool Lengths(ProgramBlock b)
    {
        if (Has(b, 'G', 49)) _now.LengthTool = 0;
        if (!Has(b, 'G', 43)) return true;
        Use(ProgramWord.ToolLength, b.Line);
        _now.LengthTool = (int)(b.Get('H') ?? _now.Tool);
        return true;
    }

    private bool Rest(ProgramBlock b)
    {
        if (Has(b, 'G', 61) || Has(b, 'G', 61.1)) (_now.BlendMm, _) = (0, _now.Said.Add("G61"));
        if (Has(b, 'G', 64)) (_now.BlendMm, _) = (b.Get('P') * _now.UnitMm, _now.Said.Add("G61"));
        if (Has(b, 'G', 90)) _now.IsIncremental = false;
        if (Has(b, 'G', 91)) _now.IsIncremental = true;
        foreach (var (code, toOldZ) in new[] { (98, true), (99, false) })
        {
            if (!Has(b, 'G', code)) continue;
            if (_now.Cycle is not null && toOldZ != _now.ReturnsToOldZ) return No(b.Line, "cycle", "the height to draw out to changes within a drill cycle: machines differ in what they make of it", "write G80 before it, and the whole cycle after it");
            (_now.ReturnsToOldZ, _) = (toOldZ, _now.Said.Add("G98"));
        }

        foreach (var code in new[] { 0, 1, 2, 3, 80, 81, 82, 83, 85, 89 })
        {
            if (!Has(b, 'G', code)) continue;
            if (code != _now.Motion) _now.Cycle = null;
            _now.Motion = code;
        }

        return true;
    }

    private bool Moves(ProgramBlock b)
    {
        var isArc = _now.Motion is 2 or 3;
        var isCycle = _now.Motion >= 81;
        foreach (var (letter, isUsed) in new[]
        {
            ('I', isArc), ('J', isArc), ('K', false), ('R', isArc || isCycle), ('Q', isCycle), ('L', isCycle),
            ('P', isCycle || Has(b, 'G', 4) || Has(b, 'G', 64)), ('D', Has(b, 'G', 41) || Has(b, 'G', 42)), ('H', Has(b, 'G', 43)),
        })
        {
            if (!isUsed && b.Get(letter) is not null) return No(b.Line, "reading", $"{letter} means nothing in this line", "leave it out");
        }

        if (b.Get('X') is null && b.Get('Y') is null && b.Get('Z') is null)
        {
            return !((isArc || isCycle) && b.Words.Any(w => w.Letter == 'G' && w.Value == _now.Motion))
                || No(b.Line, "reading", $"G{_now.Motion} without a place", "write X and Y");
        }

        if (_now.Motion == 80) return No(b.Line, "reading", "a place, but no word that says how to go there", "write G0 or G1");
        SayUnsaid();
        return isCycle ? Drills(b) : isArc ? Turns(b) : Goes(b);
    }

    private bool Goes(ProgramBlock b)
    {
        var to = To(b);
        if (_now.Motion == 0) return Emit(b.Line, MotionKind.Rapid, to, default, false);
        return Feeds(b.Line) && Emit(b.Line, MotionKind.Feed, to, default, false);
    }

    private bool Turns(ProgramBlock b)
    {
        Use(ProgramWord.Arc, b.Line);
        var to = To(b);
        if (!Feeds(b.Line)) return false;
        if (!double.IsFinite(_now.At.X + _now.At.Y + _now.At.Z)) return No(b.Line, "start", "an arc from a place that is not known", "go to its start first");
        if (_now.Compensated is null && _now.Stands.Flat.To(_now.At.Flat) > ArcWords.RadiusMm) return No(b.Line, "compensation", "the first move after G40 is an arc", "leave on a straight line");
        var centre = ArcWords.Centre(b, _now.UnitMm, _now.At.Flat, to.Flat, _now.Motion == 3);
        if (!centre.IsGood) return No(b.Line, "arc", centre.Message, centre.Remedy);
        if (to.Z != _now.At.Z) Use(ProgramWord.Helix, b.Line);
        return Emit(b.Line, MotionKind.Arc, to, centre.Value, _now.Motion == 3);
    }

    private bool Drills(ProgramBlock b)
    {
        Use(ProgramWord.DrillCycle, b.Line);
        if (_now.Compensated is not null) return No(b.Line, "compensation", "a drill cycle while cutter compensation is on", "write G40 first");
        if (!_now.Said.Contains("G98")) return No(b.Line, "start", "a drill cycle before it is said how far it draws out: the machine keeps what the last program left", "write G98 or G99 at the top");
        if (!Feeds(b.Line)) return false;
        var old = _now.Cycle;
        double? Mm(char letter) => b.Get(letter) * _now.UnitMm;
        if ((Mm('Z') ?? old?.Z) is not { } z) return No(b.Line, "cycle", $"G{_now.Motion} without a depth", "write Z");
        if ((Mm('R') ?? old?.R) is not { } r) return No(b.Line, "cycle", $"G{_now.Motion} without a height to feed from", "write R");
        var cycle = new DrillCycle(_now.Motion, old?.OldZ ?? _now.At.Z, z, r, Mm('Q') ?? old?.Q, b.Get('P') ?? old?.P);
        if (cycle.Code == 83 && cycle.Q is not > 0) return No(b.Line, "cycle", "G83 without a bite", "write Q above 0");
        if (cycle.Code is 82 or 89 && cycle.P is not >= 0) return No(b.Line, "cycle", $"G{cycle.Code} without how long to wait", "write P and the seconds");
        var times = b.Get('L') ?? 1;
        if (times < 1 || times != Math.Floor(times)) return No(b.Line, "cycle", "L is how often: a whole number above 0", "write L1 or leave it out");
        _now.Cycle = cycle;
        for (var i = 0; i < times; i++)
        {
            var over = Flat(b);
            var retract = _now.IsIncremental ? cycle.OldZ + r : r;
            var bottom = _now.IsIncremental ? retract + z : z;
            if (bottom > retract) return No(b.Line, "cycle", "the hole's bottom lies above the height to feed from", "write R above Z");
            foreach (var (to, isFeed) in cycle.Steps(_now.At, over, bottom, retract, _now.ReturnsToOldZ))
            {
                if (to != _now.At) Emit(b.Line, isFeed ? MotionKind.Feed : MotionKind.Rapid, to, default, false);
            }
        }

        return true;
    }

    private bool Stops(ProgramBlock b)
    {
        if (Has(b, 'M', 0) && !hasToolChange && _now.Next != _now.Tool)
        {
            if (!RunCompensated(b.Line)) return false;
            _changes.Add(new ToolChange(b.Line, _now.Next, _now.Stands, _now.TurnsPerMin));
            _now.Tool = _now.Next;
        }

        if (Has(b, 'M', 2) || Has(b, 'M', 30))
        {
            if (_now.Compensated is not null) No(b.Line, "compensation", "the program ends with cutter compensation on", "write G40 and leave on a straight line");
            RunCompensated(b.Line);
            EndLine = b.Line;
        }

        return true;
    }

    private bool Feeds(int line) => _now.FeedMmPerMin > 0 || No(line, "feed", "a cutting move without a feed", "write F");

    private Point Flat(ProgramBlock b)
    {
        double One(char letter, double at) => b.Get(letter) is not { } v ? at : (v * _now.UnitMm) + (_now.IsIncremental ? at : 0);
        return new(One('X', _now.At.X), One('Y', _now.At.Y));
    }

    private SpacePoint To(ProgramBlock b)
    {
        var flat = Flat(b);
        return new(flat.X, flat.Y, b.Get('Z') is not { } z ? _now.At.Z : (z * _now.UnitMm) + (_now.IsIncremental ? _now.At.Z : 0));
    }

    private bool Emit(int line, MotionKind kind, SpacePoint to, Point centre, bool counterClockwise)
    {
        var motion = new Motion(line, kind, _now.Compensated is null ? _now.Stands : _now.At, to, centre, counterClockwise, kind == MotionKind.Rapid ? 0 : _now.FeedMmPerMin, _now.Tool, _now.TurnsPerMin);
        if (_now.Compensated is { } path)
        {
            // the first move leads in from where the tool stands
            if (path.Count == 0) motion = motion with { From = _now.Stands };
            if (path.Add(motion) is { } wrong) return No(line, "compensation", wrong.What, wrong.Remedy);
        }
        else
        {
            _motions.Add(motion);
            _now.Stands = to;
        }

        _now.At = to;
        if (kind == MotionKind.Rapid) return true;
        _blendMm = _now.Said.Contains("G61") && _now.BlendMm is { } blend && _blendMm is { } widest ? Math.Max(blend, widest) : null;
        if (_now.LengthTool == 0) _withoutLength.TryAdd(_now.Tool, line);
        else if (_now.LengthTool != _now.Tool) return No(line, "tool length", $"tool {_now.Tool} cuts with the length of tool {_now.LengthTool}", $"write G43 H{_now.Tool} after the tool change");
        return true;
    }

    private bool RunCompensated(int line)
    {
        if (_now.Compensated is not { } path) return true;
        _now.Compensated = null;
        var (motions, trouble) = path.Run();
        if (trouble is not null)
        {
            _troubles.Add(trouble);
            return false;
        }

        _motions.AddRange(motions);
        if (motions.Count > 0) _now.Stands = motions[^1].To;
        return path.Count > 0 || No(line, "compensation", "cutter compensation goes off before anything is cut with it", "leave G41 or G42 out");
    }

    private void SayUnsaid() => _unsaid ??= [.. ProgramState.ToSay.Where(s => !_now.Said.Contains(s))];

    private void Use(ProgramWord word, int line)
    {
        if (!_uses.Exists(u => u.Word == word)) _uses.Add(new WordUse(word, line));
    }

    private static bool Has(ProgramBlock b, char letter, double value) => b.Words.Contains(new ProgramLetter(letter, value));
}
