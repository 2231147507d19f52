using System.Collections.Immutable;
using Tangwright.Foundation;

namespace Tangwright.Core;

/// <summary>What one lever does.</summary>
/// <param name="Lever">The lever.</param>
/// <param name="GramsPerUnit">Change of the weight, g, a mm of it, or a gram.</param>
/// <param name="MmPerUnit">Change of the balance from the datum, mm, a mm of it, or a gram.</param>
/// <param name="Reaches">Whether it alone brings the balance where it is wanted; null when nothing is wanted.</param>
/// <param name="Value">The value that does it, or that comes nearest; null when nothing is wanted.</param>
/// <param name="Then">Weight and balance with it; null when nothing is wanted.</param>
public sealed record LeverAnswer(BalanceLever Lever, double GramsPerUnit, double MmPerUnit, bool? Reaches, double? Value, Weighed? Then);

/// <summary>What moves weight and balance of a piece, and what brings them where they are wanted.</summary>
/// <param name="Now">As the plan stands.</param>
/// <param name="To">Balance wanted, from the datum; null when none is.</param>
/// <param name="Weight">Weight wanted; null when none is.</param>
/// <param name="Levers">Each lever alone.</param>
/// <param name="Together">The least change of several levers together; null when nothing is wanted or there is no lever.</param>
public sealed record BalanceAnswer(Weighed Now, Length? To, Mass? Weight, ImmutableArray<LeverAnswer> Levers, JointChange? Together);

/// <summary>Weight and balance against each lever, all weighed on the true solid.</summary>
/// <remarks>What a mm of a lever does is the slope at the plan as it stands, by differences of 0.05 mm (a gram for a weight). The value that alone does it is the root nearest to what it is now, bracketed between that and a limit, to 0.001 mm.</remarks>
public static class BalanceStudy
{
    private const double StepMm = 0.05, StepGrams = 1, RootMm = 0.001;

    /// <summary>Works it out; null when the steel's density is not known.</summary>
    /// <param name="r">The plan worked up.</param>
    /// <param name="to">Balance wanted, from the datum.</param>
    /// <param name="weight">Weight wanted.</param>
    /// <param name="allowed">Keys of the levers that may be moved; empty: all, and for moving several together all but the bar and added weight.</param>
    public static BalanceAnswer? Of(Results r, Length? to, Mass? weight, ImmutableArray<string> allowed)
    {
        if (r.Steel?.Density is null) return null;
        var weigher = new PieceWeigher(r);
        var now = weigher.Of(r.Plan, LeverTouches.Nothing);
        var levers = BalanceLevers.Of(r).Where(l => allowed.IsEmpty || allowed.Contains(l.Key)).Select(weigher.Narrowed).ToImmutableArray();
        var steps = levers.SelectMany(l => Steps(l).Select(v => (Lever: l, Value: v, Plan: l.Set(r.Plan, v)))).ToImmutableArray();
        var near = weigher.Near([.. steps.Select(s => (s.Plan, s.Lever.Touches))]);
        var answers = levers.Select((l, i) => Alone(near[2 * i].IsSameBevel && near[(2 * i) + 1].IsSameBevel ? PieceWeigher.WithoutBevel(l) : l, weigher, r.Plan, now, [.. Enumerable.Range(2 * i, 2).Select(k => (steps[k].Value, near[k].Weighed))], to?.Mm)).ToImmutableArray();
        var joint = answers.Where(a => !allowed.IsEmpty || (!a.Lever.IsWeight && a.Lever.Key != "stock")).ToImmutableArray();
        var together = (to is null && weight is null) || joint.IsEmpty ? null : JointChange.Of(r.Plan, weigher, now, joint, to?.Mm, weight?.Grams);
        return new BalanceAnswer(now, to, weight, answers, together);
    }

    private static LeverAnswer Alone(BalanceLever lever, PieceWeigher weigher, Plan plan, Weighed now, ImmutableArray<(double Value, Weighed Weighed)> near, double? to)
    {
        var seen = new Dictionary<double, Weighed> { [lever.Now] = now };
        foreach (var (v, w) in near) seen[v] = w;
        var (grams, mm) = Slope(lever.Now, now, near[0], near[1]);
        if (to is not { } wanted) return new LeverAnswer(lever, grams, mm, null, null, null);
        double[] ends = [lever.Low, lever.High];
        double? value = null;
        if (Math.Abs(now.FromDatumMm - wanted) < 1e-6) value = lever.Now;
        foreach (var end in ends.OrderBy(e => Math.Abs(e - lever.Now)))
        {
            if (value is not null || end == lever.Now || At(end).FromDatumMm > wanted == now.FromDatumMm > wanted) continue;
            value = Bracket.Root(v => At(v).FromDatumMm - wanted, lever.Now, end, RootMm);
        }

        if (value is { } root) return new LeverAnswer(lever, grams, mm, true, root, At(root));
        var best = ends.Append(lever.Now).MinBy(v => Math.Abs(At(v).FromDatumMm - wanted));
        return new LeverAnswer(lever, grams, mm, false, best, At(best));

        Weighed At(double v)
        {
            if (!seen.TryGetValue(v, out var w)) seen[v] = w = weigher.Of(lever.Set(plan, v), lever.Touches);
            return w;
        }
    }

    // one either side, or at a limit two on the other
    private static double[] Steps(BalanceLever lever)
    {
        var h = Math.Min(lever.IsWeight ? StepGrams : StepMm, 0.25 * lever.Range);
        if (lever.Now - h >= lever.Low && lever.Now + h <= lever.High) return [lever.Now - h, lever.Now + h];
        if (lever.Now + h > lever.High) h = -h;
        return [lever.Now + h, lever.Now + (2 * h)];
    }

    // middle difference, or at a limit the one-sided one of the same order
    private static (double Grams, double Mm) Slope(double at, Weighed now, (double Value, Weighed Weighed) one, (double Value, Weighed Weighed) two)
    {
        return (Of(now.Grams, one.Weighed.Grams, two.Weighed.Grams), Of(now.FromDatumMm, one.Weighed.FromDatumMm, two.Weighed.FromDatumMm));

        double Of(double f, double a, double b) => (one.Value < at) == (two.Value < at) ? ((4 * a) - (3 * f) - b) / (2 * (one.Value - at)) : (b - a) / (two.Value - one.Value);
    }
}
