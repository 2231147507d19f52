using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>Machine programs read by Debian's rs274 as well: it accepts them, goes where our own reading goes, and leaves each hole and the profile where they belong.</summary>
public class OutsideCheckTests
{
    private const double ToleranceMm = 0.005;

    public static TheoryData<string> Good => ["whole", "compensated", "in inches", "without cycles", "pecking", "steps"];

    [Theory]
    [MemberData(nameof(Good))]
    public void Goes_where_our_reading_goes(string name)
    {
        var program = Programs(name);
        var outside = OutsideReader.Of(program, HandMade.Tools);
        Assert.True(outside.Exit == 0, outside.Said);

        // the outside reader starts at 0, 0, 0
        var ours = ProgramReader.Read(program, HandMade.Tools, true, default);
        Assert.Empty(ours.Troubles);
        Assert.Equal(ours.Changes.Length, outside.ToolChanges);
        var (mine, theirs) = (Moves(ours.Motions), Moves(outside.Motions));
        Assert.Equal(mine.Count, theirs.Count);
        foreach (var (a, b) in mine.Zip(theirs))
        {
            Assert.Equal(a.IsRapid, b.IsRapid);
            Assert.Equal(a.Tool, b.Tool);
            Assert.Equal(a.To.X, b.To.X, ToleranceMm);
            Assert.Equal(a.To.Y, b.To.Y, ToleranceMm);
            Assert.Equal(a.To.Z, b.To.Z, ToleranceMm);
            Assert.Equal(a.Centre is null, b.Centre is null);
            if (a.Centre is not { } centre) continue;
            Assert.Equal(0, centre.To(b.Centre!.Value), ToleranceMm);
            Assert.Equal(a.IsCounterClockwise, b.IsCounterClockwise);
        }
    }

    [Fact]
    public void Leaves_the_part_as_planned()
    {
        LeftAsPlanned.Check(OutsideReader.Of(HandMade.Whole, HandMade.Tools).Motions, HandMade.Tools, HandMade.Wanted, HandMade.SetUp.ThicknessMm, ToleranceMm);

        // it would notice a hole 0.01 mm off, a bore 0.02 mm too large and a profile 0.01 mm off
        foreach (var (old, instead) in new[] { ("X30 Y15 Z-7.3", "X30.01 Y15 Z-7.3"), ("I-2 J0", "I-2.01 J0"), ("G2 X83 Y19 I0 J-7\nG1 Y11\nG2 X76 Y4 I-7 J0", "G1 X76.01\nG2 X83.01 Y19 I0 J-7\nG1 Y11\nG2 X76.01 Y4 I-7 J0") })
        {
            Assert.Contains(old, HandMade.Whole, StringComparison.Ordinal);
            var off = OutsideReader.Of(HandMade.Whole.Replace(old, instead, StringComparison.Ordinal).Replace("X52 Y15", old[0] == 'I' ? "X52.01 Y15" : "X52 Y15", StringComparison.Ordinal), HandMade.Tools);
            Assert.True(off.Exit == 0, off.Said);
            Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => LeftAsPlanned.Check(off.Motions, HandMade.Tools, HandMade.Wanted, HandMade.SetUp.ThicknessMm, ToleranceMm));
        }
    }

    // what it refuses we refuse too
    [Theory]
    [InlineData("Q3 ", "")]
    [InlineData("Z-7.3 R2", "Z-7.3 R-8")]
    [InlineData("G2 X24 Y26 I7 J0", "G2 X24 Y26 I7 J0.4")]
    [InlineData("G2 X24 Y26 I7 J0", "G2 X24 Y26")]
    [InlineData("G0 X17 Y15", "G0 G1 X17 Y15")]
    [InlineData("G0 X17 Y15", "G0 X17 X18 Y15")]
    [InlineData("T3 M6", "T7 M6")]
    [InlineData("X30 Y15 Z-7.3", "X3O Y15 Z-7.3")]
    [InlineData("(plate, three holes)", "(plate, three holes")]
    [InlineData("Z-2 R2 F100", "Z-2 R2")]
    public void What_the_outside_reader_refuses_is_refused_here(string old, string instead)
    {
        Assert.Contains(old, HandMade.Whole, StringComparison.Ordinal);
        var broken = HandMade.Whole.Replace(old, instead, StringComparison.Ordinal);
        Assert.Equal(1, OutsideReader.Of(broken, HandMade.Tools).Exit);
        Assert.NotEmpty(ProgramReader.Read(broken, HandMade.Tools, true, ProgramReader.Anywhere).Troubles);
    }

    private static string Programs(string name) => name switch
    {
        "whole" => HandMade.Whole,
        "compensated" => HandMade.Compensated,
        "in inches" => "G17 G20 G40 G49 G54 G80 G90 G94 G61\nT2 M6\nS900 M3\nG0 Z1\nG0 X1.25 Y0.5\nG98 G81 X1.25 Y0.5 Z-0.3 R0.1 F3\nG80\nF10 G1 Z0.05\nG2 X2.25 Y0.5 I0.5 J0\nG0 Z1\nM5\nM2\n",
        "without cycles" => "G17 G21 G40 G49 G54 G80 G90 G94 G61\nT2 M6\nS900 M3\nG0 Z20\nG0 X30 Y15\nG0 Z2\nG1 Z-7.3 F80\nG4 P0.2\nG0 Z20\nM5\nM2\n",
        "pecking" => "G17 G21 G40 G49 G54 G80 G90 G94 G61\nT2 M6\nS900 M3\nG0 Z20\nG0 X30 Y15\nG99 G83 X30 Y15 Z-8 R2 Q3 F80\nX50\nG80\nG98 G83 X60 Z-5 R2 Q2\nG80\nG85 X70 Y15 Z-5 R2\nG89 X80 Y15 Z-5 R2 P0.1\nG80\nG0 Z20\nM5\nM2\n",
        _ => "G17 G21 G40 G49 G54 G80 G90 G94 G61\nT2 M6\nS900 M3\nG0 Z20\nG0 X1 Y2\nG0 Z3\nF50 G91 G81 G98 X4 Y5 Z-0.6 R1.8 L3\nG80\nG1 X2 Y-1\nG3 X2 Y2 I0 J2\nG3 X5 Y5 R8\nG90 G2 X0 Y0 R-40\nG0 Z20\nM5\nM2\n",
    };

    /// <summary>Motions that go somewhere.</summary>
    private static List<OutsideMotion> Moves(IEnumerable<Motion> motions)
        => Moves(motions.Select(m => new OutsideMotion(m.Kind == MotionKind.Rapid, m.To, m.Kind == MotionKind.Arc ? m.Centre : null, m.IsCounterClockwise, m.Tool)));

    private static List<OutsideMotion> Moves(IEnumerable<OutsideMotion> motions)
    {
        var moves = new List<OutsideMotion>();
        foreach (var m in motions)
        {
            if (m.Centre is null && moves.Count > 0 && Apart(moves[^1].To, m.To) < 1e-4) continue;
            moves.Add(m);
        }

        return moves;

        static double Apart(SpacePoint a, SpacePoint b) => Math.Max(a.Flat.To(b.Flat), Math.Abs(a.Z - b.Z));
    }
}
