using System.Collections.Immutable;

namespace Tangwright.Core;

/// <summary>Every way a piece of several patterns may lie in a lane, and the least step from each to each.</summary>
internal sealed class MixedSteps
{
    private readonly double[][] _steps;

    private MixedSteps(ImmutableArray<LaneState> states, ImmutableArray<int> firsts, double[][] steps) => (States, Firsts, _steps) = (states, firsts, steps);

    /// <summary>Ways of lying, pattern after pattern.</summary>
    public ImmutableArray<LaneState> States { get; }

    /// <summary>Where each pattern's ways begin, and how many there are.</summary>
    public ImmutableArray<int> Firsts { get; }

    /// <summary>Steps from one way to all others, mm.</summary>
    public double[] From(int state) => _steps[state];

    /// <summary>Works the steps out.</summary>
    /// <param name="pieces">The patterns.</param>
    /// <param name="slacksMm">How much each may be moved across, mm.</param>
    /// <param name="heights">Heights looked at, of the pattern with the most room.</param>
    /// <param name="clearanceMm">Clearance, chords counted in.</param>
    public static MixedSteps Of(ImmutableArray<LanePiece> pieces, double[] slacksMm, int heights, double clearanceMm)
    {
        // one grid for all, so that few differences of height occur; each pattern's own top besides
        var grid = heights > 1 ? slacksMm.Max() / (heights - 1) : 0;
        var (states, firsts) = (ImmutableArray.CreateBuilder<LaneState>(), ImmutableArray.CreateBuilder<int>());
        for (var t = 0; t < pieces.Length; t++)
        {
            firsts.Add(states.Count);
            var ups = Enumerable.Range(0, heights).Select(i => i * grid).Where(u => u < slacksMm[t] - 1e-9).Append(slacksMm[t]).ToArray();
            for (var l = 0; l < pieces[t].Flanks.Length; l++) states.AddRange(ups.Select(u => new LaneState(t, l, u)));
        }

        firsts.Add(states.Count);
        var steps = new double[states.Count][];
        var known = new Dictionary<(int, int, int, int, long), double>();
        for (var a = 0; a < states.Count; a++)
        {
            steps[a] = new double[states.Count];
            for (var b = 0; b < states.Count; b++)
            {
                var (s, e) = (states[a], states[b]);
                var up = e.UpMm - s.UpMm;
                var key = (s.Pattern, s.Lie, e.Pattern, e.Lie, (long)Math.Round(up * 1e7));
                if (!known.TryGetValue(key, out var step)) known.Add(key, step = LeastStep.Mm(pieces[s.Pattern].Flanks[s.Lie], pieces[e.Pattern].Flanks[e.Lie], up, clearanceMm));
                steps[a][b] = step;
            }
        }

        return new MixedSteps(states.ToImmutable(), firsts.ToImmutable(), steps);
    }
}

/// <summary>One way of lying.</summary>
/// <param name="Pattern">Which pattern.</param>
/// <param name="Lie">Which of its lies.</param>
/// <param name="UpMm">How high, mm.</param>
internal readonly record struct LaneState(int Pattern, int Lie, double UpMm);
