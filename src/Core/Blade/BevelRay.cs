using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What the grinding takes along one ray from the sharpened part into the steel. mm.</summary>
/// <remarks>The ray is cut where another spot of the sharpened part becomes the nearer one, at the plunge line, at the boundary of the piece and where the bevel ends.</remarks>
internal sealed class BevelRay
{
    private readonly Region _piece;
    private readonly FullHeight? _full;
    private readonly GrindProfile[] _profiles;
    private readonly double[] _kinks;
    private readonly RayHits _boundary;
    private RayHits _near;
    private readonly RayHit[] _hits;
    private readonly RollingBall _ball;
    private readonly int _outerCount;
    private readonly double _far;
    private readonly Point _origin;

    // ground is where (q − on)·side ≥ 0
    private readonly (Point On, Point Side)? _plunge;

    public BevelRay(Region piece, EdgeSpan edge, PlungeLine? plunge, GrindProfile[] profiles, Point origin)
    {
        (_piece, _profiles, _origin) = (piece, profiles, origin);
        _kinks = [.. profiles.SelectMany(law => law.Faces.KinksMm.ToArray()).Distinct()];
        _boundary = _near = new RayHits(piece);
        if (IsFullHeight) _full = new FullHeight(piece, edge, _boundary);
        _hits = new RayHit[_boundary.MostHits];
        _outerCount = piece.Outer.Segments.Length;
        var box = piece.Outer.Bounds;
        _far = new Point(box.Width, box.Height).Length * 1.001;
        MostReach = IsFullHeight ? _far : Math.Min(_far, profiles.Max(law => law.Reach(HeightOf(law))));
        _ball = new RollingBall(edge.Path, MostReach);
        if (plunge is not null) _plunge = (plunge.A, SteelThickness.GroundSide(edge, plunge));
    }

    /// <summary>Furthest any ray can take steel, mm.</summary>
    public double MostReach { get; }

    /// <summary>Whether the height is another from ray to ray.</summary>
    public bool IsFullHeight => _profiles[0].IsFull;

    /// <summary>Crossings of the plunge line with the boundary.</summary>
    public IEnumerable<Point> PlungeEnds()
    {
        if (_plunge is not { } plunge) return [];
        var along = plunge.Side.Left;
        var start = along * (_piece.Outer.Bounds.Centre - plunge.On).Dot(along);
        var n = _boundary.Along(plunge.On + start, along, -_far, _far, _hits);
        return [.. _hits.Take(n).Select(h => plunge.On + start + (along * h.Distance))];
    }

    /// <summary>Says that the rays to come lie within a box, as far as they reach: what lies outside is then not looked at.</summary>
    public void StayWithin(Box box)
    {
        if (IsFullHeight) return;
        _near = _boundary.Within(box.Grown(1e-6));
        _ball.StayWithin(box.Grown(1.001 * MostReach));
    }

    /// <summary>Adds the moments, per unit of the cell's variable, of what is taken along the ray.</summary>
    /// <param name="p">Base point on the sharpened part.</param>
    /// <param name="u">Direction, length 1.</param>
    /// <param name="width">Width of the cell at n = 0 per unit of its variable.</param>
    /// <param name="spread">Change of that width with n.</param>
    /// <param name="curvature">Curvature of the sharpened part towards u at p; 0 in a fan.</param>
    /// <param name="startsInSteel">Whether the ray starts in steel; null when not known.</param>
    /// <param name="values">Six moments for each profile.</param>
    /// <returns>The ray's story.</returns>
    public int Add(Point p, Point u, double width, double spread, double curvature, bool? startsInSteel, Span<double> values)
    {
        var (story, halved) = (1, false);
        var h = IsFullHeight ? _full!.Along(p, u, out halved) : HeightOf(_profiles[0]);
        if (halved) story += 100;
        if (h <= 0) return story;
        if (_kinks.Length > 0) story += 1000 * (Stretch(p.X) + (10 * Stretch(p.X + (u.X * Math.Min(h, MostReach)))));
        var (least, most, end) = (0.0, IsFullHeight ? Math.Min(_far, Reach(h)) : MostReach, 1);
        if (_plunge is { } plunge)
        {
            var (g, rate) = ((p - plunge.On).Dot(plunge.Side), u.Dot(plunge.Side));
            var cross = -g / rate;
            if (g < 0)
            {
                if (!(rate > 0) || cross >= most) return story + 1;
                least = cross;
                story += 2;
            }
            else if (rate < 0 && cross < most)
            {
                (most, end) = (cross, 2);
            }
        }

        var count = _near.Along(p, u, 1e-7, most, _hits);
        if (count == 0 && startsInSteel == false) return story + 3;
        var cut = _ball.Reach(p, u, most, curvature);
        if (cut < most * (1 - 1e-9)) (most, end) = (cut, 3);

        var from = 0.0;
        var side = startsInSteel switch { true => 1, false => -1, null => 0 };
        for (var i = 0; i <= count; i++)
        {
            var hit = i < count && _hits[i].Distance < most ? _hits[i] : new RayHit(most, 0, -1, 0);
            if (hit.Side == 0 && hit.Segment >= 0) continue;
            var to = hit.Distance;
            if (to > least && IsSteel(p, u, from, to, side, hit.Segment < 0 ? 0 : hit.Side))
            {
                Take(p, u, Math.Max(from, least), to, width, spread, h, values);
                story = (story * 31) + (hit.Segment < 0 ? end : hit.Segment < _outerCount ? 4 : 5 + hit.Segment);
            }

            if (hit.Segment < 0) break;
            (from, side) = (to, hit.Side);
        }

        return story;
    }

    // both ends of a stretch say whether it is steel; when they disagree or know nothing its middle decides
    private bool IsSteel(Point p, Point u, double from, double to, int atFrom, int atTo)
    {
        if (to - from < 1e-9) return false;
        var says = atFrom - atTo;
        return says > 0 || (says == 0 && Inside.Of(_piece, p + (u * (0.5 * (from + to)))));
    }

    private static double HeightOf(GrindProfile law) => law.HeightMm ?? double.PositiveInfinity;

    private double Reach(double h)
    {
        var most = 0.0;
        foreach (var profile in _profiles) most = Math.Max(most, profile.Reach(h));
        return most;
    }

    // how many kinks of the flat faces lie before a place
    private int Stretch(double x)
    {
        var n = 0;
        foreach (var kink in _kinks) n += kink < x ? 1 : 0;
        return n;
    }

    private void Take(Point p, Point u, double from, double to, double width, double spread, double h, Span<double> values)
    {
        Span<double> breaks = stackalloc double[FaceAlong.MostBreaks + 1];
        var start = p - _origin;
        for (var k = 0; k < _profiles.Length; k++)
        {
            var face = new FaceAlong(_profiles[k], p.X, u.X, IsFullHeight ? h : HeightOf(_profiles[k]));
            var n = face.Breaks(from, to, breaks);
            breaks[n++] = to;

            // between the breaks what is taken is straight, or the smooth arc of a circle; times the width and d² a polynomial of third or fourth degree
            var nodes = face.IsRound ? Gauss.Nodes6 : spread == 0 ? Gauss.Nodes2 : Gauss.Nodes3;
            var weights = face.IsRound ? Gauss.Weights6 : spread == 0 ? Gauss.Weights2 : Gauss.Weights3;
            double i0 = 0, i1 = 0, i2 = 0;
            var a = from;
            for (var j = 0; j < n; j++)
            {
                var b = breaks[j];
                var (mid, half) = (0.5 * (a + b), 0.5 * (b - a));
                a = b;
                if (!(half > 0)) continue;
                for (var q = 0; q < nodes.Length; q++)
                {
                    var d = mid + (half * nodes[q]);
                    var f = half * weights[q] * face.Taken(d) * (width + (spread * d));
                    i0 += f;
                    i1 += f * d;
                    i2 += f * d * d;
                }
            }

            var v = values.Slice(6 * k, 6);
            v[0] += i0;
            v[1] += (start.X * i0) + (u.X * i1);
            v[2] += (start.Y * i0) + (u.Y * i1);
            v[3] += (start.X * start.X * i0) + (2 * start.X * u.X * i1) + (u.X * u.X * i2);
            v[4] += (start.X * start.Y * i0) + (((start.X * u.Y) + (start.Y * u.X)) * i1) + (u.X * u.Y * i2);
            v[5] += (start.Y * start.Y * i0) + (2 * start.Y * u.Y * i1) + (u.Y * u.Y * i2);
        }
    }
}
