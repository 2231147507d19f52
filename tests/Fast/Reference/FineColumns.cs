using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>An integrator that shares nothing with those under test: upright columns over the piece, cut where finely chopped curves cross them, crowded towards corners and turning points and added up by Gauss' rule of 16 points (Abramowitz and Stegun, table 25.4); along each column Simpson's rule, halved until it agrees with itself.</summary>
internal static class FineColumns
{
    private const int Chops = 600;

    /// <summary>∫ f with first and second moments over the piece, beyond a plunge line left out when there is one.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="f">What is summed up.</param>
    /// <param name="plunge">Nothing is counted on one side of it.</param>
    /// <param name="above">Whether the side above counts, or right of an upright one.</param>
    /// <param name="step">Width of the columns about.</param>
    /// <param name="stations">Where columns end besides: kinks of f.</param>
    public static Moments Sum(Region piece, Func<Point, double> f, PlungeLine? plunge, bool above, double step, params double[] stations)
    {
        var runs = piece.Loops.SelectMany(l => l.Segments).Select(s => (Segment: s, X: Enumerable.Range(0, Chops + 1).Select(k => s.At((double)k / Chops).X).ToArray())).ToArray();
        var ends = new SortedSet<double>(stations.Where(x => x > piece.Outer.Bounds.MinX && x < piece.Outer.Bounds.MaxX));
        foreach (var (s, x) in runs)
        {
            ends.Add(s.Start.X);
            for (var k = 1; k < Chops; k++)
            {
                if ((x[k] - x[k - 1]) * (x[k + 1] - x[k]) < 0) ends.Add(s.Bounds.MinX > x[k] - 1e-2 ? s.Bounds.MinX : s.Bounds.MaxX < x[k] + 1e-2 ? s.Bounds.MaxX : x[k]);
            }
        }

        if (plunge is not null && plunge.A.X == plunge.B.X) ends.Add(plunge.A.X);
        var sum = default(Moments);
        foreach (var (from, to) in ends.Zip(ends.Skip(1)))
        {
            var width = to - from;
            if (width < 1e-9) continue;
            var panels = (int)Math.Ceiling(width / (8 * step));
            for (var i = 0; i < 16 * panels; i++)
            {
                var v = ((i / 16) + 0.5 + (0.5 * Gauss.Nodes16[i % 16])) / panels;
                sum += Column(from + (width * v * v * (3 - (2 * v)))) * (width * 6 * v * (1 - v) * 0.5 * Gauss.Weights16[i % 16] / panels);
            }
        }

        return sum;

        Moments Column(double x)
        {
            var cuts = new List<double>();
            foreach (var (s, xs) in runs)
            {
                for (var k = 1; k <= Chops; k++)
                {
                    if (xs[k - 1] < x == xs[k] < x) continue;
                    var (lo, hi) = ((k - 1.0) / Chops, (double)k / Chops);
                    for (var b = 0; b < 45; b++)
                    {
                        var mid = 0.5 * (lo + hi);
                        if (s.At(mid).X < x == xs[k - 1] < x) lo = mid;
                        else hi = mid;
                    }

                    cuts.Add(s.At(0.5 * (lo + hi)).Y);
                }
            }

            cuts.Sort();
            var (bottom, top) = (double.NegativeInfinity, double.PositiveInfinity);
            if (plunge is not null)
            {
                var d = plunge.B - plunge.A;
                if (d.X == 0)
                {
                    if (x < plunge.A.X == above) return default;
                }
                else
                {
                    var y = plunge.A.Y + ((x - plunge.A.X) * d.Y / d.X);
                    if (above) bottom = y;
                    else top = y;
                }
            }

            var column = default(Moments);
            for (var k = 0; k + 1 < cuts.Count; k += 2)
            {
                var (y0, y1) = (Math.Max(bottom, cuts[k]), Math.Min(top, cuts[k + 1]));
                if (y1 <= y0) continue;
                var n = Math.Max(2, (int)Math.Ceiling((y1 - y0) / 4));
                for (var j = 0; j < n; j++)
                {
                    var (a, b) = (y0 + ((y1 - y0) * j / n), y0 + ((y1 - y0) * (j + 1) / n));
                    column += Simpson(x, a, f(new(x, a)), 0.5 * (a + b), f(new(x, 0.5 * (a + b))), b, f(new(x, b)), 0);
                }
            }

            return column;
        }

        // halved until one step and two agree
        Moments Simpson(double x, double a, double fa, double m, double fm, double b, double fb, int depth)
        {
            var (p, q) = (0.5 * (a + m), 0.5 * (m + b));
            var (fp, fq) = (f(new(x, p)), f(new(x, q)));
            var (one, two) = ((b - a) / 6 * (fa + (4 * fm) + fb), (b - a) / 12 * (fa + (4 * fp) + (2 * fm) + (4 * fq) + fb));
            if (depth > 24 || Math.Abs(one - two) < 1e-8 * (b - a)) return At(x, a, fa, b - a, 1) + At(x, p, fp, b - a, 4) + At(x, m, fm, b - a, 2) + At(x, q, fq, b - a, 4) + At(x, b, fb, b - a, 1);
            return Simpson(x, a, fa, p, fp, m, fm, depth + 1) + Simpson(x, m, fm, q, fq, b, fb, depth + 1);
        }

        static Moments At(double x, double y, double t, double length, int weight)
        {
            var w = t * length * weight / 12;
            return new Moments(w, x * w, y * w, x * x * w, x * y * w, y * y * w);
        }
    }
}
