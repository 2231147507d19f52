using CsCheck;
using Tangwright.Core;
using Tangwright.Foundation;
using Path = Tangwright.Foundation.Path;

namespace Tangwright.Tests;

/// <summary>What must hold for the midline of any handle.</summary>
public class MidlineLaws
{
    private static readonly Gen<Path> Handle = Gen.Double[-4, 4].Array[4].Select(b => new Path(
        [
            new Bezier(new(0, 2 + b[0]), new(40, b[1]), new(80, 2 - b[1]), new(130, b[0])),
            new Line(new(130, b[0]), new(132, 28 + b[2])),
            new Bezier(new(132, 28 + b[2]), new(90, 26 + b[3]), new(50, 27 - b[3]), new(0, 27)),
            new Line(new(0, 27), new(0, 2 + b[0])),
        ],
        closed: true));

    private static readonly Grip Grip = new(new(15, 14), new(115, 15));

    [Fact]
    public void Is_as_far_from_one_side_as_from_the_other()
        => Gen.Select(Handle, Gen.Double[0, 1]).Sample((handle, share) =>
        {
            var m = Midline.Of(handle, Grip)!;
            var (left, right) = m.ToSides(m.At(share * m.Length));
            Assert.Equal(left, right, 1e-7);
        });

    [Fact]
    public void Goes_where_the_handle_goes()
        => Gen.Select(Handle, Gen.Double[0, 1], Gen.Double[-3, 3]).Sample((handle, share, turn) =>
        {
            var move = Transform.Turn(turn).Then(Transform.Shift(new(70, -9)));
            var (m, moved) = (Midline.Of(handle, Grip)!, Midline.Of(handle.Transformed(move), new Grip(move.Map(Grip.From), move.Map(Grip.To)))!);
            Assert.True(move.Map(m.At(share * m.Length)).To(moved.At(share * m.Length)) < 1e-6);
        });
}
