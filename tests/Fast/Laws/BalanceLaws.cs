using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests;

/// <summary>What must hold for every lever of weight and balance, whatever its value.</summary>
public class BalanceLaws
{
    private static readonly Results[] Pieces = [ExamplePieces.Kitchen(), ExamplePieces.Paring(), ExamplePieces.Hatchet()];

    // what was not weighed again because no lever touches it is as if it had been
    [Fact]
    public void A_lever_moved_weighs_what_the_plan_written_so_weighs()
        => Gen.Select(Gen.Int[0, Pieces.Length - 1], Gen.Int[0, 20], Gen.Double[0, 1]).Sample(
            (piece, which, share) =>
            {
                var r = Pieces[piece];
                var weigher = new PieceWeigher(r);
                var levers = BalanceLevers.Of(r);
                var lever = weigher.Narrowed(levers[which % levers.Length]);
                var plan = lever.Set(r.Plan, lever.Low + (share * lever.Range));
                var (quick, whole) = (weigher.Of(plan, lever.Touches), WorkUp.Of(plan, r.Shop, r.Steel).Stages[^1]);
                return Math.Abs(quick.Grams - whole.Mass!.Value.Grams) < 1e-4 && Math.Abs(quick.FromDatumMm - whole.BalanceFromDatum.Mm) < 1e-3;
            },
            iter: 60);

    // of all moves that do the same the one found is the least: none of its levers alone does it with a smaller share of its range
    [Fact]
    public void Together_moves_no_more_than_any_lever_alone()
        => Gen.Double[-10, 10].Sample(
            by =>
            {
                var r = Pieces[0];
                var to = Length.OfMm(r.Stages[^1].BalanceFromDatum.Mm + by);
                var a = BalanceStudy.Of(r, to, null, ["tang-taper", "holes-glue", "scales"])!;
                if (a.Together is not { Reaches: true } j) return a.Levers.All(l => l.Reaches != true);
                var size = Math.Sqrt(j.Moves.Sum(m => Math.Pow((m.Value - m.Lever.Now) / m.Lever.Range, 2)));
                return Math.Abs(j.Then.FromDatumMm - to.Mm) <= JointChange.GoodMm && j.Moves.All(m => m.Value >= m.Lever.Low && m.Value <= m.Lever.High)
                    && a.Levers.Where(l => l.Reaches == true).All(l => size <= (Math.Abs(l.Value!.Value - l.Lever.Now) / l.Lever.Range) + 1e-2);
            },
            iter: 30);
}
