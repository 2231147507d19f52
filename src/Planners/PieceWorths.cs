using System.Collections.Immutable;
using Google.OrTools.LinearSolver;
using Tangwright.Core;

namespace Tangwright.Planners;

/// <summary>The program in broken numbers, by the simplex method of GLOP, going on from where it stood.</summary>
internal sealed class PieceWorths : IPieceWorths
{
    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly Constraint[] _rows;
    private readonly List<Variable> _bars = [];

    public PieceWorths(ImmutableArray<int> wanted)
    {
        _rows = [.. wanted.Select(w => _solver.MakeConstraint(w, double.PositiveInfinity))];
        _solver.Objective().SetMinimization();
    }

    /// <inheritdoc/>
    public void Add(ImmutableArray<int> counts)
    {
        var bars = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _bars.Add(bars);
        _solver.Objective().SetCoefficient(bars, 1);
        for (var t = 0; t < counts.Length; t++)
        {
            if (counts[t] > 0) _rows[t].SetCoefficient(bars, counts[t]);
        }
    }

    /// <inheritdoc/>
    public ImmutableArray<double> Now()
    {
        _solver.Solve();
        return [.. _rows.Select(r => Math.Max(0, r.DualValue()))];
    }

    /// <inheritdoc/>
    public ImmutableArray<double> Bars() => [.. _bars.Select(b => b.SolutionValue())];

    /// <inheritdoc/>
    public void Dispose() => _solver.Dispose();
}
