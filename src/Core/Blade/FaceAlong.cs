namespace Tangwright.Core;

/// <summary>The law of <see cref="GrindProfile"/> along one ray from the sharpened part. mm.</summary>
internal readonly struct FaceAlong
{
    /// <summary>Most breaks there can be.</summary>
    public const int MostBreaks = 48;

    private readonly FaceThickness _faces;
    private readonly double _x, _ux, _h, _te, _rise, _sides, _facet;

    // circle of the face, of half the thickness or all of it; bend: −1 hollow, 1 convex, 0 straight
    private readonly double _cx, _cz, _r;
    private readonly int _bend;

    /// <summary>From a foot on the sharpened part.</summary>
    /// <param name="law">The law.</param>
    /// <param name="x">x of the foot.</param>
    /// <param name="ux">x of the direction, length 1.</param>
    /// <param name="height">Height of the bevel there; not looked at for a constant angle.</param>
    public FaceAlong(GrindProfile law, double x, double ux, double height)
    {
        (_faces, _x, _ux, _te, _sides) = (law.Faces, x, ux, law.EdgeMm, law.Sides);
        _facet = _sides * law.SharpenTangent;
        if (law.FlatTangent is { } tan)
        {
            (_h, _rise) = (double.PositiveInfinity, _sides * tan);
            return;
        }

        _h = height;
        var z = (_faces.At(x + (ux * height)) - _te) / _sides;
        _rise = _sides * z / height;
        if (law.Grind == Grind.Flat || (law.RadiusMm is null && (law.Grind == Grind.Hollow || !(z > 0)))) return;
        var chord = Math.Sqrt((height * height) + (z * z));
        _r = Math.Max(law.RadiusMm ?? (chord * chord / (2 * z)), 0.5 * chord * (1 + 1e-9));
        _bend = law.Grind == Grind.Hollow ? -1 : 1;
        var off = -_bend * Math.Sqrt((_r * _r) - (0.25 * chord * chord)) / chord;
        (_cx, _cz) = ((0.5 * height) - (z * off), (_te / _sides) + (0.5 * z) + (height * off));
    }

    /// <summary>Whether the face is part of a circle.</summary>
    public bool IsRound => _bend != 0;

    /// <summary>Thickness of the flat faces at a distance.</summary>
    public double Flat(double d) => _faces.At(_x + (_ux * d));

    /// <summary>Thickness at a distance.</summary>
    public double At(double d) => At(d, Flat(d));

    /// <summary>How much thinner than the flat faces it is at a distance.</summary>
    public double Taken(double d)
    {
        var flat = Flat(d);
        return flat - At(d, flat);
    }

    private double At(double d, double flat)
    {
        var t = flat;
        if (d < _h) t = Math.Min(t, Face(d));
        if (_facet > 0) t = Math.Min(t, _facet * d);
        return t > 0 ? t : 0;
    }

    /// <summary>Distances between two others at which the law has a kink, ascending.</summary>
    /// <param name="from">Least.</param>
    /// <param name="to">Greatest.</param>
    /// <param name="breaks">Room for <see cref="MostBreaks"/>.</param>
    /// <returns>How many.</returns>
    public int Breaks(double from, double to, Span<double> breaks)
    {
        var n = 0;
        if (_h < to) Put(_h, from, to, breaks, ref n);
        if (_bend != 0)
        {
            Round(0, 0, from, to, breaks, ref n);
            if (_facet > 0) Round(0, _facet, from, to, breaks, ref n);
            if (_r < 0.8 * _h) Put(0.5 * _h, from, to, breaks, ref n);
        }
        else if (_facet > _rise)
        {
            // the sharpened facet meets the face
            var meet = _te / (_facet - _rise);
            if (meet < _h) Put(meet, from, to, breaks, ref n);
        }

        // each straight stretch of the flat faces against face and facet
        var even = _faces.IsEven || _ux == 0;
        if (even)
        {
            Against(Flat(0), 0, from, to, breaks, ref n);
            return n;
        }

        var knots = _faces.KinksMm;
        var (one, other) = (_x + (_ux * from), _x + (_ux * to));
        var (left, right) = one < other ? (one, other) : (other, one);
        for (var i = 0; i <= knots.Length; i++)
        {
            if ((i > 0 && knots[i - 1] > right) || (i < knots.Length && knots[i] < left)) continue;
            if (i < knots.Length) Put((knots[i] - _x) / _ux, from, to, breaks, ref n);
            var (a, b) = i == 0 ? (knots[0] - 1, knots[0]) : i == knots.Length ? (knots[^1], knots[^1] + 1) : (knots[i - 1], knots[i]);
            var slope = b > a ? (_faces.At(b) - _faces.At(a)) / (b - a) : 0;
            Against(_faces.At(a) + (slope * (_x - a)), slope * _ux, from, to, breaks, ref n);
        }

        return n;
    }

    /// <summary>How far the sharpened facet reaches, 0 when there is none, and how far the bevel does.</summary>
    /// <param name="most">Look no further than this.</param>
    public (double Facet, double Bevel) Ends(double most)
    {
        Span<double> breaks = stackalloc double[MostBreaks];
        var n = Breaks(0, most, breaks);
        var (facet, bevel, from, isFacet) = (0.0, 0.0, 0.0, _facet > 0);
        for (var i = 0; i <= n; i++)
        {
            var to = i < n ? breaks[i] : most;
            var mid = 0.5 * (from + to);
            var t = At(mid);
            if (isFacet && t < (_facet * mid) - 1e-9) isFacet = false;
            if (isFacet && t < Flat(mid) - 1e-9) facet = to;
            if (t < Flat(mid) - 1e-9) bevel = to;
            from = to;
        }

        return (facet, bevel);
    }

    private double Face(double d)
    {
        if (_bend == 0) return _te + (_rise * d);
        var off = d - _cx;
        return _sides * (_cz + (_bend * Math.Sqrt(Math.Max(0, (_r * _r) - (off * off)))));
    }

    private void Against(double a, double slope, double from, double to, Span<double> breaks, ref int n)
    {
        // the facet meets the flat only where the face is no lower
        if (_facet > slope)
        {
            var meet = a / (_facet - slope);
            if (meet > from && meet < to && (meet >= _h || Face(meet) >= (_facet * meet) - 1e-9)) Put(meet, from, to, breaks, ref n);
        }

        // a chord up to even faces meets them at its own end
        if (_bend != 0) Round(a, slope, from, to, breaks, ref n);
        else if (_rise != slope && (slope != 0 || !double.IsFinite(_h) || !_faces.IsEven) && (a - _te) / (_rise - slope) is var d && d < _h) Put(d, from, to, breaks, ref n);
    }

    // where the circle meets the thickness a + slope · d
    private void Round(double a, double slope, double from, double to, Span<double> breaks, ref int n)
    {
        var (k, m) = ((a / _sides) - _cz, slope / _sides);
        var (p, q, s) = (1 + (m * m), (m * k) - _cx, (_cx * _cx) + (k * k) - (_r * _r));
        var root = (q * q) - (p * s);
        if (root < 0) return;
        root = Math.Sqrt(root);
        if ((-q - root) / p is var one && one < _h) Put(one, from, to, breaks, ref n);
        if ((-q + root) / p is var two && two < _h) Put(two, from, to, breaks, ref n);
    }

    private static void Put(double d, double from, double to, Span<double> breaks, ref int n)
    {
        if (!(d > from && d < to)) return;
        var i = n++;
        for (; i > 0 && breaks[i - 1] > d; i--) breaks[i] = breaks[i - 1];
        breaks[i] = d;
    }
}
