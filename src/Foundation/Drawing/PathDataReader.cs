using System.Collections.Immutable;
using System.Globalization;

namespace Tangwright.Foundation;

/// <summary>One reading of path data. Segments are built in the text's own unit and scaled at the end, so that a half turn in inches stays one.</summary>
internal sealed class PathDataReader(string text, double unitMm)
{
    /// <summary>A greater number cannot be a size on a drawing; it keeps all sums finite.</summary>
    private const double Greatest = 1e9;
    private const int MostCharacters = 8_000_000;
    private const string Letters = "MLHVCSQTAZ";

    private readonly ImmutableArray<Path>.Builder _paths = ImmutableArray.CreateBuilder<Path>();
    private readonly ImmutableArray<PathStep>.Builder _steps = ImmutableArray.CreateBuilder<PathStep>();
    private readonly ImmutableArray<PathNumber>.Builder _numbers = ImmutableArray.CreateBuilder<PathNumber>();
    private readonly ImmutableArray<int>.Builder _made = ImmutableArray.CreateBuilder<int>();
    private readonly ImmutableArray<Segment>.Builder _segments = ImmutableArray.CreateBuilder<Segment>();
    private readonly double _near = 5e-7 / unitMm;
    private int _at;
    private PathDataFault? _fault;

    private Point _current;     // where the text stands
    private Point _pen;         // where the last kept segment ended
    private Point _start;       // of the subpath
    private int _startStep;     // the move that began the subpath
    private int _currentStep = -1;
    private int _subpath = -1;
    private Point _control;     // last control point, for S and T
    private char _before = ' '; // command of the step before, capital

    public PathDataResult Read()
    {
        if (text.Length > MostCharacters) Fail(0, $"the path has {text.Length} characters; at most {MostCharacters} are read", "simplify the drawing");
        SkipSpace();
        if (_fault is null && _at == text.Length) Fail(0, "the path is empty", "begin it with M and a point, as M 0 0 L 100 0 L 100 30 Z");
        while (_fault is null && _at < text.Length) ReadCommand();
        if (_fault is null) Finish(closed: false);
        return new PathDataResult(_fault is null ? _paths.ToImmutable() : [], _fault, _steps.ToImmutable(), _numbers.ToImmutable(), _made.ToImmutable());
    }

    private void ReadCommand()
    {
        var letterAt = _at;
        var letter = text[_at];
        var kind = char.ToUpperInvariant(letter);
        if (!char.IsAscii(letter) || !Letters.Contains(kind))
        {
            Fail(_at, IsNumberStart(letter) ? "a number where a command letter is wanted" : $"'{Visible(letter)}' is no path command", "use M L H V C S Q T A Z, each followed by its numbers");
            return;
        }

        if (_subpath < 0 && kind != 'M')
        {
            Fail(_at, $"the path begins with {letter}", "begin it with M and a point");
            return;
        }

        _at++;
        if (kind == 'Z')
        {
            AddStep(letter, letterAt, _numbers.Count, _start);
            Finish(closed: true);
            _currentStep = _startStep;
            _before = 'Z';
            SkipSpace();
            return;
        }

        var implied = false;
        do
        {
            SkipSpace();
            var first = _numbers.Count;
            if (!ReadNumbers(letter, kind, letterAt)) return;
            Step(letter, kind, implied ? -1 : letterAt, first);
            if (_steps.Count > PathData.MostSteps)
            {
                Fail(letterAt, $"the path has more than {PathData.MostSteps} steps", "simplify the drawing");
                return;
            }

            // points after a move are lines
            if (kind == 'M') (kind, letter) = ('L', letter == 'M' ? 'L' : 'l');
            implied = true;
        }
        while (SkipComma());
    }

    private bool ReadNumbers(char letter, char kind, int letterAt)
    {
        var count = kind switch { 'H' or 'V' => 1, 'M' or 'L' or 'T' => 2, 'S' or 'Q' => 4, 'C' => 6, _ => 7 };
        for (var i = 0; i < count; i++)
        {
            if (i > 0) SkipComma();
            var flag = kind == 'A' && i is 3 or 4;
            if (_at >= text.Length || (char.IsAsciiLetter(text[_at]) && Letters.Contains(char.ToUpperInvariant(text[_at]))))
            {
                Fail(_at < text.Length ? _at : letterAt, $"{letter} needs {count} number{(count == 1 ? "" : "s")} at a time; {i} {(i == 1 ? "is" : "are")} there", "write the missing numbers, with a decimal point, not a decimal comma");
                return false;
            }

            if (flag ? !ReadFlag() : !ReadNumber()) return false;
        }

        return true;
    }

    private bool ReadFlag()
    {
        if (text[_at] is not ('0' or '1'))
        {
            Fail(_at, "a flag of an arc is 0 or 1", "A takes rx ry turn large-flag sweep-flag x y, as A 120 120 0 0 1 72 68.78");
            return false;
        }

        _numbers.Add(new PathNumber(_at, 1) { Value = text[_at] - '0' });
        _at++;
        return true;
    }

    private bool ReadNumber()
    {
        var from = _at;
        if (_at < text.Length && text[_at] is '+' or '-') _at++;
        var digits = SkipDigits();
        if (_at < text.Length && text[_at] == '.')
        {
            _at++;
            digits += SkipDigits();
        }

        if (digits == 0)
        {
            _at = from;
            Fail(from, $"'{Visible(text[from])}' where a number is wanted", "write numbers as 12.5, with a decimal point");
            return false;
        }

        if (_at < text.Length && text[_at] is 'e' or 'E')
        {
            var mark = _at++;
            if (_at < text.Length && text[_at] is '+' or '-') _at++;
            if (SkipDigits() == 0) _at = mark;
        }

        var value = double.Parse(text.AsSpan(from, _at - from), NumberStyles.Float, CultureInfo.InvariantCulture);
        if (!(Math.Abs(value) <= Greatest))
        {
            Fail(from, $"the number {Shortened(text.AsSpan(from, _at - from))} is too large", "check the exponent and the unit");
            return false;
        }

        _numbers.Add(new PathNumber(from, _at - from) { Value = value });
        return true;
    }

    private void Step(char letter, char kind, int letterAt, int first)
    {
        var origin = char.IsAsciiLetterLower(letter) ? _current : default;
        double N(int i) => _numbers[first + i].Value;
        Point P(int i) => new(origin.X + N(i), origin.Y + N(i + 1));
        var end = kind switch
        {
            'H' => new Point(origin.X + N(0), _current.Y),
            'V' => new Point(_current.X, origin.Y + N(0)),
            'C' => P(4),
            'S' or 'Q' => P(2),
            'A' => P(5),
            _ => P(0),
        };
        if (!(Math.Abs(end.X) <= Greatest && Math.Abs(end.Y) <= Greatest))
        {
            Fail(_numbers[first].Offset, "the path runs too far away", "check the relative commands and the unit");
            return;
        }

        if (kind == 'M')
        {
            Finish(closed: false);
            _subpath++;
            _startStep = _steps.Count;
            _start = end;
            _pen = end;
        }

        AddStep(letter, letterAt, first, end);
        _currentStep = _steps.Count - 1;
        var reflected = (_current * 2) - _control;
        switch (kind)
        {
            case 'C':
                Keep(new Bezier(_pen, P(0), P(2), end), _pen.To(P(0)) + _pen.To(P(2)));
                _control = P(2);
                break;
            case 'S':
                var c = _before is 'C' or 'S' ? reflected : _current;
                Keep(new Bezier(_pen, c, P(0), end), _pen.To(c) + _pen.To(P(0)));
                _control = P(0);
                break;
            case 'Q':
                Keep(Bezier.OfQuadratic(_pen, P(0), end), _pen.To(P(0)));
                _control = P(0);
                break;
            case 'T':
                var q = _before is 'Q' or 'T' ? reflected : _current;
                Keep(Bezier.OfQuadratic(_pen, q, end), _pen.To(q));
                _control = q;
                break;
            case 'A':
                KeepArc(end, Math.Abs(N(0)), Math.Abs(N(1)), N(2), N(3) != 0, N(4) != 0);
                break;
            case not 'M':
                if (_pen.To(end) > 1e-9) Keep(new Line(_pen, end), 0);
                break;
        }

        _current = end;
        _before = kind;
    }

    private void KeepArc(Point end, double rx, double ry, double turnDegrees, bool large, bool counterClockwise)
    {
        var chord = _pen.To(end);
        if (chord <= 1e-9) return;
        var least = Math.Min(rx, ry);
        var greatest = Math.Max(rx, ry);
        if (greatest <= 0 || least <= 1e-9 * greatest)
        {
            Keep(new Line(_pen, end), 0);
            return;
        }

        // radii far too small are scaled up anyway (F.6.6); done early it keeps their product from vanishing
        if (greatest < 1e-3 * chord)
        {
            var grow = 1e-3 * chord / greatest;
            rx *= grow;
            ry *= grow;
        }

        var axis = rx.Equals(ry) ? new Point(1, 0) : Point.Direction(Math.IEEERemainder(turnDegrees, 360) * Math.PI / 180);
        Keep(Arc.Through(_pen, end, axis * rx, axis.Left * ry, large, counterClockwise), 0);
    }

    private void Keep(Segment segment, double controls)
    {
        if (segment is Bezier && controls + segment.Start.To(segment.End) <= 1e-9) return;
        _segments.Add(segment);
        _made.Add(_steps.Count - 1);
        _pen = segment.End;
    }

    private void Finish(bool closed)
    {
        if (_segments.Count > 0)
        {
            var gap = _pen.To(_start);
            if (closed && gap > _near)
            {
                _segments.Add(new Line(_pen, _start));
                _made.Add(_steps.Count - 1);
            }

            var path = new Path(_segments.ToImmutable(), closed || gap <= _near);
            _paths.Add(unitMm.Equals(1.0) ? path : path.Transformed(Transform.Scale(unitMm, unitMm)));
        }

        _segments.Clear();
        _current = _start;
        _pen = _start;
    }

    private void AddStep(char letter, int letterAt, int firstNumber, Point end)
        => _steps.Add(new PathStep(letter, letterAt, firstNumber, _numbers.Count - firstNumber, _currentStep, _subpath, end * unitMm));

    private int SkipDigits()
    {
        var from = _at;
        while (_at < text.Length && char.IsAsciiDigit(text[_at])) _at++;
        return _at - from;
    }

    private void SkipSpace()
    {
        while (_at < text.Length && text[_at] is ' ' or '\t' or '\r' or '\n' or '\f') _at++;
    }

    /// <summary>Skips space and one comma; whether a number follows.</summary>
    private bool SkipComma()
    {
        SkipSpace();
        var comma = _at < text.Length && text[_at] == ',';
        if (comma)
        {
            _at++;
            SkipSpace();
        }

        return _fault is null && ((_at < text.Length && IsNumberStart(text[_at])) || comma);
    }

    private static bool IsNumberStart(char c) => char.IsAsciiDigit(c) || c is '+' or '-' or '.';

    private static string Visible(char c) => char.IsControl(c) || char.IsSurrogate(c) ? $"character {(int)c:X4}" : c.ToString();

    private static string Shortened(ReadOnlySpan<char> number) => number.Length <= 24 ? number.ToString() : string.Concat(number[..24], "...");

    private void Fail(int offset, string message, string remedy) => _fault ??= new PathDataFault(offset, message, remedy);
}
