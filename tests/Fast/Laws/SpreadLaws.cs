using CsCheck;
using Tangwright.Documents;

namespace Tangwright.Tests;

public class SpreadLaws
{
    private static readonly Gen<(double[] Wanted, double[] Sizes)> Labels =
        Gen.Select(Gen.Double[0, 100].Array[1, 12], Gen.Double[0.5, 6].Array[12])
            .Select((w, s) => (w.Order().ToArray(), s[..w.Length]));

    [Fact]
    public void Labels_keep_their_order_and_their_gap_and_stay_on_the_line()
        => Labels.Sample(c =>
        {
            if (Spread.Of(c.Wanted, c.Sizes, 0.5, -10, 110) is not { } places) return c.Sizes.Sum() + (0.5 * (c.Sizes.Length - 1)) > 120;
            for (var i = 0; i < places.Length; i++)
            {
                if (places[i] - (c.Sizes[i] / 2) < -10 - 1e-9 || places[i] + (c.Sizes[i] / 2) > 110 + 1e-9) return false;
                if (i > 0 && places[i] - places[i - 1] < ((c.Sizes[i] + c.Sizes[i - 1]) / 2) + 0.5 - 1e-9) return false;
            }

            return true;
        });

    [Fact]
    public void Labels_with_room_stand_where_they_belong()
        => Assert.Equal([10, 20, 30], Spread.Of([10, 20, 30], [5, 5, 5], 1, 0, 40)!);

    [Fact]
    public void Two_at_one_spot_share_the_shift_evenly()
        => Assert.Equal([17, 23], Spread.Of([20, 20], [5, 5], 1, 0, 40)!);

    [Fact]
    public void Too_many_are_refused() => Assert.Null(Spread.Of([1, 2, 3], [10, 10, 10], 1, 0, 20));
}
