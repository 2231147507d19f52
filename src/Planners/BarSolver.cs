using System.Collections.Immutable;
using Google.OrTools.Sat;
using Tangwright.Core;

namespace Tangwright.Planners;

/// <summary>Whole-number programs over fillings by CP-SAT, one worker, fixed seed, work counted and not time: the same answer every time.</summary>
public sealed class BarSolver : IBarSolver
{
    /// <inheritdoc/>
    public FillingEnd Choose(FillingProblem problem, out FillingChoice? choice, CancellationToken stop = default)
    {
        choice = null;
        var end = Solve(problem, fixedCost: null, hint: null, out var times, out var proven, stop);
        if (end != FillingEnd.Found) return end;
        var cost = Cost(problem, times!);
        if (problem.FewestBars && !stop.IsCancellationRequested && Solve(problem, cost, times, out var fewer, out _, stop) == FillingEnd.Found && Cost(problem, fewer!) <= cost) times = fewer;
        choice = new FillingChoice([.. times!], cost, proven);
        return FillingEnd.Found;
    }

    /// <inheritdoc/>
    public IPieceWorths Worths(ImmutableArray<int> wanted) => new PieceWorths(wanted);

    private static long Cost(FillingProblem p, int[] times)
    {
        var cost = 0L;
        for (var i = 0; i < times.Length; i++) cost += p.Fillings[i].Cost * times[i];
        return cost;
    }

    private static FillingEnd Solve(FillingProblem p, long? fixedCost, int[]? hint, out int[]? times, out bool proven, CancellationToken stop)
    {
        (times, proven) = (null, false);
        var model = new CpModel();
        var bars = new IntVar[p.Fillings.Length];
        for (var i = 0; i < bars.Length; i++)
        {
            var (kind, counts, _) = p.Fillings[i];
            var most = 0;
            for (var t = 0; t < counts.Length; t++) most = counts[t] > 0 ? Math.Max(most, (p.Wanted[t] + counts[t] - 1) / counts[t]) : most;
            if (!p.MostBars.IsDefaultOrEmpty && p.MostBars[kind] is { } limit) most = Math.Min(most, limit);
            bars[i] = model.NewIntVar(0, most, "");
            if (hint is not null) model.AddHint(bars[i], hint[i]);
        }

        for (var t = 0; t < p.Wanted.Length; t++)
        {
            var with = Enumerable.Range(0, bars.Length).Where(i => p.Fillings[i].Counts[t] > 0).ToArray();
            model.AddLinearConstraint(LinearExpr.WeightedSum(with.Select(i => bars[i]), with.Select(i => p.Fillings[i].Counts[t])), p.Wanted[t], int.MaxValue);
        }

        for (var k = 0; k < p.MostBars.Length; k++)
        {
            if (p.MostBars[k] is { } limit) model.AddLinearConstraint(LinearExpr.Sum(Enumerable.Range(0, bars.Length).Where(i => p.Fillings[i].Kind == k).Select(i => bars[i])), 0, limit);
        }

        var cost = LinearExpr.WeightedSum(bars, p.Fillings.Select(f => f.Cost));
        if ((fixedCost ?? p.GoodEnough) is { } enough) model.AddLinearConstraint(cost, 0, enough);
        if (fixedCost is not null) model.Minimize(LinearExpr.Sum(bars));
        else if (p.GoodEnough is null) model.Minimize(cost);
        if (bars.Length == 0) return p.Wanted.All(w => w == 0) ? FillingEnd.Found : FillingEnd.None;

        var solver = new CpSolver { StringParameters = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"num_workers:1 random_seed:1 max_deterministic_time:{p.MostWork}") };
        using var ending = stop.Register(solver.StopSearch);
        var status = stop.IsCancellationRequested ? CpSolverStatus.Unknown : solver.Solve(model);
        if (status == CpSolverStatus.Infeasible) return FillingEnd.None;
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible)) return FillingEnd.Unknown;
        times = [.. bars.Select(b => (int)solver.Value(b))];
        proven = status == CpSolverStatus.Optimal;
        return FillingEnd.Found;
    }
}
