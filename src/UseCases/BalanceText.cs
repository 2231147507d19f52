using Tangwright.Documents;

namespace Tangwright.UseCases;

/// <summary>Levers of weight and balance as lines of text.</summary>
public static class BalanceText
{
    /// <summary>All of it.</summary>
    public static IEnumerable<string> Lines(PlannedBalance planned)
    {
        var (r, b) = planned;
        var units = r.Shop.Show;
        var datum = r.Plan.Datum.Name.Length > 0 ? $" (datum: {r.Plan.Datum.Name})" : "";
        yield return $"{r.Plan.Name}, revision {r.Plan.Revision}: weight and balance";
        yield return $"  now     {BalanceWords.Weighed(b.Now, units)} from the datum{datum}";
        if (BalanceWords.Wanted(b, units) is { Length: > 0 } wanted) yield return $"  wanted  {wanted}";
        foreach (var a in b.Levers)
        {
            yield return "";
            yield return $"{a.Lever.Name} [{a.Lever.Key}], now {BalanceWords.Value(a.Lever, a.Lever.Now, units)}";
            if (a.Then is { } then)
            {
                yield return $"  alone   {BalanceWords.Alone(a, units)}";
                if (a.Value != a.Lever.Now) yield return $"          then {BalanceWords.Weighed(then, units)}";
            }

            yield return $"  {BalanceWords.PerMm(a)}";
            yield return $"  {BalanceWords.PerSixtyFourth(a)}";
        }

        if (b.Together is { } j)
        {
            yield return "";
            yield return j.Reaches ? "Together, moved as little as does it:" : "Together they do not reach it; nearest:";
            foreach (var (lever, value) in j.Moves.Where(BalanceWords.IsMoved)) yield return $"  {lever.Name}: {BalanceWords.Value(lever, lever.Now, units)} to {BalanceWords.Value(lever, value, units)}";
            yield return $"  then {BalanceWords.Weighed(j.Then, units)}";
        }

        yield return "";
        yield return BalanceWords.Ground;
        yield return BalanceWords.Caution;
    }
}
