using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Tangwright.Core;
using Tangwright.Foundation;

namespace Tangwright.Tests.Rs274;

/// <summary>A long bar with forty bored holes and a curved profile, every arc written as short straight moves.</summary>
public class LargeProgramTests
{
    [Fact]
    public void Is_clean()
    {
        var (program, wanted) = Large();
        Assert.True(program.Split('\n').Length > 20_000);
        var setUp = HandMade.SetUp with { Stock = new Box(0, 0, 420, 60), Travel = null, Clamps = [new("the left clamp", new Box(-10, 5, 12, 25), 12)] };
        Assert.Empty(Inputs.ProgramCheck.Of(program, HandMade.Tools, setUp, wanted));
    }

    private static (string Program, WantedPart Wanted) Large()
    {
        var text = new StringBuilder("G17 G21 G40 G49 G54 G80 G90 G94 G61\nT5 M6\nG43 H5\nS4000 M3\nG0 Z20\nF200\n");
        var holes = ImmutableArray.CreateBuilder<WantedHole>();
        void Go(string word, double x, double y) => text.Append(CultureInfo.InvariantCulture, $"{word} X{x:0.####} Y{y:0.####}\n");
        for (var i = 0; i < 40; i++)
        {
            var at = new Point(30 + (9.2 * i), 30);
            holes.Add(new("H" + i, at, 8));
            Go("G0", at.X + 1, at.Y);
            text.Append("G0 Z1\nG1 Z0\n");
            for (var k = 1; k <= 11 * 48; k++)
            {
                var p = at + Point.Direction(k * Math.PI / 24);
                text.Append(CultureInfo.InvariantCulture, $"G1 X{p.X:0.####} Y{p.Y:0.####} Z{Math.Max(-5.2, -0.52 * k / 48):0.####}\n");
            }

            text.Append("G0 Z20\n");
        }

        // an ellipse-like ring of short lines, 12 passes, two tabs in the last ones
        Point On(double t, double grow) => new(210 + ((190 + grow) * Math.Cos(t)), 30 + ((22 + grow) * Math.Sin(t)));
        const int Count = 1500;
        Point[] ring = [.. Enumerable.Range(0, Count).Select(k => On(k * 2 * Math.PI / Count, 0))];
        Point[] path = [.. Enumerable.Range(0, Count).Select(k => ring[k] + ((ring[(k + 1) % Count] - ring[(k + Count - 1) % Count]).Unit.Left * -3))];
        Go("G0", path[0].X, path[0].Y);
        text.Append("G0 Z1\n");
        for (var pass = 1; pass <= 12; pass++)
        {
            var z = -5.2 * pass / 12;
            text.Append(CultureInfo.InvariantCulture, $"G1 Z{z:0.####}\n");
            for (var k = Count; k >= 0; k--)
            {
                if (k is 380 or 1130) text.Append(CultureInfo.InvariantCulture, $"G1 Z{Math.Max(z, -4):0.####}\n");
                if (k is 370 or 1120) text.Append(CultureInfo.InvariantCulture, $"G1 Z{z:0.####}\n");
                Go("G1", path[k % Count].X, path[k % Count].Y);
            }
        }

        text.Append("G0 Z20\nM5\nM2\n");
        return (text.ToString(), new WantedPart(holes.ToImmutable(), Foundation.Path.Polygon(ring), 0.05));
    }
}
