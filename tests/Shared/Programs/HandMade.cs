using System.Collections.Immutable;
using Tangwright.Core;
using Tangwright.Foundation;
using Tangwright.Inputs;

namespace Tangwright.Tests;

/// <summary>Programs written by hand for one small part: a plate 60 x 16 x 5 mm with rounded corners, a drilled, a bored and a reamed hole, cut from a flat bar of 100 x 30 mm held by a clamp at either end.</summary>
internal static class HandMade
{
    public static ImmutableArray<ProgramTool> Tools { get; } =
    [
        new(1, "8 mm spot drill", ToolForm.SpotDrill, 8, 90, null),
        new(2, "6 mm drill", ToolForm.TwistDrill, 6, 118, null),
        new(3, "5.8 mm drill", ToolForm.TwistDrill, 5.8, 118, null),
        new(4, "6 mm reamer", ToolForm.Reamer, 6, 180, null),
        new(5, "6 mm end mill", ToolForm.EndMill, 6, 180, 13),
    ];

    public static WantedPart Wanted { get; } = new(
        [new("A", new(30, 15), 6), new("B", new(50, 15), 10), new("C", new(68, 15), 6)],
        new Foundation.Path(
            [
                new Line(new(20, 11), new(20, 19)), Arc.OfCircle(new(24, 19), 4, Math.PI, -Math.PI / 2),
                new Line(new(24, 23), new(76, 23)), Arc.OfCircle(new(76, 19), 4, Math.PI / 2, -Math.PI / 2),
                new Line(new(80, 19), new(80, 11)), Arc.OfCircle(new(76, 11), 4, 0, -Math.PI / 2),
                new Line(new(76, 7), new(24, 7)), Arc.OfCircle(new(24, 11), 4, -Math.PI / 2, -Math.PI / 2),
            ],
            closed: true),
        0.05);

    public static ProgramSetUp SetUp { get; } = new(
        new Machine("mill", MachineKind.CncMill, [], true, null, null, null, null, null, false),
        default,
        "left end, lower edge",
        new Box(0, 0, 100, 30),
        5,
        3,
        new Box(-20, -20, 130, 80),
        100,
        [new("the left clamp", new Box(-10, 5, 12, 25), 12), new("the right clamp", new Box(88, 5, 110, 25), 12)]);

    /// <summary>The profile at full depth, from the middle of the left end and back, with two tabs.</summary>
    private const string LastPass = """
        G1 Z-5.2
        G1 Y19
        G2 X24 Y26 I7 J0
        G1 X47
        G1 Z-4.2
        G1 X53
        G1 Z-5.2
        G1 X76
        G2 X83 Y19 I0 J-7
        G1 Y11
        G2 X76 Y4 I-7 J0
        G1 X53
        G1 Z-4.2
        G1 X47
        G1 Z-5.2
        G1 X24
        G2 X17 Y11 I0 J7
        G1 Y15
        """;

    /// <summary>Everything, with drill cycles, arcs, a helix and tool changes.</summary>
    public static string Whole { get; } = $"""
        %
        (plate, three holes)
        G17 G21 G40 G49 G54 G80 G90 G94
        G61
        G98
        T1 M6
        G43 H1
        S1200 M3
        G0 Z20
        G0 X30 Y15
        G81 X30 Y15 Z-2 R2 F100
        X50
        X68
        G80
        T2 M6
        G43 H2
        S900 M3
        G0 Z20
        G82 X30 Y15 Z-7.3 R2 P0.2 F80
        X50 Y15
        G80
        T3 M6
        G43 H3
        S1000 M3
        G0 Z20
        G83 X68 Y15 Z-7.2 R2 Q3 F80
        G80
        T4 M6
        G43 H4
        S300 M3
        G0 Z20
        G85 X68 Y15 Z-5.5 R2 F60
        G80
        T5 M6
        G43 H5
        S4000 M3
        G0 Z20
        G0 X52 Y15
        G0 Z1
        G1 Z0 F60
        G3 X52 Y15 I-2 J0 Z-1 F120
        G3 X52 Y15 I-2 J0 Z-2
        G3 X52 Y15 I-2 J0 Z-3
        G3 X52 Y15 I-2 J0 Z-4
        G3 X52 Y15 I-2 J0 Z-5.2
        G3 X52 Y15 I-2 J0
        G1 X50 Y15
        G0 Z20
        G0 X17 Y15
        G0 Z1
        G1 Z-2.6 F60
        G1 Y19 F240
        G2 X24 Y26 I7 J0
        G1 X76
        G2 X83 Y19 I0 J-7
        G1 Y11
        G2 X76 Y4 I-7 J0
        G1 X24
        G2 X17 Y11 I0 J7
        G1 Y15
        {LastPass}
        G0 Z20
        M5
        M2
        %
        """;

    /// <summary>The profile alone, with cutter compensation instead of an offset path.</summary>
    public static string Compensated { get; } = """
        G17 G21 G40 G49 G54 G80 G90 G94 G61
        T5 M6
        S4000 M3
        G0 Z20
        G0 X16 Y8
        G0 Z2
        G1 Z-5.2 F60
        G41 D5 G1 X20 Y15 F240
        G1 Y19
        G2 X24 Y23 I4 J0
        G1 X47
        G1 Z-4.2
        G1 X53
        G1 Z-5.2
        G1 X76
        G2 X80 Y19 I0 J-4
        G1 Y11
        G2 X76 Y7 I-4 J0
        G1 X24
        G2 X20 Y11 I0 J4
        G1 Y15.5
        G40 G1 X16 Y20
        G0 Z20
        M5
        M30
        """;

    public static ImmutableArray<ProgramTrouble> Troubles(string program) => ProgramCheck.Of(program, Tools, SetUp, Wanted);

    /// <summary>Of the profile alone, on a machine with cutter compensation.</summary>
    public static ImmutableArray<ProgramTrouble> ProfileTroubles(string program)
        => ProgramCheck.Of(program, Tools, SetUp, Wanted with { Holes = [] });

    /// <summary>The same set-up on a machine whose program has other ways.</summary>
    public static ProgramSetUp With(ProgramWays ways) => SetUp with { Machine = SetUp.Machine with { ProgramWays = ways } };
}
